// How far the jaw hangs, leans and gapes.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

[[nodiscard]] DroopFigures droop_figures(const layout::Plan&, const DriveFigures&, double moving_mass_kg);

/// Droop against a hundredth of the opening; a person leaning; the top edge against the toe-in.
void judge_droop(const layout::Plan&, const Figures&, std::vector<reasons::Finding>&);

}  // namespace visewright::analysis
