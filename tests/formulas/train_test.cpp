#include "formulas/train.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include "formulas/flanks.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

// By hand: each mesh turns the sense round; n idlers give n + 1 meshes.
TEST(Train, EndsTurnTheSameWayForOddCounts) {
  EXPECT_TRUE(same_sense(1));
  EXPECT_FALSE(same_sense(2));
  EXPECT_TRUE(same_sense(3));
  EXPECT_FALSE(same_sense(4));
  EXPECT_TRUE(same_sense(5));
}

TEST(Train, RatioIsOfTheEndsAlone) {
  EXPECT_DOUBLE_EQ(ratio(40, 40), 1);
  EXPECT_DOUBLE_EQ(ratio(20, 40), 0.5);
}

// By hand: 40 teeth and 6 flats share a factor 2, so they part the turn in 120; 30 is a multiple of 6 and gains
// nothing.
TEST(Train, SettingStepCountsFlatsAndTeethOnce) {
  EXPECT_NEAR(finest_setting_step_mm(4, 40), 4.0 / 120, 1e-15);
  EXPECT_NEAR(finest_setting_step_mm(4, 41), 4.0 / 246, 1e-15);
  EXPECT_NEAR(finest_setting_step_mm(2.5, 30), skew_for_one_tooth_mm(2.5, 30), 1e-15);
}

TEST(Train, SettingStepIsTheLeastDifferenceThatTeethAndFlatsMake) {
  for (const int teeth : {17, 20, 24, 27, 40}) {
    double least = 1;
    for (int tooth = 0; tooth < teeth; ++tooth) {
      for (int flat = 0; flat < 6; ++flat) {
        const double turn = std::abs(std::remainder(static_cast<double>(tooth) / teeth - flat / 6.0, 1));
        if (turn > 1e-9) least = std::min(least, turn);
      }
    }
    EXPECT_NEAR(finest_setting_step_mm(4, teeth), 4 * least, 1e-12) << teeth;
  }
}

TEST(Train, PhasesOfARowSketchedByHand) {
  // A tooth of the first points right. Four teeth next: none may point left, so the four stand on the diagonals. Their
  // right side shows a space too, and three teeth with one pointing left have a space on the right: π/3.
  const std::vector<int> teeth{4, 4, 3};
  const std::vector<double> phases = phases_rad(teeth);
  ASSERT_EQ(phases.size(), 3U);
  EXPECT_DOUBLE_EQ(phases[0], 0);
  EXPECT_DOUBLE_EQ(phases[1], pi / 4);
  EXPECT_DOUBLE_EQ(phases[2], pi / 3);
  EXPECT_TRUE(phases_rad({}).empty());
}

/// Turns every gear of the row between the flanks of the one before and compares the play on the two sides.
void expect_equal_gaps(const std::vector<int>& teeth, double spread_mm) {
  const std::vector<double> phases = phases_rad(teeth);
  std::vector<Standing> row;
  double x = 0;
  for (std::size_t i = 0; i < teeth.size(); ++i) {
    SpurGear gear;
    gear.teeth = teeth[i];
    gear.module_mm = 2;
    gear.pressure_angle_rad = 20 * pi / 180;
    gear.thinning_mm = 0.1;
    if (i > 0) x += tight_centre_distance_mm(row.back().gear, gear) + spread_mm;
    row.push_back({gear, {x, 0}, phases[i]});
  }
  for (std::size_t i = 1; i < row.size(); ++i) {
    const double forwards = free_turn_rad(row[i - 1], row[i], 1);
    const double backwards = free_turn_rad(row[i - 1], row[i], -1);
    const double total = 0.2 * std::cos(20 * pi / 180) / (base_diameter_mm(row[i].gear) / 2);
    EXPECT_GE(forwards + backwards, total * 0.999) << "mesh " << i;
    EXPECT_NEAR(forwards, backwards, total * 1e-3) << "mesh " << i;
  }
}

TEST(Train, PhasesLeaveEqualGapsOnBothFlanks) {
  expect_equal_gaps({40, 40, 40, 40, 40}, 0);
  expect_equal_gaps({31, 24, 31}, 0.1);
  expect_equal_gaps({24, 31, 24}, 0);
  expect_equal_gaps({20, 33, 25, 41, 20}, 0.2);
  expect_equal_gaps({33, 33, 33, 33}, 0.15);
  expect_equal_gaps({30, 19, 22, 35, 30}, 0);
}

TEST(Train, EveryPhaseIsATurnWithinOneToothAndEveryMeshIsToothInSpace) {
  std::mt19937 dice(7);  // its sequence is fixed by the language standard
  for (int run = 0; run < 200; ++run) {
    std::vector<int> teeth(2 + dice() % 7);
    for (int& z : teeth) z = static_cast<int>(12 + dice() % 60);
    const std::vector<double> phases = phases_rad(teeth);
    EXPECT_EQ(phases[0], 0);
    for (std::size_t i = 1; i < teeth.size(); ++i) {
      EXPECT_GE(phases[i], 0);
      EXPECT_LT(phases[i], 2 * pi / teeth[i]);
      // In pitches from the line of centres; upwards on the right of one is upwards on the left of the next, where a
      // growing angle goes down.
      const double right = std::remainder(phases[i - 1] * teeth[i - 1] / (2 * pi), 1);
      const double left = std::remainder((pi - phases[i]) * teeth[i] / (2 * pi), 1);
      EXPECT_NEAR(std::abs(std::remainder(right - left, 1)), 0.5, 1e-9);
    }
  }
}

TEST(Train, DeadTurnAddsUpAndScalesWithTheRadius) {
  EXPECT_DOUBLE_EQ(dead_turn_rad(0.8, 80), 2 * dead_turn_rad(0.4, 80));
  EXPECT_DOUBLE_EQ(dead_turn_rad(0.8, 160), dead_turn_rad(0.8, 80) / 2);
  EXPECT_DOUBLE_EQ(travel_mm(4, 2 * pi), 4);
}

}  // namespace
}  // namespace visewright::formulas
