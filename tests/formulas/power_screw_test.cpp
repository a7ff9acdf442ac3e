#include "formulas/power_screw.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "formulas/thread_profile.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

PowerScrew metric_20(double friction) { return {2.5, metric_thread(20, 2.5).mean_mm, pi / 6, friction}; }
PowerScrew trapezoidal_20(double friction) { return {4, 18, pi / 12, friction}; }

// Virtual work: without friction a turn lifts the load by the lead, whatever the flank.
TEST(PowerScrew, WithoutFrictionTorqueIsForceTimesLeadOverATurn) {
  for (const PowerScrew& screw : {metric_20(0), trapezoidal_20(0), PowerScrew{8, 30, 0, 0}}) {
    EXPECT_NEAR(raising_torque_nmm(screw, 1000), 1000 * screw.lead_mm / (2 * pi), 1e-9);
    EXPECT_NEAR(lowering_torque_nmm(screw, 1000), -1000 * screw.lead_mm / (2 * pi), 1e-9);
    EXPECT_NEAR(screw_efficiency(screw.lead_mm, 1000, raising_torque_nmm(screw, 1000)), 1, 1e-12);
  }
}

// A block on an incline with a square thread: raising F r tan(slope + angle of friction), lowering with the difference.
TEST(PowerScrew, SquareThreadIsAnIncline) {
  const PowerScrew screw{8, 30, 0, 0.08};
  const double slope = lead_angle_rad(8, 30);
  EXPECT_NEAR(raising_torque_nmm(screw, 6400), 6400 * 15 * std::tan(slope + std::atan(0.08)), 1e-6);
  EXPECT_NEAR(lowering_torque_nmm(screw, 6400), 6400 * 15 * std::tan(std::atan(0.08) - slope), 1e-6);
}

TEST(PowerScrew, GrowsWithForceFrictionAndFlank) {
  EXPECT_NEAR(raising_torque_nmm(metric_20(0.15), 3000), 3 * raising_torque_nmm(metric_20(0.15), 1000), 1e-9);
  EXPECT_GT(raising_torque_nmm(metric_20(0.16), 1000), raising_torque_nmm(metric_20(0.15), 1000));
  PowerScrew square = metric_20(0.15);
  square.half_flank_rad = 0;
  EXPECT_GT(raising_torque_nmm(metric_20(0.15), 1000), raising_torque_nmm(square, 1000));
  EXPECT_EQ(opening_torque_nmm(metric_20(0.15), 500), raising_torque_nmm(metric_20(0.15), 500));
}

// Law: the thread lets go by itself exactly below the friction that holds it.
TEST(PowerScrew, HoldsItselfFromTheFrictionToHold) {
  for (const PowerScrew& screw : {metric_20(0.15), trapezoidal_20(0.15), PowerScrew{8, 30, 0, 0.08}}) {
    PowerScrew at_limit = screw;
    at_limit.friction = friction_to_hold(screw);
    EXPECT_NEAR(lowering_torque_nmm(at_limit, 1000), 0, 1e-9);
    EXPECT_NEAR(self_locking_margin(at_limit), 1, 1e-12);
    EXPECT_EQ(self_locking_margin(screw) > 1, lowering_torque_nmm(screw, 1000) > 0);
  }
}

// A flat ring under even pressure: the friction moment is the integral of f p 2π r² dr, here summed in thin rings.
TEST(PowerScrew, RingFrictionDiameterIsTheIntegral) {
  constexpr double outer = 37;
  constexpr double inner = 21;
  constexpr int rings = 20000;
  double moment = 0;
  double force = 0;
  for (int i = 0; i < rings; ++i) {
    const double d = inner + (outer - inner) * (i + 0.5) / rings;
    moment += d * d;
    force += d;
  }
  EXPECT_NEAR(ring_friction_diameter_mm(outer, inner), moment / force, 1e-6);
  EXPECT_NEAR(ring_friction_diameter_mm(30, 0), 20, 1e-12);   // a full disc: two thirds
  EXPECT_NEAR(ring_friction_diameter_mm(30, 30), 30, 1e-12);  // a thin ring: its diameter
  EXPECT_GT(ring_friction_diameter_mm(outer, inner), (outer + inner) / 2);
}

TEST(PowerScrew, ForceFromTorqueUndoesTheTorques) {
  const double torque = raising_torque_nmm(metric_20(0.15), 1763) + collar_torque_nmm(1763, 0.15, 30);
  EXPECT_NEAR(force_from_torque_n(metric_20(0.15), torque, 0.15, 30), 1763, 1e-9);
}

// By hand: a nut 18 high with chamfers of 2 has 14 of thread, and one thinner than its chamfers none.
TEST(ScrewStress, EngagedLength) {
  EXPECT_EQ(engaged_length_mm(18, 2), 14);
  EXPECT_EQ(engaged_length_mm(3, 2), 0);
}

// By hand, 3140 N on π·10·20 mm² of cylinder of which half is metal: 10 N/mm²·(3140/3141.6).
TEST(ScrewStress, ThreadStressesAreForceOverHalfTheCylinder) {
  const Engagement thread{12, 11, 10, 20};
  EXPECT_NEAR(screw_thread_shear_mpa(thread, 1000 * pi), 10, 1e-12);
  EXPECT_NEAR(nut_thread_shear_mpa(thread, 1000 * pi), 10 * 10.0 / 12, 1e-12);
  EXPECT_NEAR(flank_pressure_mpa(thread, 1000 * pi), 10 * 10.0 / 11, 1e-12);
  EXPECT_NEAR(thread_bending_mpa(thread, 1000 * pi), 30, 1e-12);
}

// The general formula of von Mises for normal stresses x, y, 0 and shear on the plane of y and the third axis.
TEST(ScrewStress, ThreadFootIsVonMisesOfItsThreeStresses) {
  const double x = 41.5;
  const double y = -10.4;
  const double t = 6.1;
  const double squares = ((x - y) * (x - y) + y * y + x * x + 6 * t * t) / 2;
  EXPECT_NEAR(thread_foot_von_mises_mpa(x, y, t), std::sqrt(squares), 1e-12);
}

// Elementary strength of a round bar, worked out through area, W = π d³/32 and Wp = π d³/16; d chosen so that π falls
// out: area π·100, W π·250, Wp π·500 for d 20.
TEST(ScrewStress, RoundCore) {
  const ScrewStress stress = screw_stress({-1000 * pi, 1000 * pi, -2500 * pi}, 20);
  EXPECT_NEAR(stress.axial_mpa, 10, 1e-9);
  EXPECT_NEAR(stress.bending_mpa, 10, 1e-9);
  EXPECT_NEAR(stress.torsion_mpa, 2, 1e-9);
  EXPECT_NEAR(stress.von_mises_mpa, std::sqrt(20.0 * 20 + 3 * 2 * 2), 1e-9);
}

// The strip that a pin takes is a little narrower than the core at its edges, so the true area left is larger.
TEST(ScrewStress, AreaAtAPinIsOnTheSafeSide) {
  const double r = 16.933 / 2;
  const double half = 2.5;
  const double taken = 2 * (half * std::sqrt(r * r - half * half) + r * r * std::asin(half / r));
  const double left = circle_area_mm2(2 * r) - taken;
  EXPECT_LT(core_area_at_pin_mm2(2 * r, 2 * half), left);
  EXPECT_NEAR(core_area_at_pin_mm2(2 * r, 2 * half), left, 0.02 * left);
}

// T L/(G J) with J = π d⁴/32 = 5000 π for d 20.
TEST(ScrewStress, Twist) { EXPECT_NEAR(screw_twist_rad(5000 * pi, 80, 20, 80000), 1e-3, 1e-15); }

}  // namespace
}  // namespace visewright::formulas
