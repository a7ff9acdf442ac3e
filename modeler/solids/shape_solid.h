// The simple bodies of parts/shape.h as kernel solids, one function a kind.
#pragma once

#include <string_view>

#include "base/fault.h"
#include "kernel/solid.h"
#include "parts/shape.h"

namespace visewright::solids {

/// `reach_mm` bounds how far a half space must extend to cover the part.
[[nodiscard]] base::Result<kernel::Solid> solid(const parts::Prism&, double reach_mm, std::string_view label);
[[nodiscard]] base::Result<kernel::Solid> solid(const parts::Revolved&, double reach_mm, std::string_view label);
[[nodiscard]] base::Result<kernel::Solid> solid(const parts::HalfSpace&, double reach_mm, std::string_view label);
[[nodiscard]] base::Result<kernel::Solid> solid(const parts::Shape&, double reach_mm, std::string_view label);

}  // namespace visewright::solids
