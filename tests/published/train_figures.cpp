// Figures of a train between two screws. None of them is published: they are elementary, worked out apart.
#include <numbers>

#include "formulas/train.h"
#include "published/figure.h"

namespace visewright::published {

std::vector<Figure> train_figures() {
  std::vector<Figure> all;
  const auto row = [&](const char* inputs, const char* what, double printed, int decimals, double computed) {
    all.push_back({"two screws linked by gears", inputs, what, printed, decimals, Known::computed, computed});
  };
  row("lead 4, z 40", "skew for one tooth, mm", 0.100, 4, formulas::skew_for_one_tooth_mm(4, 40));
  row("lead 2.5, z 30", "skew for one tooth, mm", 0.0833, 4, formulas::skew_for_one_tooth_mm(2.5, 30));
  const double turn = formulas::dead_turn_rad(4 * 0.2, 80);
  row("four meshes of 0.2, r 40", "dead turn, rad", 0.020, 6, turn);
  row("four meshes of 0.2, r 40", "dead turn, deg", 1.1459, 4, turn * 180 / std::numbers::pi);
  row("four meshes of 0.2, r 40, lead 4", "lag along the screw, mm", 0.012732, 6, formulas::travel_mm(4, turn));
  return all;
}

}  // namespace visewright::published
