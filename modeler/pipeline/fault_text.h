// Faults as the person and as a program reads them: the one place where a fault becomes words.
#pragma once

#include <string>
#include <string_view>

#include "base/fault.h"

namespace visewright::pipeline {

inline constexpr std::string_view error_schema = "visewright.error/1";

/// One line a fault, in line order: "bench.toml:12:3: train.module: is negative; give a length above 0". `design` is
/// the path of the design file, for places in it. Characters that could steer a terminal come out as '?'.
[[nodiscard]] std::string as_text(base::Faults, std::string_view design);

/// The same facts by the schema visewright.error/1, with a closing newline.
[[nodiscard]] std::string as_json(base::Faults, std::string_view design);

/// Exit status of a run that ended with these faults: that of the gravest, in the order own mistake, interrupted,
/// output, geometry, input.
[[nodiscard]] int exit_status(const base::Faults&);

}  // namespace visewright::pipeline
