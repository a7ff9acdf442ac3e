// The bench that stands already, and the board that is glued behind its apron.
#pragma once

#include <vector>

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of all: the model's, x to the right, y into the bench, z up.

/// The top with its notch and pilot holes. "bench top".
[[nodiscard]] Part bench_top_part(const layout::Plan&);
/// The apron with holes for the screws. "apron". REQUIRES: has_apron.
[[nodiscard]] Part apron(const layout::Plan&);
/// The board behind the apron, glued. "doubler". REQUIRES: has_doubler.
[[nodiscard]] Part doubler(const layout::Plan&);
/// What else is near, each under the name that the design gives it.
[[nodiscard]] std::vector<Part> obstacles(const layout::Plan&);

}  // namespace visewright::parts
