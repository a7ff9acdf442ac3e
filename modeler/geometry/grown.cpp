#include "geometry/grown.h"

#include <polyclipping/clipper.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/measure.h"
#include "geometry/meetings.h"
#include "units/quantity.h"

namespace visewright::geometry {
namespace {

constexpr double chord_mm = 1e-4, join_tolerance_mm = 5e-4, clean_mm = 2e-4;
constexpr double units_per_mm = 1e6;  // whole numbers of nanometres
/// How far inside the wanted distance a piece of the outline may lie from rounding alone.
constexpr double slack_mm = 1e-6;

bool exact(const Loop& loop) {
  return std::all_of(loop.edges().begin(), loop.edges().end(), [](const Edge& e) {
    return std::holds_alternative<Line>(e) || std::holds_alternative<Arc>(e);
  });
}

Point right_of(Point way) { return {way.y, -way.x}; }

double distance_mm(Point p, const Edge& e) {
  if (const auto* line = std::get_if<Line>(&e)) {
    const Point along = line->b - line->a;
    const double u = std::clamp(dot(p - line->a, along) / dot(along, along), 0.0, 1.0);
    return distance(p, line->a + u * along);
  }
  const auto& arc = std::get<Arc>(e);
  const double to_ends = std::min(distance(p, arc.a), distance(p, arc.b)), r = distance(arc.centre, arc.a);
  const Point out = p - arc.centre;
  if (length(out) < 1e-12) return r;
  const double sweep = swept_rad(arc);
  const Point start = arc.a - arc.centre;
  double angle = std::atan2(cross(start, out), dot(start, out));
  if (sweep > 0 && angle < 0) angle += 2 * units::pi;
  if (sweep < 0 && angle > 0) angle -= 2 * units::pi;
  return std::abs(angle) <= std::abs(sweep) ? std::abs(length(out) - r) : to_ends;
}

/// Edges shifted along their normals, and arcs about the corners that come apart. The wanted outline is made of pieces
/// of these.
std::vector<Edge> shifted_edges(std::span<const Edge> edges, double by) {
  std::vector<Edge> list;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const Edge& e = edges[i];
    const Point out_a = right_of(direction(e, 0)), out_b = right_of(direction(e, 1));
    if (const auto* line = std::get_if<Line>(&e)) {
      list.emplace_back(Line{line->a + by * out_a, line->b + by * out_b});
    } else {
      const auto& arc = std::get<Arc>(e);
      const double r = distance(arc.centre, arc.a) + (arc.left ? by : -by);
      if (r > same_point_mm) list.emplace_back(Arc{arc.a + by * out_a, arc.b + by * out_b, arc.centre, arc.left});
    }
    const Edge& next = edges[(i + 1) % edges.size()];
    const Point corner = finish(e), next_out = right_of(direction(next, 0));
    const double turn = cross(direction(e, 1), direction(next, 0));
    if (turn * by > 1e-9 && distance(out_b, next_out) > 1e-7)
      list.emplace_back(Arc{corner + by * out_b, corner + by * next_out, corner, by > 0});
  }
  return list;
}

Edge part_of(const Edge& e, double from, double to) {
  const Point a = at(e, from), b = at(e, to);
  if (std::holds_alternative<Line>(e)) return Line{a, b};
  const auto& arc = std::get<Arc>(e);
  return Arc{a, b, arc.centre, arc.left};
}

/// Every edge cut where it meets another.
std::vector<Edge> cut_apart(const std::vector<Edge>& edges) {
  std::vector<Edge> pieces;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    std::vector<double> cuts{0, 1};
    const Box here = box(edges[i]);
    for (std::size_t j = 0; j < edges.size(); ++j) {
      if (i == j || !overlap(here, box(edges[j]), 1e-6)) continue;
      for (const Point p : meetings(edges[i], edges[j])) cuts.push_back(std::clamp(parameter(edges[i], p), 0.0, 1.0));
    }
    std::sort(cuts.begin(), cuts.end());
    const double least = 1e-6 / std::max(length_mm(edges[i]), 1e-6);
    double from = 0;
    for (const double u : cuts) {
      if (u - from < least) continue;
      pieces.push_back(part_of(edges[i], from, 1 - u < least ? 1 : u));
      from = u;
    }
  }
  return pieces;
}

/// Pieces that follow on from each other, as loops; what does not close is left out.
std::vector<Loop> chained(std::vector<Edge> pieces) {
  constexpr double meets_mm = 2e-5;
  std::vector<Loop> loops;
  while (!pieces.empty()) {
    std::vector<Edge> chain{pieces.back()};
    pieces.pop_back();
    const auto follows = [&](const Edge& e) { return distance(start(e), finish(chain.back())) < meets_mm; };
    while (distance(start(chain.front()), finish(chain.back())) > meets_mm) {
      const auto next = std::find_if(pieces.begin(), pieces.end(), follows);
      if (next == pieces.end()) break;
      chain.push_back(*next);
      pieces.erase(next);
    }
    if (distance(start(chain.front()), finish(chain.back())) > meets_mm) continue;
    for (std::size_t i = 0; i < chain.size(); ++i) {
      const Point end = finish(chain[i]);
      std::visit([&](auto& e) {
        if constexpr (requires { e.a; }) e.a = end;
      }, chain[(i + 1) % chain.size()]);
    }
    if (auto loop = Loop::of(std::move(chain))) loops.push_back(std::move(*loop));
  }
  return loops;
}

std::vector<Loop> grown_exactly(const Loop& loop, double by) {
  const auto* circle_edge = loop.edges().size() == 1 ? std::get_if<Arc>(&loop.edges().front()) : nullptr;
  if (circle_edge != nullptr) {
    const double r = distance(circle_edge->centre, circle_edge->a) + by;
    return r > same_point_mm ? std::vector<Loop>{circle(circle_edge->centre, r)} : std::vector<Loop>{};
  }
  std::vector<Edge> kept;
  for (const Edge& piece : cut_apart(shifted_edges(loop.edges(), by))) {
    const Point middle = at(piece, 0.5);
    if (distance_mm(middle, loop) < std::abs(by) - slack_mm || contains(loop, middle) != (by < 0)) continue;
    const bool twice = std::any_of(kept.begin(), kept.end(), [&](const Edge& e) { return distance(at(e, 0.5), middle) < 1e-6; });
    if (!twice) kept.push_back(piece);
  }
  return chained(std::move(kept));
}

std::vector<Loop> grown_by_chords(const Loop& loop, double by) {
  namespace clip = ClipperLib;
  clip::Path path;
  for (const Point p : sample(loop, chord_mm).points)
    path.emplace_back(std::llround(p.x * units_per_mm), std::llround(p.y * units_per_mm));
  clip::ClipperOffset offset(2, join_tolerance_mm * units_per_mm);
  offset.AddPath(path, clip::jtRound, clip::etClosedPolygon);
  clip::Paths result;
  offset.Execute(result, by * units_per_mm);
  clip::CleanPolygons(result, clean_mm * units_per_mm);
  std::vector<Loop> loops;
  for (const clip::Path& each : result) {
    if (each.size() < 3) continue;
    std::vector<Point> corners;
    for (const clip::IntPoint& p : each)
      corners.push_back({static_cast<double>(p.X) / units_per_mm, static_cast<double>(p.Y) / units_per_mm});
    loops.push_back(polygon(corners));
  }
  return loops;
}

}  // namespace

double distance_mm(Point p, const Loop& loop) {
  double least = std::numeric_limits<double>::infinity();
  for (const Edge& e : loop.edges()) least = std::min(least, distance_mm(p, e));
  return least;
}

base::Result<std::vector<Loop>> grown(const Loop& loop, double by_mm) {
  if (!std::isfinite(by_mm)) return base::fault(base::Cause::own_mistake, "growth", "it is not a finite number", "a length");
  if (by_mm == 0) return std::vector<Loop>{loop};
  return exact(loop) ? grown_exactly(loop, by_mm) : grown_by_chords(loop, by_mm);
}

}  // namespace visewright::geometry
