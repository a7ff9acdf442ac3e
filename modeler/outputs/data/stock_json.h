// What the parts are cut from, as JSON: "stock" in visewright.size/1.
#pragma once

#include "making/making.h"
#include "outputs/data/json.h"

namespace visewright::outputs::data {

/// Pieces of stock cut up, what is left, what must be bought.
[[nodiscard]] Json stock_json(const making::Cutting&);

}  // namespace visewright::outputs::data
