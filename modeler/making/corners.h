// Inside corners: a round cutter leaves its own radius in them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "making/tools.h"

namespace visewright::making {

/// The smallest radius that the cut leaves in the material's inside corners, mm; 0 for a sharp one, absent when there
/// is no inside corner at all. For a recess or an opening the tool runs inside the outline, for a part cut out of a
/// sheet outside it. `within`: the tool runs inside.
[[nodiscard]] std::optional<double> smallest_inside_radius_mm(const geometry::Profile&, bool within);

/// A routed outline with an inside corner.
struct Corner {
  std::string part, operation;
  double radius_mm = 0;         // of the corner
  double cutter_radius_mm = 0;  // of the smallest cutter that the choice of tools allows
  bool reached = true;
};
/// All outlines cut by a router. A given cutter of the design goes before the tools owned.
[[nodiscard]] std::vector<Corner> corners(const std::vector<Workpiece>&, const layout::Plan&, const OwnedTools&,
                                          const standards::Catalogue&);

}  // namespace visewright::making
