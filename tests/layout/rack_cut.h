// A tooth space cut by brute force: the basic rack is laid on the gear in many rolled positions, and a point belongs to
// the gear when no position of the rack covers it. Shares nothing with the outline under test but the rack's sizes.
#pragma once

#include <algorithm>
#include <cmath>

#include "layout/gear_outline.h"

namespace visewright::layout {

/// How far the point (radius, angle) of the gear's own frame (tooth centre on +x) lies from the metal of one rack tooth
/// as the rack stands at roll angle `phi`, mm; negative inside. The rack tooth that cuts the space before the tooth at
/// angle 0 has its middle half a pitch from it. Thinned teeth come from feeding the same rack sideways by half of the
/// thinning on either side: the rack tooth is that much wider at both flanks.
inline double depth_in_rack(const GearShape& g, double x, double y, double phi) {
  const double pi = std::acos(-1.0), m = g.module_mm, alpha = g.pressure_angle_rad;
  const double rp = m * g.teeth / 2;
  // Space below the tooth at angle 0: turn so that its middle stands on +x, then by phi; the rack has moved rp·phi.
  const double turn = pi / g.teeth + phi;
  const double px = x * std::cos(turn) - y * std::sin(turn), py = x * std::sin(turn) + y * std::cos(turn);
  const double u = px - rp - g.shift * m;  // from the rack's datum line, away from the axis
  const double v = py - rp * phi;          // along the rack, from the middle of its tooth
  const double rho = g.tip_rounding * m, deep = g.dedendum * m;
  // Half width of the rack tooth at height u above its datum; towards the axis (u < 0) it narrows.
  const double half_at_datum = m * pi / 4 + g.thinning_mm / 2;
  const double side = std::abs(v);
  // Distances to the flank line, to the tip line, and to the rounding between them.
  const double flank = (side - half_at_datum - u * std::tan(alpha)) * std::cos(alpha);
  const double tip = -deep - u;
  const double centre_u = -deep + rho;
  const double centre_v = half_at_datum + centre_u * std::tan(alpha) - rho / std::cos(alpha);
  const double du = u - centre_u, dv = side - centre_v;
  const bool at_rounding = dv >= 0 && du * std::cos(alpha) + dv * std::sin(alpha) <= 0;
  if (at_rounding) return std::hypot(du, dv) - rho;
  return std::max(flank, tip);
}

/// The least of that over all roll positions that can reach the point: the point's distance from what the rack takes.
inline double distance_from_cut(const GearShape& g, double x, double y) {
  const auto depth = [&](double phi) { return depth_in_rack(g, x, y, phi); };
  const double span = 1.2;
  constexpr int steps = 4000;
  double best = 1e9, at = 0;
  for (int i = 0; i <= steps; ++i) {
    const double phi = -span + 2 * span * i / steps, d = depth(phi);
    if (d < best) {
      best = d;
      at = phi;
    }
  }
  double low = at - 2 * span / steps, high = at + 2 * span / steps;  // golden search in the bracket
  for (int i = 0; i < 100; ++i) {
    const double a = low + (high - low) * 0.382, b = low + (high - low) * 0.618;
    if (depth(a) < depth(b))
      high = b;
    else
      low = a;
  }
  return std::min(best, depth((low + high) / 2));
}

}  // namespace visewright::layout
