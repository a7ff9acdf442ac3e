#include "formulas/beams.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double rectangle_shear_factor = 1.2;

double cube(double x) { return x * x * x; }

double stiffness(const Beam& beam) { return beam.modulus_mpa * beam.inertia_mm4; }

}  // namespace

Section composite_section(std::span<const Strip> strips, double reference_modulus_mpa) noexcept {
  const auto area_of = [&](const Strip& s) {
    return s.breadth_mm * s.modulus_mpa / reference_modulus_mpa * (s.top_mm - s.bottom_mm);
  };
  const auto middle_of = [](const Strip& s) { return std::midpoint(s.bottom_mm, s.top_mm); };
  Section section;
  double moment = 0;
  double low = strips.front().bottom_mm;
  double high = strips.front().top_mm;
  for (const Strip& s : strips) {
    section.area_mm2 += area_of(s);
    moment += area_of(s) * middle_of(s);
    low = std::min(low, s.bottom_mm);
    high = std::max(high, s.top_mm);
  }
  section.centroid_mm = moment / section.area_mm2;
  for (const Strip& s : strips) {
    const double height = s.top_mm - s.bottom_mm;
    const double off = middle_of(s) - section.centroid_mm;
    section.inertia_mm4 += area_of(s) * (height * height / 12 + off * off);
  }
  section.modulus_top_mm3 = section.inertia_mm4 / (high - section.centroid_mm);
  section.modulus_bottom_mm3 = section.inertia_mm4 / (section.centroid_mm - low);
  section.modulus_mm3 = std::min(section.modulus_top_mm3, section.modulus_bottom_mm3);
  section.depth_mm = high - low;
  return section;
}

Section rectangle_section(double breadth_mm, double depth_mm) noexcept {
  const std::array<Strip, 1> whole{{{breadth_mm, 0, depth_mm, 1}}};
  return composite_section(whole, 1);
}

Section section_with_hole_across(const HoledRectangle& r) noexcept {
  const double middle = r.depth_mm / 2 + r.off_centre_mm;
  const std::array<Strip, 2> strips{
      {{r.breadth_mm, 0, middle - r.hole_mm / 2, 1}, {r.breadth_mm, middle + r.hole_mm / 2, r.depth_mm, 1}}};
  return composite_section(strips, 1);
}

Section section_with_hole_through(const HoledRectangle& r) noexcept {
  return rectangle_section(r.breadth_mm - r.hole_mm, r.depth_mm);
}

double modulus_left(const Section& net, const Section& gross) noexcept { return net.modulus_mm3 / gross.modulus_mm3; }

double cantilever_deflection_mm(const Beam& beam, double force_n, double a_mm, double x_mm) noexcept {
  const double near = std::min(a_mm, x_mm);
  const double far = std::max(a_mm, x_mm);
  return force_n * near * near * (3 * far - near) / (6 * stiffness(beam));
}

double cantilever_slope_rad(const Beam& beam, double force_n, double a_mm) noexcept {
  return force_n * a_mm * a_mm / (2 * stiffness(beam));
}

double cantilever_moment_slope_rad(const Beam& beam, double moment_nmm) noexcept {
  return moment_nmm * beam.length_mm / stiffness(beam);
}

double supported_deflection_mm(const Beam& beam, double force_n, double a_mm, double x_mm) noexcept {
  const double length = beam.length_mm;
  const double x = std::min(a_mm, x_mm);
  const double b = length - std::max(a_mm, x_mm);
  return force_n * b * x * (length * length - b * b - x * x) / (6 * length * stiffness(beam));
}

double supported_even_deflection_mm(const Beam& beam, double force_n) noexcept {
  return 5 * force_n * cube(beam.length_mm) / (384 * stiffness(beam));
}

double supported_moment_nmm(double length_mm, double force_n, double a_mm) noexcept {
  return force_n * a_mm * (length_mm - a_mm) / length_mm;
}

double overhang_deflection_mm(const Beam& between_supports, double force_n, double overhang_mm) noexcept {
  return force_n * overhang_mm * overhang_mm * (between_supports.length_mm + overhang_mm) /
         (3 * stiffness(between_supports));
}

double bending_stress_mpa(double moment_nmm, double modulus_mm3) noexcept { return moment_nmm / modulus_mm3; }

double supported_shear_deflection_mm(double force_n, double length_mm, double shear_modulus_mpa,
                                     double area_mm2) noexcept {
  return cantilever_shear_deflection_mm(force_n, length_mm, shear_modulus_mpa, area_mm2) / 4;
}

double cantilever_shear_deflection_mm(double force_n, double length_mm, double shear_modulus_mpa,
                                      double area_mm2) noexcept {
  return rectangle_shear_factor * force_n * length_mm / (shear_modulus_mpa * area_mm2);
}

double rectangle_shear_mpa(double force_n, double area_mm2) noexcept { return 1.5 * force_n / area_mm2; }

double wood_shear_modulus_mpa(double modulus_mpa) noexcept { return modulus_mpa / 16; }

double clamped_disc_sag_mm(const ClampedDisc& disc, double force_n) noexcept {
  const double plate = disc.modulus_mpa * cube(disc.thickness_mm) / (12 * (1 - disc.poisson * disc.poisson));
  return force_n * disc.radius_mm * disc.radius_mm / (16 * pi * plate);
}

double clamped_disc_edge_stress_mpa(const ClampedDisc& disc, double force_n) noexcept {
  return 3 * force_n / (2 * pi * disc.thickness_mm * disc.thickness_mm);
}

double clamped_disc_stress_mpa(const ClampedDisc& disc, double force_n) noexcept {
  const double edge = clamped_disc_edge_stress_mpa(disc, force_n);
  // A patch that is small beside the thickness spreads inside the plate before it bends it.
  const double patch = disc.patch_mm >= disc.thickness_mm / 2
                           ? disc.patch_mm
                           : std::sqrt(1.6 * disc.patch_mm * disc.patch_mm + disc.thickness_mm * disc.thickness_mm) -
                                 0.675 * disc.thickness_mm;
  return std::max(edge, edge * (1 + disc.poisson) * std::log(disc.radius_mm / patch));
}

}  // namespace visewright::formulas
