// Hand wheels with their lock screw and folding grip.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: origin on the axis, z out, z = 0 at the hub's rear. The lock screw's hole looks along +x. "hand wheel".
[[nodiscard]] Part hand_wheel(const layout::Plan&);

/// Breadth of the rim along the radius. The grip's pivot stands over it.
[[nodiscard]] double rim_breadth_mm(const layout::Plan&);
/// Height of the lock screw's axis in the wheel's frame.
[[nodiscard]] double lock_screw_height_mm(const layout::Plan&);

/// Frame: origin on the screw's axis where it meets the surface of the hub, z along the screw, away from the wheel's
/// axis; its tip stands in the dimple. "lock screw".
[[nodiscard]] Part lock_screw(const layout::Plan&);

/// Frame: origin at the hinge, z along the grip from the ball at the hinge to its free end. "grip".
[[nodiscard]] Part grip(const layout::Plan&);

}  // namespace visewright::parts
