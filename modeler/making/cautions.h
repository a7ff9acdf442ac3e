// Cautions: each stands here once and is pointed at from the steps it belongs to.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "making/tools.h"

namespace visewright::making {

struct Caution {
  std::string_view name;  // "plated steel"
  std::string_view text;
};

/// Those that go with a tool in a material.
[[nodiscard]] std::vector<const Caution*> cautions_for(standards::ToolKind, const standards::MaterialRow&);
/// Null when there is none of this name.
[[nodiscard]] const Caution* caution(std::string_view name);
[[nodiscard]] std::span<const Caution> cautions();

}  // namespace visewright::making
