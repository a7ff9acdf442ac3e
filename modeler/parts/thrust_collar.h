// The collar that carries the thrust: a nut welded to a washer, pinned to the screw, its hexagon in the drive gear.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: origin on the axis, z out, z = 0 where the flange slides on the thrust washer; a corner of the nut on +x.
/// Three alternate flats of the nut, their normals at 90°, 210° and 330°, are ground for the bead; the pin goes through
/// the flats at ±y at mid-height. `side` is 0 for the left screw. Named "thrust collar"; with the side when the hands
/// of thread differ.
[[nodiscard]] Part thrust_collar(const layout::Plan&, std::size_t side);

/// Height of the pin's axis in the collar's frame.
[[nodiscard]] double collar_pin_height_mm(const layout::Plan&);

/// Frame: z along the pin, z = 0 at one end. "collar pin".
[[nodiscard]] Part collar_pin(const layout::Plan&);

/// The washer that stands in the backing's recess. Frame: z out, z = 0 at its rear face. "thrust washer".
[[nodiscard]] Part thrust_washer(const layout::Plan&);

}  // namespace visewright::parts
