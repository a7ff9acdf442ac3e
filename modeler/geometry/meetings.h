// Where lines and arcs meet.
#pragma once

#include <vector>

#include "geometry/edge.h"

namespace visewright::geometry {

/// The points a line or arc has in common with another: crossings, touchings, and the ends of either that lie on the
/// other. Along a stretch that the two share only its ends are given. Ends count when within same_point_mm; a contact
/// is one point when the two come within 1e-10 mm of just touching. Points may repeat. REQUIRES: lines and arcs only.
[[nodiscard]] std::vector<Point> meetings(const Edge&, const Edge&);

/// Parameter of the point of a line or arc nearest to a point that lies on it. REQUIRES: a line or an arc.
[[nodiscard]] double parameter(const Edge&, Point on_it);

}  // namespace visewright::geometry
