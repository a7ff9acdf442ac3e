// The rules that judge how placed parts fit.
#pragma once

#include <span>

#include "reasons/rule.h"

namespace visewright::fitup {

namespace rules {
using reasons::Rule;
inline constexpr std::string_view practice = "common practice, no source";

inline constexpr Rule overlap{"fit.overlap", "volume that two parts would both fill, mm³", "common volume of the two solids", practice,
    "move one of the two, or take wood away where they meet"};
inline constexpr Rule gap{"fit.gap", "gap between a moving and a fixed part", "least distance of the two solids", practice,
    "move one of the two, make the hole larger, or ask for a smaller gap"};
inline constexpr Rule mesh_gap{"train.mesh_gap", "least gap between the teeth of two neighbours as they stand", "least distance of the two outlines",
    practice, "spread the axles or thin the teeth"};
inline constexpr Rule clear{"fit.clear", "pairs of parts that share no volume and keep their gaps", "counted", practice, "nothing to change"};
}  // namespace rules

[[nodiscard]] std::span<const reasons::Rule* const> rules_of_fitup();

}  // namespace visewright::fitup
