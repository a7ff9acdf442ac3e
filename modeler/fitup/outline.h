// Outlines as pieces that rise or fall all the way: lines and half circles at most. Every gap is worked out on these.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/loop.h"

namespace visewright::fitup {

using geometry::Point;

/// Contact: lengths below this are no length, mm.
inline constexpr double contact_mm = 1e-7;
/// Two regions that share no more than a skin of this depth only touch, mm.
inline constexpr double skin_mm = 1e-6;

/// A straight piece, or a piece of a circle on one side of its centre, so that y never turns back along it.
struct Curve {
  Point a, b;
  Point centre;       // of an arc; of a chord, what its involute or trochoid winds about
  double radius = 0;  // 0: straight
  bool right = false; // of an arc: on the right half of its circle
  bool left_in = true;  // what its outline holds lies to the left from a to b
  double stray = 0;   // how far the outline that it stands for may lie from it, mm
  geometry::Box box;

  [[nodiscard]] bool straight() const { return radius == 0; }
};

/// A straight piece.
[[nodiscard]] Curve line(Point a, Point b, double stray = 0, bool left_in = true);
/// The piece of one half of a circle between two points on it.
[[nodiscard]] Curve arc(Point a, Point b, Point centre, double radius, bool right, bool left_in = true);
/// The point amid a curve and a direction square to the curve there, of length 1.
struct Amid {
  Point at, square;
};
[[nodiscard]] Amid amid(const Curve&);

/// Least distance of two curves, and where. Exact up to rounding; 0 where they cross or touch.
struct Nearest {
  double distance = 0;
  Point a, b;
};
[[nodiscard]] Nearest nearest(const Curve&, const Curve&);
[[nodiscard]] Nearest nearest(Point, const Curve&);

/// Where a curve must be cut so that no piece of it crosses the other; ends of the other that lie on it count.
void meet(const Curve& cut, const Curve& other, std::vector<Point>& at);
/// The pieces of a curve between the given points of it.
[[nodiscard]] std::vector<Curve> pieces(const Curve&, std::vector<Point> at);

/// Distance of two boxes in the plane, 0 when they meet.
[[nodiscard]] double apart(const geometry::Box&, const geometry::Box&);
[[nodiscard]] geometry::Box grown(const geometry::Box&, double by_mm);

/// The plane inside closed outlines, by the even-odd rule: outer outlines and the holes in them.
struct Outline {
  std::vector<Curve> curves;
  geometry::Box box;
  std::vector<std::vector<std::uint32_t>> levels;  // which curves pass each of equal strips of the height; long outlines only

  [[nodiscard]] bool holds(Point) const;
  [[nodiscard]] double distance_to_edge(Point) const;
};

/// How the coordinates of a profile lie in the plane of the outline: origin and directions, perhaps mirrored.
struct Lay {
  Point origin, x, y;
  [[nodiscard]] Point of(Point p) const { return origin + p.x * x + p.y * y; }
};
/// A profile ready to be laid: lines and arcs exactly, other curves as chords that stray up to `chord_mm`.
struct Chain {
  struct Link {
    Point a, b, centre;  // centre: of an arc, or what a chord's curve winds about
    double radius = 0;   // 0: straight
    double swept_rad = 0;  // of an arc, positive anticlockwise
    double stray = 0;
    bool outer = true;  // of an outer outline, not of a hole
  };
  std::vector<Link> links;
};
[[nodiscard]] Chain chain(const geometry::Profile&, double chord_mm);
[[nodiscard]] Outline outline(const Chain&, const Lay&);
[[nodiscard]] inline Outline outline(const geometry::Profile& profile, const Lay& lay, double chord_mm) { return outline(chain(profile, chord_mm), lay); }
[[nodiscard]] Outline rectangle(Point corner, Point side, Point other_side);
/// A ring about a centre; no hole when `inner` is 0.
[[nodiscard]] Outline ring(Point centre, double inner_mm, double outer_mm);

}  // namespace visewright::fitup
