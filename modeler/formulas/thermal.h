// Growth with temperature, and the play it needs or takes. Rates are per kelvin.
#pragma once

#include <cstdint>

namespace visewright::formulas {

/// L α ΔT.
[[nodiscard]] double thermal_growth_mm(double length_mm, double rate_per_k, double change_k) noexcept;
/// How much more the first of two parts of the same length grows: L (α1 - α2) ΔT, with its sign.
[[nodiscard]] double growth_difference_mm(double length_mm, double first_per_k, double second_per_k,
                                          double change_k) noexcept;

/// How a cover is held on what it covers.
enum class HeldAt : std::uint8_t { middle, end };

/// Play to give a hole or slot at the far end of a part, each way, so that it can grow by the difference and sit where
/// the holes happen to be: held in the middle each end needs half of the difference, held at one end the whole, and the
/// position error on top. The difference may have either sign.
[[nodiscard]] double play_needed_mm(double growth_difference_mm, HeldAt held, double position_error_mm) noexcept;

/// Backlash that a pair loses when the gears grow more than what their axles stand in: 2 tan α a (αg - αw) ΔT, on the
/// reference circle. Negative: the backlash grows.
[[nodiscard]] double backlash_lost_to_growth_mm(double pressure_angle_rad, double centre_distance_mm, double gear_per_k,
                                                double frame_per_k, double change_k) noexcept;
/// The same for any growth of the gears as a fraction, such as swelling with moisture.
[[nodiscard]] double backlash_lost_to_swelling_mm(double pressure_angle_rad, double centre_distance_mm,
                                                  double relative_growth) noexcept;

}  // namespace visewright::formulas
