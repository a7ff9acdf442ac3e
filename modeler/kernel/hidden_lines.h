// The visible edges of placed solids seen from one side, as straight pieces: for pictures, never to measure from.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/fault.h"
#include "geometry/placement.h"
#include "geometry/point.h"
#include "kernel/solid.h"

namespace visewright::kernel {

/// A solid and where it stands. `colour_group` is the caller's own.
struct PlacedSolid {
  Solid solid;
  geometry::Placement where;
  int colour_group = 0;
};

/// A visible stretch in the view's x and y, mm. `of` is the index of the placed solid it belongs to. `outline`: not an
/// edge of the solid but where a round face turns away from the eye.
struct Segment {
  geometry::Point a, b;
  std::size_t of = 0;
  int colour_group = 0;
  bool outline = false;
};

/// What the eye sees from far out on the view's z, looking at its origin, with the view's x to the right. Round faces
/// are taken as facets within about `deflection_mm`; edges where faces run smoothly into each other are left out.
/// Law: the same input gives the same segments in the same order: by solid, then by place.
[[nodiscard]] base::Result<std::vector<Segment>> hidden_lines(std::span<const PlacedSolid>,
                                                              const geometry::Placement& view, double deflection_mm,
                                                              std::string_view label);

}  // namespace visewright::kernel
