// What is refused before the TOML library sees a text: too long, not UTF-8, nested without end.
#pragma once

#include <optional>
#include <string_view>

#include "base/fault.h"

namespace visewright::reading {

/// Deepest brackets within brackets, and most parts of a dotted key. Deeper nesting is nobody's design, and the library
/// follows it with the call stack.
inline constexpr int deepest_brackets = 32, most_key_parts = 16;

/// The first reason to refuse `text`, with its place and the file's name as the key; nothing when it may be parsed.
[[nodiscard]] std::optional<base::Fault> screened(std::string_view text, std::string_view name,
                                                  std::uint16_t text_index);

}  // namespace visewright::reading
