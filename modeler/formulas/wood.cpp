#include "formulas/wood.h"

#include <cmath>
#include <numeric>

namespace visewright::formulas {
namespace {

constexpr double inch_mm = 25.4;
constexpr double pound_n = 4.4482216152605;
/// From pounds for inches of diameter and of length to newtons for millimetres of both.
constexpr double from_inches = pound_n / (inch_mm * inch_mm);

double wood_screw_pull_n(const WoodScrew& screw, double pounds) {
  if (screw.end_grain) return 0;
  return pounds * from_inches * screw.specific_gravity * screw.specific_gravity * screw.diameter_mm * screw.thread_mm;
}

}  // namespace

double movement_rate(const MovementRates& rates, Rings rings) noexcept {
  switch (rings) {
    case Rings::along: return rates.tangential_per_percent;
    case Rings::across: return rates.radial_per_percent;
    case Rings::mixed: break;
  }
  return std::midpoint(rates.radial_per_percent, rates.tangential_per_percent);
}

double wood_movement_mm(double size_mm, double rate_per_percent, double moisture_change_percent) noexcept {
  return size_mm * rate_per_percent * moisture_change_percent;
}

double shrinkage_from_green(double whole_shrinkage, double moisture_percent) noexcept {
  constexpr double saturation_percent = 30;
  return whole_shrinkage * (saturation_percent - moisture_percent) / saturation_percent;
}

double wood_screw_withdrawal_n(const WoodScrew& screw) noexcept { return wood_screw_pull_n(screw, 15700); }

double lag_screw_withdrawal_n(const WoodScrew& screw) noexcept {
  if (screw.end_grain) return 0;
  return 8100 * pound_n * std::pow(screw.specific_gravity, 1.5) * std::pow(screw.diameter_mm / inch_mm, 0.75) *
         screw.thread_mm / inch_mm;
}

double reference_withdrawal_n(const WoodScrew& screw) noexcept { return wood_screw_pull_n(screw, 2850); }

double allowable_withdrawal_n(const WoodScrew& screw) noexcept {
  return wood_screw_withdrawal_n(screw) / withdrawal_safety;
}

double bearing_mpa(double force_n, double length_mm, double breadth_mm) noexcept {
  return force_n / (length_mm * breadth_mm);
}

double short_bearing_factor(double length_mm) noexcept {
  constexpr double longest_short_mm = 6 * inch_mm;
  return length_mm < longest_short_mm ? (length_mm + 0.375 * inch_mm) / length_mm : 1;
}

double strength_at_angle_mpa(double along_mpa, double across_mpa, double angle_rad) noexcept {
  const double sine = std::sin(angle_rad);
  const double cosine = std::cos(angle_rad);
  return along_mpa * across_mpa / (along_mpa * sine * sine + across_mpa * cosine * cosine);
}

}  // namespace visewright::formulas
