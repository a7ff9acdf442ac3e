// A row of meshing gears that links the two screws: sense, ratio, skew, lost motion and the phases of the teeth.
#pragma once

#include <span>
#include <vector>

namespace visewright::formulas {

/// Whether the first and the last gear of a row of `gears` turn the same way. Each mesh turns the sense round, so it is
/// so for odd counts only; with an even count one of the two screws must be of the other hand.
[[nodiscard]] constexpr bool same_sense(int gears) noexcept { return gears % 2 != 0; }

/// Turns of the last gear to one turn of the first, without a sign: z first/z last. What stands between does not count.
[[nodiscard]] constexpr double ratio(int first_teeth, int last_teeth) noexcept {
  return static_cast<double>(first_teeth) / last_teeth;
}

/// How far a nut moves against the other when its gear is put in one tooth off: lead/z.
[[nodiscard]] constexpr double skew_for_one_tooth_mm(double lead_mm, int teeth) noexcept { return lead_mm / teeth; }

/// The finest step in which two jaws can be set parallel: the gear goes on a hexagon six ways and meshes in z ways,
/// which together divide the turn by lcm(z, 6): lead/lcm(z, 6).
[[nodiscard]] double finest_setting_step_mm(double lead_mm, int teeth) noexcept;

/// Angle that the far gear stays behind when the sense of turning changes: the sum of the backlashes of the meshes
/// between, taken on the reference circles, over the far gear's reference radius.
[[nodiscard]] constexpr double dead_turn_rad(double sum_of_backlash_mm, double pitch_diameter_mm) noexcept {
  return 2 * sum_of_backlash_mm / pitch_diameter_mm;
}

/// What a turned angle is along the screw: lead × angle/2π.
[[nodiscard]] double travel_mm(double lead_mm, double angle_rad) noexcept;

/// How the teeth of gears in a straight row stand, the row running along +X from the first: for each the angle of one
/// tooth centre from +X, anticlockwise, 0 or π/z. The first has a tooth on +X. Law: on the line of centres of every
/// mesh a tooth of one gear stands in the middle of a space of the other, for equal, unequal, odd and even counts.
[[nodiscard]] std::vector<double> phases_rad(std::span<const int> teeth);

}  // namespace visewright::formulas
