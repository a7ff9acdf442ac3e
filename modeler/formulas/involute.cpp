#include "formulas/involute.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace visewright::formulas {

double involute(double angle_rad) noexcept { return std::tan(angle_rad) - angle_rad; }

double inverse_involute(double value) noexcept {
  if (!(value >= 0)) return std::numeric_limits<double>::quiet_NaN();
  if (value == 0) return 0;
  // Both bounds lie above the answer: tan a - a ≥ a³/3, and tan a = value + a < value + π/2.
  double angle = std::min(std::cbrt(3 * value), std::atan(value + std::numbers::pi / 2));
  // The steps shrink until rounding alone is left; then one goes upwards or stands still.
  while (true) {
    const double slope = std::tan(angle) * std::tan(angle);
    const double next = angle - (involute(angle) - value) / slope;
    if (!(next < angle)) return angle;
    angle = next;
  }
}

}  // namespace visewright::formulas
