// Hand force, torque, and what arrives at the jaw.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

/// Force split on two supports; friction in thread and collar; the losses of every mesh between the driven gear and a
/// screw. With a wheel in the middle both screws are driven through half the row.
[[nodiscard]] DriveFigures drive_figures(const layout::Plan&);

/// Bending stress, pull and twist together in one screw, work at `height_mm` above the screw line.
[[nodiscard]] formulas::ScrewStress hold_stress(const DriveFigures&, double clamp_n, double height_mm, double root_mm);

/// Height above the screw line of work held at mid-throat, near the top of the jaw, and between dogs on the bench.
[[nodiscard]] double mid_throat_mm(const layout::Plan&);
[[nodiscard]] double near_top_mm(const layout::Plan&);
[[nodiscard]] double at_dogs_mm(const layout::Plan&);

}  // namespace visewright::analysis
