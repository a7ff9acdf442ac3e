// The cover sheet, which holds the wheel bearings and takes the push when the jaw is opened.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: the front frame, origin on the screw line amid the jaw, z = 0 at the back of the sheet. "cover".
[[nodiscard]] Part cover(const layout::Plan&);

}  // namespace visewright::parts
