#include "formulas/gear_strength.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numbers>

#include "formulas/thread_profile.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

struct FormFactor {
  double teeth;
  double factor;
};

constexpr std::array<FormFactor, 25> table{{{lewis_fewest_teeth, 0.245},
                                            {13, 0.261},
                                            {14, 0.277},
                                            {15, 0.290},
                                            {16, 0.296},
                                            {17, 0.303},
                                            {18, 0.309},
                                            {19, 0.314},
                                            {20, 0.322},
                                            {21, 0.328},
                                            {22, 0.331},
                                            {24, 0.337},
                                            {26, 0.346},
                                            {28, 0.353},
                                            {30, 0.359},
                                            {34, 0.371},
                                            {38, 0.384},
                                            {43, 0.397},
                                            {50, 0.409},
                                            {60, 0.422},
                                            {75, 0.435},
                                            {100, 0.447},
                                            {150, 0.460},
                                            {300, 0.472},
                                            {400, 0.480}}};
constexpr double rack_factor = 0.485;

}  // namespace

double lewis_form_factor(double teeth) noexcept {
  if (teeth <= table.front().teeth) return table.front().factor * teeth / table.front().teeth;
  const auto* const above =
      std::find_if(table.begin(), table.end(), [&](const FormFactor& row) { return row.teeth >= teeth; });
  const FormFactor& below = *std::prev(above);
  const double far = above == table.end() ? 0 : 1 / above->teeth;
  const double far_factor = above == table.end() ? rack_factor : above->factor;
  const double share = (1 / below.teeth - 1 / teeth) / (1 / below.teeth - far);
  return std::lerp(below.factor, far_factor, share);
}

double tooth_bending_mpa(const ToothLoad& load) noexcept {
  return load.tangential_n / (load.face_mm * load.module_mm * load.form_factor);
}

double tooth_capacity_n(const ToothLoad& shape, double stress_mpa) noexcept {
  return stress_mpa * shape.face_mm * shape.module_mm * shape.form_factor;
}

double tangential_force_n(double torque_nmm, double pitch_diameter_mm) noexcept {
  return 2 * torque_nmm / pitch_diameter_mm;
}

double idler_axle_load_n(double tangential_n) noexcept { return 2 * tangential_n; }

double single_mesh_axle_load_n(double tangential_n, double pressure_angle_rad) noexcept {
  return tangential_n / std::cos(pressure_angle_rad);
}

double axle_bending_mpa(double load_n, double lever_mm, double diameter_mm) noexcept {
  return 32 * load_n * lever_mm / (pi * diameter_mm * diameter_mm * diameter_mm);
}

double hexagon_pressure_mpa(double torque_nmm, double depth_mm, double flats_mm) noexcept {
  return 6 * torque_nmm / (depth_mm * flats_mm * flats_mm);
}

double pin_double_shear_mpa(const CrossPin& pin, double torque_nmm) noexcept {
  return torque_nmm / (pin.shaft_mm * circle_area_mm2(pin.pin_mm));
}

double pin_axial_shear_mpa(const CrossPin& pin, double force_n) noexcept {
  return force_n / (2 * circle_area_mm2(pin.pin_mm));
}

double pin_pressure_in_shaft_mpa(const CrossPin& pin, double torque_nmm) noexcept {
  return 6 * torque_nmm / (pin.pin_mm * pin.shaft_mm * pin.shaft_mm);
}

double pin_pressure_in_hub_mpa(const CrossPin& pin, double hub_outer_mm, double torque_nmm) noexcept {
  return 4 * torque_nmm / (pin.pin_mm * (hub_outer_mm * hub_outer_mm - pin.shaft_mm * pin.shaft_mm));
}

double bead_shear_mpa(const RingBead& bead, double torque_nmm, double force_n) noexcept {
  const double area = pi * bead.diameter_mm * bead.throat_mm * bead.share;
  return std::hypot(2 * torque_nmm / (bead.diameter_mm * area), force_n / area);
}

double effective_washer_diameter_mm(double washer_outer_mm, double flange_outer_mm,
                                    double washer_thickness_mm) noexcept {
  return std::min(washer_outer_mm, flange_outer_mm + 2 * washer_thickness_mm);
}

double ring_pressure_mpa(double force_n, double outer_mm, double hole_mm) noexcept {
  return force_n / (circle_area_mm2(outer_mm) - circle_area_mm2(hole_mm));
}

double set_screw_clamp_n(double tightening_nmm, double screw_mm) noexcept {
  constexpr double nut_factor = 0.2;
  return tightening_nmm / (nut_factor * screw_mm);
}

double set_screw_holding_nmm(double clamp_n, double friction, double shaft_mm) noexcept {
  return friction * clamp_n * shaft_mm;
}

double dog_point_shear_mpa(double force_n, double point_mm) noexcept { return force_n / circle_area_mm2(point_mm); }

double dog_point_force_n(double torque_nmm, double shaft_mm) noexcept { return 2 * torque_nmm / shaft_mm; }

double strip_pressure_mpa(double force_n, double width_mm, double thickness_mm) noexcept {
  return force_n / (width_mm * thickness_mm);
}

}  // namespace visewright::formulas
