#include "making/outlines.h"

#include <algorithm>
#include <limits>

#include "making/corners.h"

namespace visewright::making {

std::optional<Round> as_circle(const geometry::Profile& outline) {
  if (outline.outer.size() != 1 || !outline.holes.empty()) return std::nullopt;
  std::optional<Round> round;
  for (const geometry::Edge& edge : outline.outer.front().edges()) {
    const auto* arc = std::get_if<geometry::Arc>(&edge);
    if (arc == nullptr || !arc->left) return std::nullopt;
    if (!round) round = {arc->centre, geometry::distance(arc->centre, arc->a)};
    if (geometry::distance(arc->centre, round->centre) > geometry::same_point_mm) return std::nullopt;
  }
  return round;
}

double largest_cutter_mm(const geometry::Profile& outline, bool within) {
  const std::optional<double> radius = smallest_inside_radius_mm(outline, within);
  if (radius && *radius > geometry::same_point_mm) return 2 * *radius;
  double narrow = std::numeric_limits<double>::max();
  for (const geometry::Loop& loop : outline.outer) {
    const geometry::Box box = geometry::box(loop);
    narrow = std::min({narrow, box.high.x - box.low.x, box.high.y - box.low.y});
  }
  return narrow;
}

}  // namespace visewright::making
