#include "kernel/facets.h"

#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <Poly_PolygonOnTriangulation.hxx>
#include <Poly_Triangulation.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Vertex.hxx>
#include <limits>
#include <stdexcept>

#include "kernel/boundary.h"
#include "kernel/solid_impl.h"

namespace visewright::kernel {
namespace {

constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

/// Gathers the triangles of all faces. Points on edges and corners are joined by the edge they belong to, not by how
/// near they lie, so that the skin has no cracks.
class Gathering {
 public:
  explicit Gathering(const TopoDS_Shape& shape) {
    TopExp::MapShapes(shape, TopAbs_VERTEX, corners_);
    TopExp::MapShapes(shape, TopAbs_EDGE, edges_);
    corner_points_.assign(static_cast<std::size_t>(corners_.Extent()), none);
    edge_points_.resize(static_cast<std::size_t>(edges_.Extent()));
  }

  void add(const TopoDS_Face& face) {
    TopLoc_Location place;
    const Handle(Poly_Triangulation) mesh = BRep_Tool::Triangulation(face, place);
    if (mesh.IsNull()) throw std::runtime_error("a face has no facets");
    const gp_Trsf motion = place.Transformation();
    std::vector<std::uint32_t> number(static_cast<std::size_t>(mesh->NbNodes()) + 1, none);
    for (TopExp_Explorer at(face, TopAbs_EDGE); at.More(); at.Next())
      number_edge(TopoDS::Edge(at.Current()), mesh, place, motion, number);
    for (Standard_Integer node = 1; node <= mesh->NbNodes(); ++node)
      if (number[static_cast<std::size_t>(node)] == none)
        number[static_cast<std::size_t>(node)] = new_point(mesh->Node(node).Transformed(motion));
    for (Standard_Integer t = 1; t <= mesh->NbTriangles(); ++t) {
      Standard_Integer a = 0, b = 0, c = 0;
      mesh->Triangle(t).Get(a, b, c);
      if (face.Orientation() == TopAbs_REVERSED) std::swap(b, c);
      const std::array<std::uint32_t, 3> triangle{number[static_cast<std::size_t>(a)],
                                                  number[static_cast<std::size_t>(b)],
                                                  number[static_cast<std::size_t>(c)]};
      // At the tip of a cone or the pole of a ball a side of the face has no length.
      if (triangle[0] != triangle[1] && triangle[1] != triangle[2] && triangle[2] != triangle[0])
        found_.triangles.push_back(triangle);
    }
  }

  Facets result() { return std::move(found_); }

 private:
  std::uint32_t new_point(const gp_Pnt& p) {
    found_.points.push_back({static_cast<float>(p.X()), static_cast<float>(p.Y()), static_cast<float>(p.Z())});
    return static_cast<std::uint32_t>(found_.points.size() - 1);
  }

  std::uint32_t corner(const TopoDS_Vertex& vertex) {
    std::uint32_t& point = corner_points_[static_cast<std::size_t>(corners_.FindIndex(vertex) - 1)];
    if (point == none) point = new_point(BRep_Tool::Pnt(vertex));
    return point;
  }

  void number_edge(const TopoDS_Edge& edge, const Handle(Poly_Triangulation) & mesh, const TopLoc_Location& place,
                   const gp_Trsf& motion, std::vector<std::uint32_t>& number) {
    const Handle(Poly_PolygonOnTriangulation) line = BRep_Tool::PolygonOnTriangulation(edge, mesh, place);
    if (line.IsNull()) throw std::runtime_error("an edge has no facets");
    const Standard_Integer count = line->NbNodes();
    TopoDS_Vertex first, last;
    TopExp::Vertices(edge, first, last);
    std::vector<std::uint32_t>& points = edge_points_[static_cast<std::size_t>(edges_.FindIndex(edge) - 1)];
    if (points.empty()) {
      for (Standard_Integer i = 1; i <= count; ++i) {
        const bool pole = BRep_Tool::Degenerated(edge);
        points.push_back(i == 1 || pole ? corner(first)
                         : i == count   ? corner(last)
                                        : new_point(mesh->Node(line->Node(i)).Transformed(motion)));
      }
    }
    if (points.size() != static_cast<std::size_t>(count)) throw std::runtime_error("facets do not meet along an edge");
    for (Standard_Integer i = 1; i <= count; ++i)
      number[static_cast<std::size_t>(line->Node(i))] = points[static_cast<std::size_t>(i - 1)];
  }

  TopTools_IndexedMapOfShape corners_, edges_;
  std::vector<std::uint32_t> corner_points_;
  std::vector<std::vector<std::uint32_t>> edge_points_;
  Facets found_;
};

}  // namespace

base::Result<Facets> facets(const Solid& solid, double deflection_mm, std::string_view label) {
  return guarded("facets", label, [&]() -> base::Result<Facets> {
    if (!(deflection_mm > 0)) return failed("facets", label, "they are to stray by nothing");
    // A copy: facets are kept inside a shape, and once there are some, finer ones may not be made.
    const TopoDS_Shape shape = own_copy(shape_of(solid));
    BRepMesh_IncrementalMesh(shape, deflection_mm, Standard_False, facet_turn_rad, Standard_False);
    Gathering gathering(shape);
    for (TopExp_Explorer at(shape, TopAbs_FACE); at.More(); at.Next()) gathering.add(TopoDS::Face(at.Current()));
    return gathering.result();
  });
}

}  // namespace visewright::kernel
