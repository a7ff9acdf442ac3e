// The words that every sheet, list and description carries: what fails, and what the figures are good for.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "reasons/finding.h"

namespace visewright::outputs::data {

/// "Not ready to build: 2 checks fail: bench.legs, train.parity". Names once each, in order of name; empty when nothing
/// fails.
[[nodiscard]] std::string failing_notice(std::span<const reasons::Finding>);

/// What stands under every list of figures.
inline constexpr std::string_view planning_note =
    "Figures are for planning. Local codes, the makers' data sheets and licensed practice come first.";

}  // namespace visewright::outputs::data
