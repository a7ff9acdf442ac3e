// Two meshing gears turned through one pitch at a centre distance: what is left between their flanks.
#pragma once

#include "geometry/loop.h"

namespace visewright::fitup {

/// A gear about its own centre: a tooth centre of the outline stands on +x when `turn_rad` is 0.
struct MeshGear {
  const geometry::Loop* outline;
  int teeth;
  double turn_rad;
  double base_radius_mm;
  double reference_radius_mm;
};

/// `left_mm`, `right_mm`: least gap square to the flanks when each gear stands in its own phase, on either side of the
/// second gear's teeth; negative: the flanks bite. `normal_backlash_mm`: least sum of both at any position, `backlash_mm`
/// the same as play on the reference circle. `bite_mm`: deepest overlap of the two, tips in roots among them; 0 when there is none.
struct MeshTurn {
  double left_mm, right_mm, normal_backlash_mm, backlash_mm, bite_mm;
  double at_turn_rad;  // how far the first gear had turned where the smaller gap was least
  [[nodiscard]] double least_mm() const;  // the smaller of both gaps; less when a tip bites deeper
};

/// The gap square to two involute flanks is the angle that one gear may turn until they touch, times its base radius
/// (ISO 21771:2007, relation of normal backlash and angular play): worked out on the points of the first gear, against
/// the flanks of one tooth of the second. Known to twice `error_mm`.
/// REQUIRES: the second gear stands at (centre_distance, 0) from the first; neighbours turn opposite ways.
[[nodiscard]] MeshTurn through_one_pitch(const MeshGear& first, const MeshGear& second, double centre_distance_mm, int steps, double error_mm);

}  // namespace visewright::fitup
