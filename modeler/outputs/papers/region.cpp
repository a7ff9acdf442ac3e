#include "outputs/papers/region.h"

#include <algorithm>
#include <cmath>

#include "geometry/measure.h"
#include "geometry/meetings.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Arc;
using geometry::Edge;
using geometry::Line;
using geometry::Point;

constexpr double beside_mm = 1e-3, chord_mm = 0.01;

/// All edges as lines and arcs; full circles in two halves, so that every edge has two ends.
std::vector<Edge> edges_of(const Region& region) {
  std::vector<Edge> list;
  const auto add = [&](const geometry::Loop& loop) {
    for (const Edge& e : loop.edges()) {
      if (std::holds_alternative<Line>(e)) {
        list.push_back(e);
      } else if (const auto* arc = std::get_if<Arc>(&e)) {
        const Point middle = geometry::at(e, 0.5);
        list.emplace_back(Arc{arc->a, middle, arc->centre, arc->left});
        list.emplace_back(Arc{middle, arc->b, arc->centre, arc->left});
      } else {
        const std::vector<Point> points = geometry::sample(e, chord_mm).points;
        for (std::size_t i = 1; i < points.size(); ++i) list.emplace_back(Line{points[i - 1], points[i]});
      }
    }
  };
  for (const auto* profiles : {&region.added, &region.removed})
    for (const geometry::Profile& p : *profiles) {
      for (const geometry::Loop& loop : p.outer) add(loop);
      for (const geometry::Loop& loop : p.holes) add(loop);
    }
  return list;
}

Edge part_of(const Edge& e, double from, double to) {
  const Point a = geometry::at(e, from), b = geometry::at(e, to);
  if (std::holds_alternative<Line>(e)) return Line{a, b};
  const auto& arc = std::get<Arc>(e);
  return Arc{a, b, arc.centre, arc.left};
}

std::vector<double> cuts_of(const std::vector<Edge>& edges, const std::vector<geometry::Box>& boxes, std::size_t i) {
  std::vector<double> cuts{0, 1};
  for (std::size_t j = 0; j < edges.size(); ++j) {
    if (i == j || !geometry::overlap(boxes[i], boxes[j], 1e-6)) continue;
    for (const Point p : geometry::meetings(edges[i], edges[j])) cuts.push_back(std::clamp(geometry::parameter(edges[i], p), 0.0, 1.0));
  }
  std::sort(cuts.begin(), cuts.end());
  return cuts;
}

}  // namespace

bool inside(const Region& region, Point p) {
  const auto holds = [&](const geometry::Profile& profile) { return geometry::contains(profile, p); };
  return std::any_of(region.added.begin(), region.added.end(), holds) &&
         std::none_of(region.removed.begin(), region.removed.end(), holds);
}

std::vector<Edge> bounds(const Region& region) {
  const std::vector<Edge> edges = edges_of(region);
  std::vector<geometry::Box> boxes;
  for (const Edge& e : edges) boxes.push_back(geometry::box(e));
  std::vector<Edge> kept;
  std::vector<Point> middles;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const std::vector<double> cuts = cuts_of(edges, boxes, i);
    for (std::size_t k = 1; k < cuts.size(); ++k) {
      if (cuts[k] - cuts[k - 1] < 1e-7) continue;
      const double u = (cuts[k] + cuts[k - 1]) / 2;
      const Point middle = geometry::at(edges[i], u), way = geometry::direction(edges[i], u), aside{-way.y, way.x};
      if (inside(region, middle + beside_mm * aside) == inside(region, middle - beside_mm * aside)) continue;
      if (std::any_of(middles.begin(), middles.end(), [&](Point p) { return geometry::distance(p, middle) < 1e-5; })) continue;
      middles.push_back(middle);
      kept.push_back(part_of(edges[i], cuts[k - 1], cuts[k]));
    }
  }
  return kept;
}

std::vector<Line> hatching(const Region& region, double step_mm, double angle_rad) {
  std::vector<Line> list;
  if (region.added.empty()) return list;
  const std::vector<Edge> edges = edges_of(region);
  geometry::Box all = geometry::box(edges.front());
  for (const Edge& e : edges) {
    const geometry::Box b = geometry::box(e);
    all = {{std::min(all.low.x, b.low.x), std::min(all.low.y, b.low.y)}, {std::max(all.high.x, b.high.x), std::max(all.high.y, b.high.y)}};
  }
  const Point way = geometry::polar(1, angle_rad), aside{-way.y, way.x};
  const Point middle = 0.5 * (all.low + all.high);
  const double reach = geometry::distance(all.low, all.high) / 2 + 1;
  // Lines stand at whole steps from the origin, so that pieces of one body hatch alike.
  const double base = dot(middle, aside);
  for (double level = std::ceil((base - reach) / step_mm) * step_mm; level < base + reach; level += step_mm) {
    const Point foot = level * aside + dot(middle, way) * way;
    const Line across{foot - reach * way, foot + reach * way};
    std::vector<double> cuts;
    for (const Edge& e : edges)
      for (const Point p : geometry::meetings(Edge(across), e)) cuts.push_back(dot(p - foot, way));
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t k = 1; k < cuts.size(); ++k)
      if (cuts[k] - cuts[k - 1] > 0.05 && inside(region, foot + (cuts[k] + cuts[k - 1]) / 2 * way))
        list.push_back({foot + cuts[k - 1] * way, foot + cuts[k] * way});
  }
  return list;
}

}  // namespace visewright::outputs::papers
