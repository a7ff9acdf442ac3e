// A design file as values.
#pragma once

#include <cstddef>
#include <string_view>

#include "base/fault.h"
#include "design/design.h"
#include "standards/catalogue.h"

namespace visewright::design {

/// So many faults of a file are told one by one; the rest are counted.
inline constexpr std::size_t most_faults = 20;

/// Reads a design. A bare length is in the file's `units`, millimetres when it gives none; the module always is in
/// millimetres. `file` is its name for messages. Places have the text index 0. Every fault of the file is found; they
/// come in line order, at most `most_faults` and one more that counts the rest.
[[nodiscard]] base::Result<Design> read(std::string_view text, std::string_view file, const standards::Catalogue&);

}  // namespace visewright::design
