// Closed outlines, and regions made of them.
#pragma once

#include <span>
#include <vector>

#include "base/fault.h"
#include "geometry/edge.h"

namespace visewright::geometry {

/// Endpoints closer than this are the same point, mm.
inline constexpr double same_point_mm = 1e-7;

struct Box {
  Point low, high;
};

/// A closed outline without crossings, always anticlockwise. Law: each edge starts where the one before it ends.
class Loop {
 public:
  /// Refuses an open chain, an empty one, a crossing or touching, an area below 1e-9 mm². A clockwise chain is turned
  /// round; lines shorter than same_point_mm are left out. Crossings of involutes and trochoids are found on chords
  /// within 1e-4 mm.
  [[nodiscard]] static base::Result<Loop> of(std::vector<Edge> edges);

  [[nodiscard]] std::span<const Edge> edges() const { return edges_; }

 private:
  explicit Loop(std::vector<Edge> edges);
  friend Loop trusted(std::vector<Edge> edges);
  friend Box box(const Loop&);
  std::vector<Edge> edges_;
  Box box_;  // asked for again and again by everything that looks for meetings
};

/// A region: outer outlines that do not overlap, less holes that lie inside them and do not overlap.
struct Profile {
  std::vector<Loop> outer, holes;
};

/// A loop whose chain the caller has built to be closed, simple and anticlockwise: the shapes below.
[[nodiscard]] Loop trusted(std::vector<Edge> edges);

/// REQUIRES: radius, width, height > 0.
[[nodiscard]] Loop circle(Point centre, double radius_mm);
[[nodiscard]] Loop rectangle(Point low, Point high);
/// Corners rounded to `radius_mm`; zero gives the plain rectangle. REQUIRES: 2·radius ≤ the shorter side.
[[nodiscard]] Loop rounded_rectangle(Point low, Point high, double radius_mm);
/// A hexagon by its width across flats; at turn 0 two flats are level (parallel to x).
[[nodiscard]] Loop hexagon(Point centre, double across_flats_mm, double turn_rad);
/// A slot: the path of a cutter of `width_mm` from a to b; a == b gives a circle.
[[nodiscard]] Loop slot(Point a, Point b, double width_mm);
/// REQUIRES: at least three corners, simple; turned anticlockwise if it is not.
[[nodiscard]] Loop polygon(std::span<const Point> corners);

/// The chain run backwards, edge by edge.
[[nodiscard]] std::vector<Edge> reversed(std::span<const Edge> chain);
[[nodiscard]] Loop moved(const Loop&, double turn_rad, Point by);
/// Mirrored about the y axis (x → −x), still anticlockwise.
[[nodiscard]] Loop mirrored(const Loop&);
[[nodiscard]] Profile moved(const Profile&, double turn_rad, Point by);
[[nodiscard]] Profile region(Loop outer, std::vector<Loop> holes = {});

/// The exact box of an outline: from endpoints and extreme points of arcs; involutes and trochoids to 1e-4 mm, outward.
[[nodiscard]] Box box(const Loop&);
[[nodiscard]] Box box(const Edge&);
/// Whether two boxes, each grown by half of `margin_mm`, share a point.
[[nodiscard]] bool overlap(const Box&, const Box&, double margin_mm = 0);

}  // namespace visewright::geometry
