// What the strength class of a rod says.
#pragma once

#include <optional>
#include <string_view>

#include "units/quantity.h"

namespace visewright::design {

/// Yield stress of "4.6", "8.8" and the like, or of "300 MPa"; absent when the text is neither. In a class a.b a
/// hundred times a is the tensile strength in MPa and b tenths of that is the yield stress (ISO 898-1:2013, 5; from
/// memory), so the yield stress is 10 · a · b.
[[nodiscard]] std::optional<units::Pressure> yield_stress(std::string_view strength_class);

}  // namespace visewright::design
