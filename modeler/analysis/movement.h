// What heat and moisture do to gaps and play.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

[[nodiscard]] MovementFigures movement_figures(const layout::Plan&);
void judge_movement(const layout::Plan&, const Figures&, std::vector<reasons::Finding>&);

}  // namespace visewright::analysis
