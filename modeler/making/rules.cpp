#include "making/rules.h"

namespace visewright::making {

std::span<const reasons::Rule* const> rules_of_making() { return rules::all; }

}  // namespace visewright::making
