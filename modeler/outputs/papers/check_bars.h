// Bars to measure on paper: whether it is true to size.
#pragma once

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Two bars upwards beside each other from `up`, and two to the right under each other from `across`: 100 mm with a
/// tick every 10 mm, and 4 in with a tick every quarter inch. The end ticks stand exactly on the length.
void add_check_bars(Sheet&, std::size_t layer, geometry::Point up, geometry::Point across);

}  // namespace visewright::outputs::papers
