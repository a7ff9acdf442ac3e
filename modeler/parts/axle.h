// The idlers' axles and spacers.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of all: origin on the axis, z out, z = 0 at the rear end.

/// From the floor of its hole in the backing to just behind the cover, its front end tapped for the cover. "axle".
[[nodiscard]] Part axle(const layout::Plan&);
/// Between backing and bearing. "spacer, rear".
[[nodiscard]] Part rear_spacer(const layout::Plan&);
/// Between bearing and cover. "spacer, front".
[[nodiscard]] Part front_spacer(const layout::Plan&);

}  // namespace visewright::parts
