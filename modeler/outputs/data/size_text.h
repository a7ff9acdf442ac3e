// What `size` and `check` say to a person; the lines are at most 100 places wide.
#pragma once

#include <string>

#include "outputs/facts.h"

namespace visewright::outputs::data {

/// Train, parity and hand, the stack along a screw, opening, projection, free depth and masses as tables, then the
/// findings, worst first.
[[nodiscard]] std::string size_text(const Facts&);

/// The findings, worst first, and their counts.
[[nodiscard]] std::string check_text(const Facts&);

}  // namespace visewright::outputs::data
