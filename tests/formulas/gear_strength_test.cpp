#include "formulas/gear_strength.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

TEST(LewisFormFactor, NeverFallsAndEndsAtTheRack) {
  double before = 0;
  for (int teeth = 1; teeth < 3000; ++teeth) {
    const double factor = lewis_form_factor(teeth);
    EXPECT_GE(factor, before) << teeth;
    before = factor;
  }
  EXPECT_LT(before, 0.485);
  EXPECT_NEAR(lewis_form_factor(1e9), 0.485, 1e-6);
}

// By hand, linear in 1/z: halfway between 1/100 and 1/150 is 1/120, where the mean of 0.447 and 0.460 holds.
TEST(LewisFormFactor, BetweenCountsIsLinearInOneOverTeeth) {
  EXPECT_NEAR(lewis_form_factor(120), (0.447 + 0.460) / 2, 1e-12);
  EXPECT_NEAR(lewis_form_factor(800), (0.480 + 0.485) / 2, 1e-12);
}

TEST(LewisFormFactor, BelowTheTableIsInProportion) {
  EXPECT_NEAR(lewis_form_factor(lewis_fewest_teeth), 0.245, 1e-12);
  EXPECT_NEAR(lewis_form_factor(6), 0.245 / 2, 1e-12);
}

TEST(ToothLoad, StressAndCapacityUndoEachOther) {
  const ToothLoad load{200, 24, 3, 0.359};
  EXPECT_NEAR(tooth_bending_mpa(load), 200 / (24 * 3 * 0.359), 1e-12);
  EXPECT_NEAR(tooth_capacity_n(load, tooth_bending_mpa(load)), 200, 1e-9);
}

// By hand: 9 N m on a pitch radius of 45 is 200 N, and an idler takes it from one neighbour and gives it to the other,
// both in the same direction.
TEST(ToothLoad, ForcesOfATrain) {
  EXPECT_NEAR(tangential_force_n(9000, 90), 200, 1e-12);
  EXPECT_NEAR(idler_axle_load_n(200), 400, 1e-12);
  EXPECT_NEAR(single_mesh_axle_load_n(200, pi / 3), 400, 1e-9);
  EXPECT_NEAR(axle_bending_mpa(pi, 1000, 10), 32, 1e-12);
}

// Integration of a pressure that grows from the middle of each flat to its leading corner.
TEST(Seats, HexagonPressureIsTheIntegralOverTheFlats) {
  constexpr double flats = 30;
  constexpr double depth = 18;
  constexpr double greatest = 5;
  const double half_side = flats / std::numbers::sqrt3 / 2;
  constexpr int steps = 1000;
  double torque = 0;
  for (int i = 0; i < steps; ++i) {
    const double along = half_side * (i + 0.5) / steps;
    torque += 6 * greatest * along / half_side * along * depth * half_side / steps;
  }
  EXPECT_NEAR(hexagon_pressure_mpa(torque, depth, flats), greatest, 1e-4);
}

// By hand: two shear planes at the surface of the shaft, T/d on each.
TEST(Seats, PinShear) {
  const CrossPin pin{20, 4};
  EXPECT_NEAR(pin_double_shear_mpa(pin, 20 * 4 * pi * 10), 10, 1e-12);
  EXPECT_NEAR(pin_axial_shear_mpa(pin, 2 * 4 * pi * 10), 10, 1e-12);
}

// Integrals of the pressure along the pin: from the axis outwards in the shaft, even in the wall of the hub.
TEST(Seats, PinPressureIsTheIntegral) {
  const CrossPin pin{20, 5};
  constexpr int steps = 2000;
  double shaft = 0;
  double hub = 0;
  for (int i = 0; i < steps; ++i) {
    const double in_shaft = 10 * (i + 0.5) / steps;
    shaft += 2 * 7 * in_shaft / 10 * 5 * in_shaft * 10 / steps;
    const double in_hub = 10 + 8 * (i + 0.5) / steps;
    hub += 2 * 3.0 * 5 * in_hub * 8 / steps;
  }
  EXPECT_NEAR(pin_pressure_in_shaft_mpa(pin, shaft), 7, 1e-4);
  EXPECT_NEAR(pin_pressure_in_hub_mpa(pin, 36, hub), 3, 1e-6);
}

// By hand: throat area π D a; a torque acts on it at the radius D/2.
TEST(Seats, Bead) {
  const RingBead whole{30, 2};
  EXPECT_NEAR(bead_shear_mpa(whole, 60 * pi * 15 * 4, 0), 4, 1e-12);
  EXPECT_NEAR(bead_shear_mpa(whole, 0, 60 * pi * 3), 3, 1e-12);
  EXPECT_NEAR(bead_shear_mpa(whole, 60 * pi * 15 * 4, 60 * pi * 3), 5, 1e-12);
  EXPECT_NEAR(bead_shear_mpa({30, 2, 0.5}, 60 * pi * 15 * 4, 0), 8, 1e-12);
}

// By hand: a flange of 37 spreads through a washer of 4 to 45, short of the washer's 60; a ring 5/3 presses on 4 π.
TEST(Seats, WasherOnWood) {
  EXPECT_EQ(effective_washer_diameter_mm(60, 37, 4), 45);
  EXPECT_EQ(effective_washer_diameter_mm(40, 37, 4), 40);
  EXPECT_NEAR(ring_pressure_mpa(4 * pi * 2, 5, 3), 2, 1e-12);
}

// By hand: 4 N m on a set screw of 8 press 2500 N; friction at its point and opposite hold f F d.
TEST(Seats, SetScrew) {
  EXPECT_NEAR(set_screw_clamp_n(4000, 8), 2500, 1e-9);
  EXPECT_NEAR(set_screw_holding_nmm(2500, 0.15, 20), 7500, 1e-9);
  EXPECT_NEAR(dog_point_force_n(9000, 20), 900, 1e-9);
  EXPECT_NEAR(dog_point_shear_mpa(9 * pi * 5, 6), 5, 1e-12);
  EXPECT_NEAR(strip_pressure_mpa(900, 6, 3), 50, 1e-12);
}

}  // namespace
}  // namespace visewright::formulas
