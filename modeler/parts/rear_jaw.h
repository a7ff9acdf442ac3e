// The rear jaw in the bench's notch: a panel core and a hardwood cap.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: the front frame, origin on the screw line amid the jaw, z = 0 at the rear face. Bodies: "rear jaw core",
/// "rear jaw cap". "rear jaw".
[[nodiscard]] Part rear_jaw(const layout::Plan&);

}  // namespace visewright::parts
