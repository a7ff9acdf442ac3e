#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <BRep_Tool.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <ShapeAnalysis_ShapeTolerance.hxx>
#include <TopExp_Explorer.hxx>

#include "kernel/boundary.h"
#include "kernel/solid_impl.h"

namespace visewright::kernel {
namespace {

int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
  int found = 0;
  for (TopExp_Explorer at(shape, kind); at.More(); at.Next()) ++found;
  return found;
}

bool every_shell_closed(const TopoDS_Shape& shape) {
  for (TopExp_Explorer at(shape, TopAbs_SHELL); at.More(); at.Next())
    if (!BRep_Tool::IsClosed(at.Current())) return false;
  return true;
}

}  // namespace

base::Result<double> distance_mm(const Solid& a, const Solid& b, std::string_view label) {
  return guarded("distance", label, [&]() -> base::Result<double> {
    const BRepExtrema_DistShapeShape job(shape_of(a), shape_of(b));
    if (!job.IsDone()) return failed("distance", label, "the bodies have no nearest points");
    return job.Value();
  });
}

base::Result<Box3> box(const Solid& solid, std::string_view label) {
  return guarded("box", label, [&]() -> base::Result<Box3> {
    Bnd_Box around;
    BRepBndLib::AddOptimal(shape_of(solid), around, Standard_False, Standard_False);
    if (around.IsVoid()) return failed("box", label, "the body is empty");
    around.SetGap(0);
    Box3 found;
    around.Get(found.low[0], found.low[1], found.low[2], found.high[0], found.high[1], found.high[2]);
    return found;
  });
}

base::Result<Measures> measures(const Solid& solid, std::string_view label) {
  return guarded("measurement", label, [&]() -> base::Result<Measures> {
    const TopoDS_Shape& shape = shape_of(solid);
    GProp_GProps volume, area;
    BRepGProp::VolumeProperties(shape, volume);
    BRepGProp::SurfaceProperties(shape, area);
    Measures found;
    found.volume_mm3 = volume.Mass();
    found.area_mm2 = area.Mass();
    found.worst_tolerance_mm = ShapeAnalysis_ShapeTolerance().Tolerance(shape, 1);
    found.solids = count(shape, TopAbs_SOLID);
    found.closed = found.solids > 0 && every_shell_closed(shape);
    found.valid = found.solids > 0 && BRepCheck_Analyzer(shape).IsValid();
    return found;
  });
}

}  // namespace visewright::kernel
