// Outlines and random numbers that several tests share.
#pragma once

#include <algorithm>
#include <cmath>
#include <random>
#include <span>
#include <vector>

#include "geometry/loop.h"
#include "geometry/measure.h"

namespace visewright::geometry::test {

inline constexpr double pi = 3.14159265358979323846;

/// The same numbers on every machine: the standard fixes the engine, the scaling is done here.
class Numbers {
 public:
  explicit Numbers(unsigned seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
  }
  int below(int n) { return static_cast<int>(between(0, n)); }

 private:
  std::mt19937 engine_;
};

/// Area of the lens of two equal circles, by two segments of half angle acos(d/2r).
inline double lens_mm2(double r, double d) {
  return 2 * r * r * std::acos(d / (2 * r)) - d / 2 * std::sqrt(4 * r * r - d * d);
}

/// The rack's measures for a gear cut without shift: module m, dedendum 1.25 m, rounding 0.38 m, pressure angle 20°.
struct Rack {
  double module_mm = 3;
  int teeth = 30;
  double pressure_rad = 20 * pi / 180;

  [[nodiscard]] double pitch_radius() const { return module_mm * teeth / 2; }
  [[nodiscard]] double base_radius() const { return pitch_radius() * std::cos(pressure_rad); }
  [[nodiscard]] double tip_radius() const { return 0.38 * module_mm; }
  [[nodiscard]] double offset() const { return 1.25 * module_mm - tip_radius(); }
  [[nodiscard]] double last_roll() const { return offset() / (pitch_radius() * std::tan(pressure_rad)); }
  [[nodiscard]] Trochoid fillet(bool left = true) const {
    return {{0, 0}, pitch_radius(), tip_radius(), offset(), 0, 0, last_roll(), left};
  }
};

/// A gear whose involutes start at the base circle and meet the root by radial lines: simple, but with real flanks.
inline Loop plain_gear(Point centre, double module_mm, int teeth, double turn_rad = 0) {
  const double rp = module_mm * teeth / 2, alpha = 20 * pi / 180, rb = rp * std::cos(alpha);
  const double ra = rp + module_mm, rf = std::min(rp - 1.25 * module_mm, rb - 0.1);
  const double roll = std::sqrt(ra * ra / (rb * rb) - 1), tip_turn = roll - std::atan(roll);
  const double half = pi / (2 * teeth) + std::tan(alpha) - alpha;  // half tooth angle on the base circle
  std::vector<Edge> edges;
  for (int i = 0; i < teeth; ++i) {
    const double middle = turn_rad + 2 * pi * i / teeth, next = turn_rad + 2 * pi * (i + 1) / teeth;
    const double low = middle - half, high = middle + half;
    edges.push_back(Line{centre + polar(rf, low), centre + polar(rb, low)});
    edges.push_back(Involute{centre, rb, low, 0, roll, true});
    edges.push_back(Arc{centre + polar(ra, low + tip_turn), centre + polar(ra, high - tip_turn), centre, true});
    edges.push_back(Involute{centre, rb, high, roll, 0, false});
    edges.push_back(Line{centre + polar(rb, high), centre + polar(rf, high)});
    edges.push_back(Arc{centre + polar(rf, high), centre + polar(rf, next - half), centre, true});
  }
  return trusted(std::move(edges));
}

/// A random circle, slot, rectangle, rounded rectangle or hexagon within about 20 mm of the origin.
inline Loop any_shape(Numbers& numbers) {
  const Point at{numbers.between(-10, 10), numbers.between(-10, 10)};
  const double turn = numbers.between(0, 2 * pi), size = numbers.between(1, 8), other = numbers.between(1, 8);
  switch (numbers.below(5)) {
    case 0: return circle(at, size);
    case 1: return slot(at, at + polar(other, turn), size);
    case 2: return moved(rectangle({0, 0}, {size, other}), turn, at);
    case 3: return moved(rounded_rectangle({0, 0}, {size, other}, std::min(size, other) / 3), turn, at);
    default: return hexagon(at, size, turn);
  }
}

/// The slow obvious way to a union's area: count the cells of a grid whose middle some outline contains.
inline double counted_area_mm2(std::span<const Loop> loops, double half_width_mm, double cell_mm) {
  const int n = static_cast<int>(std::ceil(half_width_mm / cell_mm));
  long hits = 0;
  for (int i = -n; i < n; ++i) {
    for (int j = -n; j < n; ++j) {
      const Point p{(i + 0.5) * cell_mm, (j + 0.5) * cell_mm};
      hits += std::any_of(loops.begin(), loops.end(), [p](const Loop& l) { return contains(l, p); }) ? 1 : 0;
    }
  }
  return static_cast<double>(hits) * cell_mm * cell_mm;
}

}  // namespace visewright::geometry::test
