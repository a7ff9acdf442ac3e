#include "kernel/solid.h"

#include <BRepBuilderAPI_Copy.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRep_Builder.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS_Compound.hxx>
#include <cmath>
#include <gp_Ax1.hxx>
#include <gp_Vec.hxx>
#include <vector>

#include "kernel/boundary.h"
#include "kernel/faces.h"
#include "kernel/frames.h"
#include "kernel/solid_impl.h"

namespace visewright::kernel {
namespace {

Solid together(const std::vector<TopoDS_Shape>& pieces) {
  if (pieces.size() == 1) return wrapped(pieces.front());
  BRep_Builder builder;
  TopoDS_Compound all;
  builder.MakeCompound(all);
  for (const TopoDS_Shape& piece : pieces) builder.Add(all, piece);
  return wrapped(all);
}

/// The half section with points that sit on the axis but for rounding put exactly there; a fault for negative radii.
base::Result<geometry::Profile> on_one_side(const geometry::Profile& section, std::string_view label) {
  geometry::Profile kept = section;
  for (std::vector<geometry::Loop>* loops : {&kept.outer, &kept.holes}) {
    for (geometry::Loop& loop : *loops) {
      if (geometry::box(loop).low.x < -geometry::same_point_mm)
        return failed("turned body", label, "its half section crosses the axis");
      std::vector<geometry::Edge> edges(loop.edges().begin(), loop.edges().end());
      const auto snap = [](geometry::Point& p) { p.x = std::abs(p.x) < geometry::same_point_mm ? 0.0 : p.x; };
      for (geometry::Edge& edge : edges) {
        if (auto* line = std::get_if<geometry::Line>(&edge)) snap(line->a), snap(line->b);
        if (auto* arc = std::get_if<geometry::Arc>(&edge); arc != nullptr && !(arc->a == arc->b))
          snap(arc->a), snap(arc->b);
      }
      loop = geometry::trusted(std::move(edges));
    }
  }
  return kept;
}

}  // namespace

base::Result<Solid> prism(const geometry::Profile& profile, const geometry::Placement& frame, double from_mm,
                          double to_mm, std::string_view label) {
  return guarded("prism", label, [&]() -> base::Result<Solid> {
    if (!std::isfinite(from_mm) || !std::isfinite(to_mm) || to_mm - from_mm < geometry::same_point_mm)
      return failed("prism", label, "it has no height");
    const geometry::Placement base = geometry::shifted(frame, geometry::times(from_mm, frame.z_axis));
    auto flat = faces(profile, base, "prism", label);
    if (!flat) return base::passed_on(std::move(flat.error()));
    const geometry::Vector along = geometry::times(to_mm - from_mm, frame.z_axis);
    std::vector<TopoDS_Shape> pieces;
    for (const TopoDS_Face& face : *flat)
      pieces.push_back(BRepPrimAPI_MakePrism(face, gp_Vec(along[0], along[1], along[2])).Shape());
    return together(pieces);
  });
}

base::Result<Solid> revolution(const geometry::Profile& half_section_r_z, const geometry::Placement& whole_axis,
                               Sweep sweep, std::string_view label) {
  return guarded("turned body", label, [&]() -> base::Result<Solid> {
    const auto section = on_one_side(half_section_r_z, label);
    if (!section) return base::passed_on(section.error());
    const geometry::Placement axis = geometry::turned_about_z(whole_axis, sweep.from_rad);
    const double angle = sweep.to_rad - sweep.from_rad;
    if (!(angle > 0)) return failed("turned body", label, "it is not turned at all");
    // The section's y is the axis, so its plane faces along x × z.
    const geometry::Placement plane{axis.origin_mm, axis.x_axis, geometry::cross(axis.x_axis, axis.z_axis)};
    auto flat = faces(*section, plane, "turned body", label);
    if (!flat) return base::passed_on(std::move(flat.error()));
    const gp_Ax1 about(point_of(axis.origin_mm), direction_of(axis.z_axis));
    std::vector<TopoDS_Shape> pieces;
    for (const TopoDS_Face& face : *flat) {
      const bool full = angle >= 2 * units::pi - 1e-12;
      pieces.push_back(full ? BRepPrimAPI_MakeRevol(face, about).Shape() : BRepPrimAPI_MakeRevol(face, about, angle).Shape());
    }
    return together(pieces);
  });
}

base::Result<Solid> behind(const geometry::Placement& plane, double reach_mm, std::string_view label) {
  return guarded("half space", label, [&]() -> base::Result<Solid> {
    if (!(reach_mm > 0) || !std::isfinite(reach_mm)) return failed("half space", label, "it has no reach");
    if (!square(plane)) return failed("half space", label, "the axes of its plane are not square");
    const gp_Pnt corner = point_of(geometry::to_outside(plane, {-reach_mm, -reach_mm, 0}));
    const gp_Ax2 axes(corner, direction_of(plane.z_axis), direction_of(plane.x_axis));
    return wrapped(BRepPrimAPI_MakeBox(axes, 2 * reach_mm, 2 * reach_mm, reach_mm).Solid());
  });
}

Solid moved(const Solid& solid, const geometry::Placement& to) {
  return wrapped(shape_of(solid).Moved(TopLoc_Location(motion_to(to))));
}

TopoDS_Shape own_copy(const TopoDS_Shape& shape) {
  return BRepBuilderAPI_Copy(shape, Standard_True, Standard_False).Shape();
}

}  // namespace visewright::kernel
