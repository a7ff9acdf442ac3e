// Gears turned through a pitch, against the formulas for involutes.
#include <gtest/gtest.h>

#include <cmath>

#include "fitup/mesh_turn.h"
#include "layout/gear_outline.h"
#include "units/quantity.h"

namespace visewright::fitup {
namespace {

using units::pi;

constexpr double angle = 20 * pi / 180;

double involute(double a) { return std::tan(a) - a; }

struct Pair {
  double module;
  int z1, z2;
  double x1, x2, thinning_total, centre_distance;
};

/// Normal backlash at any centre distance. ISO 21771: cos a_w = (r1 + r2) cos a/a_w, and
/// j_bn = cos a · (m (z1 + z2)(inv a_w − inv a) − 2 m (x1 + x2) tan a + thinning of both).
double normal_backlash(const Pair& p) {
  const double teeth = p.z1 + p.z2;
  const double operating = std::acos(p.module * teeth / 2 * std::cos(angle) / p.centre_distance);
  return std::cos(angle) * (p.module * teeth * (involute(operating) - involute(angle)) - 2 * p.module * (p.x1 + p.x2) * std::tan(angle) + p.thinning_total);
}

MeshTurn turned(const Pair& p) {
  layout::GearShape shape;
  shape.module_mm = p.module;
  shape.pressure_angle_rad = angle;
  shape.thinning_mm = p.thinning_total / 2;
  shape.teeth = p.z1;
  shape.shift = p.x1;
  const geometry::Loop one = layout::gear_outline(shape).value();
  shape.teeth = p.z2;
  shape.shift = p.x2;
  const geometry::Loop two = layout::gear_outline(shape).value();
  const double r1 = p.module * p.z1 / 2, r2 = p.module * p.z2 / 2;
  // A tooth of the left gear looks at the right one, where a space must look back.
  return through_one_pitch({&one, p.z1, 0, r1 * std::cos(angle), r1}, {&two, p.z2, pi + pi / p.z2, r2 * std::cos(angle), r2}, p.centre_distance, 24, 2e-4);
}

// Expected: ISO 21771 as above, to two micrometres: equal, unequal and odd counts, shifted gears, spread centres.
TEST(MeshTurn, BacklashAgreesWithTheFormula) {
  for (const Pair& p : {Pair{3, 30, 30, 0, 0, 0.45, 90}, Pair{2, 40, 40, 0, 0, 0.35, 80}, Pair{3, 28, 28, 0, 0, 0.45, 84.2}, Pair{3, 25, 37, 0, 0, 0.3, 93},
                        Pair{2.5, 31, 45, 0, 0, 0.4, 95.1}, Pair{3, 21, 34, 0.3, 0.2, 0.45, 84}, Pair{3, 30, 30, 0, 0, 0.45, 89.7}}) {
    const double expected = normal_backlash(p);
    const MeshTurn found = turned(p);
    EXPECT_NEAR(found.normal_backlash_mm, expected, 2e-3) << p.z1 << " and " << p.z2;
    EXPECT_NEAR(found.backlash_mm, expected / std::cos(angle), 2e-3);
    EXPECT_NEAR(found.left_mm, expected / 2, 2e-3);
    EXPECT_NEAR(found.right_mm, expected / 2, 2e-3);
    EXPECT_EQ(found.bite_mm, 0);
  }
}

// Expected: ISO 21771 as above. With 0.05 mm of thinning 0.15 mm closer uses up more than there is: both flanks bite.
TEST(MeshTurn, GearsPushedTogetherBite) {
  const Pair p{3, 30, 30, 0, 0, 0.05, 89.85};
  ASSERT_LT(normal_backlash(p), -0.02);
  const MeshTurn found = turned(p);
  EXPECT_NEAR(found.normal_backlash_mm, normal_backlash(p), 4e-3);
  EXPECT_NEAR(found.least_mm(), normal_backlash(p) / 2, 4e-3);
  EXPECT_GT(found.bite_mm, 0.01);
}

// Expected: by hand. Tips clear roots by a quarter of the module, 0.75; 1.05 closer they stand 0.3 deep in them.
TEST(MeshTurn, TipsInRoots) {
  const MeshTurn found = turned({3, 30, 30, 0, 0, 2.0, 88.95});
  EXPECT_NEAR(found.bite_mm, 0.3, 0.02);
  EXPECT_LE(found.least_mm(), -0.28);
}

// Expected: by hand. A second gear turned by a tenth of its play stands nearer to one flank by that much.
TEST(MeshTurn, GapsOnBothFlanks) {
  layout::GearShape shape;
  shape.module_mm = 3;
  shape.teeth = 30;
  shape.pressure_angle_rad = angle;
  shape.thinning_mm = 0.225;
  const geometry::Loop gear = layout::gear_outline(shape).value();
  const double rb = 45 * std::cos(angle), aside = 0.04 / rb;
  const MeshTurn found = through_one_pitch({&gear, 30, 0, rb, 45}, {&gear, 30, pi + pi / 30 + aside, rb, 45}, 90, 12, 2e-4);
  EXPECT_NEAR(found.left_mm, 0.45 * std::cos(angle) / 2 - 0.04, 1e-3);
  EXPECT_NEAR(found.right_mm, 0.45 * std::cos(angle) / 2 + 0.04, 1e-3);
}

}  // namespace
}  // namespace visewright::fitup
