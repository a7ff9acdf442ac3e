// The lead screws and their end stops.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

/// Frame: origin on the axis at the tail, z out. Cross holes run along y, the lock screw's dimple looks along +x.
/// `side` is 0 for the left screw. Named "lead screw"; with the side when the hands of thread differ.
[[nodiscard]] Part lead_screw(const layout::Plan&, std::size_t side);

/// Frame: z along the pin, z = 0 at one end. "end-stop pin".
[[nodiscard]] Part end_stop_pin(const layout::Plan&);

}  // namespace visewright::parts
