// What a driven gear, its seat on the screw and the parts that hold it there have to stand. Torques in newton
// millimetres.
#pragma once

namespace visewright::formulas {

/// Fewest teeth in the table of form factors.
inline constexpr int lewis_fewest_teeth = 12;

/// Lewis form factor Y for teeth of full depth at 20°: Mechanical Engineering Design, Table 14-2, for 12 teeth to a
/// rack. Between two counts of the table it is linear in 1/z, which runs on to the rack at 0. Below 12 teeth nothing is
/// published: the value of 12 teeth is given, shortened in proportion to the teeth, as a lower guess to be told as one.
/// Law: never falls as the teeth grow more. teeth ≥ 1.
[[nodiscard]] double lewis_form_factor(double teeth) noexcept;

/// A tooth that carries the whole force at its tip. No factor for speed: turned by hand, it is 1.
struct ToothLoad {
  double tangential_n = 0;
  double face_mm = 0;  // of the narrower gear
  double module_mm = 0;
  double form_factor = 0;
};

/// Lewis bending stress F/(b m Y).
[[nodiscard]] double tooth_bending_mpa(const ToothLoad&) noexcept;

/// Tangential force at which a tooth reaches a stress: the inverse.
[[nodiscard]] double tooth_capacity_n(const ToothLoad& shape, double stress_mpa) noexcept;

/// What the strength of a tooth bent both ways in turn, as on an idler, is multiplied by: 0.7, the usual rule of gear
/// rating standards (ISO 6336-5 and AGMA 2001 both have it).
inline constexpr double reversed_bending_factor = 0.7;

/// Force on the pitch circle: 2T/d.
[[nodiscard]] double tangential_force_n(double torque_nmm, double pitch_diameter_mm) noexcept;
/// Load on the axle of an idler in a straight row: both neighbours push the same way, 2 Ft; what they push apart
/// cancels.
[[nodiscard]] double idler_axle_load_n(double tangential_n) noexcept;
/// Load on the axle of a gear with one mesh: Ft/cos α, α the operating pressure angle.
[[nodiscard]] double single_mesh_axle_load_n(double tangential_n, double pressure_angle_rad) noexcept;
/// Bending of a round axle: 32 F l/(π d³), l the lever of the load.
[[nodiscard]] double axle_bending_mpa(double load_n, double lever_mm, double diameter_mm) noexcept;

/// Greatest pressure of a hexagon in a pocket: 6T/(h s²), h the depth that both have, s across flats. Each flat presses
/// on the half that leads, from nothing at its middle to the most at the corner.
[[nodiscard]] double hexagon_pressure_mpa(double torque_nmm, double depth_mm, double flats_mm) noexcept;

/// A pin across a shaft and the part on it.
struct CrossPin {
  double shaft_mm = 0;
  double pin_mm = 0;
};

/// Shear of the pin at two places: 4T/(π d p²).
[[nodiscard]] double pin_double_shear_mpa(const CrossPin&, double torque_nmm) noexcept;
/// Shear of the pin under a force along the shaft, two places: 2F/(π p²).
[[nodiscard]] double pin_axial_shear_mpa(const CrossPin&, double force_n) noexcept;
/// Greatest pressure of the pin in the shaft's hole under a torque: 6T/(p d²), growing from nothing at the axis.
[[nodiscard]] double pin_pressure_in_shaft_mpa(const CrossPin&, double torque_nmm) noexcept;
/// Mean pressure of the pin in the part on the shaft, through walls of outer diameter D: 4T/(p (D² - d²)). D > d.
[[nodiscard]] double pin_pressure_in_hub_mpa(const CrossPin&, double hub_outer_mm, double torque_nmm) noexcept;

/// A bead around a shaft, or pieces of one.
struct RingBead {
  double diameter_mm = 0;
  double throat_mm = 0;
  double share = 1;  // of the whole ring that is welded, above 0 to 1
};

/// Shear in the throat from a torque and a force along the axis together: sqrt(t1² + t2²), t1 = 2T/(π D² a share),
/// t2 = F/(π D a share). The throat is taken in the plane of the ring, as is usual for fillet welds.
[[nodiscard]] double bead_shear_mpa(const RingBead&, double torque_nmm, double force_n) noexcept;

/// Diameter under a washer that really presses: the washer spreads the load of the flange on it at 45° through its
/// thickness, min(washer, flange + 2t).
[[nodiscard]] double effective_washer_diameter_mm(double washer_outer_mm, double flange_outer_mm,
                                                  double washer_thickness_mm) noexcept;
/// Mean pressure of a ring: 4F/(π (D² - d²)), d the hole in the wood or the bush in it. D > d.
[[nodiscard]] double ring_pressure_mpa(double force_n, double outer_mm, double hole_mm) noexcept;

/// Force with which a set screw presses on its point: T/(0.2 d), the usual rule for dry steel threads.
[[nodiscard]] double set_screw_clamp_n(double tightening_nmm, double screw_mm) noexcept;
/// Torque that a set screw's pressure holds by friction alone, at its point and where the shaft is pressed against the
/// bore opposite: f F d, d of the shaft.
[[nodiscard]] double set_screw_holding_nmm(double clamp_n, double friction, double shaft_mm) noexcept;
/// Shear of a dog point that stands in a dimple or a groove and takes a force alone: 4F/(π p²).
[[nodiscard]] double dog_point_shear_mpa(double force_n, double point_mm) noexcept;
/// Force across a dog point in a dimple of the shaft that carries a torque alone: 2T/d.
[[nodiscard]] double dog_point_force_n(double torque_nmm, double shaft_mm) noexcept;
/// Mean pressure on a flat strip, such as the seat of a dog point in its groove: F/(w t).
[[nodiscard]] double strip_pressure_mpa(double force_n, double width_mm, double thickness_mm) noexcept;

}  // namespace visewright::formulas
