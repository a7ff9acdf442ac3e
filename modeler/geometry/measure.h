// Areas, membership and sampling of outlines.
#pragma once

#include <span>
#include <vector>

#include "geometry/loop.h"

namespace visewright::geometry {

/// Area of an outline by Green's theorem: exact for lines, arcs and involutes; trochoids by quadrature to 1e-10 mm².
[[nodiscard]] double area_mm2(const Loop&);
[[nodiscard]] double area_mm2(const Profile&);
/// Area that the straight line from `hub` to a point running along the edge sweeps, positive anticlockwise. Law: the
/// sum over a closed chain is its signed area, wherever the hub is.
[[nodiscard]] double swept_area_mm2(const Edge&, Point hub);
[[nodiscard]] double length_mm(const Edge&);
[[nodiscard]] double perimeter_mm(const Loop&);

/// Strictly inside; points within 1e-9 mm of the outline may go either way.
[[nodiscard]] bool contains(const Loop&, Point);
[[nodiscard]] bool contains(const Profile&, Point);

/// A polyline along an outline (first point not repeated) and the largest distance between the two, mm.
struct Sampled {
  std::vector<Point> points;
  double error_mm = 0;
};
/// Law: error_mm ≤ the error asked for; every sample lies on the outline.
[[nodiscard]] Sampled sample(const Loop&, double error_mm);
/// The same for one edge, both ends included. REQUIRES: error > 0. A full circle gets at least twelve chords.
[[nodiscard]] Sampled sample(const Edge&, double error_mm);

}  // namespace visewright::geometry
