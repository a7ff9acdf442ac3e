#include "formulas/spur_gear.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "formulas/involute.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

double square(double x) { return x * x; }

/// The angle at the axis that a full tooth takes on the base circle: s/d + inv a, twice the half angle.
double base_tooth_angle_rad(const SpurGear& gear) {
  return tooth_thickness_mm(gear) / pitch_diameter_mm(gear) + involute(gear.pressure_angle_rad);
}

/// How deep the rack's flank is straight below its reference line, in modules.
double straight_depth_factor(const SpurGear& gear) {
  return gear.dedendum_factor - rack_tip_radius_mm(gear) / gear.module_mm * (1 - std::sin(gear.pressure_angle_rad));
}

/// From the point where the line of action touches the gear's base circle to its tip circle, along that line.
double tip_reach_mm(const SpurGear& gear) {
  return std::sqrt(square(tip_diameter_mm(gear)) - square(base_diameter_mm(gear))) / 2;
}

/// The line of action between the points where it touches the two base circles.
double tangent_mm(const Mesh& mesh) { return mesh.centre_distance_mm * std::sin(operating_pressure_angle_rad(mesh)); }

}  // namespace

double pitch_diameter_mm(const SpurGear& gear) noexcept { return gear.module_mm * gear.teeth; }

double base_diameter_mm(const SpurGear& gear) noexcept {
  return pitch_diameter_mm(gear) * std::cos(gear.pressure_angle_rad);
}

double tip_diameter_mm(const SpurGear& gear) noexcept {
  return gear.module_mm * (gear.teeth + 2 * gear.addendum_factor + 2 * gear.shift);
}

double root_diameter_mm(const SpurGear& gear) noexcept {
  return gear.module_mm * (gear.teeth - 2 * gear.dedendum_factor + 2 * gear.shift);
}

double tooth_thickness_mm(const SpurGear& gear) noexcept {
  return gear.module_mm * (pi / 2 + 2 * gear.shift * std::tan(gear.pressure_angle_rad)) - gear.thinning_mm;
}

double thickness_at_mm(const SpurGear& gear, double diameter_mm) noexcept {
  const double angle_rad = std::acos(std::min(1.0, base_diameter_mm(gear) / diameter_mm));
  return diameter_mm * (base_tooth_angle_rad(gear) - involute(angle_rad));
}

double tip_thickness_mm(const SpurGear& gear) noexcept { return thickness_at_mm(gear, tip_diameter_mm(gear)); }

double rack_tip_radius_mm(const SpurGear& gear) noexcept {
  const double half_land = pi / 4 - gear.dedendum_factor * std::tan(gear.pressure_angle_rad);
  const double full_round = half_land / std::tan(pi / 4 - gear.pressure_angle_rad / 2);
  return gear.module_mm * std::clamp(full_round, 0.0, gear.tip_radius_factor);
}

double least_shift_without_undercut(const SpurGear& gear) noexcept {
  return straight_depth_factor(gear) - gear.teeth / 2.0 * square(std::sin(gear.pressure_angle_rad));
}

double least_teeth_without_undercut(const SpurGear& gear) noexcept {
  return 2 * (straight_depth_factor(gear) - gear.shift) / square(std::sin(gear.pressure_angle_rad));
}

bool undercut(const SpurGear& gear) noexcept { return gear.shift < least_shift_without_undercut(gear); }

double span_over_teeth_mm(const SpurGear& gear, int teeth_spanned) noexcept {
  const double base_pitch = pi * gear.module_mm * std::cos(gear.pressure_angle_rad);
  return base_pitch * (teeth_spanned - 1) + base_diameter_mm(gear) * base_tooth_angle_rad(gear);
}

double teeth_to_span_exactly(const SpurGear& gear) noexcept {
  const double cosine = std::cos(gear.pressure_angle_rad);
  const double share = gear.shift / gear.teeth;
  const double roll = std::sqrt(square(1 + 2 * share) - square(cosine)) / cosine;
  return 0.5 +
         gear.teeth / pi * (roll - involute(gear.pressure_angle_rad) - 2 * share * std::tan(gear.pressure_angle_rad));
}

int teeth_to_span(const SpurGear& gear) noexcept {
  // 18 and 36 teeth at 20° come out at exactly a half, which rounding must not turn into a matter of luck.
  constexpr double luck = 1e-9;
  return std::max(2, static_cast<int>(std::ceil(teeth_to_span_exactly(gear) - 0.5 - luck)));
}

double over_pins_mm(const SpurGear& gear, double pin_diameter_mm) noexcept {
  const double base = base_diameter_mm(gear);
  const double phi_rad = inverse_involute(pin_diameter_mm / base + base_tooth_angle_rad(gear) - pi / gear.teeth);
  const double across = base / std::cos(phi_rad);
  return (gear.teeth % 2 == 0 ? across : across * std::cos(pi / (2 * gear.teeth))) + pin_diameter_mm;
}

double tight_centre_distance_mm(const SpurGear& first, const SpurGear& second) noexcept {
  const int teeth = first.teeth + second.teeth;
  const double shifts = first.shift + second.shift;
  const double standard = first.module_mm * teeth / 2;
  if (shifts == 0) return standard;
  const double angle = first.pressure_angle_rad;
  const double operating = inverse_involute(2 * std::tan(angle) * shifts / teeth + involute(angle));
  return standard * std::cos(angle) / std::cos(operating);
}

bool involutes_meet(const Mesh& mesh) noexcept {
  return 2 * mesh.centre_distance_mm > base_diameter_mm(mesh.first) + base_diameter_mm(mesh.second);
}

double operating_pressure_angle_rad(const Mesh& mesh) noexcept {
  const double bases = base_diameter_mm(mesh.first) + base_diameter_mm(mesh.second);
  return std::acos(bases / (2 * mesh.centre_distance_mm));
}

double normal_backlash_mm(const Mesh& mesh) noexcept {
  const double angle = mesh.first.pressure_angle_rad;
  const int teeth = mesh.first.teeth + mesh.second.teeth;
  const double spread = teeth * (involute(operating_pressure_angle_rad(mesh)) - involute(angle));
  const double taken = 2 * (mesh.first.shift + mesh.second.shift) * std::tan(angle);
  const double thinned = mesh.first.thinning_mm + mesh.second.thinning_mm;
  return std::cos(angle) * (mesh.first.module_mm * (spread - taken) + thinned);
}

double backlash_mm(const Mesh& mesh) noexcept {
  return normal_backlash_mm(mesh) / std::cos(mesh.first.pressure_angle_rad);
}

double contact_ratio(const Mesh& mesh) noexcept {
  const double base_pitch = pi * mesh.first.module_mm * std::cos(mesh.first.pressure_angle_rad);
  return (tip_reach_mm(mesh.first) + tip_reach_mm(mesh.second) - tangent_mm(mesh)) / base_pitch;
}

double tip_clearance_mm(const Mesh& mesh) noexcept {
  const auto gap = [&](const SpurGear& tip, const SpurGear& root) {
    return mesh.centre_distance_mm - (tip_diameter_mm(tip) + root_diameter_mm(root)) / 2;
  };
  return std::min(gap(mesh.first, mesh.second), gap(mesh.second, mesh.first));
}

bool free_of_interference(const Mesh& mesh) noexcept {
  return std::max(tip_reach_mm(mesh.first), tip_reach_mm(mesh.second)) <= tangent_mm(mesh);
}

}  // namespace visewright::formulas
