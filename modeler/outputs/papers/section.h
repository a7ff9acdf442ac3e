// Sections through bodies from their own 2-D values, without the kernel.
#pragma once

#include "outputs/papers/region.h"
#include "parts/part.h"

namespace visewright::outputs::papers {

/// What the plane x–y of a frame cuts of a body, in the plane's coordinates; `where` is the frame in which the body's
/// shapes stand, `plane` is given in the same coordinates as `where`. Empty when the plane misses the body or a shape
/// of it stands askew to the plane.
[[nodiscard]] Region section(const parts::Body&, const geometry::Placement& where, const geometry::Placement& plane);

}  // namespace visewright::outputs::papers
