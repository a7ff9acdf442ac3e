// The bill of materials as values: one line an item.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "outputs/data/items.h"
#include "outputs/data/stock_words.h"
#include "outputs/facts.h"

namespace visewright::outputs::data {

/// Sub-items (level above 0) are what the item above them is built up from; their masses are part of its mass, and its
/// price is the sum of theirs.
struct BillLine {
  std::string item, name;
  int level = 0;
  std::uint32_t part = 0;   // index of the assembly's part that it is, or belongs to
  int count = 0;            // how many the vise holds
  std::optional<int> buy;   // pieces to buy; halves of one bought piece count once; absent for what is cut from stock
  std::string_view making;  // "made", "bought", "printed", "built up"
  StockWords stock;
  double mass_each_kg = 0;                  // as built: after all operations
  std::optional<double> price_each, price;  // of all `count`; cents

  [[nodiscard]] double mass_kg() const { return count * mass_each_kg; }
};

struct BillSum {
  double mass_kg = 0;
  std::optional<double> price;  // of the lines that have one
  int unpriced = 0;             // lines that are bought or cut from stock and have no price
};

/// In order of item number.
[[nodiscard]] std::vector<BillLine> bill(const Facts&);
[[nodiscard]] BillSum sum(std::span<const BillLine>);

}  // namespace visewright::outputs::data
