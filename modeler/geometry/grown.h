// Outlines made larger or smaller all round: the path of a cutter's middle, or of a saw's kerf.
#pragma once

#include <vector>

#include "base/fault.h"
#include "geometry/loop.h"

namespace visewright::geometry {

/// All points `by_mm` outside an outline (negative: inside it). Corners that come apart are joined by arcs, as a round
/// cutter runs. Growing inwards may leave several outlines or none. Circles and outlines of lines and arcs are exact:
/// lines stay lines, arcs stay arcs. Outlines with involutes or trochoids are taken as chords within 1e-4 mm and give
/// chords that stray less than 2e-3 mm. Law: every point of the result is |by| away from the outline, none nearer.
[[nodiscard]] base::Result<std::vector<Loop>> grown(const Loop&, double by_mm);

/// The least distance from a point to an outline of lines and arcs, mm.
[[nodiscard]] double distance_mm(Point, const Loop&);

}  // namespace visewright::geometry
