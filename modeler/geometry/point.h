// Points of the plane, in mm, seen with the face's outward normal towards the eye.
#pragma once

#include <cmath>

namespace visewright::geometry {

struct Point {
  double x = 0;
  double y = 0;
  friend bool operator==(Point, Point) = default;
};

[[nodiscard]] constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
[[nodiscard]] constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] constexpr Point operator*(double k, Point a) { return {k * a.x, k * a.y}; }
[[nodiscard]] constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] constexpr double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
[[nodiscard]] inline double length(Point a) { return std::hypot(a.x, a.y); }
[[nodiscard]] inline double distance(Point a, Point b) { return length(b - a); }
[[nodiscard]] inline Point polar(double radius, double angle_rad) {
  return {radius * std::cos(angle_rad), radius * std::sin(angle_rad)};
}
[[nodiscard]] inline Point turned(Point a, double angle_rad) {
  const double c = std::cos(angle_rad), s = std::sin(angle_rad);
  return {c * a.x - s * a.y, s * a.x + c * a.y};
}

}  // namespace visewright::geometry
