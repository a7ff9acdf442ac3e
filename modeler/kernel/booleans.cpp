#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBndLib.hxx>
#include <BRepGProp.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Iterator.hxx>

#include "kernel/boundary.h"
#include "kernel/solid_impl.h"

namespace visewright::kernel {
namespace {

/// The pieces of the result as a solid; nothing when there are none.
std::optional<Solid> pieces_of(const TopoDS_Shape& shape) {
  int solids = 0;
  TopoDS_Shape first;
  for (TopExp_Explorer at(shape, TopAbs_SOLID); at.More(); at.Next(), ++solids)
    if (solids == 0) first = at.Current();
  if (solids == 0) return std::nullopt;
  return wrapped(solids == 1 ? first : shape);
}

/// The parts of a body of several pieces one by one: pieces that touch must not be one argument.
void append(TopTools_ListOfShape& list, const TopoDS_Shape& shape) {
  if (shape.ShapeType() != TopAbs_COMPOUND) {
    list.Append(shape);
    return;
  }
  for (TopoDS_Iterator piece(shape); piece.More(); piece.Next()) append(list, piece.Value());
}

/// One operation with all tools at once: several times faster than one after the other. Inputs stay as they are, no
/// gluing (it answers with nothing where bodies cross), no fuzzy distance (it widens tolerances).
base::Result<std::optional<Solid>> run(BRepAlgoAPI_BooleanOperation& job, const TopTools_ListOfShape& bodies,
                                       const TopTools_ListOfShape& tools, std::string_view what,
                                       std::string_view label) {
  job.SetArguments(bodies);
  job.SetTools(tools);
  job.SetNonDestructive(Standard_True);
  job.SetRunParallel(Standard_False);
  job.Build();
  if (job.HasErrors() || !job.IsDone() || job.Shape().IsNull())
    return failed(what, label, "the bodies cannot be combined");
  return pieces_of(job.Shape());
}

base::Result<Solid> not_empty(base::Result<std::optional<Solid>> result, std::string_view what,
                              std::string_view label) {
  if (!result) return base::passed_on(std::move(result.error()));
  if (!*result) return failed(what, label, "nothing is left");
  return **result;
}

bool boxes_apart(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  Bnd_Box of_a, of_b;
  BRepBndLib::Add(a, of_a, Standard_False);
  BRepBndLib::Add(b, of_b, Standard_False);
  return of_a.IsOut(of_b);
}

}  // namespace

base::Result<Solid> cut(const Solid& from, std::span<const Solid> tools, std::string_view label) {
  if (tools.empty()) return from;
  return guarded("cut", label, [&] {
    TopTools_ListOfShape body, list;
    append(body, shape_of(from));
    for (const Solid& tool : tools) append(list, shape_of(tool));
    BRepAlgoAPI_Cut job;
    return not_empty(run(job, body, list, "cut", label), "cut", label);
  });
}

base::Result<Solid> fused(std::span<const Solid> pieces, std::string_view label) {
  if (pieces.empty()) return failed("union", label, "there is nothing to join");
  if (pieces.size() == 1) return pieces.front();
  return guarded("union", label, [&] {
    TopTools_ListOfShape first, rest;
    append(first, shape_of(pieces.front()));
    for (const Solid& piece : pieces.subspan(1)) append(rest, shape_of(piece));
    BRepAlgoAPI_Fuse job;
    return not_empty(run(job, first, rest, "union", label), "union", label);
  });
}

base::Result<std::optional<Solid>> common(const Solid& a, const Solid& b, std::string_view label) {
  return guarded("common part", label, [&]() -> base::Result<std::optional<Solid>> {
    if (boxes_apart(shape_of(a), shape_of(b))) return std::optional<Solid>{};
    TopTools_ListOfShape of_a, of_b;
    append(of_a, shape_of(a));
    append(of_b, shape_of(b));
    BRepAlgoAPI_Common job;
    return run(job, of_a, of_b, "common part", label);
  });
}

base::Result<double> common_volume_mm3(const Solid& a, const Solid& b, std::string_view label) {
  return guarded("common part", label, [&]() -> base::Result<double> {
    const auto shared = common(a, b, label);
    if (!shared) return base::passed_on(shared.error());
    if (!*shared) return 0.0;
    GProp_GProps volume;
    BRepGProp::VolumeProperties(shape_of(**shared), volume);
    return volume.Mass();
  });
}

}  // namespace visewright::kernel
