// What follows from a Plan, each consequence measured against its limit; no solids needed.
#pragma once

#include <vector>

#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::analysis {

/// Findings on train, screws, wheels, webs and opening; worst first.
[[nodiscard]] std::vector<reasons::Finding> analyse(const layout::Plan&);

}  // namespace visewright::analysis
