// Every number of the Plan with its reason, for programs: schema visewright.plan/1.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::data {

inline constexpr std::string_view plan_schema = "visewright.plan/1";

/// Numbers in the order in which they were fixed: name, value (unit in the key), basis, rule, the sentence that says
/// why with its numbers put in, the names it came from, and where the design gives it. Then choices and hole patterns.
[[nodiscard]] std::string plan_json(const Facts&);

[[nodiscard]] base::Result<std::vector<File>> write_plan(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::data
