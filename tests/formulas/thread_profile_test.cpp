#include "formulas/thread_profile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

TEST(ThreadProfile, DiametersStandInOrderInEveryFamily) {
  for (const ThreadProfile& t : {metric_thread(20, 2.5), trapezoidal_thread(20, 4), trapezoidal_thread(10, 1.5),
                                 unified_thread(19.05, 10), acme_thread(25.4, 5), acme_thread(12.7, 16)}) {
    EXPECT_LT(t.root_mm, t.nut_minor_mm);
    EXPECT_LT(t.nut_minor_mm, t.mean_mm);
    EXPECT_LT(t.mean_mm, t.major_mm);
    EXPECT_LE(t.major_mm, t.nut_major_mm);
    EXPECT_GT(t.stress_area_mm2, circle_area_mm2(t.root_mm));
    EXPECT_LT(t.stress_area_mm2, circle_area_mm2(t.mean_mm));
  }
}

// From the definition of the profile: the truncations of ISO 68-1 are H/8 at the crest and H/4 at the nut's crest, and
// the pitch cylinder cuts ridge and groove into equal halves.
TEST(ThreadProfile, MetricMeanDiameterHalvesThePitch) {
  const ThreadProfile t = metric_thread(20, 2.5);
  const double height = 2.5 / 2 / std::tan(t.half_flank_rad);
  const double crest = 2.5 / 8;
  const double ridge_at_mean = crest + (t.major_mm - t.mean_mm) * std::tan(t.half_flank_rad);
  EXPECT_NEAR(ridge_at_mean, 2.5 / 2, 1e-12);
  EXPECT_NEAR((t.major_mm - t.nut_minor_mm) / 2, height * 5 / 8, 1e-12);
}

// Law of the two trapezoids: thread height P/2 without clearance, ridge equal to groove at the mean diameter.
TEST(ThreadProfile, TrapezoidsAreHalfAPitchHigh) {
  const ThreadProfile metric = trapezoidal_thread(24, 5);
  EXPECT_NEAR((metric.major_mm - metric.nut_minor_mm) / 2, 2.5, 1e-12);
  EXPECT_NEAR(metric.nut_major_mm - metric.major_mm, metric.nut_minor_mm - metric.root_mm, 1e-12);
  const ThreadProfile inch = acme_thread(25.4, 5);
  EXPECT_NEAR((inch.major_mm - inch.nut_minor_mm) / 2, 25.4 / 5 / 2, 1e-12);
  EXPECT_NEAR(inch.half_flank_rad, 14.5 * pi / 180, 1e-15);
  EXPECT_NEAR(metric.half_flank_rad, 15 * pi / 180, 1e-15);
}

// ISO 2904 crest clearances, sighted with the table of that standard.
TEST(ThreadProfile, TrapezoidalClearanceSteps) {
  EXPECT_EQ(trapezoidal_clearance_mm(1.5), 0.15);
  EXPECT_EQ(trapezoidal_clearance_mm(2), 0.25);
  EXPECT_EQ(trapezoidal_clearance_mm(5), 0.25);
  EXPECT_EQ(trapezoidal_clearance_mm(6), 0.5);
  EXPECT_EQ(trapezoidal_clearance_mm(12), 0.5);
  EXPECT_EQ(trapezoidal_clearance_mm(14), 1);
}

// ASME B1.5: the allowance halves above 10 threads an inch (sighted for 10 and coarser; the other from memory).
TEST(ThreadProfile, AcmeAllowanceHalvesForFineThreads) {
  const ThreadProfile coarse = acme_thread(12.7, 10);
  const ThreadProfile fine = acme_thread(12.7, 12);
  EXPECT_NEAR(coarse.nut_minor_mm - coarse.root_mm, 0.508, 1e-12);
  EXPECT_NEAR(fine.nut_minor_mm - fine.root_mm, 0.254, 1e-12);
}

// By hand: a thread that rises by the circumference climbs at 45°.
TEST(ThreadProfile, LeadAngle) {
  EXPECT_NEAR(lead_angle_rad(pi * 18, 18), pi / 4, 1e-15);
  EXPECT_GT(lead_angle_rad(4, 14), lead_angle_rad(4, 18));
  EXPECT_NEAR(circle_area_mm2(2), pi, 1e-15);
}

}  // namespace
}  // namespace visewright::formulas
