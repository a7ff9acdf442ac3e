#include "formulas/play.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

/// By how much more force the first gear must pass on than the last one gets.
double train_loss(const Drive& drive) { return std::pow(drive.mesh_efficiency, -drive.meshes); }

/// How far the screw lies off the middle of what guides it next to the jaw.
double rest_mm(const Guides& guides) { return (guides.bush ? guides.bush_play_mm : guides.nut_play_mm) / 2; }

}  // namespace

ForceSplit split_force(double force_n, double at_mm, double span_mm) noexcept {
  return {force_n * (0.5 - at_mm / span_mm), force_n * (0.5 + at_mm / span_mm)};
}

double held_back_n(const ForceSplit& split) noexcept { return std::max(0.0, -std::min(split.first_n, split.second_n)); }

double hand_torque_nmm(const Drive& drive, const ForceSplit& split) noexcept {
  return drive.torque_per_force_nmm_per_n * std::max(0.0, split.first_n) + train_torque_nmm(drive, split);
}

double train_torque_nmm(const Drive& drive, const ForceSplit& split) noexcept {
  return drive.torque_per_force_nmm_per_n * std::max(0.0, split.second_n) * train_loss(drive);
}

double clamp_force_n(const Drive& drive, double hand_nmm, double at_mm, double span_mm) noexcept {
  return hand_nmm / hand_torque_nmm(drive, split_force(1, at_mm, span_mm));
}

double tipping_moment_nmm(double force_n, double height_mm) noexcept { return force_n * height_mm / 2; }

double round_inertia_mm4(double diameter_mm) noexcept { return pi * std::pow(diameter_mm, 4) / 64; }

double bending_tilt_rad(const FreeScrew& screw, double moment_nmm) noexcept {
  return moment_nmm * screw.length_mm / (screw.modulus_mpa * round_inertia_mm4(screw.root_mm));
}

double play_tilt_rad(const Guides& guides) noexcept {
  if (!guides.bush) return guides.nut_play_mm / guides.nut_length_mm;
  return (guides.bush_play_mm + guides.nut_play_mm) / (2 * guides.bush_to_nut_mm);
}

double top_edge_opening_mm(double tilt_rad, double height_mm) noexcept { return tilt_rad * height_mm; }

double bush_edge_pressure_mpa(double moment_nmm, double bore_mm, double length_mm) noexcept {
  return 6 * moment_nmm / (bore_mm * length_mm * length_mm);
}

double bush_half_force_n(double moment_nmm, double length_mm) noexcept { return 1.5 * moment_nmm / length_mm; }

Droop droop(const FreeScrew& screw, const Guides& guides, const HangingJaw& jaw) noexcept {
  const double stiffness = screw.modulus_mpa * round_inertia_mm4(screw.root_mm);
  Droop droop;
  droop.bush_mm = rest_mm(guides);
  droop.tilt_mm = play_tilt_rad(guides) * screw.length_mm;
  droop.bending_mm = jaw.weight_n / jaw.screws * std::pow(screw.length_mm, 3) / (3 * stiffness);
  droop.front_mm = jaw.front_bush_play_mm / 2;
  droop.sum_mm = droop.bush_mm + droop.tilt_mm + droop.bending_mm + droop.front_mm;
  return droop;
}

double in_series_n_per_mm(double first_n_per_mm, double second_n_per_mm) noexcept {
  return 1 / (1 / first_n_per_mm + 1 / second_n_per_mm);
}

double bar_stiffness_n_per_mm(double modulus_mpa, double area_mm2, double length_mm) noexcept {
  return modulus_mpa * area_mm2 / length_mm;
}

double inner_racking_mm(const ForceSplit& split, double stiffness_n_per_mm) noexcept {
  return (split.second_n - split.first_n) / stiffness_n_per_mm;
}

double axial_nut_play_mm(double nut_play_mm, double half_flank_rad) noexcept {
  return nut_play_mm * std::tan(half_flank_rad);
}

double outer_racking_mm(double end_float_mm, double axial_nut_play_mm, double held_back_n,
                        double cover_stiffness_n_per_mm) noexcept {
  return end_float_mm + axial_nut_play_mm + held_back_n / cover_stiffness_n_per_mm;
}

double sway_mm(const FreeScrew& screw, const Guides& guides) noexcept {
  return rest_mm(guides) + play_tilt_rad(guides) * screw.length_mm;
}

}  // namespace visewright::formulas
