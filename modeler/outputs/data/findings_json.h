// What the checks found, for programs: schema visewright.findings/1.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/watcher.h"
#include "outputs/data/json.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::data {

inline constexpr std::string_view findings_schema = "visewright.findings/1";

/// Worst first, as every list of findings is shown.
[[nodiscard]] std::vector<reasons::Finding> sorted(std::span<const reasons::Finding>);

struct Counts {
  int fail = 0, caution = 0, pass = 0;
};
[[nodiscard]] Counts counts(std::span<const reasons::Finding>);

/// One finding: name, verdict, measured, limit, unit ("mm", "deg", "1", "count", "n", "mpa", "percent", "kg",
/// "kelvin"), which way is better, certified, parts, where (null when it is everywhere the same), advice, meaning.
[[nodiscard]] Json finding_json(const reasons::Finding&);
/// All of them, worst first.
[[nodiscard]] Json finding_list(std::span<const reasons::Finding>);

[[nodiscard]] std::string findings_json(const Facts&);
[[nodiscard]] base::Result<std::vector<File>> write_findings(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::data
