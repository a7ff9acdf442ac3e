#include "formulas/statistics.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace visewright::formulas {
namespace {

// Any table of the normal distribution, from memory: Φ(0) 0.5, Φ(1) 0.8413, Φ(1.645) 0.9500, Φ(-2) 0.0228, Φ(3) 0.9987.
TEST(NormalCdf, TableValuesAndSymmetry) {
  EXPECT_EQ(normal_cdf(0), 0.5);
  EXPECT_NEAR(normal_cdf(1), 0.8413, 5e-5);
  EXPECT_NEAR(normal_cdf(1.645), 0.9500, 5e-5);
  EXPECT_NEAR(normal_cdf(-2), 0.0228, 5e-5);
  EXPECT_NEAR(normal_cdf(3), 0.9987, 5e-5);
  EXPECT_NEAR(normal_cdf(z_95), 0.975, 1e-15);
  for (const double z : {0.3, 1.0, 2.5, 8.0}) EXPECT_NEAR(normal_cdf(z) + normal_cdf(-z), 1, 1e-15);
  EXPECT_GT(normal_cdf(-10), 0);  // the far tail is small and not lost
}

// Law: a bound p satisfies |share - p| = z sqrt(p (1 - p)/n), which is how the interval is defined.
TEST(WilsonInterval, BoundsAreWhereTheTestJustPasses) {
  for (const auto& [hits, trials] : {std::array<std::size_t, 2>{3, 10}, {0, 20}, {20, 20}, {250, 1000}}) {
    const auto n = static_cast<double>(trials);
    const double share = static_cast<double>(hits) / n;
    const Interval interval = wilson_interval(hits, trials);
    for (const double p : {interval.low, interval.high}) {
      if (p == share) continue;  // the end of the range, where the interval touches the share itself
      EXPECT_NEAR(std::abs(share - p), z_95 * std::sqrt(p * (1 - p) / n), 1e-12);
    }
    EXPECT_LE(interval.low, share);
    EXPECT_GE(interval.high, share);
    EXPECT_GE(interval.low, 0);
    EXPECT_LE(interval.high, 1);
  }
}

TEST(WilsonInterval, NoTrialsSayNothingAndMoreTrialsSayMore) {
  EXPECT_EQ(wilson_interval(0, 0).low, 0);
  EXPECT_EQ(wilson_interval(0, 0).high, 1);
  const Interval few = wilson_interval(5, 10);
  const Interval many = wilson_interval(500, 1000);
  EXPECT_LT(many.high - many.low, few.high - few.low);
}

// By hand: five values, so the quarters fall on values and an eighth halfway between two.
TEST(Quantile, LiesBetweenNeighbours) {
  constexpr std::array<double, 5> values{1, 2, 4, 8, 16};
  EXPECT_EQ(quantile(values, 0), 1);
  EXPECT_EQ(quantile(values, 0.25), 2);
  EXPECT_EQ(quantile(values, 0.5), 4);
  EXPECT_NEAR(quantile(values, 0.875), 12, 1e-12);
  EXPECT_EQ(quantile(values, 1), 16);
  EXPECT_EQ(quantile(std::array<double, 1>{7}, 0.3), 7);
  EXPECT_TRUE(std::isnan(quantile({}, 0.5)));
}

}  // namespace
}  // namespace visewright::formulas
