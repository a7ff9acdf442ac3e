// Screws, by their designations.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Local z out of the wood; the head stands on z = 0, the shank reaches down to −length.
[[nodiscard]] Part wood_screw(const standards::WoodScrewRow&, const standards::MaterialRow& metal);

/// The screw that holds the cover on an axle's end; same frame. Its length ends 2 mm short of the thread's depth.
[[nodiscard]] Part cover_screw(const layout::Plan&);
[[nodiscard]] double cover_screw_reach(const layout::Plan&);

}  // namespace visewright::parts
