#include "geometry/placement.h"

#include <gtest/gtest.h>

#include "shapes.h"

namespace visewright::geometry {
namespace {

using test::Numbers;
using test::pi;

void expect_vector(const Vector& a, const Vector& b, double tolerance = 1e-12) {
  for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(a[i], b[i], tolerance);
}

void expect_same(const Placement& a, const Placement& b) {
  expect_vector(a.origin_mm, b.origin_mm, 1e-10);
  expect_vector(a.x_axis, b.x_axis);
  expect_vector(a.z_axis, b.z_axis);
}

Placement any_placement(Numbers& numbers) {
  const double a = numbers.between(0, 2 * pi), b = numbers.between(0, pi), c = numbers.between(0, 2 * pi);
  const Vector z{std::sin(b) * std::cos(a), std::sin(b) * std::sin(a), std::cos(b)};
  const Vector x{std::cos(b) * std::cos(a), std::cos(b) * std::sin(a), -std::sin(b)};
  const Vector origin{numbers.between(-99, 99), numbers.between(-99, 99), numbers.between(-99, 99)};
  return turned_about_z({origin, x, z}, c);
}

TEST(Placement, FrontFrameOfThisViseStandsAsDrawn) {
  // By hand: x stays x, the frame's y is up, its z points out of the bench (−Y). (1, 2, 3) at out 10 lies at y = −13.
  const Placement front{{5, -10, 7}, {1, 0, 0}, {0, -1, 0}};
  expect_vector(front.y_axis(), {0, 0, 1});
  expect_vector(to_outside(front, {1, 2, 3}), {6, -13, 9});
  expect_vector(to_inside(front, {6, -13, 9}), {1, 2, 3});
}

TEST(Placement, LawsHoldForRandomFrames) {
  Numbers numbers(17);
  for (int i = 0; i < 200; ++i) {
    const Placement p = any_placement(numbers), q = any_placement(numbers), r = any_placement(numbers);
    const Vector v{numbers.between(-9, 9), numbers.between(-9, 9), numbers.between(-9, 9)};
    expect_vector(to_inside(p, to_outside(p, v)), v);
    expect_vector(to_outside(combined(p, q), v), to_outside(p, to_outside(q, v)), 1e-10);
    expect_same(combined(p, inverse(p)), {});
    expect_same(combined(inverse(p), p), {});
    expect_same(combined(combined(p, q), r), combined(p, combined(q, r)));
    // Right-handed, of length one and square.
    EXPECT_NEAR(dot(cross(p.x_axis, p.y_axis()), p.z_axis), 1, 1e-12);
    EXPECT_NEAR(dot(p.x_axis, p.z_axis), 0, 1e-12);
    // Rigid: distances stay.
    const Vector moved_by = plus(to_outside(p, v), times(-1, to_outside(p, {0, 0, 0})));
    EXPECT_NEAR(dot(moved_by, moved_by), dot(v, v), 1e-10);
  }
}

TEST(Placement, TurningAboutZIsAnticlockwiseSeenFromZ) {
  const Placement quarter = turned_about_z({}, pi / 2);
  expect_vector(to_outside(quarter, {1, 0, 0}), {0, 1, 0});
  const Placement front{{0, 0, 0}, {1, 0, 0}, {0, -1, 0}};
  expect_vector(to_outside(turned_about_z(front, pi / 2), {1, 0, 0}), {0, 0, 1});
}

TEST(Placement, ShiftedMovesByOutsideDirections) {
  const Placement front{{5, -10, 7}, {1, 0, 0}, {0, -1, 0}};
  expect_vector(to_outside(shifted(front, {0, -100, 0}), {1, 2, 3}), {6, -113, 9});
}

}  // namespace
}  // namespace visewright::geometry
