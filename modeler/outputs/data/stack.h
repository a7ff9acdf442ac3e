// What lies where along a screw, at shut.
#pragma once

#include <string>
#include <vector>

#include "assembly/assembly.h"
#include "layout/plan.h"

namespace visewright::outputs::data {

/// One layer, measured out from the face of the rear lining towards the person, mm. `group` says whether it moves with
/// the opening.
struct Layer {
  std::string name;
  double from_out_mm, to_out_mm;
  assembly::Group group;
};

/// From behind the bench outwards, read off the Plan. Layers that lie in one another (washer in backing, gear in gear
/// layer) follow one another by where they begin.
[[nodiscard]] std::vector<Layer> stack(const layout::Plan&);

[[nodiscard]] std::string_view word(assembly::Group);

}  // namespace visewright::outputs::data
