#include "formulas/involute.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

TEST(Involute, IsNothingAtZeroAndGrows) {
  EXPECT_EQ(involute(0), 0);
  EXPECT_EQ(inverse_involute(0), 0);
  double last = 0;
  for (int i = 1; i <= 150; ++i) {
    const double angle = i / 100.0;
    EXPECT_GT(involute(angle), last) << angle;
    last = involute(angle);
  }
}

// Law, with values from far below what gears use to far above.
TEST(Involute, InverseRoundTrip) {
  for (int i = -36; i <= 24; ++i) {
    const double value = std::pow(10, i / 4.0);
    const double angle = inverse_involute(value);
    EXPECT_GT(angle, 0);
    EXPECT_LT(angle, std::numbers::pi / 2);
    EXPECT_NEAR(involute(angle) / value, 1, value < 1e-3 ? 1e-6 : 1e-9) << value;
  }
  for (int i = 1; i <= 1500; ++i) EXPECT_NEAR(involute(inverse_involute(i / 1000.0)), i / 1000.0, 1e-14) << i;
}

// By hand: tan 45° is 1, so inv 45° = 1 - π/4.
TEST(Involute, KnownExactlyAtFortyFiveDegrees) {
  EXPECT_NEAR(involute(std::numbers::pi / 4), 1 - std::numbers::pi / 4, 1e-15);
  EXPECT_NEAR(inverse_involute(1 - std::numbers::pi / 4), std::numbers::pi / 4, 1e-15);
}

TEST(Involute, NegativeValuesHaveNoInverse) { EXPECT_TRUE(std::isnan(inverse_involute(-1e-12))); }

}  // namespace
}  // namespace visewright::formulas
