// Stock in the words and sizes of a list.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "parts/stock.h"
#include "units/text.h"

namespace visewright::outputs::data {

/// Sizes in mm: length, width, thickness of boards, sheets and bars; diameter, length of rod; across flats, length of
/// hexagon bar; empty for what has no size of its own. `rough_mm` is what to saw before planing, where that differs.
struct StockWords {
  std::string_view kind;  // "board", "sheet", "rod", "bar", "hexagon bar", "bought", "printed", "offcut", "existing"
  std::string material, designation, standard;
  std::vector<double> size_mm, rough_mm;
};
[[nodiscard]] StockWords stock_words(const parts::Stock&);

/// A length for a table cell, its unit left to the heading: "19", "1-1/4".
[[nodiscard]] std::string cell(double mm, units::LengthUnit);
/// "520 × 185 × 40", "⌀20 × 475", "30 AF × 18"; empty when there is no size.
[[nodiscard]] std::string size_cell(const StockWords&, units::LengthUnit);
[[nodiscard]] std::string rough_cell(const StockWords&, units::LengthUnit);
[[nodiscard]] std::string_view unit_word(units::LengthUnit);

}  // namespace visewright::outputs::data
