// The shaft of a wheel in the middle.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// A piece of the screws' rod with a journal at both ends. Frame: origin on the axis at the rear end, z out. "centre
/// shaft".
[[nodiscard]] Part centre_shaft(const layout::Plan&);

}  // namespace visewright::parts
