// Screws, and the holes that go with them.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of all screws: origin on the axis under the head, the shank along −z, the head along +z. A wood screw is drawn
// with a flat seat, as with a washer under it: the plain shank through the first part, then the core of its thread as
// wide as the pilot hole.

/// Pilot hole for a wood screw of this diameter: 0.7 of it, to the nearest half millimetre. Common practice, no source.
[[nodiscard]] double pilot_mm(double shank_mm);
/// Hole that the shank slides through: half a millimetre more.
[[nodiscard]] double clearance_mm(double shank_mm);

/// Depths of the pilot holes that stand ready for the screws below, from the face they enter.
[[nodiscard]] double mounting_pilot_mm(const layout::Plan&);
[[nodiscard]] double nut_block_pilot_mm(const layout::Plan&);
[[nodiscard]] double bracket_pilot_mm(const layout::Plan&);
[[nodiscard]] double edge_screw_pilot_mm(const layout::Plan&);

/// Rear jaw to bench; the head in its counterbore. "mounting screw".
[[nodiscard]] Part mounting_screw(const layout::Plan&);
/// Nut block to rear jaw, from the back. "nut block screw".
[[nodiscard]] Part nut_block_screw(const layout::Plan&);
/// Bracket to top and to rear jaw. "bracket screw".
[[nodiscard]] Part bracket_screw(const layout::Plan&);
/// Cover to gear layer. "cover edge screw".
[[nodiscard]] Part edge_screw(const layout::Plan&);
/// Cover to the end of an axle: a machine screw with its washer. "axle screw".
[[nodiscard]] Part axle_screw(const layout::Plan&);

}  // namespace visewright::parts
