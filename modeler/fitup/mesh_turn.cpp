#include "fitup/mesh_turn.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/measure.h"
#include "units/quantity.h"

namespace visewright::fitup {
namespace {

using geometry::Point;

/// A point of a flank by its distance from the second gear's axis and its angle about it. `arm_mm`: what an angle of play
/// there is worth square to the flank; the base radius on an involute, less where a fillet turns towards the root circle.
struct FlankPoint {
  double radius, angle, arm_mm;
};

/// One flank of one tooth, by rising radius.
struct Flank {
  std::vector<FlankPoint> points;

  /// The point at a radius between the ends.
  FlankPoint at(double radius) const {
    const auto above = std::lower_bound(points.begin(), points.end(), radius, [](const FlankPoint& p, double r) { return p.radius < r; });
    if (above == points.begin()) return points.front();
    if (above == points.end()) return points.back();
    const FlankPoint &high = *above, &low = *(above - 1);
    const double part = high.radius > low.radius ? (radius - low.radius) / (high.radius - low.radius) : 0;
    return {radius, low.angle + part * (high.angle - low.angle), std::min(low.arm_mm, high.arm_mm)};
  }
};

/// The distance of the normal from the axis, from two points along a curve.
double arm(Point a, Point b) {
  const Point way = b - a, middle = 0.5 * (a + b);
  const double step = geometry::length(way);
  return step > 0 ? std::abs(geometry::dot(middle, way)) / step : 0;
}

/// The two flanks of the tooth on +x: the one that faces anticlockwise (its radius falls along the outline) and the one
/// that faces clockwise.
std::array<Flank, 2> tooth_flanks(const MeshGear& gear, double error_mm) {
  std::array<Flank, 2> flanks;
  const double half = units::pi / gear.teeth;
  for (const geometry::Edge& edge : gear.outline->edges()) {
    const bool involute = std::holds_alternative<geometry::Involute>(edge);
    if (!involute && std::holds_alternative<geometry::Arc>(edge)) continue;
    const Point middle = geometry::at(edge, 0.5);
    if (std::abs(std::atan2(middle.y, middle.x)) > half) continue;
    const bool falls = geometry::length(geometry::finish(edge)) < geometry::length(geometry::start(edge));
    const std::vector<Point> points = geometry::sample(edge, error_mm).points;
    for (std::size_t i = 0; i < points.size(); ++i) {
      const std::size_t k = i + 1 < points.size() ? i + 1 : i - 1;
      const Point p = points[i];
      flanks[falls ? 0 : 1].points.push_back({geometry::length(p), std::atan2(p.y, p.x), involute ? gear.base_radius_mm : arm(p, points[k])});
    }
  }
  for (Flank& f : flanks) std::sort(f.points.begin(), f.points.end(), [](const FlankPoint& a, const FlankPoint& b) { return a.radius < b.radius; });
  return flanks;
}

/// Plays of the second gear square to its flanks: until it touches when turned anticlockwise, and clockwise.
struct Plays {
  double anticlockwise_mm = 1e300, clockwise_mm = 1e300, bite_mm = 0;
};

double within(double angle, double from, double pitch) { return angle - pitch * std::floor((angle - from) / pitch); }

struct Mesh {
  std::vector<Point> first;  // of the first gear, unturned
  std::array<Flank, 2> flanks;
  MeshGear second;
  double distance;

  Plays at(double first_turn, double second_turn) const {
    Plays plays;
    const double pitch = 2 * units::pi / second.teeth, root = flanks[0].points.front().radius, tip = flanks[0].points.back().radius;
    const auto placed = [&](std::size_t i) { return geometry::turned(first[i % first.size()], first_turn) - Point{distance, 0}; };
    for (std::size_t i = 0; i < first.size(); ++i) {
      // Far from the second gear: most of the outline.
      const Point p = placed(i);
      const double radius = geometry::length(p);
      if (radius > tip) continue;
      if (radius < root) {
        plays.bite_mm = std::max(plays.bite_mm, root - radius);
        continue;
      }
      const double angle = std::atan2(p.y, p.x) - second_turn;
      // A flank point has a neighbour nearer to the second axis on one side and a farther one on the other.
      const Point previous = placed(i + first.size() - 1), next = placed(i + 1);
      const double before = geometry::length(previous), after = geometry::length(next);
      const bool faces_clockwise = after >= radius || before <= radius, faces_anticlockwise = after <= radius || before >= radius;
      // What is between the two flanks belongs to this play when it is nearer than three quarters of a pitch. Where they
      // bite, the one whose normal passes nearer to the axis tells how deep: root lands are bitten by tips, not by flanks.
      const auto square = [&](double play, double arm_mm) { return play * (play < 0 ? std::min(arm_mm, arm(previous, next)) : arm_mm); };
      if (faces_clockwise) {
        const FlankPoint on = flanks[0].at(radius);
        plays.anticlockwise_mm = std::min(plays.anticlockwise_mm, square(within(angle - on.angle, -pitch / 4, pitch), on.arm_mm));
      }
      if (faces_anticlockwise) {
        const FlankPoint on = flanks[1].at(radius);
        plays.clockwise_mm = std::min(plays.clockwise_mm, square(within(on.angle - angle, -pitch / 4, pitch), on.arm_mm));
      }
    }
    return plays;
  }
};

}  // namespace

double MeshTurn::least_mm() const { return bite_mm > 0 ? std::min({left_mm, right_mm, -bite_mm}) : std::min(left_mm, right_mm); }

MeshTurn through_one_pitch(const MeshGear& first, const MeshGear& second, double centre_distance_mm, int steps, double error_mm) {
  const Mesh mesh{geometry::sample(*first.outline, error_mm).points, tooth_flanks(second, error_mm), second, centre_distance_mm};
  MeshTurn found{1e300, 1e300, 1e300, 1e300, 0, 0};
  for (int k = 0; k < steps; ++k) {
    const double part = 2 * units::pi * k / steps;  // of a pitch, as an angle over the teeth
    const Plays plays = mesh.at(first.turn_rad + part / first.teeth, second.turn_rad - part / second.teeth);
    const double left = plays.anticlockwise_mm, right = plays.clockwise_mm;
    if (std::min(left, right) < std::min(found.left_mm, found.right_mm)) found.at_turn_rad = part / first.teeth;
    found.left_mm = std::min(found.left_mm, left);
    found.right_mm = std::min(found.right_mm, right);
    found.normal_backlash_mm = std::min(found.normal_backlash_mm, left + right);
    found.bite_mm = std::max(found.bite_mm, plays.bite_mm);
  }
  found.backlash_mm = found.normal_backlash_mm * second.reference_radius_mm / second.base_radius_mm;
  found.bite_mm = std::max({found.bite_mm, -found.left_mm, -found.right_mm});
  return found;
}

}  // namespace visewright::fitup
