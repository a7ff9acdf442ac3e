#include "formulas/beams.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <functional>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

/// Deflection at `x` by the method of virtual work: ∫ M m/(EI), summed.
double by_virtual_work(const Beam& beam, const std::function<double(double)>& real,
                       const std::function<double(double)>& unit) {
  constexpr int steps = 40000;
  double sum = 0;
  for (int i = 0; i < steps; ++i) {
    const double at = beam.length_mm * (i + 0.5) / steps;
    sum += real(at) * unit(at);
  }
  return sum * beam.length_mm / steps / (beam.modulus_mpa * beam.inertia_mm4);
}

double supported_moment_at(double length, double force, double a, double at) {
  return at < a ? force * (length - a) / length * at : force * a / length * (length - at);
}

// b h³/12 and b h²/6.
TEST(Section, Rectangle) {
  const Section section = rectangle_section(38, 89);
  EXPECT_NEAR(section.area_mm2, 38 * 89, 1e-9);
  EXPECT_NEAR(section.centroid_mm, 44.5, 1e-12);
  EXPECT_NEAR(section.inertia_mm4, 38 * std::pow(89, 3) / 12, 1e-6);
  EXPECT_NEAR(section.modulus_mm3, 38 * 89 * 89 / 6.0, 1e-8);
  EXPECT_EQ(section.depth_mm, 89);
}

TEST(Section, CuttingAStripChangesNothingAndADatumShiftsTheCentroidAlone) {
  const std::array<Strip, 2> whole{{{30, 0, 40, 12000}, {80, 40, 48, 3000}}};
  const std::array<Strip, 3> cut{{{30, 0, 17, 12000}, {30, 17, 40, 12000}, {80, 40, 48, 3000}}};
  const std::array<Strip, 2> shifted{{{30, 100, 140, 12000}, {80, 140, 148, 3000}}};
  const Section one = composite_section(whole, 12000);
  const Section two = composite_section(cut, 12000);
  const Section three = composite_section(shifted, 12000);
  EXPECT_NEAR(one.inertia_mm4, two.inertia_mm4, 1e-7);
  EXPECT_NEAR(one.centroid_mm, two.centroid_mm, 1e-12);
  EXPECT_NEAR(one.inertia_mm4, three.inertia_mm4, 1e-6);
  EXPECT_NEAR(one.centroid_mm + 100, three.centroid_mm, 1e-12);
  EXPECT_NEAR(one.modulus_mm3, three.modulus_mm3, 1e-7);
  EXPECT_EQ(three.depth_mm, 48);
}

// Law: the bending stiffness E I does not depend on the material chosen for reference.
TEST(Section, StiffnessDoesNotDependOnTheReference) {
  const std::array<Strip, 2> strips{{{30, 0, 40, 12000}, {80, 40, 48, 3000}}};
  EXPECT_NEAR(composite_section(strips, 12000).inertia_mm4 * 12000, composite_section(strips, 3000).inertia_mm4 * 3000,
              1e-3);
}

// By hand, a T of 60 × 10 on 10 × 60: y0 = (600·30 + 600·65)/1200 = 47.5 from the foot,
// I = 10·60³/12 + 600·17.5² + 60·10³/12 + 600·17.5² = 552500.
TEST(Section, Tee) {
  const std::array<Strip, 2> tee{{{10, 0, 60, 1}, {60, 60, 70, 1}}};
  const Section section = composite_section(tee, 1);
  EXPECT_NEAR(section.centroid_mm, 47.5, 1e-12);
  EXPECT_NEAR(section.inertia_mm4, 552500, 1e-6);
  EXPECT_NEAR(section.modulus_bottom_mm3, 552500 / 47.5, 1e-8);
  EXPECT_NEAR(section.modulus_top_mm3, 552500 / 22.5, 1e-8);
  EXPECT_EQ(section.modulus_mm3, section.modulus_bottom_mm3);
}

// b (h³ - d³)/(6h) on centre; off centre it loses more, the more the further, and the same either way.
TEST(Section, HoleAcross) {
  const Section gross = rectangle_section(25, 100);
  const Section centred = section_with_hole_across({25, 100, 34, 0});
  EXPECT_NEAR(centred.modulus_mm3, 25 * (1e6 - 34.0 * 34 * 34) / 600, 1e-7);
  double left = modulus_left(centred, gross);
  for (const double off : {5.0, 10.0, 15.0, 20.0, 30.0}) {
    const double up = modulus_left(section_with_hole_across({25, 100, 34, off}), gross);
    const double down = modulus_left(section_with_hole_across({25, 100, 34, -off}), gross);
    EXPECT_NEAR(up, down, 1e-12);
    EXPECT_LT(up, left);
    left = up;
  }
  EXPECT_NEAR(modulus_left(section_with_hole_across({25, 100, 0, 10}), gross), 1, 1e-12);
}

TEST(Section, HoleThroughTakesItsBreadth) {
  EXPECT_NEAR(modulus_left(section_with_hole_through({38, 89, 20, 5}), rectangle_section(38, 89)), 18.0 / 38, 1e-12);
}

TEST(Beam, CantileverAgreesWithVirtualWork) {
  const Beam beam{300, 10000, 50000};
  for (const auto& [a, x] : {std::array{300.0, 300.0}, {180.0, 300.0}, {180.0, 180.0}, {240.0, 90.0}}) {
    const auto moment = [](double force, double at) { return [=](double s) { return s < at ? force * (at - s) : 0; }; };
    EXPECT_NEAR(cantilever_deflection_mm(beam, 500, a, x), by_virtual_work(beam, moment(500, a), moment(1, x)), 1e-5);
    EXPECT_NEAR(cantilever_deflection_mm(beam, 500, a, x), cantilever_deflection_mm(beam, 500, x, a), 1e-15);
  }
  EXPECT_NEAR(cantilever_deflection_mm(beam, 500, 300, 300), 500 * 2.7e7 / (3 * 5e8), 1e-12);
}

// Law: the slope is what the deflection gains beyond the force.
TEST(Beam, CantileverSlopes) {
  const Beam beam{300, 10000, 50000};
  const double gained = cantilever_deflection_mm(beam, 500, 200, 300) - cantilever_deflection_mm(beam, 500, 200, 200);
  EXPECT_NEAR(cantilever_slope_rad(beam, 500, 200), gained / 100, 1e-12);
  EXPECT_NEAR(cantilever_moment_slope_rad(beam, 1e6), 1e6 * 300 / 5e8, 1e-15);
}

TEST(Beam, SupportedAgreesWithVirtualWork) {
  const Beam beam{500, 12000, 1063125};
  for (const auto& [a, x] : {std::array{250.0, 250.0}, {120.0, 250.0}, {120.0, 400.0}, {400.0, 120.0}}) {
    const auto real = [&, at = a](double s) { return supported_moment_at(500, 2000, at, s); };
    const auto unit = [&, at = x](double s) { return supported_moment_at(500, 1, at, s); };
    EXPECT_NEAR(supported_deflection_mm(beam, 2000, a, x), by_virtual_work(beam, real, unit), 1e-6);
    EXPECT_NEAR(supported_deflection_mm(beam, 2000, a, x), supported_deflection_mm(beam, 2000, x, a), 1e-15);
  }
  EXPECT_NEAR(supported_deflection_mm(beam, 2000, 250, 250), 2000 * 1.25e8 / (48 * 12000 * 1063125.0), 1e-12);
  EXPECT_EQ(supported_deflection_mm(beam, 2000, 120, 0), 0);
  EXPECT_EQ(supported_deflection_mm(beam, 2000, 120, 500), 0);
}

// An even load is many small ones.
TEST(Beam, EvenLoadIsTheSumOfSmallOnes) {
  const Beam beam{500, 12000, 1063125};
  constexpr int parts = 2000;
  double sum = 0;
  for (int i = 0; i < parts; ++i) sum += supported_deflection_mm(beam, 2000.0 / parts, 500 * (i + 0.5) / parts, 250);
  EXPECT_NEAR(supported_even_deflection_mm(beam, 2000), sum, 1e-6);
}

TEST(Beam, MomentAndStress) {
  EXPECT_NEAR(supported_moment_nmm(500, 2000, 250), 250000, 1e-9);
  EXPECT_NEAR(supported_moment_nmm(500, 2000, 100), supported_moment_nmm(500, 2000, 400), 1e-9);
  EXPECT_NEAR(bending_stress_mpa(250000, rectangle_section(140, 45).modulus_mm3), 5.2910, 5e-5);
}

// The overhang bends as a cantilever from the support, which itself turns by M L/(3EI).
TEST(Beam, Overhang) {
  const Beam beam{360, 12000, 800000};
  const double moment = 1000.0 * 80;
  const double turned = moment * 360 / (3 * 12000 * 800000.0);
  const Beam free{80, 12000, 800000};
  EXPECT_NEAR(overhang_deflection_mm(beam, 1000, 80), turned * 80 + cantilever_deflection_mm(free, 1000, 80, 80),
              1e-12);
}

// Shear angle 1.2 V/(G A), V half the force over half the span, and the whole force over a cantilever.
TEST(Beam, Shear) {
  const double g = wood_shear_modulus_mpa(12000);
  EXPECT_EQ(g, 750);
  EXPECT_NEAR(supported_shear_deflection_mm(2000, 500, g, 6300), 1.2 * 1000 / (g * 6300) * 250, 1e-15);
  EXPECT_NEAR(cantilever_shear_deflection_mm(2000, 500, g, 6300), 1.2 * 2000 / (g * 6300) * 500, 1e-15);
  EXPECT_NEAR(rectangle_shear_mpa(2000, 6300), 3000.0 / 6300, 1e-15);
}

// The 1.2 of a rectangle: energy of the parabola 1.5 (1 - 4y²/h²) of shear over that of an even one.
TEST(Beam, ShearFactorOfARectangle) {
  constexpr int steps = 10000;
  double energy = 0;
  for (int i = 0; i < steps; ++i) {
    const double y = (i + 0.5) / steps - 0.5;
    energy += std::pow(1.5 * (1 - 4 * y * y), 2) / steps;
  }
  EXPECT_NEAR(cantilever_shear_deflection_mm(1, 1, 1, 1), energy, 1e-6);
}

// The plate's equation for a point load, d/dr(1/r d/dr(r w')) = F/(2π r D), is solved by
// w = F/(16πD) (2 r² ln(r/R) + R² - r²): clamped at R, and R² F/(16πD) in the middle. Its edge moment is F/(4π).
TEST(ClampedDisc, SagSolvesThePlateEquation) {
  const ClampedDisc disc{50, 8, 2300, 0.37};
  const double plate = 2300 * 512 / (12 * (1 - 0.37 * 0.37));
  const auto w = [&](double r) {
    const double log_part = r > 0 ? 2 * r * r * std::log(r / 50) : 0;
    return 300 / (16 * pi * plate) * (log_part + 2500 - r * r);
  };
  EXPECT_NEAR(clamped_disc_sag_mm(disc, 300), w(0), 1e-12);
  constexpr double h = 1e-3;
  EXPECT_NEAR((w(50) - w(50 - h)) / h, 0, 1e-6);
  const double edge_moment = plate * (w(50 + h) - 2 * w(50) + w(50 - h)) / (h * h);
  EXPECT_NEAR(edge_moment, 300 / (4 * pi), 0.05);
  ClampedDisc wide = disc;
  wide.patch_mm = 30;  // spread so far that the edge has the greater stress
  EXPECT_NEAR(clamped_disc_edge_stress_mpa(disc, 300), 6 * 300 / (4 * pi) / 64, 1e-9);
  EXPECT_NEAR(clamped_disc_stress_mpa(wide, 300), 6 * 300 / (4 * pi) / 64, 1e-9);
}

// A patch of half the thickness or more presses as it is; the equivalent radius joins up near there.
TEST(ClampedDisc, WidePatchesCountAsTheyAre) {
  const double edge = clamped_disc_edge_stress_mpa({50, 8, 2300, 0.37, 0}, 300);
  for (const double patch : {4.0, 6.0, 12.0}) {
    EXPECT_NEAR(clamped_disc_stress_mpa({50, 8, 2300, 0.37, patch}, 300), edge * 1.37 * std::log(50 / patch), 1e-12);
  }
  EXPECT_NEAR(clamped_disc_stress_mpa({50, 8, 2300, 0.37, 0}, 300), edge * 1.37 * std::log(50 / (0.325 * 8)), 1e-12);
}

TEST(ClampedDisc, SmallerPatchesStressMoreUpToALimit) {
  ClampedDisc disc{50, 8, 2300, 0.37};
  double before = 0;
  for (const double patch : {15.0, 8.0, 4.0, 2.0, 1.0, 0.0}) {
    disc.patch_mm = patch;
    const double stress = clamped_disc_stress_mpa(disc, 300);
    EXPECT_TRUE(std::isfinite(stress));
    EXPECT_GT(stress, before);
    before = stress;
  }
}

}  // namespace
}  // namespace visewright::formulas
