// The rear jaw: a panel core with a hardwood cap glued on top.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Front frame, rear face at z = 0. Bores for the bushes right through, counterbored holes for the mounting screws from
/// the front, and pilot holes from the back for the screws of nut blocks and brackets.
[[nodiscard]] Part rear_jaw(const layout::Plan&);

/// Where the screws of the nut blocks and brackets enter the back of the jaw, front frame.
[[nodiscard]] std::vector<geometry::Point> nut_block_screws(const layout::Plan&);
[[nodiscard]] std::vector<geometry::Point> bracket_screws(const layout::Plan&);
/// How far those screws reach into the jaw, mm.
[[nodiscard]] double nut_block_screw_depth(const layout::Plan&);
[[nodiscard]] double bracket_screw_depth(const layout::Plan&);

}  // namespace visewright::parts
