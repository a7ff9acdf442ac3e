// The bill of materials as files: CSV and Markdown for people, JSON (schema visewright.bill/1) for programs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::data {

inline constexpr std::string_view bill_schema = "visewright.bill/1";

/// A field as RFC 4180 wants it: in quotes, quotes doubled, when it holds a comma, a quote, a line end or a space at
/// either end.
[[nodiscard]] std::string csv_field(std::string_view);

/// A heading line with the unit in its names, then a line an item; lines end in \n. With failing findings the last line
/// says so, its first field "note".
[[nodiscard]] std::string bill_csv(const Facts&);
/// A table with sums, the notice above it when a finding fails, the planning note below.
[[nodiscard]] std::string bill_markdown(const Facts&);
[[nodiscard]] std::string bill_json(const Facts&);

[[nodiscard]] base::Result<std::vector<File>> write_bill(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::data
