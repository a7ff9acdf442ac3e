#include "kernel/hidden_lines.h"

#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <HLRAlgo_Projector.hxx>
#include <HLRBRep_PolyAlgo.hxx>
#include <HLRBRep_PolyHLRToShape.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Vertex.hxx>
#include <algorithm>
#include <cmath>
#include <gp_Ax2.hxx>
#include <tuple>

#include "kernel/boundary.h"
#include "kernel/facets.h"
#include "kernel/frames.h"
#include "kernel/solid_impl.h"

namespace visewright::kernel {
namespace {

void append(std::vector<Segment>& segments, const TopoDS_Shape& edges, std::size_t of, int group, bool outline) {
  if (edges.IsNull()) return;
  for (TopExp_Explorer at(edges, TopAbs_EDGE); at.More(); at.Next()) {
    TopoDS_Vertex first, last;
    TopExp::Vertices(TopoDS::Edge(at.Current()), first, last);
    if (first.IsNull() || last.IsNull()) continue;
    const gp_Pnt p = BRep_Tool::Pnt(first), q = BRep_Tool::Pnt(last);
    geometry::Point a{p.X(), p.Y()}, b{q.X(), q.Y()};
    if (geometry::distance(a, b) < geometry::same_point_mm) continue;
    if (std::tuple(b.x, b.y) < std::tuple(a.x, a.y)) std::swap(a, b);
    segments.push_back({a, b, of, group, outline});
  }
}

/// Facets of each shape made once, however often it stands somewhere.
class Faceted {
 public:
  explicit Faceted(double deflection_mm) : deflection_mm_(deflection_mm) {}

  TopoDS_Shape placed(const PlacedSolid& solid) {
    const TopoDS_Shape& shape = shape_of(solid.solid);
    auto known = std::ranges::find_if(made_, [&](const auto& pair) { return pair.first.IsEqual(shape); });
    if (known == made_.end()) {
      // A copy: facets are kept inside a shape, and this one may be in use elsewhere.
      const TopoDS_Shape copy = own_copy(shape);
      BRepMesh_IncrementalMesh(copy, deflection_mm_, Standard_False, facet_turn_rad, Standard_False);
      known = made_.insert(made_.end(), {shape, copy});
    }
    return known->second.Moved(TopLoc_Location(motion_to(solid.where)));
  }

 private:
  double deflection_mm_;
  std::vector<std::pair<TopoDS_Shape, TopoDS_Shape>> made_;
};

/// By solid and place; the kernel's own order is nobody's promise. An edge between two faces comes once from each.
void put_in_order(std::vector<Segment>& segments) {
  const auto key = [](const Segment& s) {
    const auto grid = [](double v) { return std::llround(v * 1e6); };
    return std::tuple(s.of, s.outline, grid(s.a.x), grid(s.a.y), grid(s.b.x), grid(s.b.y));
  };
  std::ranges::stable_sort(segments, {}, key);
  const auto twice = std::ranges::unique(segments, {}, key);
  segments.erase(twice.begin(), twice.end());
}

}  // namespace

base::Result<std::vector<Segment>> hidden_lines(std::span<const PlacedSolid> solids, const geometry::Placement& view,
                                                double deflection_mm, std::string_view label) {
  return guarded("picture", label, [&]() -> base::Result<std::vector<Segment>> {
    Handle(HLRBRep_PolyAlgo) eye = new HLRBRep_PolyAlgo();
    Faceted faceted(deflection_mm);
    std::vector<TopoDS_Shape> placed;
    for (const PlacedSolid& solid : solids) {
      placed.push_back(faceted.placed(solid));
      eye->Load(placed.back());
    }
    eye->Projector(HLRAlgo_Projector(axes_of(view).Ax2()));
    eye->Update();
    HLRBRep_PolyHLRToShape seen;
    seen.Update(eye);
    std::vector<Segment> segments;
    for (std::size_t i = 0; i < placed.size(); ++i) {
      append(segments, seen.VCompound(placed[i]), i, solids[i].colour_group, false);
      append(segments, seen.OutLineVCompound(placed[i]), i, solids[i].colour_group, true);
    }
    put_in_order(segments);
    return segments;
  });
}

}  // namespace visewright::kernel
