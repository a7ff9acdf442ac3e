// A flat region: what some outlines cover and others take away; its bounds and its hatching, for sections.
#pragma once

#include <vector>

#include "geometry/loop.h"

namespace visewright::outputs::papers {

struct Region {
  std::vector<geometry::Profile> added, removed;
};

/// The stretches of the outlines with the region on one side only; lines and arcs as they are, other curves as chords.
/// In no order, each once.
[[nodiscard]] std::vector<geometry::Edge> bounds(const Region&);

/// Lines across the region, `step_mm` apart, rising at `angle_rad`. Neighbouring regions with other angles or steps are
/// told apart by them.
[[nodiscard]] std::vector<geometry::Line> hatching(const Region&, double step_mm, double angle_rad);

[[nodiscard]] bool inside(const Region&, geometry::Point);

}  // namespace visewright::outputs::papers
