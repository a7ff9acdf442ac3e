// The keeper ring between the screw's shoulder and the bearing's inner ring.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Its front face is relieved so that it meets the inner ring alone. Frame: origin on the axis, z out, z = 0 at the
/// rear. "keeper ring".
[[nodiscard]] Part keeper_ring(const layout::Plan&);

}  // namespace visewright::parts
