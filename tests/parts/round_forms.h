// Closed forms and plain sums that the tests of the parts share. They know design numbers only, no shapes.
#pragma once

#include <algorithm>
#include <cmath>

#include "units/quantity.h"

namespace visewright::parts::by_hand {

using units::pi;

inline double disc(double diameter) { return pi / 4 * diameter * diameter; }
inline double ring(double outside, double inside) { return disc(outside) - disc(inside); }
inline double hexagon(double across_flats) { return std::sqrt(3.0) / 2 * across_flats * across_flats; }
inline double slot(double width, double length) { return disc(width) + width * (length - width); }

/// Midpoint sum; the functions here are smooth but for kinks and square-root ends.
template <class Function>
double sum(double from, double to, int steps, Function f) {
  const double h = (to - from) / steps;
  double total = 0;
  for (int i = 0; i < steps; ++i) total += f(from + (i + 0.5) * h);
  return total * h;
}

/// What a cross hole of radius r takes out of the middle of a round bar of radius R: ∫ 4 √(r² − x²) √(R² − x²) dx, with
/// x = r sin t.
inline double cross_hole(double bar, double hole) {
  const double R = bar / 2, r = hole / 2;
  return sum(-pi / 2, pi / 2, 4000, [&](double t) {
    return 4 * r * r * std::cos(t) * std::cos(t) * std::sqrt(R * R - r * r * std::sin(t) * std::sin(t));
  });
}

/// Two equal discs whose centres are d apart share this.
inline double lens(double radius, double d) {
  return 2 * radius * radius * std::acos(d / (2 * radius)) - d / 2 * std::sqrt(4 * radius * radius - d * d);
}

/// Of a disc of radius r about the point where two circles of radius R, d apart, cross: what lies outside circles of
/// radius ρ ≥ R about the same centres. Along a ray that leaves the point at the angle ψ to a centre, that centre's
/// circle ends at R cos ψ + √(ρ² − R² sin² ψ).
inline double outside_both(double R, double rho, double d, double r) {
  const double half = std::asin(d / 2 / R);  // between the line to a centre and the line midway
  return sum(-pi, pi, 200000, [&](double angle) {
    double reach = 0;
    for (const double side : {-half, half}) {
      const double s = R * std::sin(angle - side);
      reach = std::max(reach, R * std::cos(angle - side) + std::sqrt(rho * rho - s * s));
    }
    const double t = std::min(reach, r);
    return (r * r - t * t) / 2;
  });
}

}  // namespace visewright::parts::by_hand
