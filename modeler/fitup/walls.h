// What is left of a part between the hollows that its operations make, and to its faces.
#pragma once

#include <string>
#include <vector>

#include "assembly/assembly.h"
#include "layout/plan.h"
#include "parts/part.h"
#include "reasons/finding.h"

namespace visewright::fitup {

/// A wall: between the hollows of two operations, or from one to a face of the part ("" for the second).
struct Wall {
  const reasons::Rule* rule = nullptr;
  std::string first, second;  // names of the operations; of the face: "top", "bottom", "left", "right", "front", "back", "bevel"
  double left_mm = 0;         // least material; 0: they break into each other
  double hole_mm = 0;         // diameter of the hole, for walls beside screws and dogs
  geometry::Vector at{};      // in the part's frame
};

/// All walls of a part, read from its stock and operations as its members stand, nearest first. Looks no further than
/// `within_mm`. Hollows that meet along one direction (a recess over its bore, pockets in a row, a hole that opens into a
/// pocket's floor) are meant to; hollows from different faces are not.
[[nodiscard]] std::vector<Wall> walls(const parts::Part&, const layout::Plan&, double within_mm);

/// For front jaw, rear jaw and cover: the least wall of each kind, and every one that is too thin. Walls beside screws
/// are judged in diameters of the hole, others against the web of the Plan.
[[nodiscard]] std::vector<reasons::Finding> wall_findings(const layout::Plan&, const assembly::Assembly&);

}  // namespace visewright::fitup
