// The nut block behind the rear jaw: a long nut, half of one, or drilled hexagon bar, welded square to a bar.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Front frame on the screw's axis; the nut's rear end at z = 0, the bar's front face at nut + bar. `side` 0 left, 1 right:
/// they differ where the hands of the threads do.
[[nodiscard]] Part nut_block(const layout::Plan&, std::size_t side);

}  // namespace visewright::parts
