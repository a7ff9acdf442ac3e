#include "kernel/faces.h"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <GeomAPI_Interpolate.hxx>
#include <Geom_Circle.hxx>
#include <Precision.hxx>
#include <TColStd_HArray1OfReal.hxx>
#include <TColgp_HArray1OfPnt.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Vertex.hxx>
#include <TopoDS_Wire.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Circ.hxx>
#include <gp_Pln.hxx>
#include <gp_Vec.hxx>
#include <stdexcept>

#include "geometry/measure.h"
#include "kernel/boundary.h"
#include "kernel/frames.h"

namespace visewright::kernel {
namespace {

using geometry::Placement;
using geometry::Point;

geometry::Vector raised(const Placement& frame, Point p) { return geometry::to_outside(frame, {p.x, p.y, 0}); }

gp_Vec lifted_direction(const Placement& frame, Point d) {
  const geometry::Vector v = geometry::plus(geometry::times(d.x, frame.x_axis), geometry::times(d.y, frame.y_axis()));
  return {v[0], v[1], v[2]};
}

/// Distance of a point from the stretch of an edge between two parameters. By halving the stretch in golden sections:
/// an involute stands still on its base circle, where following its rate would run away.
double distance_within(const geometry::Edge& edge, double low, double high, Point p) {
  constexpr double golden = 0.61803398874989485;
  const auto gap = [&](double u) { return geometry::distance(p, geometry::at(edge, u)); };
  double left = high - golden * (high - low), right = low + golden * (high - low);
  double gap_left = gap(left), gap_right = gap(right);
  for (int round = 0; round < 30; ++round) {
    if (gap_left < gap_right) {
      high = right, right = left, gap_right = gap_left;
      gap_left = gap(left = high - golden * (high - low));
    } else {
      low = left, left = right, gap_left = gap_right;
      gap_right = gap(right = low + golden * (high - low));
    }
  }
  return std::min(gap_left, gap_right);
}

/// The largest distance found at three places between each two points of the spline.
double strays_mm(const Geom_BSplineCurve& spline, const geometry::Edge& edge, const Placement& frame) {
  double worst = 0;
  const int spans = spline.NbKnots() - 1;
  for (int span = 0; span < spans; ++span) {
    for (const double share : {0.25, 0.5, 0.75}) {
      const double low = spline.Knot(span + 1), high = spline.Knot(span + 2);
      const gp_Pnt p = spline.Value(low + share * (high - low));
      const geometry::Vector flat = geometry::to_inside(frame, {p.X(), p.Y(), p.Z()});
      const double from = std::max(0.0, (span - 1.0) / spans), to = std::min(1.0, (span + 2.0) / spans);
      worst = std::max(worst, distance_within(edge, from, to, {flat[0], flat[1]}));
    }
  }
  return worst;
}

/// Length of an edge between two parameters, by Simpson's rule on four strips: near enough to space a spline.
double length_mm(const geometry::Edge& edge, double low, double high) {
  constexpr std::array<double, 5> weights{1, 4, 2, 4, 1};
  double sum = 0;
  for (std::size_t i = 0; i < weights.size(); ++i)
    sum += weights[i] * geometry::length(geometry::rate(edge, low + static_cast<double>(i) / 4 * (high - low)));
  return sum * (high - low) / 12;
}

/// Through points at equal roll steps, each at its length along the curve, with the curve's direction at both ends.
Handle(Geom_BSplineCurve) interpolated(const geometry::Edge& edge, const Placement& frame, int points) {
  Handle(TColgp_HArray1OfPnt) through = new TColgp_HArray1OfPnt(1, points);
  Handle(TColStd_HArray1OfReal) along = new TColStd_HArray1OfReal(1, points);
  double before = 0, length = 0;
  for (int i = 0; i < points; ++i) {
    const double u = static_cast<double>(i) / (points - 1);
    length += length_mm(edge, before, u);
    before = u;
    through->SetValue(i + 1, point_of(raised(frame, geometry::at(edge, u))));
    along->SetValue(i + 1, length);
  }
  GeomAPI_Interpolate job(through, along, Standard_False, Precision::Confusion());
  const gp_Vec first = lifted_direction(frame, geometry::direction(edge, 0));
  const gp_Vec last = lifted_direction(frame, geometry::direction(edge, 1));
  job.Load(first, last, Standard_False);
  job.Perform();
  if (!job.IsDone()) throw std::runtime_error("no spline goes through the points of a curve");
  return job.Curve();
}

/// A spline through points at equal roll steps, as many as keep it within the limit. Fitting by approximation is not
/// used: it bulges by tenths of a millimetre between its points.
Handle(Geom_BSplineCurve) spline(const geometry::Edge& edge, const Placement& frame) {
  for (int points = 9; points <= 257; points = 2 * points - 1) {
    const Handle(Geom_BSplineCurve) curve = interpolated(edge, frame, points);
    if (strays_mm(*curve, edge, frame) <= spline_limit_mm) return curve;
  }
  throw std::runtime_error("no spline keeps within the limit of a curve");
}

/// An edge of the solid between two corners. Corners belong to the starts of edges, so a curve may end beside the next
/// one's start by what a loop allows; the corner is then widened to take in both.
struct EdgeBetween {
  const Placement& frame;
  const TopoDS_Vertex& from;
  const TopoDS_Vertex& to;

  TopoDS_Edge operator()(const geometry::Line&) const {
    BRepBuilderAPI_MakeEdge make(from, to);
    if (!make.IsDone()) throw std::runtime_error("a line has no length");
    return make.Edge();
  }
  TopoDS_Edge operator()(const geometry::Arc& arc) const {
    const Point out = arc.a - arc.centre;
    const geometry::Vector up = geometry::times(arc.left ? 1 : -1, frame.z_axis);
    const gp_Ax2 axes(point_of(raised(frame, arc.centre)), direction_of(up), gp_Dir(lifted_direction(frame, out)));
    return on(new Geom_Circle(axes, geometry::length(out)), 0, std::abs(geometry::swept_rad(arc)));
  }
  template <class Curve>
  TopoDS_Edge operator()(const Curve& curve) const {
    const Handle(Geom_BSplineCurve) s = spline(curve, frame);
    return on(s, s->FirstParameter(), s->LastParameter());
  }

  TopoDS_Edge on(const Handle(Geom_Curve) & curve, double first, double last) const {
    constexpr double most_mm = 2 * geometry::same_point_mm;
    const double gap = BRep_Tool::Pnt(to).Distance(curve->Value(last));
    if (!(last > first) || !(gap <= most_mm)) throw std::runtime_error("an edge does not reach its corner");
    BRep_Builder builder;
    if (gap > Precision::Confusion()) builder.UpdateVertex(to, gap);
    TopoDS_Edge edge;
    builder.MakeEdge(edge, curve, Precision::Confusion());
    builder.Add(edge, from.Oriented(TopAbs_FORWARD));
    builder.Add(edge, to.Oriented(TopAbs_REVERSED));
    builder.Range(edge, first, last);
    return edge;
  }
};

TopoDS_Wire wire(const geometry::Loop& loop, const Placement& frame) {
  const auto edges = loop.edges();
  std::vector<TopoDS_Vertex> corners(edges.size());
  BRep_Builder builder;
  for (std::size_t i = 0; i < edges.size(); ++i)
    builder.MakeVertex(corners[i], point_of(raised(frame, geometry::start(edges[i]))), Precision::Confusion());
  TopoDS_Wire made;
  builder.MakeWire(made);
  for (std::size_t i = 0; i < edges.size(); ++i)
    builder.Add(made, std::visit(EdgeBetween{frame, corners[i], corners[(i + 1) % corners.size()]}, edges[i]));
  made.Closed(Standard_True);
  return made;
}

/// Numbers everywhere, and an area: a loop may come from a caller who vouched for it.
bool sound(const geometry::Loop& loop) {
  const bool numbers = std::ranges::all_of(loop.edges(), [](const geometry::Edge& e) {
    const Point a = geometry::at(e, 0.5), b = geometry::start(e);
    return std::isfinite(a.x) && std::isfinite(a.y) && std::isfinite(b.x) && std::isfinite(b.y);
  });
  return numbers && !loop.edges().empty() && geometry::area_mm2(loop) > 1e-9;
}

/// Whether a hole belongs to an outline: its middle points and corners are inside.
bool holds(const geometry::Loop& outer, const geometry::Loop& hole) {
  return std::ranges::all_of(hole.edges(), [&](const geometry::Edge& e) {
    return geometry::contains(outer, geometry::start(e)) && geometry::contains(outer, geometry::at(e, 0.5));
  });
}

}  // namespace

base::Result<std::vector<TopoDS_Face>> faces(const geometry::Profile& profile, const Placement& frame,
                                             std::string_view what, std::string_view label) {
  if (!square(frame)) return failed(what, label, "the axes of its frame are not square");
  if (profile.outer.empty()) return failed(what, label, "its profile has no outline");
  if (!std::ranges::all_of(profile.outer, sound) || !std::ranges::all_of(profile.holes, sound))
    return failed(what, label, "an outline of its profile encloses nothing");
  const gp_Pln plane(axes_of(frame));
  std::vector<bool> placed(profile.holes.size(), false);
  std::vector<TopoDS_Face> made;
  for (const geometry::Loop& outer : profile.outer) {
    BRepBuilderAPI_MakeFace face(plane, wire(outer, frame), Standard_False);
    for (std::size_t h = 0; h < profile.holes.size(); ++h) {
      if (placed[h] || !holds(outer, profile.holes[h])) continue;
      placed[h] = true;
      // Outlines run anticlockwise; round a hole the material must stay on the left, so the hole runs clockwise.
      face.Add(TopoDS::Wire(wire(profile.holes[h], frame).Reversed()));
    }
    if (!face.IsDone()) return failed(what, label, "its outline bounds no face");
    made.push_back(face.Face());
  }
  if (std::ranges::find(placed, false) != placed.end())
    return failed(what, label, "one of its holes lies outside the outline");
  return made;
}

}  // namespace visewright::kernel
