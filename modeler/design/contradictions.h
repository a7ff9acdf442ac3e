// What a design says that cannot all be true.
#pragma once

#include "base/fault.h"
#include "design/design.h"
#include "reading/tree.h"
#include "standards/catalogue.h"

namespace visewright::design {

/// Faults of a design against itself; each stands at one place and names the line of the other. `file` is the tree the
/// design was read from: it tells what was written, also where that could not be read.
[[nodiscard]] base::Faults contradictions(const Design&, const reading::Table& file, const standards::Catalogue&);

}  // namespace visewright::design
