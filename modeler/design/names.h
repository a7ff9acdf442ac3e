// Names in a design that the catalogue must know, and what to suggest when it does not.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "design/keys.h"
#include "standards/catalogue.h"

namespace visewright::design {

/// What is wrong with a name, and what would be right.
struct WrongName {
  std::string wrong, right;
};

/// Absent when the catalogue knows the name for this key, or when it is one of the key's own words.
[[nodiscard]] std::optional<WrongName> wrong_name(const KeyRow&, std::string_view name, const standards::Catalogue&);

}  // namespace visewright::design
