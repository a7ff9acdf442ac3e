// Gears for holes that came out wrong: profile shifts that give every mesh its play back at the distance it really has.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "formulas/spur_gear.h"

namespace visewright::formulas {

/// What stands in the way of one gear of the row.
struct GearRoom {
  double pocket_radius_mm = 0;         // as it is drilled
  double flange_recess_radius_mm = 0;  // in the gear's rear face; 0 when it has none
};

struct RescueLimits {
  double tip_thickness_factor = 0.25;   // least arc at the tip, in modules; 0.4 for printed gears
  double contact_ratio = 1.1;           // least
  double tip_clearance_factor = 0.125;  // least gap from tip to the mate's root, in modules
  double rim_factor = 1.5;              // least wall between root and flange recess, in modules
  double gear_to_wood_mm = 0;           // least gap from tip to pocket
};

struct RescueInput {
  std::vector<SpurGear> gears;       // as designed, left to right, with the thinning they keep
  std::vector<GearRoom> room;        // one a gear
  std::vector<double> distances_mm;  // as measured, one fewer than gears
  std::vector<double> backlash_mm;   // wanted on the reference circle, one a mesh
  RescueLimits limits;
};

/// What stops a rescue. The first four are of a gear, the rest of the mesh that a gear makes with the next one.
enum class RescueLimit : std::uint8_t { undercut, tip_thickness, pocket, rim, contact_ratio, tip_clearance, too_close };

/// A hole that no choice of shifts makes good.
struct Beyond {
  std::size_t gear = 0;  // for a mesh: its left gear
  RescueLimit why = RescueLimit::undercut;
  /// For a gear: how far its flanks would have to move past the limit, in mm of shift. For a mesh: how far the axles
  /// are too far apart, the tips lack clearance, or the axles are nearer than the base circles allow.
  double by_mm = 0;
};

struct Rescue {
  std::vector<double> shifts;  // in modules, whole, not as changes; empty when an involute cannot reach (too_close)
  double largest_change = 0;   // of a shift, in modules
  std::vector<Beyond> beyond;  // in the order of the row; empty when all is well
};

/// Sums of shifts follow from the distances, exactly: x1 + x2 = (m (z1 + z2)(inv aw - inv a) + thinning - backlash)/
/// (2 m tan a), with the real aw. n - 1 such sums leave n shifts one free number, which alternates in sign along the
/// row. It is chosen so that the largest change of any shift is least, then moved as little as the limits ask; when no
/// value meets them all, it is the one with the least trespass, and `beyond` says where. A gear that breaks a limit as
/// designed is held to what it has, not to the limit. Three limits of a mesh hardly depend on the free number.
/// Laws: each mesh has its backlash again; distances and backlash as designed change nothing; a mirrored row gets
/// mirrored shifts.
[[nodiscard]] Rescue rescue(const RescueInput&);

}  // namespace visewright::formulas
