#include "formulas/train.h"

#include <numbers>
#include <numeric>

namespace visewright::formulas {

double finest_setting_step_mm(double lead_mm, int teeth) noexcept { return lead_mm / std::lcm(teeth, 6); }

double travel_mm(double lead_mm, double angle_rad) noexcept { return lead_mm * angle_rad / (2 * std::numbers::pi); }

std::vector<double> phases_rad(std::span<const int> teeth) {
  std::vector<double> phases;
  phases.reserve(teeth.size());
  // Whether a space, not a tooth, stands on +X: counted in half pitches, so that no rounding adds up along the row.
  bool space_at_right = false;
  for (std::size_t i = 0; i < teeth.size(); ++i) {
    if (i > 0) {
      // The contact is on the left of this gear, half a turn from +X, which is z half pitches: with an odd count that
      // swaps tooth and space. The mate needs the opposite of what the gear before shows on its right.
      const bool space_at_left = !space_at_right;
      space_at_right = teeth[i] % 2 != 0 ? !space_at_left : space_at_left;
    }
    phases.push_back(space_at_right ? std::numbers::pi / teeth[i] : 0);
  }
  return phases;
}

}  // namespace visewright::formulas
