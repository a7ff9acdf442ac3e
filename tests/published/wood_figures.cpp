// Figures of wood: movement, screws in it, pressure on it.
#include <array>
#include <string>

#include "formulas/wood.h"
#include "published/figure.h"

namespace visewright::published {
namespace {

constexpr double inch = 25.4;
constexpr double pound = 4.4482216152605;

void add_movement(std::vector<Figure>& all) {
  all.push_back({"flooring page on dimensional change", "mesquite 0.00129, 5 in, 6 to 9 %", "swelling, in", 0.019, 3,
                 Known::sighted, formulas::wood_movement_mm(5 * inch, 0.00129, 3) / inch});
  all.push_back({"woodworking magazine on movement, September 2021", "red alder 0.0026, 8 in, 6 %", "movement, in",
                 0.1248, 4, Known::sighted, formulas::wood_movement_mm(8 * inch, 0.0026, 6) / inch});
  all.push_back({"Wood Handbook, dimensional-change example", "white fir 0.00245, 232 mm, 8 to 11 %", "swelling, mm",
                 1.705, 3, Known::from_memory, formulas::wood_movement_mm(232, 0.00245, 3)});
  all.push_back({"movement worked out apart", "beech 0.0043, 80 mm, 4 %", "movement, mm", 1.38, 2, Known::computed,
                 formulas::wood_movement_mm(80, 0.0043, 4)});
}

/// Pounds for an inch of thread.
formulas::WoodScrew an_inch_of(double specific_gravity, double diameter_in) {
  return {specific_gravity, diameter_in * inch, inch, false};
}

void add_withdrawal(std::vector<Figure>& all) {
  // The page drops the fraction of 109.65.
  all.push_back({"engineering reference page on wood screws", "spruce G 0.45, No. 10, 0.190 in",
                 "allowable withdrawal, lb/in", 109, 0, Known::sighted,
                 reference_withdrawal_n(an_inch_of(0.45, 0.190)) / pound, 0.66});
  constexpr std::array<double, 5> sizes{0.138, 0.164, 0.190, 0.216, 0.242};
  struct Row {
    double gravity;
    std::array<double, 5> printed;
  };
  for (const Row& r : {Row{0.55, {119, 141, 164, 186, 209}}, Row{0.50, {98, 117, 135, 154, 172}},
                       Row{0.43, {73, 86, 100, 114, 128}}}) {
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      all.push_back({"National Design Specification, wood screw withdrawal table",
                     "G " + std::to_string(r.gravity) + ", No. " + std::to_string(6 + 2 * i), "withdrawal, lb/in",
                     r.printed[i], 0, Known::from_memory,
                     reference_withdrawal_n(an_inch_of(r.gravity, sizes[i])) / pound});
    }
  }
  // The specification's lag screw values are those of the handbook's 8100 with 1800 in its place.
  constexpr std::array<std::array<double, 2>, 7> lags{
      {{0.25, 225}, {0.3125, 266}, {0.375, 305}, {0.4375, 342}, {0.5, 378}, {0.625, 447}, {0.75, 513}}};
  for (const auto& [diameter, printed] : lags) {
    all.push_back({"National Design Specification, lag screw withdrawal table",
                   "G 0.50, " + std::to_string(diameter) + " in", "withdrawal, lb/in", printed, 0, Known::from_memory,
                   lag_screw_withdrawal_n(an_inch_of(0.50, diameter)) / pound * 1800 / 8100});
  }
  const formulas::WoodScrew unit{1, 1, 1, false};
  all.push_back(
      {"Wood Handbook, wood screws", "metric form", "N", 108.25, 2, Known::from_memory, wood_screw_withdrawal_n(unit)});
  all.push_back(
      {"Wood Handbook, lag screws", "metric form", "N", 125.4, 1, Known::from_memory, lag_screw_withdrawal_n(unit)});
}

void add_bearing(std::vector<Figure>& all) {
  constexpr std::array<std::array<double, 2>, 7> factors{
      {{0.5, 1.75}, {1, 1.38}, {1.5, 1.25}, {2, 1.19}, {3, 1.13}, {4, 1.10}, {6, 1.00}}};
  for (const auto& [length, printed] : factors) {
    // The table rounds 1.094 at 4 in up to 1.10.
    all.push_back({"National Design Specification, bearing area factors", std::to_string(length) + " in", "Cb", printed,
                   2, Known::from_memory, formulas::short_bearing_factor(length * inch), length == 4 ? 0.0065 : 0});
  }
}

}  // namespace

std::vector<Figure> wood_figures() {
  std::vector<Figure> all;
  add_movement(all);
  add_withdrawal(all);
  add_bearing(all);
  return all;
}

}  // namespace visewright::published
