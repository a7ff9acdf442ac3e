// Rigid placements in space: proper and right-handed, no mirror and no scale.
#pragma once

#include <array>

#include "geometry/point.h"

namespace visewright::geometry {

using Vector = std::array<double, 3>;

[[nodiscard]] Vector cross(const Vector&, const Vector&);
[[nodiscard]] double dot(const Vector&, const Vector&);
[[nodiscard]] Vector plus(const Vector&, const Vector&);
[[nodiscard]] Vector times(double, const Vector&);

/// Where a frame stands: its origin, and the directions of its x and z axes (of length 1, square to each other).
struct Placement {
  Vector origin_mm{0, 0, 0};
  Vector x_axis{1, 0, 0};
  Vector z_axis{0, 0, 1};

  [[nodiscard]] Vector y_axis() const { return cross(z_axis, x_axis); }
};

/// A point given in the frame, in the coordinates around it.
[[nodiscard]] Vector to_outside(const Placement&, const Vector& inside);
/// The inverse. Law: to_inside(p, to_outside(p, v)) == v to rounding.
[[nodiscard]] Vector to_inside(const Placement&, const Vector& outside);
/// The frame `inner`, given in `outer`, in the coordinates around `outer`.
[[nodiscard]] Placement combined(const Placement& outer, const Placement& inner);
/// Law: combined(p, inverse(p)) is the identity to rounding.
[[nodiscard]] Placement inverse(const Placement&);
/// The frame turned about its own z axis, anticlockwise seen from z.
[[nodiscard]] Placement turned_about_z(const Placement&, double angle_rad);
[[nodiscard]] Placement shifted(const Placement&, const Vector& by_outside);

}  // namespace visewright::geometry
