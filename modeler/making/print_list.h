// What the printer gets told.
#pragma once

#include <string>
#include <vector>

#include "layout/plan.h"
#include "making/workpiece.h"

namespace visewright::making {

/// How gears are printed when nothing else is said: common practice, no source. Teeth carry in their walls.
inline constexpr double line_width_mm = 0.45, skin_mm = 1.2, infill_share = 0.4;
inline constexpr int walls = 6;

struct PrintItem {
  std::string part, material, orientation;  // "rear face down"
  int count = 0;
  double infill = infill_share;
  int wall_lines = walls;
  double hole_allowance_mm = 0;  // what holes are drawn larger in the print files
  std::vector<double> size_mm;   // on the bed, height last
  double mass_kg = 0;            // of one, estimated
};
/// Mass from walls, floor and roof solid and the rest filled to `infill`; a sixth either way is usual.
[[nodiscard]] std::vector<PrintItem> print_list(const std::vector<Workpiece>&, const layout::Plan&);

}  // namespace visewright::making
