// Wood: how it moves with moisture and what fasteners and washers can take from it. Forms after the Wood Handbook
// (FPL-GTR-190 and 282, chapters on moisture and on fastenings). Averages of clear wood: a real board differs.
#pragma once

#include <cstdint>

namespace visewright::formulas {

/// Which way the growth rings lie to the size in question.
enum class Rings : std::uint8_t {
  along,   // tangential: the width of a flat-sawn board
  across,  // radial: the width of a quarter-sawn board
  mixed,   // rift-sawn or unknown: the mean of both
};

/// Change of size as a fraction for each percent of moisture, between about 6 and 14 %.
struct MovementRates {
  double radial_per_percent = 0;
  double tangential_per_percent = 0;
};

/// The rate that applies. Law: mixed lies in the middle.
[[nodiscard]] double movement_rate(const MovementRates&, Rings) noexcept;
/// Change of a size for a change of moisture: size × rate × ΔM (Wood Handbook, dimensional-change coefficients). Swells
/// with a rise, shrinks with a fall.
[[nodiscard]] double wood_movement_mm(double size_mm, double rate_per_percent, double moisture_change_percent) noexcept;
/// Fraction lost between the fibre saturation point, taken at 30 %, and a moisture below it, from the whole shrinkage
/// to bone dry: S0 (30 - M)/30 (Wood Handbook). 0 ≤ M ≤ 30, both in percent.
[[nodiscard]] double shrinkage_from_green(double whole_shrinkage, double moisture_percent) noexcept;
/// Along the grain wood hardly moves: this share of the tangential rate is a cautious figure.
inline constexpr double movement_share_along_grain = 0.05;

/// A screw in wood.
struct WoodScrew {
  double specific_gravity = 0;  // oven-dry, as in tables of species at 12 % moisture
  double diameter_mm = 0;       // of the shank
  double thread_mm = 0;         // length of thread in the part that holds the point
  bool end_grain = false;
};

/// Mean pull at failure of a wood screw in side grain: 108.25 G² D L newton (15700 G² D L in pounds and inches); 0 in
/// end grain, where it cannot be counted on.
[[nodiscard]] double wood_screw_withdrawal_n(const WoodScrew&) noexcept;
/// The same for a lag screw: 125.4 G^1.5 D^0.75 L newton (8100 in pounds and inches).
[[nodiscard]] double lag_screw_withdrawal_n(const WoodScrew&) noexcept;
/// Pull to allow on a wood screw for a load of ten years, as building rules have it: 2850 G² D L in pounds and inches,
/// 19.65 in newtons and millimetres (National Design Specification for Wood Construction); 0 in end grain. It is a
/// tenth below a fifth of the mean pull.
[[nodiscard]] double reference_withdrawal_n(const WoodScrew&) noexcept;
/// What the mean pull at failure is divided by for use.
inline constexpr double withdrawal_safety = 5;
/// Pull to allow: a fifth of `wood_screw_withdrawal_n`.
[[nodiscard]] double allowable_withdrawal_n(const WoodScrew&) noexcept;

/// Pressure of a fixture on the face of wood, across its grain: F/(l b).
[[nodiscard]] double bearing_mpa(double force_n, double length_mm, double breadth_mm) noexcept;
/// By how much wood across the grain takes more under a short bearing away from its ends: (l + 9.525)/l, l along the
/// grain, up to 152.4 mm and at least 76 mm from the end; 1 for longer ones (National Design Specification for Wood
/// Construction, bearing area factor Cb). l > 0.
[[nodiscard]] double short_bearing_factor(double length_mm) noexcept;
/// Strength at an angle to the grain, as the Wood Handbook has it: P Q/(P sin² a + Q cos² a), P along and Q across, a
/// from the grain.
[[nodiscard]] double strength_at_angle_mpa(double along_mpa, double across_mpa, double angle_rad) noexcept;

}  // namespace visewright::formulas
