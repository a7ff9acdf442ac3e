// Two spellings of one designation compare equal by these keys.
#pragma once

#include <string>
#include <string_view>

namespace visewright::standards {

/// Lower case, "×" and "x" alike, without quotes and spaces; a space between two digits becomes a hyphen, so that
/// "1 1/4-5 Acme" and "1-1/4-5 acme" agree. Law: key(key(x)) == key(x).
[[nodiscard]] std::string designation_key(std::string_view designation);

/// The words of a name in lower case and in alphabetical order: "plywood, birch" and "Birch plywood" agree.
[[nodiscard]] std::string name_key(std::string_view name);

}  // namespace visewright::standards
