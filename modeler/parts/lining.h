// The linings of both jaws.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of both: the front frame, origin on the screw line amid the jaw, z = 0 at the rear face.

/// On the front jaw's clamping face. "front lining".
[[nodiscard]] Part front_lining(const layout::Plan&);
/// On the rear jaw, over the heads of its screws. "rear lining".
[[nodiscard]] Part rear_lining(const layout::Plan&);

}  // namespace visewright::parts
