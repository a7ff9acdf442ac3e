// The angle brackets that hold the rear jaw to the underside of the bench top.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: axes of the front frame; origin at the outer corner of the angle, amid its width: y = 0 is the upper face,
/// against the underside of the top, z = 0 the front face, against the back of the rear jaw. Bodies: "bracket top leg",
/// "bracket down leg", "bead". "bracket".
[[nodiscard]] Part bracket(const layout::Plan&);

/// Height of the corner above the screw line: the underside of the top.
[[nodiscard]] double bracket_line_mm(const layout::Plan&);
/// Middle of the slot in the top leg, along z of the bracket's frame (negative: into the bench).
[[nodiscard]] double bracket_slot_z_mm(const layout::Plan&);
/// Middle of the hole in the down leg, along y of the bracket's frame (negative).
[[nodiscard]] double bracket_hole_y_mm(const layout::Plan&);

}  // namespace visewright::parts
