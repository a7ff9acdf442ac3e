// The front jaw: backing and gear layer glued, bevelled, landing blocks glued back, dog holes.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: the front frame, origin on the screw line amid the jaw, z = 0 at the rear face of the backing. Patterns of
/// the Plan need no shift. Bodies: "front jaw backing", "gear layer", "landing block 1" … "front jaw".
[[nodiscard]] Part front_jaw(const layout::Plan&);

}  // namespace visewright::parts
