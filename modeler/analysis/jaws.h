// Front and rear jaw as beams on the two screws, and what goes askew.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

[[nodiscard]] JawFigures jaw_figures(const layout::Plan&, const DriveFigures&);
void judge_jaws(const layout::Plan&, const Figures&, std::vector<reasons::Finding>&);

}  // namespace visewright::analysis
