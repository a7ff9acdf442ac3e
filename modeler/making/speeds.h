// Turns a minute for a tool in a material.
#pragma once

#include <optional>

#include "standards/catalogue.h"

namespace visewright::making {

/// Turns a minute, in steps that a belt or a dial can be set to.
struct SpeedRange {
  double low = 0, high = 0;
  const standards::SpeedRow* row = nullptr;
};

/// n = 1000 v / (π d), d in mm and v in metres a minute, no more than the tool stands, rounded down to two digits.
/// Absent for tools that do not turn or whose speed in this material is not in the catalogue.
/// Source: Machinery's Handbook, cutting speed and turns; the speeds are the catalogue's rows.
[[nodiscard]] std::optional<SpeedRange> speed_for(standards::ToolKind, double diameter_mm,
                                                  const standards::MaterialRow&, const standards::Catalogue&);

}  // namespace visewright::making
