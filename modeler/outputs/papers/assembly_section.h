// The vise cut through the axis of its left drive screw.
#pragma once

#include "outputs/facts.h"
#include "outputs/papers/drawing_page.h"

namespace visewright::outputs::papers {

/// Out to the right, up upwards, from 2-D values alone, at the pose of the facts. Cut surfaces are hatched, each body in
/// its own way; rods, pins, nuts, washers and screws are not cut lengthwise (ISO 128-3). Balloons carry the item numbers of
/// the bill.
[[nodiscard]] Sheet assembly_section(const Facts&, Projection);

}  // namespace visewright::outputs::papers
