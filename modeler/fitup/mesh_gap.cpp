#include "fitup/mesh_gap.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/measure.h"

namespace visewright::fitup {
namespace {

using geometry::Point;

std::vector<Point> standing_points(const Standing& gear, double error_mm) {
  std::vector<Point> points = geometry::sample(*gear.outline, error_mm).points;
  for (Point& p : points) p = geometry::turned(p, gear.turn_rad) + gear.centre;
  return points;
}

double largest_radius(const std::vector<Point>& points, Point centre) {
  double radius = 0;
  for (const Point p : points) radius = std::max(radius, geometry::distance(p, centre));
  return radius;
}

struct Chord {
  Point a, b;
};

double point_to_chord(Point p, const Chord& c) {
  const Point along = c.b - c.a;
  const double squared = geometry::dot(along, along);
  const double t = squared > 0 ? std::clamp(geometry::dot(p - c.a, along) / squared, 0.0, 1.0) : 0.0;
  return geometry::distance(p, c.a + t * along);
}

/// The chords of one gear that come within reach of the other's tip circle.
std::vector<Chord> near(const std::vector<Point>& points, Point other, double reach) {
  std::vector<Chord> chords;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Chord chord{points[i], points[(i + 1) % points.size()]};
    if (point_to_chord(other, chord) <= reach) chords.push_back(chord);
  }
  return chords;
}

double least(const std::vector<Chord>& from, const std::vector<Chord>& to) {
  double best = 1e300;
  for (const Chord& a : from)
    for (const Chord& b : to) best = std::min(best, point_to_chord(a.a, b));
  return best;
}

bool inside(Point p, const Standing& gear) {
  return geometry::contains(*gear.outline, geometry::turned(p - gear.centre, -gear.turn_rad));
}

double bite(const std::vector<Chord>& mine, const Standing& other, const std::vector<Chord>& its) {
  double deepest = 0;
  for (const Chord& c : mine) {
    if (!inside(c.a, other)) continue;
    double depth = 1e300;
    for (const Chord& edge : its) depth = std::min(depth, point_to_chord(c.a, edge));
    deepest = std::max(deepest, depth);
  }
  return deepest;
}

}  // namespace

double mesh_gap_mm(const Standing& a, const Standing& b, double error_mm) {
  const auto pa = standing_points(a, error_mm), pb = standing_points(b, error_mm);
  const double margin = 1.0;
  const auto ca = near(pa, b.centre, largest_radius(pb, b.centre) + margin);
  const auto cb = near(pb, a.centre, largest_radius(pa, a.centre) + margin);
  const double depth = std::max(bite(ca, b, cb), bite(cb, a, ca));
  if (depth > error_mm) return -depth;
  return std::min(least(ca, cb), least(cb, ca));
}

}  // namespace visewright::fitup
