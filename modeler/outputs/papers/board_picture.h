// A piece of stock with the pieces that are cut from it.
#pragma once

#include <string>

#include "making/cutting.h"
#include "outputs/facts.h"

namespace visewright::outputs::papers {

/// As SVG, scaled to a page's width; every piece with its name and size, rods and bars as strips.
[[nodiscard]] std::string board_picture(const Facts&, const making::CutStock&);

}  // namespace visewright::outputs::papers
