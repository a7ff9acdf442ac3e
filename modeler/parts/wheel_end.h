// The end of a rod that a hand wheel sits on.
#pragma once

#include <vector>

#include "layout/plan.h"
#include "parts/operation.h"

namespace visewright::parts {

/// The journal with its shoulder and the hole for the collar pin, and where a wheel sits its ring groove and dimple:
/// alike on the lead screws and on the shaft in the middle. `rear_out` is where the rod's frame has its origin, out from
/// the bench.
[[nodiscard]] std::vector<Operation> wheel_end(const layout::Plan&, double rear_out_mm, double front_out_mm, bool with_wheel);

/// A hole right across a rod, along y.
[[nodiscard]] Operation cross_hole(std::string name, double rod_mm, double height_mm, double diameter_mm);

/// Depth of the dimple below the floor of the ring groove.
inline constexpr double dimple_depth_mm = 1;

}  // namespace visewright::parts
