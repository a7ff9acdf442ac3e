#include "formulas/wood.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr MovementRates beech{0.0019, 0.0043};

TEST(WoodMovement, FollowsTheRings) {
  EXPECT_EQ(movement_rate(beech, Rings::along), 0.0043);
  EXPECT_EQ(movement_rate(beech, Rings::across), 0.0019);
  EXPECT_NEAR(movement_rate(beech, Rings::mixed), 0.0031, 1e-15);
}

// By hand: 80 mm of flat-sawn beech over four percent, 80 × 0.0043 × 4; drying shrinks as much as wetting swells.
TEST(WoodMovement, IsSizeTimesRateTimesChange) {
  EXPECT_NEAR(wood_movement_mm(80, 0.0043, 4), 1.376, 1e-12);
  EXPECT_NEAR(wood_movement_mm(80, 0.0043, -4), -1.376, 1e-12);
}

// Law: all of the shrinkage at 0 %, none at saturation, half of it halfway.
TEST(WoodMovement, ShrinkageFromGreen) {
  EXPECT_NEAR(shrinkage_from_green(0.119, 0), 0.119, 1e-15);
  EXPECT_NEAR(shrinkage_from_green(0.119, 15), 0.0595, 1e-15);
  EXPECT_NEAR(shrinkage_from_green(0.119, 30), 0, 1e-15);
}

// The metric constant that the same handbook prints beside the one for pounds and inches (from memory): 108.25.
TEST(WoodScrew, MetricConstantAgreesWithTheOneForInches) {
  const WoodScrew screw{1, 1, 1, false};
  EXPECT_NEAR(wood_screw_withdrawal_n(screw), 108.25, 0.005);
  EXPECT_NEAR(lag_screw_withdrawal_n(screw), 125.4, 0.05);
}

TEST(WoodScrew, GrowsWithSizeAndDensityAndHoldsNothingInEndGrain) {
  const WoodScrew screw{0.64, 6, 50, false};
  const double pull = wood_screw_withdrawal_n(screw);
  EXPECT_NEAR(wood_screw_withdrawal_n({1.28, 6, 50, false}), 4 * pull, 1e-8);
  EXPECT_NEAR(wood_screw_withdrawal_n({0.64, 12, 25, false}), pull, 1e-8);
  EXPECT_NEAR(allowable_withdrawal_n(screw), pull / 5, 1e-9);
  EXPECT_LT(reference_withdrawal_n(screw), allowable_withdrawal_n(screw));
  EXPECT_EQ(wood_screw_withdrawal_n({0.64, 6, 50, true}), 0);
  EXPECT_EQ(lag_screw_withdrawal_n({0.64, 6, 50, true}), 0);
  EXPECT_EQ(reference_withdrawal_n({0.64, 6, 50, true}), 0);
  EXPECT_EQ(allowable_withdrawal_n({0.64, 6, 50, true}), 0);
}

TEST(WoodBearing, PressureAndShortBearings) {
  EXPECT_NEAR(bearing_mpa(2000, 50, 20), 2, 1e-12);
  EXPECT_NEAR(short_bearing_factor(9.525), 2, 1e-12);
  EXPECT_EQ(short_bearing_factor(152.4), 1);
  EXPECT_GT(short_bearing_factor(30), short_bearing_factor(60));
}

// Laws: the strength along at 0°, across at 90°, and at 45° the harmonic mean of both.
TEST(WoodBearing, StrengthAtAnAngle) {
  constexpr double pi = std::numbers::pi;
  EXPECT_NEAR(strength_at_angle_mpa(50, 7, 0), 50, 1e-12);
  EXPECT_NEAR(strength_at_angle_mpa(50, 7, pi / 2), 7, 1e-12);
  EXPECT_NEAR(strength_at_angle_mpa(50, 7, pi / 4), 2 * 50 * 7 / 57.0, 1e-12);
}

}  // namespace
}  // namespace visewright::formulas
