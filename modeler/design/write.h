// A design as a design file.
#pragma once

#include <string>

#include "design/design.h"

namespace visewright::design {

/// The canonical file: every given value in the order of the key table, lengths bare where that loses nothing. Law:
/// read(write(d)) gives the same values as d, for every design that read gives.
[[nodiscard]] std::string write(const Design&);

/// Whether two designs say the same, wherever it stands in their files.
[[nodiscard]] bool same_values(const Design&, const Design&);

}  // namespace visewright::design
