#include "formulas/power_screw.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "formulas/thread_profile.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

/// Friction as the slope of the flank makes it felt: f sec α.
double felt_friction(const PowerScrew& screw) { return screw.friction / std::cos(screw.half_flank_rad); }

/// Stress of a load on the projection of the engaged thread at this diameter, half a pitch to each pitch.
double on_half_the_cylinder_mpa(double force_n, double diameter_mm, double length_mm) {
  return 2 * force_n / (pi * diameter_mm * length_mm);
}

}  // namespace

double raising_torque_nmm(const PowerScrew& screw, double force_n) noexcept {
  const double turn = pi * screw.mean_mm;
  const double felt = felt_friction(screw);
  return force_n * screw.mean_mm / 2 * (screw.lead_mm + turn * felt) / (turn - felt * screw.lead_mm);
}

double lowering_torque_nmm(const PowerScrew& screw, double force_n) noexcept {
  const double turn = pi * screw.mean_mm;
  const double felt = felt_friction(screw);
  return force_n * screw.mean_mm / 2 * (turn * felt - screw.lead_mm) / (turn + felt * screw.lead_mm);
}

double opening_torque_nmm(const PowerScrew& screw, double resistance_n) noexcept {
  return raising_torque_nmm(screw, resistance_n);
}

double collar_torque_nmm(double force_n, double friction, double friction_diameter_mm) noexcept {
  return force_n * friction * friction_diameter_mm / 2;
}

double ring_friction_diameter_mm(double outer_mm, double inner_mm) noexcept {
  // ⅔ (D³ - d³)/(D² - d²) with D - d divided out, so that it holds for the thinnest ring.
  const double sum = outer_mm + inner_mm;
  return 2.0 / 3.0 * (sum - outer_mm * inner_mm / sum);
}

double friction_to_hold(const PowerScrew& screw) noexcept {
  return screw.lead_mm * std::cos(screw.half_flank_rad) / (pi * screw.mean_mm);
}

double self_locking_margin(const PowerScrew& screw) noexcept { return screw.friction / friction_to_hold(screw); }

double screw_efficiency(double lead_mm, double force_n, double torque_nmm) noexcept {
  return force_n * lead_mm / (2 * pi * torque_nmm);
}

double force_from_torque_n(const PowerScrew& screw, double torque_nmm, double collar_friction,
                           double collar_friction_diameter_mm) noexcept {
  return torque_nmm /
         (raising_torque_nmm(screw, 1) + collar_torque_nmm(1, collar_friction, collar_friction_diameter_mm));
}

double engaged_length_mm(double nut_height_mm, double chamfer_mm) noexcept {
  return std::max(0.0, nut_height_mm - 2 * chamfer_mm);
}

double screw_thread_shear_mpa(const Engagement& thread, double force_n) noexcept {
  return on_half_the_cylinder_mpa(force_n, thread.root_mm, thread.length_mm);
}

double nut_thread_shear_mpa(const Engagement& thread, double force_n) noexcept {
  return on_half_the_cylinder_mpa(force_n, thread.major_mm, thread.length_mm);
}

double flank_pressure_mpa(const Engagement& thread, double force_n) noexcept {
  return on_half_the_cylinder_mpa(force_n, thread.mean_mm, thread.length_mm);
}

double thread_bending_mpa(const Engagement& thread, double force_n) noexcept {
  // Half a pitch high at the foot, the load in the middle of half a pitch of depth: M/Z = 3 times the mean shear.
  return 3 * screw_thread_shear_mpa(thread, force_n);
}

double thread_foot_von_mises_mpa(double thread_bending_mpa, double axial_mpa, double torsion_mpa) noexcept {
  const double x = thread_bending_mpa;
  const double y = axial_mpa;
  return std::sqrt(x * x - x * y + y * y + 3 * torsion_mpa * torsion_mpa);
}

ScrewStress screw_stress(const ScrewLoad& load, double root_mm) noexcept {
  const double cube = pi * root_mm * root_mm * root_mm;
  ScrewStress stress;
  stress.axial_mpa = std::abs(load.force_n) / circle_area_mm2(root_mm);
  stress.bending_mpa = 32 * std::abs(load.bending_nmm) / cube;
  stress.torsion_mpa = 16 * std::abs(load.torque_nmm) / cube;
  stress.von_mises_mpa = std::hypot(stress.axial_mpa + stress.bending_mpa, std::sqrt(3) * stress.torsion_mpa);
  return stress;
}

double core_area_at_pin_mm2(double root_mm, double pin_mm) noexcept {
  return circle_area_mm2(root_mm) - pin_mm * root_mm;
}

double screw_twist_rad(double torque_nmm, double length_mm, double root_mm, double shear_modulus_mpa) noexcept {
  return 32 * torque_nmm * length_mm / (shear_modulus_mpa * pi * std::pow(root_mm, 4));
}

}  // namespace visewright::formulas
