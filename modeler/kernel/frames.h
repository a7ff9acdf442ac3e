// Placements and points in the kernel's own types. Private to this folder.
#pragma once

#include <cmath>
#include <gp_Ax3.hxx>
#include <gp_Trsf.hxx>

#include "geometry/placement.h"

namespace visewright::kernel {

[[nodiscard]] inline gp_Pnt point_of(const geometry::Vector& v) { return {v[0], v[1], v[2]}; }
[[nodiscard]] inline gp_Dir direction_of(const geometry::Vector& v) { return {v[0], v[1], v[2]}; }

[[nodiscard]] inline gp_Ax3 axes_of(const geometry::Placement& p) {
  return {point_of(p.origin_mm), direction_of(p.z_axis), direction_of(p.x_axis)};
}

/// Whether the axes have length 1 and stand square, to rounding.
[[nodiscard]] inline bool square(const geometry::Placement& p) {
  const auto near = [](double value, double wanted) { return std::abs(value - wanted) < 1e-9; };
  return near(geometry::dot(p.x_axis, p.x_axis), 1) && near(geometry::dot(p.z_axis, p.z_axis), 1) &&
         near(geometry::dot(p.x_axis, p.z_axis), 0);
}

/// Carries what stands in the world's frame into the placement.
[[nodiscard]] inline gp_Trsf motion_to(const geometry::Placement& p) {
  gp_Trsf motion;
  motion.SetTransformation(axes_of(p), gp_Ax3());
  return motion;
}

}  // namespace visewright::kernel
