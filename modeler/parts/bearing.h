// Ball bearings as two rings: the outer stands where the inner turns.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of both: origin on the axis, z out, z = 0 at the rear. Each ring is half of one bought bearing; the catalogue's
// mass, which holds the balls, is shared out by volume.

/// From the bore to the inner ring's land. "bearing 6002, inner ring".
[[nodiscard]] Part inner_ring(const layout::Plan&, const layout::BearingPlan&);
/// From the outer ring's land to the outside. "bearing 6002, outer ring".
[[nodiscard]] Part outer_ring(const layout::Plan&, const layout::BearingPlan&);

}  // namespace visewright::parts
