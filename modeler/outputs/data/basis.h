// The words for how a number came to be.
#pragma once

#include <string_view>

#include "reasons/ledger.h"

namespace visewright::outputs::data {

[[nodiscard]] constexpr std::string_view basis_word(reasons::Basis basis) {
  switch (basis) {
    case reasons::Basis::given: return "given";
    case reasons::Basis::measured: return "measured";
    case reasons::Basis::catalogue: return "catalogue";
    case reasons::Basis::derived: return "derived";
    case reasons::Basis::assumed: return "assumed";
  }
  return "";
}

}  // namespace visewright::outputs::data
