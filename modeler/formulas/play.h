// A jaw on two screws: how the force divides, how the jaw leans, droops and goes askew. Derived from statics; the
// jaw is rigid here and the screws bend. Moments and torques in newton millimetres.
#pragma once

namespace visewright::formulas {

/// Forces of two screws.
struct ForceSplit {
  double first_n = 0;
  double second_n = 0;
};

/// A force on a rigid jaw at `at_mm` from the middle towards the second of two screws `span_mm` apart:
/// F1 = F (½ - x/S), F2 = F (½ + x/S). Beyond a screw the other one gets a negative force, which is no pull: it comes
/// from what holds the jaw back, the cover. Laws: they sum to F; balanced about the middle.
[[nodiscard]] ForceSplit split_force(double force_n, double at_mm, double span_mm) noexcept;
/// What the cover has to hold back: the amount by which the lesser force is below 0, else 0.
[[nodiscard]] double held_back_n(const ForceSplit&) noexcept;

/// Drive of two linked screws from a wheel on the first.
struct Drive {
  double torque_per_force_nmm_per_n = 0;  // of one screw, thread and collar
  double mesh_efficiency = 1;             // of one mesh, above 0 to 1
  int meshes = 0;                         // gears in the row less one
};

/// Hand torque T = K (F1 + F2/η^meshes). A force below 0 takes and gives no torque.
[[nodiscard]] double hand_torque_nmm(const Drive&, const ForceSplit&) noexcept;
/// The torque that crosses the train to the second screw, at the first gear: K F2/η^meshes.
[[nodiscard]] double train_torque_nmm(const Drive&, const ForceSplit&) noexcept;
/// The inverse: clamping force for a hand torque when the work is at `at_mm` from the middle, |x| ≤ S/2.
[[nodiscard]] double clamp_force_n(const Drive&, double hand_nmm, double at_mm, double span_mm) noexcept;

/// Bending of each of two screws when the work is clamped at `height_mm` from the screws' plane: F h/2. It is the same
/// all along, from the rear bush to the collar.
[[nodiscard]] double tipping_moment_nmm(double force_n, double height_mm) noexcept;

/// A screw from the bush in the fixed jaw to the collar on the moving one.
struct FreeScrew {
  double length_mm = 0;  // opening, linings and backing together
  double root_mm = 0;
  double modulus_mpa = 0;
};

/// Second moment of a round core: π dr⁴/64.
[[nodiscard]] double round_inertia_mm4(double diameter_mm) noexcept;
/// Lean of the jaw from bending: M L/(E I).
[[nodiscard]] double bending_tilt_rad(const FreeScrew&, double moment_nmm) noexcept;

/// Where a screw is guided. Plays are differences of diameters.
struct Guides {
  double bush_play_mm = 0;
  double nut_play_mm = 0;
  double bush_to_nut_mm = 0;  // middle of the bush to middle of the nut; unused without a bush
  double nut_length_mm = 0;   // engaged; used without a bush
  bool bush = true;
};

/// Lean from play to one side of straight: (bush + nut)/(2 distance) with a bush, nut play/engaged length without.
[[nodiscard]] double play_tilt_rad(const Guides&) noexcept;

/// How far the jaws part, or close up, at a height above the screws' plane: lean × height.
[[nodiscard]] double top_edge_opening_mm(double tilt_rad, double height_mm) noexcept;
/// Pressure at the edge of a bush of length l and bore d that takes a moment alone, as 6M/(d l²): the two halves press
/// opposite ways, from nothing in the middle to this at the ends.
[[nodiscard]] double bush_edge_pressure_mpa(double moment_nmm, double bore_mm, double length_mm) noexcept;
/// The force of each half of that bush: 1.5 M/l.
[[nodiscard]] double bush_half_force_n(double moment_nmm, double length_mm) noexcept;

/// A moving jaw hanging from its screws.
struct HangingJaw {
  double weight_n = 0;  // all that moves, and what leans on it
  int screws = 2;       // that share it
  double front_bush_play_mm = 0;
};

/// Where the jaw hangs lower than straight screws would hold it, and by what.
struct Droop {
  double bush_mm = 0;     // the screw lies in the bush of the fixed jaw: half its play; half the nut's without a bush
  double tilt_mm = 0;     // lean from play times the free length
  double bending_mm = 0;  // (W/screws) L³/(3EI)
  double front_mm = 0;    // half the play of the bush in the jaw
  double sum_mm = 0;
};
[[nodiscard]] Droop droop(const FreeScrew&, const Guides&, const HangingJaw&) noexcept;

/// Stiffness of parts in a row: 1/Σ 1/k. Both above 0.
[[nodiscard]] double in_series_n_per_mm(double first_n_per_mm, double second_n_per_mm) noexcept;
/// Stiffness of a bar or a pad: E A/L.
[[nodiscard]] double bar_stiffness_n_per_mm(double modulus_mpa, double area_mm2, double length_mm) noexcept;

/// Skew of the jaw over the screws' span while both collars press, work between the screws: no play counts, the two
/// screws give unequally, (F2 - F1)/k.
[[nodiscard]] double inner_racking_mm(const ForceSplit&, double stiffness_n_per_mm) noexcept;
/// Play along the screw of a nut with this play across: c tan α, c the difference of diameters, α the half flank angle.
[[nodiscard]] double axial_nut_play_mm(double nut_play_mm, double half_flank_rad) noexcept;
/// Skew over the span when the work is beyond a screw: the far collar lifts off until the slack is used up, end float
/// and axial nut play, and then the cover gives: slack + held back/k.
[[nodiscard]] double outer_racking_mm(double end_float_mm, double axial_nut_play_mm, double held_back_n,
                                      double cover_stiffness_n_per_mm) noexcept;
/// Sideways sway of the jaw, a parallelogram and no skew: lean from play × free length, plus half the bush play.
[[nodiscard]] double sway_mm(const FreeScrew&, const Guides&) noexcept;

}  // namespace visewright::formulas
