// The gap between outlines in the plane, and between upright boxes.
#include <cmath>

#include "fitup/boxes.h"
#include "fitup/mesh_gap.h"
#include "layout/gear_outline.h"
#include "units/quantity.h"

namespace visewright::fitup {
namespace {

using geometry::Loop;
using units::pi;

constexpr double angle = 20 * pi / 180;

// Expected: by hand, distance of the centres less both radii.
TEST(MeshGap, Circles) {
  const Loop big = geometry::circle({0, 0}, 10), little = geometry::circle({0, 0}, 5);
  EXPECT_NEAR(mesh_gap_mm({&big, 0, {3, 4}}, {&little, 0.7, {3 + 12.6, 4 + 9.45}}, 1e-4), 15.75 - 15, 2e-4);
  EXPECT_NEAR(mesh_gap_mm({&big, 0, {0, 0}}, {&little, 0, {14.5, 0}}, 1e-4), -0.5, 0.05);
}

// Expected: by hand. Flats of 20 mm that face each other stand 10 mm from the centres; corners at 20/√3.
TEST(MeshGap, Hexagons) {
  const Loop hexagon = geometry::hexagon({0, 0}, 20, 0);
  EXPECT_NEAR(mesh_gap_mm({&hexagon, pi / 6, {0, 0}}, {&hexagon, pi / 6, {20.4, 0}}, 1e-4), 0.4, 1e-9);
  const double corner = 20 / std::sqrt(3.0);
  EXPECT_NEAR(mesh_gap_mm({&hexagon, 0, {0, 0}}, {&hexagon, 0, {2 * corner + 0.3, 0}}, 1e-4), 0.3, 1e-9);
  EXPECT_NEAR(mesh_gap_mm({&hexagon, pi / 6, {0, 0}}, {&hexagon, 0, {10 + corner - 0.25, 0}}, 1e-4), -0.25, 1e-9);
}

double involute(double a) { return std::tan(a) - a; }

/// Half of the normal backlash of two equal gears without shift, at any centre distance. ISO 21771: cos a_w = d cos a/a_w,
/// j_bn = cos a · (m·2z (inv a_w − inv a) + thinning of both). In the middle of its play each flank has half of it.
double half_normal_backlash(double module, int teeth, double thinning_total, double centre_distance) {
  const double operating = std::acos(module * teeth * std::cos(angle) / centre_distance);
  return std::cos(angle) * (2 * module * teeth * (involute(operating) - involute(angle)) + thinning_total) / 2;
}

double pair_gap(double module, int teeth, double thinning_total, double centre_distance) {
  layout::GearShape shape;
  shape.teeth = teeth;
  shape.module_mm = module;
  shape.pressure_angle_rad = angle;
  shape.thinning_mm = thinning_total / 2;
  const Loop outline = layout::gear_outline(shape).value();
  // A tooth of the left gear looks at the right one, where a space must look back.
  return mesh_gap_mm({&outline, 0, {0, 0}}, {&outline, pi + pi / teeth, {centre_distance, 0}}, 1e-4);
}

// Expected: 0.45 · cos 20°/2 = 0.21143 and 0.35 · cos 20°/2 = 0.16445 at the reference distance (ISO 21771).
TEST(MeshGap, GearsAtTheReferenceDistance) {
  EXPECT_NEAR(pair_gap(3, 30, 0.45, 90), 0.21143, 0.002);
  EXPECT_NEAR(pair_gap(2, 40, 0.35, 80), 0.16445, 0.002);
}

// Expected: ISO 21771 as above. 0.3 mm closer eats about 0.3 sin 20° = 0.103 of each flank's gap and leaves play. With
// 0.05 mm of backlash, 0.15 mm closer eats 0.051 of 0.023, and the flanks cross; the tips still pass the fillets.
TEST(MeshGap, GearsPushedTogetherLosePlayAndThenBite) {
  EXPECT_NEAR(pair_gap(3, 30, 0.45, 89.7), half_normal_backlash(3, 30, 0.45, 89.7), 0.002);
  EXPECT_NEAR(half_normal_backlash(3, 30, 0.45, 89.7), 0.109, 0.004);
  const double bite = half_normal_backlash(3, 30, 0.05, 89.85);
  EXPECT_LT(bite, -0.01);
  EXPECT_NEAR(pair_gap(3, 30, 0.05, 89.85), bite, 0.004);
}

// Expected: by hand. 3-4-12 makes 13; a shared corner and an overlap are 0.
TEST(Boxes, Gap) {
  const kernel::Box3 unit{{0, 0, 0}, {1, 1, 1}};
  EXPECT_NEAR(gap_mm(unit, {{4, 5, 13}, {6, 6, 14}}), 13, 1e-12);
  EXPECT_NEAR(gap_mm({{4, 5, 13}, {6, 6, 14}}, unit), 13, 1e-12);
  EXPECT_NEAR(gap_mm(unit, {{-3, 0.2, 0.2}, {-2.5, 0.8, 0.8}}), 2.5, 1e-12);
  EXPECT_EQ(gap_mm(unit, {{1, 1, 1}, {2, 2, 2}}), 0);
  EXPECT_EQ(gap_mm(unit, {{0.5, 0.5, 0.5}, {2, 2, 2}}), 0);
}

// Expected: by hand. z to the front sends (x, y, z) to (x, −z, y); a square turned by 45° is √2 as wide.
TEST(Boxes, Placed) {
  const kernel::Box3 own{{-1, -2, 0}, {1, 2, 5}};
  const kernel::Box3 front = placed_box(own, {{10, -3, 0}, {1, 0, 0}, {0, -1, 0}});
  const kernel::Box3 want{{9, -8, -2}, {11, -3, 2}};
  const double half = std::sqrt(0.5);
  const kernel::Box3 turned = placed_box({{-1, -1, 0}, {1, 1, 2}}, {{0, 0, 0}, {half, half, 0}, {0, 0, 1}});
  const kernel::Box3 wide{{-2 * half, -2 * half, 0}, {2 * half, 2 * half, 2}};
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(front.low[i], want.low[i], 1e-12);
    EXPECT_NEAR(front.high[i], want.high[i], 1e-12);
    EXPECT_NEAR(turned.low[i], wide.low[i], 1e-12);
    EXPECT_NEAR(turned.high[i], wide.high[i], 1e-12);
  }
}

}  // namespace
}  // namespace visewright::fitup
