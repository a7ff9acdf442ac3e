// Points, directions and frames of a STEP file.
#pragma once

#include <array>
#include <optional>

#include "readers/step_file.h"

namespace visewright::readers {

using Triple = std::array<double, 3>;

[[nodiscard]] double dot(const Triple&, const Triple&);
[[nodiscard]] Triple cross(const Triple&, const Triple&);
[[nodiscard]] Triple sum(const Triple&, const Triple&);
[[nodiscard]] Triple scaled(double, const Triple&);
[[nodiscard]] double distance(const Triple&, const Triple&);

/// A right-handed frame.
struct Frame {
  Triple origin{0, 0, 0}, x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1};
};
[[nodiscard]] Triple outside(const Frame&, const Triple& inside);
[[nodiscard]] Triple inside(const Frame&, const Triple& outside);
/// The same for directions, which have no place.
[[nodiscard]] Triple direction_inside(const Frame&, const Triple& outside);
/// The frame `inner`, given in `outer`, seen from around `outer`.
[[nodiscard]] Frame combined(const Frame& outer, const Frame& inner);
[[nodiscard]] Frame inverse(const Frame&);
/// An AXIS2_PLACEMENT_3D; made square as the standard says.
[[nodiscard]] std::optional<Frame> frame_of(const StepFile&, const Instance* placement);
/// A CARTESIAN_POINT or DIRECTION.
[[nodiscard]] std::optional<Triple> triple_of(const Instance* point_or_direction);

}  // namespace visewright::readers
