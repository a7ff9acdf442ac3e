#include "geometry/joined.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

#include "geometry/measure.h"
#include "geometry/pieces.h"
#include "units/quantity.h"

namespace visewright::geometry {
namespace {

constexpr double least_area_mm2 = 1e-9;

/// Direction from an end of a piece to a point a little way along it. A chord and not the tangent, because pieces that
/// touch have equal tangents and part only by their curvature.
Point look_along(const Piece& p, bool from_end, double reach_mm) {
  const double u = std::min(0.5, reach_mm / length_mm(p.edge));
  return from_end ? at(p.edge, 1 - u) - finish(p.edge) : at(p.edge, u) - start(p.edge);
}

/// Clockwise angle from `a` to `b`, above 0 and up to a whole turn.
double clockwise(Point a, Point b) {
  const double angle = std::atan2(-cross(a, b), dot(a, b));
  return angle > 0 ? angle : angle + 2 * units::pi;
}

struct Chainer {
  std::span<const Piece> pieces;
  std::vector<bool> used;

  /// The next piece round the region on the left of `last`: the one turning furthest left.
  [[nodiscard]] std::optional<std::size_t> after(std::size_t last) const {
    std::vector<std::size_t> choices;
    double shortest = length_mm(pieces[last].edge);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      if (used[i] || pieces[i].from != pieces[last].to) continue;
      choices.push_back(i);
      shortest = std::min(shortest, length_mm(pieces[i].edge));
    }
    const Point back = look_along(pieces[last], true, shortest / 100);
    std::optional<std::size_t> best;
    double least = std::numeric_limits<double>::infinity();
    for (const std::size_t i : choices) {
      const double angle = clockwise(back, look_along(pieces[i], false, shortest / 100));
      if (angle < least) {
        least = angle;
        best = i;
      }
    }
    return best;
  }

  /// The chain that starts with a piece, up to where it closes.
  std::optional<std::vector<Edge>> chain_from(std::size_t first) {
    std::vector<Edge> chain;
    std::size_t now = first;
    while (true) {
      used[now] = true;
      chain.push_back(pieces[now].edge);
      if (pieces[now].to == pieces[first].from) return chain;
      const std::optional<std::size_t> next = after(now);
      if (!next) return std::nullopt;
      now = *next;
    }
  }
};

/// Two pieces in a row as one edge, when they are of one line or one circle and leave something of it out.
std::optional<Edge> merged(const Edge& a, const Edge& b) {
  const auto *line_a = std::get_if<Line>(&a), *line_b = std::get_if<Line>(&b);
  if (line_a && line_b) {
    const Point way = line_b->b - line_a->a;
    const bool straight = std::abs(cross(line_a->b - line_a->a, way)) <= same_point_mm * length(way) &&
                          dot(line_a->b - line_a->a, line_b->b - line_b->a) > 0;
    if (straight) return Line{line_a->a, line_b->b};
  }
  const auto *arc_a = std::get_if<Arc>(&a), *arc_b = std::get_if<Arc>(&b);
  if (arc_a && arc_b && arc_a->left == arc_b->left) {
    const double ra = distance(arc_a->a, arc_a->centre), rb = distance(arc_b->a, arc_b->centre);
    if (distance(arc_a->centre, arc_b->centre) + std::abs(ra - rb) <= same_point_mm && arc_a->a != arc_a->b) {
      return Arc{arc_a->a, arc_b->b, arc_a->centre, arc_a->left};
    }
  }
  return std::nullopt;
}

std::vector<Edge> merged(const std::vector<Edge>& chain) {
  std::vector<Edge> result;
  for (const Edge& e : chain) {
    const std::optional<Edge> one = result.empty() ? std::nullopt : merged(result.back(), e);
    if (one) {
      result.back() = *one;
    } else {
      result.push_back(e);
    }
  }
  if (result.size() > 1) {
    if (const std::optional<Edge> one = merged(result.back(), result.front())) {
      result.front() = *one;
      result.pop_back();
    }
  }
  return result;
}

double swept(std::span<const Edge> chain, Point hub) {
  double area = 0;
  for (const Edge& e : chain) area += swept_area_mm2(e, hub);
  return area;
}

/// Area of the union of outlines that all have company; summed about a point among them to keep digits.
double area_of_group(std::span<const Loop> loops) {
  const base::Result<std::vector<Piece>> pieces = boundary_of_union(loops, CrossedCurves::as_chords);
  const Point hub = start(loops.front().edges().front());
  double area = 0;
  for (const Piece& p : *pieces) area += swept_area_mm2(p.edge, hub);
  return area;
}

}  // namespace

base::Result<Profile> joined(std::span<const Loop> loops) {
  const base::Result<std::vector<Piece>> pieces = boundary_of_union(loops, CrossedCurves::refuse);
  if (!pieces) return base::passed_on(pieces.error());
  Chainer chainer{*pieces, std::vector<bool>(pieces->size(), false)};
  Profile profile;
  for (std::size_t i = 0; i < pieces->size(); ++i) {
    if (chainer.used[i]) continue;
    const std::optional<std::vector<Edge>> chain = chainer.chain_from(i);
    if (!chain) {
      return base::fault(base::Cause::geometry, "outline", "outlines meet too closely to be joined",
                         "outlines that cross or coincide clearly");
    }
    std::vector<Edge> edges = merged(*chain);
    const double area = swept(edges, start(edges.front()));
    if (area > least_area_mm2) profile.outer.push_back(trusted(std::move(edges)));
    if (area < -least_area_mm2) profile.holes.push_back(trusted(reversed(std::span<const Edge>(edges))));
  }
  return profile;
}

double joined_area_mm2(std::span<const Loop> loops) {
  std::vector<Box> boxes;
  for (const Loop& l : loops) boxes.push_back(box(l));
  std::vector<Loop> together;
  double area = 0;
  for (std::size_t i = 0; i < loops.size(); ++i) {
    bool alone = true;
    for (std::size_t j = 0; j < loops.size() && alone; ++j)
      alone = i == j || !overlap(boxes[i], boxes[j], same_point_mm);
    if (alone) {
      area += area_mm2(loops[i]);
    } else {
      together.push_back(loops[i]);
    }
  }
  return together.empty() ? area : area + area_of_group(together);
}

double left_area_mm2(const Loop& from, std::span<const Loop> taken) {
  const Box bounds = box(from);
  std::vector<Loop> near;
  for (const Loop& l : taken) {
    if (overlap(bounds, box(l), same_point_mm)) near.push_back(l);
  }
  const double all_taken = joined_area_mm2(near);
  near.push_back(from);
  // What `from` adds to the union of the taken ones.
  return joined_area_mm2(near) - all_taken;
}

}  // namespace visewright::geometry
