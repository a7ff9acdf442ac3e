// What a line of the bill costs, where the design's table of stock says what a piece costs.
#pragma once

#include <optional>
#include <vector>

#include "design/design.h"
#include "parts/stock.h"

namespace visewright::outputs::data {

/// Price of one bought piece, or one piece's share of the stock it is cut from: by volume for boards, sheets and bars
/// (rough size where there is one), by length for rod and hexagon bar. Taken from the first entry with a price that has
/// this kind and material (for bought things and thread: this designation) and is large enough. Absent without one.
/// Offcuts cost nothing more. No currency: the design gives none. Saw cuts and waste are the cut list's affair.
[[nodiscard]] std::optional<double> price_of_one(const parts::Stock&, const std::vector<design::StockPiece>&);

}  // namespace visewright::outputs::data
