// All rules of the layout in one list, for looking up by name.
#pragma once

#include <span>

#include "reasons/rule.h"

namespace visewright::layout {

[[nodiscard]] std::span<const reasons::Rule* const> rules_of_layout();

}  // namespace visewright::layout
