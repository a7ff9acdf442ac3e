#include "formulas/play.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "formulas/beams.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

TEST(ForceSplit, SumsAndBalances) {
  for (const double at : {-200.0, -90.0, 0.0, 45.0, 180.0, 250.0}) {
    const ForceSplit split = split_force(2000, at, 360);
    EXPECT_NEAR(split.first_n + split.second_n, 2000, 1e-9);
    EXPECT_NEAR(180 * (split.second_n - split.first_n), 2000 * at, 1e-6);  // moments about the middle
  }
  EXPECT_NEAR(split_force(2000, 180, 360).first_n, 0, 1e-9);
}

// By hand: 250 out of 360, 70 beyond the second screw, pulls 2000 · 70/360 at the first.
TEST(ForceSplit, BeyondAScrewTheCoverHoldsBack) {
  EXPECT_NEAR(held_back_n(split_force(2000, 250, 360)), 2000 * 70.0 / 360, 1e-9);
  EXPECT_NEAR(held_back_n(split_force(2000, -250, 360)), 2000 * 70.0 / 360, 1e-9);
  EXPECT_EQ(held_back_n(split_force(2000, 100, 360)), 0);
}

constexpr Drive drive{4.24, 0.97, 4};

TEST(HandTorque, LosesInEachMesh) {
  const ForceSplit over_first = split_force(1000, -180, 360);
  const ForceSplit over_second = split_force(1000, 180, 360);
  EXPECT_NEAR(hand_torque_nmm(drive, over_first), 4240, 1e-9);
  EXPECT_NEAR(hand_torque_nmm(drive, over_second), 4240 / std::pow(0.97, 4), 1e-9);
  EXPECT_NEAR(train_torque_nmm(drive, over_first), 0, 1e-9);
  EXPECT_NEAR(train_torque_nmm(drive, over_second), hand_torque_nmm(drive, over_second), 1e-9);
  EXPECT_NEAR(hand_torque_nmm({4.24, 1, 4}, over_second), 4240, 1e-9);
}

// A screw that the work does not load turns freely; it neither costs torque nor gives any back.
TEST(HandTorque, BeyondAScrewTheOtherOneIsFree) {
  const ForceSplit beyond_second = split_force(1000, 270, 360);
  EXPECT_NEAR(hand_torque_nmm(drive, beyond_second), 4.24 * 1250 / std::pow(0.97, 4), 1e-9);
  const ForceSplit beyond_first = split_force(1000, -270, 360);
  EXPECT_NEAR(hand_torque_nmm(drive, beyond_first), 4.24 * 1250, 1e-9);
  EXPECT_EQ(train_torque_nmm(drive, beyond_first), 0);
}

// 9 N m, 4.24 N m a kilonewton and 3 % a mesh, by hand: 9000/(4.24 (½ + ½/0.8853)) in the middle.
TEST(HandTorque, ClampUndoesIt) {
  EXPECT_NEAR(clamp_force_n(drive, 9000, 0, 360), 9000 / (4.24 * (0.5 + 0.5 / 0.88529281)), 1e-6);
  for (const double at : {-180.0, -60.0, 0.0, 180.0}) {
    const double force = clamp_force_n(drive, 9000, at, 360);
    EXPECT_NEAR(hand_torque_nmm(drive, split_force(force, at, 360)), 9000, 1e-6);
  }
  EXPECT_LT(clamp_force_n(drive, 9000, 180, 360), clamp_force_n(drive, 9000, -180, 360));
}

constexpr FreeScrew screw{71, 16.933, 205000};

// The screw is a beam under the same moment all along, so it bends to an arc: angle M L/(EI).
TEST(Tipping, MomentBendsTheScrewToAnArc) {
  const double moment = tipping_moment_nmm(2000, 55);
  EXPECT_NEAR(moment, 55000, 1e-9);
  const Beam beam{71, 205000, round_inertia_mm4(16.933)};
  EXPECT_NEAR(bending_tilt_rad(screw, moment), cantilever_moment_slope_rad(beam, moment), 1e-15);
  EXPECT_NEAR(round_inertia_mm4(2), pi / 4, 1e-12);
  EXPECT_NEAR(top_edge_opening_mm(0.005, 110), 0.55, 1e-12);
}

// By hand: a screw that touches opposite sides of a bush and a nut 90 apart, 0.15 and 0.24 loose, leans
// (0.075 + 0.12)/90; alone in a nut of 29 it leans by the whole play over its length.
TEST(Tipping, LeanFromPlay) {
  Guides guides{0.15, 0.24, 90, 29, true};
  EXPECT_NEAR(play_tilt_rad(guides), 0.195 / 90, 1e-12);
  guides.bush = false;
  EXPECT_NEAR(play_tilt_rad(guides), 0.24 / 29, 1e-12);
}

// The edge pressure of a bush, integrated over its length, gives the moment and the half force back.
TEST(Tipping, BushEdgePressureIsTheIntegral) {
  constexpr double bore = 20;
  constexpr double length = 36;
  const double edge = bush_edge_pressure_mpa(55000, bore, length);
  constexpr int steps = 1000;
  double moment = 0;
  double force = 0;
  for (int i = 0; i < steps; ++i) {
    const double from_middle = length / 2 * (i + 0.5) / steps;
    const double part = edge * from_middle / (length / 2) * bore * length / 2 / steps;
    force += part;
    moment += 2 * part * from_middle;
  }
  EXPECT_NEAR(moment, 55000, 0.1);
  EXPECT_NEAR(force, bush_half_force_n(55000, length), 0.01);
}

TEST(Droop, AddsUpItsCauses) {
  const FreeScrew open{290, 16.933, 205000};
  const Guides guides{0.15, 0.24, 50, 29, true};
  const HangingJaw jaw{97, 2, 0.15};
  const Droop sum = droop(open, guides, jaw);
  EXPECT_NEAR(sum.bush_mm, 0.075, 1e-12);
  EXPECT_NEAR(sum.tilt_mm, 0.39 / 100 * 290, 1e-12);
  const Beam beam{290, 205000, round_inertia_mm4(16.933)};
  EXPECT_NEAR(sum.bending_mm, cantilever_deflection_mm(beam, 48.5, 290, 290), 1e-12);
  EXPECT_NEAR(sum.front_mm, 0.075, 1e-12);
  EXPECT_NEAR(sum.sum_mm, sum.bush_mm + sum.tilt_mm + sum.bending_mm + sum.front_mm, 1e-12);
}

TEST(Droop, IsWorseWithoutABushAndWiderOpen) {
  const FreeScrew open{290, 16.933, 205000};
  const HangingJaw jaw{97, 2, 0.15};
  EXPECT_GT(droop(open, {0.15, 0.24, 50, 29, false}, jaw).sum_mm, droop(open, {0.15, 0.24, 50, 29, true}, jaw).sum_mm);
  EXPECT_GT(droop(open, {0.15, 0.24, 50, 29, true}, jaw).sum_mm, droop(screw, {0.15, 0.24, 50, 29, true}, jaw).sum_mm);
}

// By hand: two equal springs in a row are half as stiff; 205000 · 244.8/100.
TEST(Racking, Stiffness) {
  EXPECT_NEAR(in_series_n_per_mm(30000, 30000), 15000, 1e-9);
  EXPECT_NEAR(bar_stiffness_n_per_mm(205000, 244.8, 100), 501840, 1e-6);
}

// Work in the middle loads both screws alike: no skew. By hand over the second screw: 2000 N on one spring.
TEST(Racking, InsideTheScrewsGiveUnequally) {
  EXPECT_NEAR(inner_racking_mm(split_force(2000, 0, 360), 28000), 0, 1e-15);
  EXPECT_NEAR(inner_racking_mm(split_force(2000, 180, 360), 28000), 2000.0 / 28000, 1e-12);
}

// A thread with flanks at 45° moves along as far as it is loose across.
TEST(Racking, OutsideTheSlackComesFirst) {
  EXPECT_NEAR(axial_nut_play_mm(0.24, pi / 4), 0.24, 1e-12);
  EXPECT_NEAR(axial_nut_play_mm(0.24, pi / 6), 0.24 / std::numbers::sqrt3, 1e-12);
  EXPECT_NEAR(outer_racking_mm(0.3, 0.14, 0, 1000), 0.44, 1e-12);
  EXPECT_NEAR(outer_racking_mm(0.3, 0.14, 400, 1000), 0.84, 1e-12);
}

TEST(Racking, SwayIsWhatPlayAloneLets) {
  const Guides guides{0.15, 0.24, 50, 29, true};
  const Droop weightless = droop(screw, guides, {});
  EXPECT_NEAR(sway_mm(screw, guides), weightless.bush_mm + weightless.tilt_mm, 1e-12);
}

}  // namespace
}  // namespace visewright::formulas
