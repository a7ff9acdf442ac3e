// The figures of the analysis as short tables that a person reads at a bench.
#pragma once

#include <string>

#include "outputs/facts.h"

namespace visewright::outputs::data {

/// How hard it clamps, what gives first, how exact the holes must be, droop and movement, how to measure the gears.
[[nodiscard]] std::string figures_text(const Facts&);

}  // namespace visewright::outputs::data
