// The gap between two meshing outlines, in the plane.
#pragma once

#include "geometry/loop.h"

namespace visewright::fitup {

/// A gear's outline, turned by `turn_rad` about its own axis and set at `centre`.
struct Standing {
  const geometry::Loop* outline;
  double turn_rad;
  geometry::Point centre;
};

/// The least distance between two outlines near their line of centres, mm; negative when one bites into the other, and
/// then the deepest sample inside. Known to `error_mm`.
[[nodiscard]] double mesh_gap_mm(const Standing& a, const Standing& b, double error_mm);

}  // namespace visewright::fitup
