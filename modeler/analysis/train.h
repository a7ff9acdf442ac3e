// Meshes as they will stand, and how a finished gear is measured.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

[[nodiscard]] std::vector<GearMeasures> gear_measures(const layout::Plan&);

/// Backlash, contact ratio, tip clearance, undercut, tip thickness and room at the root.
void judge_train(const layout::Plan&, std::vector<reasons::Finding>&);

/// Self-locking, turns and dead turn.
void judge_drive(const layout::Plan&, const DriveFigures&, std::vector<reasons::Finding>&);

}  // namespace visewright::analysis
