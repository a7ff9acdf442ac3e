// What each operation takes away or adds, as shapes.
#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/measure.h"
#include "parts/operation.h"

namespace visewright::parts {
namespace {

using geometry::Loop;
using geometry::Placement;
using geometry::Point;
using geometry::Profile;

/// The frame at a point of another frame's x–y plane.
Placement at_point(const Placement& frame, Point p) {
  Placement result = frame;
  result.origin_mm = geometry::to_outside(frame, {p.x, p.y, 0});
  return result;
}

Prism into(const Face& face, Profile outline, const Depth& depth, double reach_mm) {
  return {std::move(outline), face.datum, -(depth ? *depth : reach_mm + proud_mm), proud_mm};
}

/// Everything round an outline, up to where no part reaches.
Profile outside_of(const Profile& outline, double reach_mm) {
  geometry::Box all = geometry::box(outline.outer.front());
  for (const Loop& loop : outline.outer) {
    const geometry::Box one = geometry::box(loop);
    all = {{std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y)},
           {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y)}};
  }
  const Point margin{reach_mm, reach_mm};
  return geometry::region(geometry::rectangle(all.low - margin, all.high + margin), outline.outer);
}

/// The edge of a hole's round wall: the corner of the material is at (r, 0), the material at larger radii, below 0.
Profile bevel_round_hole(double r, double leg) {
  const double over = std::min(proud_mm, r / 2);
  const std::array<Point, 3> corners{Point{r - over, -leg - over}, {r + leg + over, over}, {r - over, over}};
  return geometry::region(geometry::polygon(corners));
}
/// The edge of a round outline: the corner of the material is at (r, 0), the material at smaller radii, below 0.
Profile bevel_round_outline(double r, double leg) {
  const double over = std::min(proud_mm, r - leg);
  const std::array<Point, 3> corners{Point{r - leg - over, over}, {r + over, -leg - over}, {r + over, over}};
  return geometry::region(geometry::polygon(corners));
}

Shape eased(const Ease& ease, const geometry::Line& edge) {
  // Along a line of an anticlockwise outline the inside is on the left; material is there unless it bounds a hole.
  const double length = geometry::distance(edge.a, edge.b), l = ease.leg_mm, over = proud_mm;
  const Point way = (1 / length) * (edge.b - edge.a), left{-way.y, way.x};
  const Point out = ease.inside ? left : -1.0 * left;
  const Placement& face = ease.face.datum;
  Placement frame = at_point(face, edge.a);
  frame.x_axis = geometry::plus(geometry::times(out.x, face.x_axis), geometry::times(out.y, face.y_axis()));
  frame.z_axis = geometry::cross(frame.x_axis, face.z_axis);  // so that y points at the eye
  const double along = ease.inside ? length : -length;
  const std::array<Point, 3> corners{Point{-l - over, over}, {over, -l - over}, {over, over}};
  return Prism{geometry::region(geometry::polygon(corners)), frame, std::min(0.0, along), std::max(0.0, along)};
}

Shape eased(const Ease& ease, const geometry::Arc& edge) {
  const double r = geometry::distance(edge.centre, edge.a);
  Revolved result{ease.inside ? bevel_round_hole(r, ease.leg_mm) : bevel_round_outline(r, ease.leg_mm),
                  at_point(ease.face.datum, edge.centre)};
  if (edge.a != edge.b) {
    const Point from = edge.a - edge.centre;
    result.from_rad = std::atan2(from.y, from.x);
    result.to_rad = result.from_rad + geometry::swept_rad(edge);
  }
  return result;
}

struct Taken {
  double reach_mm;

  std::vector<Shape> operator()(const Drill& w) const {
    return {into(w.face, geometry::region(geometry::circle(w.at, w.diameter_mm / 2)), w.depth, reach_mm)};
  }
  std::vector<Shape> operator()(const Rout& w) const { return {into(w.face, w.outline, w.depth, reach_mm)}; }
  std::vector<Shape> operator()(const CutOut& w) const { return {into(w.face, w.outline, std::nullopt, reach_mm)}; }
  std::vector<Shape> operator()(const CutTo& w) const {
    return {into(w.face, outside_of(w.outline, reach_mm), std::nullopt, reach_mm)};
  }
  std::vector<Shape> operator()(const SawFlat& w) const { return {HalfSpace{w.plane}}; }
  std::vector<Shape> operator()(const Turn& w) const { return {Revolved{w.half_section, w.axis}}; }
  std::vector<Shape> operator()(const Grind& w) const {
    if (w.within) return {Prism{*w.within, w.plane, 0, reach_mm}};
    return {HalfSpace{w.plane}};
  }
  std::vector<Shape> operator()(const Ease& w) const {
    std::vector<Shape> result;
    for (const geometry::Edge& edge : w.along.edges()) {
      if (const auto* line = std::get_if<geometry::Line>(&edge)) result.push_back(eased(w, *line));
      if (const auto* arc = std::get_if<geometry::Arc>(&edge)) result.push_back(eased(w, *arc));
    }
    return result;
  }
  std::vector<Shape> operator()(const CutThread&) const { return {}; }
  std::vector<Shape> operator()(const Print&) const { return {}; }
  std::vector<Shape> operator()(const Mark&) const { return {}; }
  std::vector<Shape> operator()(const Treat&) const { return {}; }
};

}  // namespace

std::vector<Shape> taken_away(const Operation& operation, double reach_mm) {
  return std::visit(Taken{reach_mm}, operation.work);
}

std::vector<Shape> added(const Operation& operation) {
  std::vector<Shape> result;
  if (const auto* print = std::get_if<Print>(&operation.work)) {
    for (const Layer& layer : print->layers) result.push_back(Prism{layer.profile, {}, layer.from_mm, layer.to_mm});
  }
  return result;
}

}  // namespace visewright::parts
