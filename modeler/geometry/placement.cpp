#include "geometry/placement.h"

namespace visewright::geometry {
namespace {

Vector turned_outside(const Placement& p, const Vector& v) {
  return plus(plus(times(v[0], p.x_axis), times(v[1], p.y_axis())), times(v[2], p.z_axis));
}

Vector turned_inside(const Placement& p, const Vector& v) {
  return {dot(p.x_axis, v), dot(p.y_axis(), v), dot(p.z_axis, v)};
}

}  // namespace

Vector cross(const Vector& a, const Vector& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

double dot(const Vector& a, const Vector& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

Vector plus(const Vector& a, const Vector& b) { return {a[0] + b[0], a[1] + b[1], a[2] + b[2]}; }

Vector times(double k, const Vector& a) { return {k * a[0], k * a[1], k * a[2]}; }

Vector to_outside(const Placement& p, const Vector& inside) { return plus(p.origin_mm, turned_outside(p, inside)); }

Vector to_inside(const Placement& p, const Vector& outside) {
  return turned_inside(p, plus(outside, times(-1, p.origin_mm)));
}

Placement combined(const Placement& outer, const Placement& inner) {
  return {to_outside(outer, inner.origin_mm), turned_outside(outer, inner.x_axis), turned_outside(outer, inner.z_axis)};
}

Placement inverse(const Placement& p) {
  return {to_inside(p, {0, 0, 0}), turned_inside(p, {1, 0, 0}), turned_inside(p, {0, 0, 1})};
}

Placement turned_about_z(const Placement& p, double angle_rad) {
  const Vector x = plus(times(std::cos(angle_rad), p.x_axis), times(std::sin(angle_rad), p.y_axis()));
  return {p.origin_mm, x, p.z_axis};
}

Placement shifted(const Placement& p, const Vector& by_outside) {
  return {plus(p.origin_mm, by_outside), p.x_axis, p.z_axis};
}

}  // namespace visewright::geometry
