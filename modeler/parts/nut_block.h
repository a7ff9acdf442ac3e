// The fixed nuts: a long nut, half of one, or hexagon bar, welded square to a bar that is bolted to the rear jaw.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: origin on the screw axis, z out, z = 0 at the rear end of the nut; the bar's front face, against the jaw, at
/// length of the nut + thickness of the bar. Bodies: "nut bar", "rear nut", "bead 1" … "nut block"; with the side when
/// the hands of thread differ. `side` is 0 for the left screw.
[[nodiscard]] Part nut_block(const layout::Plan&, std::size_t side);

}  // namespace visewright::parts
