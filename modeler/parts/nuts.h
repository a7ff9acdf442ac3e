// Nuts of both kinds, bought or made from hexagon bar, and the beads on their flats.
#pragma once

#include <array>

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// A nut of the given length for the screw's thread, or a piece of hexagon bar drilled and tapped for it. Frame: z = 0
/// at one end, a corner on +x. The bore has the thread's major diameter.
[[nodiscard]] Part nut(std::string name, const layout::Plan&, const standards::NutRow&, double across_flats_mm,
                       double length_mm, int share_of, std::vector<Operation> work);

/// Directions of the flats that carry a bead, from +x.
[[nodiscard]] std::array<double, 3> beaded_flats_rad();
/// A frame at a flat of a nut: origin on the axis at height z = 0, x out of the flat, y along the nut's axis. Profiles
/// of beads are given in it, and drawn out along the flat.
[[nodiscard]] geometry::Placement across_flat(double flat_rad);
/// A plane in a flat, its z out of the nut and its y along the nut's axis.
[[nodiscard]] geometry::Placement in_flat(double flat_rad, double across_flats_mm);
/// Length of a flat from corner to corner.
[[nodiscard]] double flat_length_mm(double across_flats_mm);

}  // namespace visewright::parts
