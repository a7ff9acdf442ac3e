// Involute spur gears with outside teeth: one gear, and two of them in mesh. Symbols after ISO 21771:2007.
#pragma once

namespace visewright::formulas {

/// A gear as the basic rack makes it. The tip and the root follow the factors and the shift alone: thinning takes from
/// the flanks only, both alike, so it moves neither. Factors and shift are in modules.
struct SpurGear {
  int teeth = 0;
  double module_mm = 0;
  double pressure_angle_rad = 0;
  double shift = 0;            // positive: away from the axis, thicker teeth
  double thinning_mm = 0;      // what the tooth of this gear gives up on its reference circle, for backlash
  double addendum_factor = 1;  // these three: ISO 53:1998 profile A
  double dedendum_factor = 1.25;
  double tip_radius_factor = 0.38;  // rounding of the rack's tip, which makes the fillet at the tooth root
};

/// d = m z.
[[nodiscard]] double pitch_diameter_mm(const SpurGear&) noexcept;
/// db = d cos a.
[[nodiscard]] double base_diameter_mm(const SpurGear&) noexcept;
/// da = m (z + 2 ha* + 2x).
[[nodiscard]] double tip_diameter_mm(const SpurGear&) noexcept;
/// df = m (z - 2 hf* + 2x).
[[nodiscard]] double root_diameter_mm(const SpurGear&) noexcept;
/// Arc of the tooth on the reference circle: s = m (π/2 + 2x tan a), less the thinning.
[[nodiscard]] double tooth_thickness_mm(const SpurGear&) noexcept;
/// Arc of the tooth on a circle of this diameter: sy = dy (s/d + inv a - inv ay), cos ay = db/dy. Inside the base
/// circle there is no involute and the tooth is taken to be radial, with the angle it has on the base circle.
[[nodiscard]] double thickness_at_mm(const SpurGear&, double diameter_mm) noexcept;
/// Arc of the tooth on its tip circle; zero or less where the flanks meet before it.
[[nodiscard]] double tip_thickness_mm(const SpurGear&) noexcept;

/// Rounding of the rack's tip as it is used: the factor asked for, or the full round between the flanks where that is
/// less, rho = m (π/4 - hf* tan a) / tan(45° - a/2).
[[nodiscard]] double rack_tip_radius_mm(const SpurGear&) noexcept;
/// The least shift, in modules, with which a rack cuts these teeth without cutting into the involute at their foot:
/// x = h - (z/2) sin² a, where h is how deep the rack's flank is straight, hf* - rho* (1 - sin a).
[[nodiscard]] double least_shift_without_undercut(const SpurGear&) noexcept;
/// The number of teeth, as a real number, from which a gear with this shift is free of undercut: z = 2 (h - x)/sin² a.
[[nodiscard]] double least_teeth_without_undercut(const SpurGear&) noexcept;
/// True when the shift is below the least one.
[[nodiscard]] bool undercut(const SpurGear&) noexcept;

/// Span over k teeth, measured with flat jaws: Wk = m cos a (π (k - 0.5) + z inv a) + 2x m sin a, less the thinning
/// times cos a. k is at least 1.
[[nodiscard]] double span_over_teeth_mm(const SpurGear&, int teeth_spanned) noexcept;
/// Teeth to span so that the jaws touch near the middle of the flanks, before rounding to a whole number:
/// k = 0.5 + (z/π) (sqrt((1 + 2x/z)² - cos² a)/cos a - inv a - 2 (x/z) tan a).
[[nodiscard]] double teeth_to_span_exactly(const SpurGear&) noexcept;
/// The same as a whole number: the nearest, the lower of two equally near, at least 2.
[[nodiscard]] int teeth_to_span(const SpurGear&) noexcept;
/// Size over two pins laid into opposite tooth spaces, or the most opposite ones when the count is odd:
/// inv phi = Dp/db + s/d + inv a - π/z; M = db/cos phi + Dp, the first term times cos(90°/z) for odd z. Not a number
/// when the pin is so thin that it drops to the base circle.
[[nodiscard]] double over_pins_mm(const SpurGear&, double pin_diameter_mm) noexcept;

/// Two gears of the same module and pressure angle on axles this far apart.
struct Mesh {
  SpurGear first, second;
  double centre_distance_mm = 0;
};

/// The distance at which the two gears would mesh without play if their teeth were not thinned: from the shifts,
/// inv aw = 2 tan a (x1 + x2)/(z1 + z2) + inv a; a = m (z1 + z2)/2 cos a/cos aw. Exactly m (z1 + z2)/2 when the shifts
/// cancel. Not a number when the shifts are so negative that no such distance exists.
[[nodiscard]] double tight_centre_distance_mm(const SpurGear& first, const SpurGear& second) noexcept;

/// Whether the distance exceeds the sum of the base radii. Closer than that no involutes meet, and the angle, backlash
/// and contact ratio below are not numbers.
[[nodiscard]] bool involutes_meet(const Mesh&) noexcept;
/// cos aw = (db1 + db2)/(2 a).
[[nodiscard]] double operating_pressure_angle_rad(const Mesh&) noexcept;
/// Play along the line of action: m cos a ((z1 + z2) (inv aw - inv a) - 2 (x1 + x2) tan a), and the thinning of both
/// gears times cos a. Negative when the teeth would have to overlap.
[[nodiscard]] double normal_backlash_mm(const Mesh&) noexcept;
/// Play on the reference circle, at the distance as it is: the normal play over cos a. Law: at the tight distance it is
/// the thinning of the two gears together.
[[nodiscard]] double backlash_mm(const Mesh&) noexcept;
/// Teeth in contact on average: (sqrt(ra1² - rb1²) + sqrt(ra2² - rb2²) - a sin aw)/(π m cos a). It takes whole
/// involutes for granted: with undercut teeth or interference the true ratio is lower.
[[nodiscard]] double contact_ratio(const Mesh&) noexcept;
/// The lesser gap from a tip circle to the mate's root circle.
[[nodiscard]] double tip_clearance_mm(const Mesh&) noexcept;
/// Whether both tips stay outside the point where the line of action touches the mate's base circle:
/// ra² ≤ rb² + (a sin aw)². A tip that goes further digs into the mate's foot.
[[nodiscard]] bool free_of_interference(const Mesh&) noexcept;

}  // namespace visewright::formulas
