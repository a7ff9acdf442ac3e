#include "formulas/statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace visewright::formulas {

double normal_cdf(double z) noexcept { return std::erfc(-z / std::numbers::sqrt2) / 2; }

Interval wilson_interval(std::size_t successes, std::size_t trials, double z) noexcept {
  if (trials == 0) return {};
  const auto n = static_cast<double>(trials);
  const double share = static_cast<double>(successes) / n;
  const double middle = share + z * z / (2 * n);
  const double half = z * std::sqrt(share * (1 - share) / n + z * z / (4 * n * n));
  const double scale = 1 + z * z / n;
  // Rounding may put a bound a hair outside.
  return {std::clamp((middle - half) / scale, 0.0, share), std::clamp((middle + half) / scale, share, 1.0)};
}

double quantile(std::span<const double> rising, double p) noexcept {
  if (rising.empty()) return std::numeric_limits<double>::quiet_NaN();
  const double position = p * static_cast<double>(rising.size() - 1);
  const auto below = static_cast<std::size_t>(position);
  const std::size_t above = std::min(below + 1, rising.size() - 1);
  return std::lerp(rising[below], rising[above], position - static_cast<double>(below));
}

}  // namespace visewright::formulas
