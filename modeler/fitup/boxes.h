// Upright boxes of placed bodies: the first, cheap answer to "can these two be near each other?".
#pragma once

#include "geometry/placement.h"
#include "kernel/solid.h"

namespace visewright::fitup {

/// The upright box around a body's own box at a placement; never smaller than the body's true box there.
[[nodiscard]] kernel::Box3 placed_box(const kernel::Box3& own, const geometry::Placement& at);

/// Distance between two boxes; 0 when they overlap or touch.
[[nodiscard]] double gap_mm(const kernel::Box3& a, const kernel::Box3& b);

}  // namespace visewright::fitup
