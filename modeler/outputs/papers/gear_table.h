// The data of a gear, as its drawing must carry them.
#pragma once

#include <string>
#include <vector>

#include "outputs/facts.h"

namespace visewright::outputs::papers {

/// Empty when the part is no gear of the train. Rows of name and value: teeth, module, pressure angle, shift, reference,
/// tip and root diameter, thinning, face width, mates with centre distance and backlash.
[[nodiscard]] std::vector<std::vector<std::string>> gear_rows(const Facts&, const parts::Part&);
/// Of the reference circle, 0 when the part is no gear of the train.
[[nodiscard]] double reference_diameter_mm(const Facts&, const parts::Part&);

}  // namespace visewright::outputs::papers
