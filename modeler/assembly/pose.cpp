// Where a placed part stands at a pose, and the words for fits.
#include <cmath>
#include <variant>

#include "assembly/assembly.h"

namespace visewright::assembly {
namespace {

using geometry::Vector;

constexpr Vector out_of_bench{0, -1, 0};

/// A vector turned about the out axis, anticlockwise as the person sees it.
Vector turned(const Vector& v, double angle_rad) {
  const Vector along = geometry::times(geometry::dot(v, out_of_bench), out_of_bench);
  const Vector square = geometry::plus(v, geometry::times(-1, along));
  return geometry::plus(along, geometry::plus(geometry::times(std::cos(angle_rad), square),
                                              geometry::times(std::sin(angle_rad), geometry::cross(out_of_bench, square))));
}

}  // namespace

geometry::Placement at(const Placed& placed, const Pose& pose) {
  geometry::Placement where = pose.grip_out && placed.grip_out ? *placed.grip_out : placed.shut;
  if (placed.group == Group::fixed) return where;
  if (placed.group == Group::turning) {
    const double angle = placed.turn_rad_per_mm * pose.opening_mm;
    const Vector arm = geometry::plus(where.origin_mm, geometry::times(-1, placed.turn_about_mm));
    where.origin_mm = geometry::plus(placed.turn_about_mm, turned(arm, angle));
    where.x_axis = turned(where.x_axis, angle);
    where.z_axis = turned(where.z_axis, angle);
  }
  return geometry::shifted(where, geometry::times(pose.opening_mm, out_of_bench));
}

std::string_view word(const Fit& fit) {
  static constexpr std::string_view words[] = {"clear", "sliding", "press", "threaded", "meshing", "touching", "bonded"};
  return words[fit.index()];
}

}  // namespace visewright::assembly
