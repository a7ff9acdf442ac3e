// Rules: the one place where the words about a number or a finding stand.
#pragma once

#include <string_view>

namespace visewright::reasons {

/// Why a number is what it is, or what a finding measures. Rules are constexpr objects, one table a folder; a rule's
/// address is its identity.
struct Rule {
  std::string_view name;     // dotted, plain words: "front_jaw.backing"
  std::string_view meaning;  // one sentence
  /// The formula in words. {0}, {1} … stand for the numbers it was worked out from, {=} for the result.
  std::string_view formula;
  std::string_view source;   // a standard, a book, or "common practice, no source"
  std::string_view remedy;   // what to change
};

}  // namespace visewright::reasons
