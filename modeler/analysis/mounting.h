// What holds the rear jaw, and what the holes for the screws leave of the apron.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

/// Mounting screws under a person's lean; the apron's section with its doubler.
void judge_mounting(const layout::Plan&, std::vector<reasons::Finding>&);

}  // namespace visewright::analysis
