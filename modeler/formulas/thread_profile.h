// Sizes that follow from the basic profile of a screw thread. All of them single-start: the lead is asked for apart.
#pragma once

namespace visewright::formulas {

/// Diameters in millimetres. "Minor diameter" means two things in tables, so the two have two names here.
struct ThreadProfile {
  double major_mm = 0;      // d, D: crest of the screw
  double mean_mm = 0;       // d2, E: pitch diameter
  double nut_minor_mm = 0;  // D1: crest of the nut thread
  double root_mm = 0;       // d3: bottom of the screw thread, which carries the load
  double nut_major_mm = 0;  // D4: bottom of the nut thread
  double stress_area_mm2 = 0;
  double half_flank_rad = 0;  // flank against the plane across the axis
};

/// ISO 68-1 and ISO 724, H = √3/2 P: d2 = d - 3/4 H; D1 = d - 5/4 H; d3 = d - 17/12 H (d - 1.22687 P); nut major d.
/// Stress area after ISO 898-1, on the mean of d2 and d3.
[[nodiscard]] ThreadProfile metric_thread(double major_mm, double pitch_mm) noexcept;

/// ISO 2901 and ISO 2904, 30° trapezoid: d2 = d - P/2; D1 = d - P; d3 = D1 - 2 ac; D4 = d + 2 ac. Stress area on the
/// mean of d2 and d3.
[[nodiscard]] ThreadProfile trapezoidal_thread(double major_mm, double pitch_mm) noexcept;
/// Crest clearance ac of ISO 2904: 0.15 mm for a pitch of 1.5, 0.25 up to 5, 0.5 up to 12, 1 above.
[[nodiscard]] double trapezoidal_clearance_mm(double pitch_mm) noexcept;

/// ASME B1.1, UNC: the profile of ISO 68-1 with n threads to an inch. The root is the flat one, D - 1.22687/n, which is
/// the smaller of the two that tables print (the rounded UNR root is D - 1.19078/n). Stress area on D - 9/8 H, that is
/// D - 0.9743/n.
[[nodiscard]] ThreadProfile unified_thread(double major_mm, double threads_per_inch) noexcept;

/// ASME B1.5 general purpose, 29° trapezoid: E = D - p/2; K = D - p is the nut's minor; the screw's root is deeper and
/// the nut's major larger by the allowance 0.020 in, 0.010 in above 10 threads an inch. Stress area of the basic sizes,
/// on the mean of E and K: areas worked out from limits come out lower.
[[nodiscard]] ThreadProfile acme_thread(double major_mm, double threads_per_inch) noexcept;

/// Rise of the thread on the pitch cylinder: tan = lead/(π d2).
[[nodiscard]] double lead_angle_rad(double lead_mm, double mean_mm) noexcept;

/// Cross-section of a round bar.
[[nodiscard]] double circle_area_mm2(double diameter_mm) noexcept;

}  // namespace visewright::formulas
