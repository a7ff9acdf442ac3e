// Beads to weld.
#pragma once

#include <string>
#include <vector>

#include "making/workpiece.h"

namespace visewright::making {

/// Equal beads of a part. The leg is the shorter side of the bead's section, the throat that of a triangle under 45°.
struct WeldItem {
  std::string part;
  std::vector<std::string> joins;  // its members
  int parts = 0, beads = 0;        // how many such parts; beads on each
  double leg_mm = 0, throat_mm = 0, length_mm = 0;
  bool ground_flush = false;
};
[[nodiscard]] std::vector<WeldItem> weld_list(const std::vector<Workpiece>&);

}  // namespace visewright::making
