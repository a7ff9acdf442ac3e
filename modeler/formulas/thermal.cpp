#include "formulas/thermal.h"

#include <cmath>

namespace visewright::formulas {

double thermal_growth_mm(double length_mm, double rate_per_k, double change_k) noexcept {
  return length_mm * rate_per_k * change_k;
}

double growth_difference_mm(double length_mm, double first_per_k, double second_per_k, double change_k) noexcept {
  return thermal_growth_mm(length_mm, first_per_k - second_per_k, change_k);
}

double play_needed_mm(double growth_difference_mm, HeldAt held, double position_error_mm) noexcept {
  const double share = held == HeldAt::middle ? 0.5 : 1;
  return share * std::abs(growth_difference_mm) + position_error_mm;
}

double backlash_lost_to_growth_mm(double pressure_angle_rad, double centre_distance_mm, double gear_per_k,
                                  double frame_per_k, double change_k) noexcept {
  return backlash_lost_to_swelling_mm(pressure_angle_rad, centre_distance_mm, (gear_per_k - frame_per_k) * change_k);
}

double backlash_lost_to_swelling_mm(double pressure_angle_rad, double centre_distance_mm,
                                    double relative_growth) noexcept {
  return 2 * std::tan(pressure_angle_rad) * centre_distance_mm * relative_growth;
}

}  // namespace visewright::formulas
