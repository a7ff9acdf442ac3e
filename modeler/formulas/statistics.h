// The few statistics that counting trials needs.
#pragma once

#include <cstddef>
#include <span>

namespace visewright::formulas {

/// Standard normal distribution: ½ erfc(-z/√2). Law: Φ(z) + Φ(-z) = 1.
[[nodiscard]] double normal_cdf(double z) noexcept;

/// Two-sided 95 %: Φ(z) = 0.975.
inline constexpr double z_95 = 1.959963984540054;

struct Interval {
  double low = 0;
  double high = 1;
};

/// Wilson's score interval for a share, from successes out of trials: (p + z²/2n ± z sqrt(p (1 - p)/n + z²/4n²))
/// /(1 + z²/n). Without trials nothing is known: 0 to 1. Laws: holds the share itself; stays within 0 and 1.
[[nodiscard]] Interval wilson_interval(std::size_t successes, std::size_t trials, double z = z_95) noexcept;

/// Quantile of values in rising order, linear between neighbours: at position p (n - 1), counted from 0. 0 ≤ p ≤ 1; not
/// a number for no values.
[[nodiscard]] double quantile(std::span<const double> rising, double p) noexcept;

}  // namespace visewright::formulas
