// The settled sizes and the findings, for programs: schema visewright.size/1.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::data {

inline constexpr std::string_view size_schema = "visewright.size/1";

/// From +X to the gear's nearest tooth centre, anticlockwise as the person sees it, in (−half a tooth, half a tooth];
/// exactly between two teeth counts as the positive one.
[[nodiscard]] double nearest_tooth_deg(const layout::Gear&);

[[nodiscard]] std::string size_json(const Facts&);
[[nodiscard]] base::Result<std::vector<File>> write_size(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::data
