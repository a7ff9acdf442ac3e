// The master: every shared hole on one datum.
#pragma once

#include "outputs/facts.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// All shared patterns of the front frame, as the person sees them, with the edges of the jaws and the cover for
/// reading. A remark a pattern says which parts follow it.
[[nodiscard]] Sheet pattern_sheet(const Facts&);

}  // namespace visewright::outputs::papers
