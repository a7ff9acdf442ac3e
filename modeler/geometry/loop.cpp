#include "geometry/loop.h"

#include <algorithm>
#include <array>
#include <utility>

#include "geometry/measure.h"
#include "geometry/meetings.h"
#include "units/quantity.h"

namespace visewright::geometry {
namespace {

constexpr double crossing_chord_mm = 1e-4;
constexpr double least_area_mm2 = 1e-9;

tl::unexpected<base::Faults> refused(std::string wrong) {
  return base::fault(base::Cause::geometry, "outline", std::move(wrong), "a closed outline that does not cross itself");
}

bool finite(const Edge& e) {
  const Point a = start(e), b = finish(e), middle = at(e, 0.5);
  return std::isfinite(a.x + a.y) && std::isfinite(b.x + b.y) && std::isfinite(middle.x + middle.y);
}

bool is_arc(const Edge& e) { return std::holds_alternative<Arc>(e); }
bool is_exact(const Edge& e) { return std::holds_alternative<Line>(e) || is_arc(e); }

/// Lines and arcs as they are, curves as chords.
std::vector<Edge> straightened(const Edge& e) {
  if (is_exact(e)) return {e};
  const std::vector<Point> points = sample(e, crossing_chord_mm).points;
  std::vector<Edge> chords;
  for (std::size_t i = 1; i < points.size(); ++i) chords.push_back(Line{points[i - 1], points[i]});
  return chords;
}

/// Whether two edges meet anywhere but at ends they share as neighbours in the chain.
bool clash(const std::vector<Edge>& a, const std::vector<Edge>& b, std::span<const Point> shared) {
  const auto is_shared = [&](Point p) {
    return std::any_of(shared.begin(), shared.end(), [&](Point s) { return distance(p, s) <= 3 * same_point_mm; });
  };
  for (const Edge& from_a : a) {
    const Box box_a = box(from_a);
    for (const Edge& from_b : b) {
      if (!overlap(box_a, box(from_b), same_point_mm)) continue;
      const std::vector<Point> common = meetings(from_a, from_b);
      if (!std::all_of(common.begin(), common.end(), is_shared)) return true;
    }
  }
  return false;
}

bool crosses_itself(const std::vector<Edge>& edges) {
  const std::size_t n = edges.size();
  std::vector<Box> boxes;
  std::vector<std::vector<Edge>> parts;
  for (const Edge& e : edges) {
    boxes.push_back(box(e));
    parts.push_back(straightened(e));
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = i + 1; j < n; ++j) {
      if (!overlap(boxes[i], boxes[j], same_point_mm)) continue;
      std::vector<Point> shared;
      if (j == i + 1) shared.push_back(finish(edges[i]));
      if (i == 0 && j == n - 1) shared.push_back(start(edges[0]));
      if (clash(parts[i], parts[j], shared)) return true;
    }
  }
  return false;
}

double signed_area(std::span<const Edge> edges) {
  double area = 0;
  for (const Edge& e : edges) area += swept_area_mm2(e, start(edges.front()));
  return area;
}

Point mirrored(Point p) { return {-p.x, p.y}; }

Edge mirrored(const Edge& edge) {
  return std::visit(
      [](auto e) -> Edge {
        using Kind = decltype(e);
        if constexpr (std::is_same_v<Kind, Line>) {
          return Line{mirrored(e.a), mirrored(e.b)};
        } else if constexpr (std::is_same_v<Kind, Arc>) {
          return Arc{mirrored(e.a), mirrored(e.b), mirrored(e.centre), !e.left};
        } else {
          e.centre = mirrored(e.centre);
          e.start_rad = units::pi - e.start_rad;
          e.left = !e.left;
          return e;
        }
      },
      edge);
}

void include(Box& box, Point p) {
  box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
  box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
}

void include_extremes(Box& box, const Arc& arc) {
  const double r = distance(arc.centre, arc.a);
  constexpr std::array<Point, 4> ways{Point{1, 0}, Point{0, 1}, Point{-1, 0}, Point{0, -1}};
  for (const Point way : ways) {
    const Point extreme = arc.centre + r * way;
    const double u = parameter(arc, extreme);
    if (u > 0 && u < 1) include(box, extreme);
  }
}

}  // namespace

base::Result<Loop> Loop::of(std::vector<Edge> edges) {
  std::erase_if(edges, [](const Edge& e) {
    return std::holds_alternative<Line>(e) && distance(start(e), finish(e)) <= same_point_mm;
  });
  if (edges.empty()) return refused("there is no edge in it");
  if (!std::all_of(edges.begin(), edges.end(), finite)) return refused("a coordinate is not a number");
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const Edge& next = edges[(i + 1) % edges.size()];
    if (distance(finish(edges[i]), start(next)) > same_point_mm) {
      return refused("edge " + std::to_string(i + 1) + " does not end where the next one starts");
    }
  }
  const double area = signed_area(edges);
  if (std::abs(area) < least_area_mm2) return refused("it encloses no area");
  if (crosses_itself(edges)) return refused("it crosses or touches itself");
  return trusted(area > 0 ? std::move(edges) : reversed(std::span<const Edge>(edges)));
}

Loop trusted(std::vector<Edge> edges) { return Loop(std::move(edges)); }

Loop circle(Point centre, double radius_mm) {
  const Point east = centre + Point{radius_mm, 0};
  return trusted({Arc{east, east, centre, true}});
}

Loop rectangle(Point low, Point high) { return rounded_rectangle(low, high, 0); }

Loop rounded_rectangle(Point low, Point high, double radius_mm) {
  const double r = radius_mm;
  const std::array<Point, 4> corners{low, {high.x, low.y}, high, {low.x, high.y}};
  constexpr std::array<Point, 4> ways{Point{1, 0}, Point{0, 1}, Point{-1, 0}, Point{0, -1}};
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < 4; ++i) {
    const Point along = ways[i], next = ways[(i + 1) % 4], corner = corners[(i + 1) % 4];
    const Line side{corners[i] + r * along, corner - r * along};
    if (dot(side.b - side.a, along) > same_point_mm) edges.push_back(side);
    if (r > 0) edges.push_back(Arc{side.b, corner + r * next, corner - r * along + r * next, true});
  }
  return trusted(std::move(edges));
}

Loop hexagon(Point centre, double across_flats_mm, double turn_rad) {
  std::array<Point, 6> corners;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    corners[i] = centre + polar(across_flats_mm / std::sqrt(3.0), turn_rad + static_cast<double>(i) * units::pi / 3);
  }
  return polygon(corners);
}

Loop slot(Point a, Point b, double width_mm) {
  const double r = width_mm / 2, l = distance(a, b);
  if (l <= same_point_mm) return circle(a, r);
  const Point along = (1 / l) * (b - a), side = r * Point{-along.y, along.x};
  return trusted({Line{a - side, b - side}, Arc{b - side, b + side, b, true}, Line{b + side, a + side},
                  Arc{a + side, a - side, a, true}});
}

Loop polygon(std::span<const Point> corners) {
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    edges.push_back(Line{corners[i], corners[(i + 1) % corners.size()]});
  }
  return trusted(signed_area(edges) > 0 ? std::move(edges) : reversed(std::span<const Edge>(edges)));
}

std::vector<Edge> reversed(std::span<const Edge> chain) {
  std::vector<Edge> back;
  for (std::size_t i = chain.size(); i-- > 0;) back.push_back(reversed(chain[i]));
  return back;
}

Loop moved(const Loop& loop, double turn_rad, Point by) {
  std::vector<Edge> edges;
  for (const Edge& e : loop.edges()) edges.push_back(moved(e, turn_rad, by));
  return trusted(std::move(edges));
}

Loop mirrored(const Loop& loop) {
  std::vector<Edge> edges;
  for (const Edge& e : loop.edges()) edges.push_back(mirrored(e));
  return trusted(reversed(std::span<const Edge>(edges)));
}

Profile moved(const Profile& profile, double turn_rad, Point by) {
  Profile result;
  for (const Loop& l : profile.outer) result.outer.push_back(moved(l, turn_rad, by));
  for (const Loop& l : profile.holes) result.holes.push_back(moved(l, turn_rad, by));
  return result;
}

Profile region(Loop outer, std::vector<Loop> holes) { return {{std::move(outer)}, std::move(holes)}; }

Box box(const Edge& edge) {
  Box result{start(edge), start(edge)};
  include(result, finish(edge));
  if (const auto* arc = std::get_if<Arc>(&edge)) include_extremes(result, *arc);
  if (is_exact(edge)) return result;
  const Sampled along = sample(edge, crossing_chord_mm);
  for (const Point p : along.points) include(result, p);
  const Point margin{along.error_mm, along.error_mm};
  return {result.low - margin, result.high + margin};
}

Loop::Loop(std::vector<Edge> edges) : edges_(std::move(edges)), box_{} {
  if (!edges_.empty()) box_ = geometry::box(edges_.front());
  for (const Edge& e : edges_) {
    const Box more = geometry::box(e);
    include(box_, more.low);
    include(box_, more.high);
  }
}

Box box(const Loop& loop) { return loop.box_; }

bool overlap(const Box& a, const Box& b, double margin_mm) {
  return a.low.x <= b.high.x + margin_mm && b.low.x <= a.high.x + margin_mm && a.low.y <= b.high.y + margin_mm &&
         b.low.y <= a.high.y + margin_mm;
}

}  // namespace visewright::geometry
