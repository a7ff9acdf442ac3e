// A screw that presses: torque, friction and stress. Torques are in newton millimetres.
// Forms and symbols after Mechanical Engineering Design, chapter on screws (equations 8-1 to 8-8 of the 9th edition).
#pragma once

namespace visewright::formulas {

/// What the torque of a screw under load depends on. The lead is starts times pitch.
struct PowerScrew {
  double lead_mm = 0;
  double mean_mm = 0;         // pitch diameter, where the friction is taken to act
  double half_flank_rad = 0;  // 0 square, 14.5° Acme, 15° trapezoidal, 30° metric and unified
  double friction = 0;        // of the threads
};

/// Torque in the thread that drives the nut against a force, without any collar:
/// T = F dm/2 (l + π f dm sec α)/(π dm - f l sec α). Proportional to the force. The denominator must be positive, that
/// is f tan λ < cos α, λ the lead angle: steeper or rougher threads cannot be driven from the screw at all.
/// Law: without friction T = F l/2π.
[[nodiscard]] double raising_torque_nmm(const PowerScrew&, double force_n) noexcept;

/// Torque in the thread that lets the nut go with the force: T = F dm/2 (π f dm sec α - l)/(π dm + f l sec α).
/// Negative when the load drives the screw by itself. Law: not negative exactly when the thread holds itself.
[[nodiscard]] double lowering_torque_nmm(const PowerScrew&, double force_n) noexcept;

/// Torque to open a jaw that sticks, against a resistance that points the other way than the clamp did. The thread is
/// climbed as when clamping, and the collar is unloaded, so this is the raising torque alone.
[[nodiscard]] double opening_torque_nmm(const PowerScrew&, double resistance_n) noexcept;

/// Friction torque of a thrust face: F fc dc/2.
[[nodiscard]] double collar_torque_nmm(double force_n, double friction, double friction_diameter_mm) noexcept;

/// Diameter on which the friction of a ring under even pressure acts: ⅔ (D³ - d³)/(D² - d²), D > d ≥ 0. Law: between
/// the mean diameter and D; it is the mean diameter for a thin ring.
[[nodiscard]] double ring_friction_diameter_mm(double outer_mm, double inner_mm) noexcept;

/// Friction from which the thread holds a load by itself: l cos α/(π dm). The collar helps beyond that.
[[nodiscard]] double friction_to_hold(const PowerScrew&) noexcept;

/// Friction there is over friction to hold: 1 or more holds.
[[nodiscard]] double self_locking_margin(const PowerScrew&) noexcept;

/// Work out over work in of one turn: F l/(2π T), T the whole torque, collar included, above 0.
[[nodiscard]] double screw_efficiency(double lead_mm, double force_n, double torque_nmm) noexcept;

/// Force that a torque raises: the inverse of raising and collar torque together.
[[nodiscard]] double force_from_torque_n(const PowerScrew&, double torque_nmm, double collar_friction,
                                         double collar_friction_diameter_mm) noexcept;

/// Thread of a screw inside its nut. The thread is taken to be half a pitch thick and half a pitch deep, as square and
/// trapezoidal ones are; a 60° thread is thicker at its foot, so the stresses below are on the safe side for it.
struct Engagement {
  double major_mm = 0;
  double mean_mm = 0;
  double root_mm = 0;    // bottom of the screw's thread
  double length_mm = 0;  // of full thread: the nut less both chamfers, above 0
};

/// Length of full thread in a nut: its height less the chamfer at each end, never below 0.
[[nodiscard]] double engaged_length_mm(double nut_height_mm, double chamfer_mm) noexcept;

/// Share of the load that the first turn of a steel thread carries; the same source.
inline constexpr double first_turn_share = 0.38;

/// Mean shear in the foot of the screw's thread: 2F/(π dr L). The peak over the depth is 1.5 times that.
[[nodiscard]] double screw_thread_shear_mpa(const Engagement&, double force_n) noexcept;
/// Mean shear in the foot of the nut's thread: 2F/(π d L).
[[nodiscard]] double nut_thread_shear_mpa(const Engagement&, double force_n) noexcept;
/// Pressure between the flanks: 2F/(π dm L).
[[nodiscard]] double flank_pressure_mpa(const Engagement&, double force_n) noexcept;
/// Bending at the foot of the screw's thread, taken as a short cantilever: 6F/(π dr L). For the worst turn put in
/// `first_turn_share` of the force and one pitch for the length.
[[nodiscard]] double thread_bending_mpa(const Engagement&, double force_n) noexcept;

/// Von Mises stress at the foot of the thread from the bending of the thread along the screw's radius, the axial stress
/// of the body (its sign counts: compression negative) and its torsion, which all meet there at right angles.
[[nodiscard]] double thread_foot_von_mises_mpa(double thread_bending_mpa, double axial_mpa,
                                               double torsion_mpa) noexcept;

/// What one section of a screw carries.
struct ScrewLoad {
  double force_n = 0;      // along the axis, pull or push
  double torque_nmm = 0;   // about it
  double bending_nmm = 0;  // across it
};

struct ScrewStress {
  double axial_mpa = 0;
  double bending_mpa = 0;
  double torsion_mpa = 0;
  double von_mises_mpa = 0;  // sqrt((axial + bending)² + 3 torsion²)
};

/// Stress at the surface of the core: 4F/(π dr²), 32M/(π dr³), 16T/(π dr³). All three magnitudes.
[[nodiscard]] ScrewStress screw_stress(const ScrewLoad&, double root_mm) noexcept;

/// Area left in the core where a pin goes across: π dr²/4 - p dr, a little on the safe side. p < π dr/4.
[[nodiscard]] double core_area_at_pin_mm2(double root_mm, double pin_mm) noexcept;

/// Angle by which a length of screw winds up: T L/(G J), J = π dr⁴/32.
[[nodiscard]] double screw_twist_rad(double torque_nmm, double length_mm, double root_mm,
                                     double shear_modulus_mpa) noexcept;

}  // namespace visewright::formulas
