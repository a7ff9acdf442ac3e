// The gaps that a maker asks after by name.
#pragma once

#include "fitup/stand.h"
#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::fitup {

/// In the order of named_gaps(); those whose parts a design lacks are left out. Each is a least distance over the whole
/// travel and, of turning parts, over the full turn; never above the truth, so all are certified.
[[nodiscard]] std::vector<reasons::Finding> named_gap_findings(const layout::Plan&, const assembly::Assembly&, const std::vector<Stand>&);

}  // namespace visewright::fitup
