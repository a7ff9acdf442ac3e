// Plan → Assembly: which parts there are, where each stands, how it moves, and which pairs may touch.
#pragma once

#include "assembly/assembly.h"
#include "layout/plan.h"

namespace visewright::assembly {

/// Every part of the vise and the bench, placed. Equal parts are one part placed several times.
[[nodiscard]] Assembly assemble(const layout::Plan&);

}  // namespace visewright::assembly
