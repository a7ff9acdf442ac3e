// Plane faces from profiles. Private to this folder.
#pragma once

#include <Geom_BSplineCurve.hxx>
#include <TopoDS_Face.hxx>
#include <vector>

#include "base/fault.h"
#include "geometry/edge.h"
#include "geometry/loop.h"
#include "geometry/placement.h"

namespace visewright::kernel {

/// No spline strays further from the curve it stands for, mm.
inline constexpr double spline_limit_mm = 2e-4;

/// One face for each outer outline, with its holes, in the x–y plane of the frame and facing along its z.
[[nodiscard]] base::Result<std::vector<TopoDS_Face>> faces(const geometry::Profile&, const geometry::Placement& frame,
                                                           std::string_view what, std::string_view label);

}  // namespace visewright::kernel
