// The angle brackets that hang the rear jaw from the bench top: two plates welded to an L.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Front frame, x from the bracket's middle; rear end of the top leg at z = 0, the face on the jaw at z = top leg; y from
/// the screw line, so that the top of the bracket lies under the bench top.
[[nodiscard]] Part bracket(const layout::Plan&);

/// Where the top leg's screw goes, as z of that frame.
[[nodiscard]] double bracket_top_screw_z(const layout::Plan&);

}  // namespace visewright::parts
