// Sizes by which a finished gear is checked, and where the working part of its flank begins. Symbols after
// ISO 21771:2007; the single formulas are in spur_gear.h.
#pragma once

#include "formulas/spur_gear.h"

namespace visewright::formulas {

/// Span over teeth with flat jaws (base tangent length).
struct SpanMeasure {
  int teeth = 0;
  double span_mm = 0;
  double contact_diameter_mm = 0;  // where the jaws touch: sqrt(db² + W²)
  bool on_flanks = false;          // touches between the start of the involute and the tip
};

/// With the best count of teeth, the one that touches nearest to the middle of the flank; of two equally near the
/// lower.
[[nodiscard]] SpanMeasure span_measure(const SpurGear&) noexcept;
/// The same for a given count, at least 2 and fewer than the gear has.
[[nodiscard]] SpanMeasure span_measure(const SpurGear&, int teeth_spanned) noexcept;

/// Size over two pins.
struct PinMeasure {
  double pin_mm = 0;
  double size_mm = 0;              // over both pins
  double contact_diameter_mm = 0;  // where the pins touch the flanks
  bool on_flanks = false;          // touches between the start of the involute and the tip
  bool stands_proud = false;       // the pins stand out beyond the tips, so flat jaws reach them
};

/// The pin that touches the flanks at the circle d + 2xm: cos α' = db/(d + 2xm); phi = tan α' + eta;
/// Dp = db (inv phi + eta), eta = π/z - (s/d + inv α) the half angle of a tooth space on the base circle.
[[nodiscard]] double ideal_pin_mm(const SpurGear&) noexcept;
/// With the ideal pin rounded up to 0.5 mm, a size that drill shanks come in.
[[nodiscard]] PinMeasure pin_measure(const SpurGear&) noexcept;
/// With a pin that is at hand. The size is not a number when the pin drops to the base circle.
[[nodiscard]] PinMeasure pin_measure(const SpurGear&, double pin_mm) noexcept;

/// Thickness as a straight line across the tooth on the reference circle, and how far below the tip that line is.
struct ChordalMeasure {
  double thickness_mm = 0;  // d sin(s/d)
  double height_mm = 0;     // da/2 - (d/2) cos(s/d)
};
[[nodiscard]] ChordalMeasure chordal_measure(const SpurGear&) noexcept;

/// Tip thickness in modules. Under about 0.25 the tip of a printed or sawn tooth crumbles, at 0 it is a point.
[[nodiscard]] double tip_thickness_modules(const SpurGear&) noexcept;

/// Diameter where the involute starts on a tooth that a rack has cut. Without undercut
/// 2 sqrt((d sin α/2 - (h - x) m/sin α)² + (db/2)²), h the straight depth of the rack's flank in modules; with undercut
/// it is where the cut of the rack's rounded tip crosses the involute. Law: between the base and the tip diameter.
[[nodiscard]] double form_diameter_mm(const SpurGear&) noexcept;

/// Diameter on the first gear down to which the tip of the second works: on the line of action,
/// 2 sqrt(rb1² + (a sin aw - sqrt(ra2² - rb2²))²). Where the tip would pass the base circle's touching point the
/// lengths turn negative and the pair interferes: see `flank_room_mm`.
[[nodiscard]] double active_profile_start_mm(const Mesh&) noexcept;

/// How much the involutes of a pair start before they are needed, the lesser of both gears, measured along the line of
/// action. Negative: the tip of one digs into the root of the other.
[[nodiscard]] double flank_room_mm(const Mesh&) noexcept;

/// Backlash to give a printed or sawn pair through thinner teeth, on the reference circle, for both gears together:
/// 0.10 m + 0.15 mm. A rule of practice, not a standard.
[[nodiscard]] double printed_backlash_mm(double module_mm) noexcept;
/// Least normal backlash of machined steel gears in steel housings: ⅔ (0.06 + 0.0005 a + 0.03 m), ISO/TR 10064-2
/// annex A. For wood and print it is a floor.
[[nodiscard]] double machined_backlash_mm(double module_mm, double centre_distance_mm) noexcept;

}  // namespace visewright::formulas
