// The outline of a spur gear as the basic rack generates it.
#pragma once

#include "base/fault.h"
#include "geometry/loop.h"

namespace visewright::layout {

/// Sizes of a gear and of the rack that cuts it: ISO 53:1998 profile A unless said otherwise. Angles in radians.
struct GearShape {
  int teeth = 0;
  double module_mm = 0, pressure_angle_rad = 0, shift = 0;
  double thinning_mm = 0;  // of this gear's tooth on the reference circle
  double addendum = 1.0, dedendum = 1.25, tip_rounding = 0.38;  // factors of the module
};

/// One tooth centre stands on the +x axis. Involute flanks, root fillets as the rounded tip of the rack generates them
/// (with undercut where the rack undercuts), root and tip arcs. Faults: teeth that run to a point, fillets that meet.
/// Sources: ISO 21771:2007 for the flanks, ISO 53:1998 for the rack.
[[nodiscard]] base::Result<geometry::Loop> gear_outline(const GearShape&);

}  // namespace visewright::layout
