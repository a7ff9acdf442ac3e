// What a gear is called in findings: by its place from the left.
#pragma once

#include <cstddef>
#include <string>

namespace visewright::analysis {

[[nodiscard]] inline std::string gear_name(std::size_t index) { return "gear " + std::to_string(index + 1); }

}  // namespace visewright::analysis
