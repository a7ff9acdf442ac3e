// What a round cutter meets along an outline.
#pragma once

#include <optional>

#include "geometry/loop.h"

namespace visewright::making {

struct Round {
  geometry::Point centre;
  double radius_mm = 0;
};
/// The circle that an outline is, if it is one.
[[nodiscard]] std::optional<Round> as_circle(const geometry::Profile&);

/// Diameter of the largest cutter that follows the outline: no wider than twice its smallest inside radius, or where
/// there is none or a sharp one, than its narrower side. `within`: the cutter runs inside.
[[nodiscard]] double largest_cutter_mm(const geometry::Profile&, bool within);

}  // namespace visewright::making
