// The linings of both jaws.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Front frame, rear face at z = 0: the whole face of the front jaw, a hole round each screw.
[[nodiscard]] Part front_lining(const layout::Plan&);
/// As the front lining, in the outline of the rear jaw.
[[nodiscard]] Part rear_lining(const layout::Plan&);

}  // namespace visewright::parts
