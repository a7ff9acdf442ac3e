// The few simple bodies that stock and operations are made of. Solids, volumes, walls and gaps all read these values.
#pragma once

#include <span>
#include <variant>
#include <vector>

#include "geometry/loop.h"
#include "geometry/placement.h"
#include "units/quantity.h"

namespace visewright::parts {

/// A profile of a frame's x–y plane, drawn out along its z from `from_mm` to `to_mm`.
struct Prism {
  geometry::Profile profile;
  geometry::Placement frame;
  double from_mm = 0, to_mm = 0;
};

/// A half section turned round a frame's z axis: profile x is the radius (≥ 0), y the height along z. The angles count
/// from the frame's x axis, anticlockwise, from < to; left as they are it is turned all the way round. Only the eased
/// corner of an outline is turned part of the way.
struct Revolved {
  geometry::Profile half_section;
  geometry::Placement axis;
  double from_rad = 0, to_rad = 2 * units::pi;

  [[nodiscard]] bool all_round() const { return to_rad - from_rad >= 2 * units::pi - 1e-12; }
};

/// All that lies on the z side of a plane.
struct HalfSpace {
  geometry::Placement plane;
};

using Shape = std::variant<Prism, Revolved, HalfSpace>;

/// A shape given in the frame `at`, in the coordinates around that frame.
[[nodiscard]] Shape placed(const Shape&, const geometry::Placement& at);

/// A box along the axes of the frame that the shapes are given in.
struct Extent {
  geometry::Vector low_mm, high_mm;
  [[nodiscard]] double diagonal_mm() const;
};
/// A box that holds all the shapes; never smaller than they are, and exact for what stands along the axes. Half spaces
/// have no end and are passed over. REQUIRES: at least one other shape.
[[nodiscard]] Extent extent(std::span<const Shape>);

}  // namespace visewright::parts
