// The bushes that guide the screws in both jaws.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of both: origin on the screw axis, z out, z = 0 at the rear end.

/// From the backing's rear face to the thrust recess. "front bush".
[[nodiscard]] Part front_bush(const layout::Plan&);
/// Through the rear jaw. "rear bush".
[[nodiscard]] Part rear_bush(const layout::Plan&);

}  // namespace visewright::parts
