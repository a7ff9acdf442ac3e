// Bending of jaws, bars and plates: elementary beam theory and the thin clamped disc. Forms as in every table of
// beam formulas (for example Formulas for Stress and Strain). Small deflections, elastic.
#pragma once

#include <span>

namespace visewright::formulas {

/// A straight strip of a beam's section, parallel to the neutral axis. Heights from any common datum.
struct Strip {
  double breadth_mm = 0;
  double bottom_mm = 0;
  double top_mm = 0;       // above the bottom
  double modulus_mpa = 0;  // of elasticity, along the beam
};

/// A section as if it were all of the reference material. For one material the numbers are the plain ones.
struct Section {
  double area_mm2 = 0;
  double centroid_mm = 0;      // neutral axis, from the strips' datum
  double inertia_mm4 = 0;      // second moment of area about it
  double modulus_top_mm3 = 0;  // inertia over the distance to the top fibre
  double modulus_bottom_mm3 = 0;
  double modulus_mm3 = 0;  // the lesser of the two
  double depth_mm = 0;     // from the lowest to the highest fibre
};

/// Sum of strips, each breadth multiplied by its modulus over the reference modulus: A = Σ A, y0 = Σ A y/A,
/// I = Σ (b h³/12 + A (y - y0)²). At least one strip, moduli above 0; strips may leave gaps. A stress from
/// `modulus_mm3` is that of the reference material: in another one it is that times E over the reference. Laws: cutting
/// a strip in two changes nothing; a shifted datum shifts the centroid alone.
[[nodiscard]] Section composite_section(std::span<const Strip> strips, double reference_modulus_mpa) noexcept;

/// Solid rectangle, b h²/6.
[[nodiscard]] Section rectangle_section(double breadth_mm, double depth_mm) noexcept;

/// A rectangle of one material with one hole.
struct HoledRectangle {
  double breadth_mm = 0;     // across the load
  double depth_mm = 0;       // along the load
  double hole_mm = 0;        // diameter
  double off_centre_mm = 0;  // of the hole's axis, either sign
};

/// Hole across the breadth, its axis parallel to the neutral axis: a strip as high as the hole is missing. On centre
/// Z = b (h³ - d³)/(6h); off centre the neutral axis shifts. The hole must stay inside the depth.
[[nodiscard]] Section section_with_hole_across(const HoledRectangle&) noexcept;
/// Hole through the depth, along the load: Z = (b - d) h²/6, wherever it is in the breadth. d < b.
[[nodiscard]] Section section_with_hole_through(const HoledRectangle&) noexcept;
/// Share of the section modulus that a hole leaves: net over gross, 0 to 1.
[[nodiscard]] double modulus_left(const Section& net, const Section& gross) noexcept;

/// A beam of one section.
struct Beam {
  double length_mm = 0;  // between supports, or free length
  double modulus_mpa = 0;
  double inertia_mm4 = 0;
};

/// Bending of a cantilever at `x_mm` from its root under a force at `a_mm`: F x² (3a - x)/(6EI) up to the force,
/// F a² (3x - a)/(6EI) beyond. At its end F L³/(3EI). Law: x and a may be swapped.
[[nodiscard]] double cantilever_deflection_mm(const Beam&, double force_n, double a_mm, double x_mm) noexcept;
/// The slope it has at the force and beyond: F a²/(2EI).
[[nodiscard]] double cantilever_slope_rad(const Beam&, double force_n, double a_mm) noexcept;
/// Slope at the end of a cantilever under a moment there: M L/(EI).
[[nodiscard]] double cantilever_moment_slope_rad(const Beam&, double moment_nmm) noexcept;

/// Bending at `x_mm` of a beam on two supports under a force at `a_mm`, both from the same support, 0 to L:
/// F b x (L² - b² - x²)/(6 L E I) for x ≤ a, b = L - a; mid force F L³/(48EI). Law: x and a may be swapped.
[[nodiscard]] double supported_deflection_mm(const Beam&, double force_n, double a_mm, double x_mm) noexcept;
/// The same for an even load of the whole length, F in total, at mid-span: 5 F L³/(384EI).
[[nodiscard]] double supported_even_deflection_mm(const Beam&, double force_n) noexcept;
/// Greatest moment under a force at `a_mm`: F a (L - a)/L.
[[nodiscard]] double supported_moment_nmm(double length_mm, double force_n, double a_mm) noexcept;
/// End of an overhang beyond a support of a beam on two supports, under a force at that end: F c² (L + c)/(3EI).
[[nodiscard]] double overhang_deflection_mm(const Beam& between_supports, double force_n, double overhang_mm) noexcept;
/// Greatest stress: M/Z.
[[nodiscard]] double bending_stress_mpa(double moment_nmm, double modulus_mm3) noexcept;

/// What shear adds at mid-span under a mid force: 1.2 F L/(4 G A). 1.2 is the form factor of a rectangle.
[[nodiscard]] double supported_shear_deflection_mm(double force_n, double length_mm, double shear_modulus_mpa,
                                                   double area_mm2) noexcept;
/// What shear adds at the end of a cantilever: 1.2 F L/(G A).
[[nodiscard]] double cantilever_shear_deflection_mm(double force_n, double length_mm, double shear_modulus_mpa,
                                                    double area_mm2) noexcept;
/// Greatest shear in a rectangle: 1.5 V/A.
[[nodiscard]] double rectangle_shear_mpa(double force_n, double area_mm2) noexcept;
/// Shear modulus of wood where nothing else is known: E/16, the usual value for wood along the grain (Wood Handbook;
/// product standards for structural timber take E/16).
[[nodiscard]] double wood_shear_modulus_mpa(double modulus_mpa) noexcept;

/// A flat disc clamped all round its edge, pressed in the middle.
struct ClampedDisc {
  double radius_mm = 0;
  double thickness_mm = 0;
  double modulus_mpa = 0;
  double poisson = 0;
  double patch_mm = 0;  // radius of the patch that presses, 0 for a point
};

/// Sag in the middle: F R²/(16 π D), D = E t³/(12 (1 - ν²)).
[[nodiscard]] double clamped_disc_sag_mm(const ClampedDisc&, double force_n) noexcept;
/// Stress at the clamped edge: 3F/(2π t²), a little on the safe side for a wide patch.
[[nodiscard]] double clamped_disc_edge_stress_mpa(const ClampedDisc&, double force_n) noexcept;
/// Greatest stress: that at the edge, or in the middle 3F (1 + ν)/(2π t²) ln(R/r), whichever is more. r is the patch,
/// or for patches smaller than half the thickness sqrt(1.6 patch² + t²) - 0.675 t. r < R.
[[nodiscard]] double clamped_disc_stress_mpa(const ClampedDisc&, double force_n) noexcept;

}  // namespace visewright::formulas
