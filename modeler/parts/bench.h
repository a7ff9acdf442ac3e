// The bench that stands already, and what the vise asks of it.
#pragma once

#include <cstddef>

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// All in the model's own axes: X to the person's right, Y into the bench, Z up, origin on the screw line at the edge.

/// The top, with the notch and the pilot holes of the mounting and bracket screws.
[[nodiscard]] Part bench_top(const layout::Plan&);
/// The apron with a clearance hole for each screw. REQUIRES: plan.bench.has_apron.
[[nodiscard]] Part apron(const layout::Plan&);
/// The board glued behind the apron round the holes; made, not standing. REQUIRES: plan.bench.has_doubler.
[[nodiscard]] Part doubler(const layout::Plan&);
[[nodiscard]] Part obstacle(const layout::Plan&, std::size_t index);

/// How far a mounting screw reaches into the top, mm.
[[nodiscard]] double mounting_screw_depth(const layout::Plan&);
/// How far a bracket's upper screw reaches into the top, mm.
[[nodiscard]] double bracket_top_screw_depth(const layout::Plan&);

}  // namespace visewright::parts
