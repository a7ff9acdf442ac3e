// The known name that a mistyped one most likely meant.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace visewright::base {

/// Number of single-letter insertions, deletions and replacements that turn `a` into `b` (edit distance after
/// Levenshtein, 1966).
[[nodiscard]] std::size_t edits_between(std::string_view a, std::string_view b);

/// The known name with the fewest edits; the first of equals. Empty when nothing is known.
[[nodiscard]] std::string_view nearest_name(std::string_view mistyped, std::span<const std::string_view> known);

}  // namespace visewright::base
