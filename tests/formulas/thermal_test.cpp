#include "formulas/thermal.h"

#include <gtest/gtest.h>

#include <numbers>

#include "formulas/spur_gear.h"

namespace visewright::formulas {
namespace {

constexpr double acrylic = 72e-6;
constexpr double wood = 4e-6;

// By hand: a metre at 72 millionths over 20 K is 1.44; 360 mm against wood, 360 × 68e-6 × 20 = 0.4896.
TEST(Thermal, GrowthAndDifference) {
  EXPECT_NEAR(thermal_growth_mm(1000, acrylic, 20), 1.44, 1e-12);
  EXPECT_NEAR(growth_difference_mm(360, acrylic, wood, 20), 0.4896, 1e-12);
  EXPECT_NEAR(growth_difference_mm(360, wood, acrylic, 20), -0.4896, 1e-12);
}

// Held in the middle, half of the part grows towards each end. Shrinking needs as much as growing.
TEST(Thermal, PlayNeeded) {
  EXPECT_NEAR(play_needed_mm(0.4896, HeldAt::middle, 0.25), 0.4948, 1e-12);
  EXPECT_NEAR(play_needed_mm(-0.4896, HeldAt::middle, 0.25), 0.4948, 1e-12);
  EXPECT_NEAR(play_needed_mm(0.4896, HeldAt::end, 0.25), 0.7396, 1e-12);
}

// Against the exact mesh: gears grown by a share ε on axles that stay are, up to size, gears of the old size on axles
// that came closer by a/(1 + ε).
TEST(Thermal, BacklashLostIsTheSlopeOfTheMesh) {
  constexpr double pressure = 20 * std::numbers::pi / 180;
  SpurGear gear;
  gear.teeth = 30;
  gear.module_mm = 3;
  gear.pressure_angle_rad = pressure;
  gear.thinning_mm = 0.225;
  constexpr double growth = 1e-3;
  const double before = backlash_mm(Mesh{gear, gear, 90});
  const double after = backlash_mm(Mesh{gear, gear, 90 / (1 + growth)});
  EXPECT_NEAR(backlash_lost_to_swelling_mm(pressure, 90, growth), before - after, 1e-3);
  EXPECT_NEAR(backlash_lost_to_growth_mm(pressure, 90, 60e-6, 10e-6, 20),
              backlash_lost_to_swelling_mm(pressure, 90, 1e-3), 1e-15);
  EXPECT_LT(backlash_lost_to_growth_mm(pressure, 90, 10e-6, 60e-6, 20), 0);
}

}  // namespace
}  // namespace visewright::formulas
