#include "outputs/data/price.h"

#include <algorithm>
#include <functional>
#include <string>

#include "outputs/data/stock_words.h"

namespace visewright::outputs::data {
namespace {

std::vector<double> longest_first(std::vector<double> sizes) {
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  return sizes;
}

std::vector<double> in_mm(const std::vector<units::Length>& sizes) {
  std::vector<double> list;
  for (const units::Length size : sizes) list.push_back(units::in_mm(size));
  return longest_first(list);
}

bool same_thing(const design::StockPiece& piece, const StockWords& words) {
  const std::string& kind = piece.kind.value;
  const std::string& material = piece.material.value;
  if (words.kind == "bought") return kind == words.designation || material == words.designation;
  if (!words.designation.empty() && kind.ends_with("rod")) return material == words.designation;
  return kind == words.kind && material == words.material;
}

/// Part of the stock piece that is used; absent when the stock is too small.
std::optional<double> share(const std::vector<double>& need, const std::vector<double>& stock) {
  if (need.empty() || stock.empty() || stock.size() > need.size()) return std::nullopt;
  double used = 1;
  for (std::size_t i = 0; i < stock.size(); ++i) {
    if (need[i] > stock[i] + 1e-9) return std::nullopt;
    used *= need[i] / stock[i];
  }
  return used;
}

/// A rod's or hexagon bar's length against the stock's: the longest of its figures.
std::optional<double> share_of_length(double need, const std::vector<double>& stock) {
  return stock.empty() ? std::nullopt : share({need}, {stock.front()});
}

}  // namespace

std::optional<double> price_of_one(const parts::Stock& stock, const std::vector<design::StockPiece>& table) {
  const StockWords words = stock_words(stock);
  if (words.kind == "offcut" || words.kind == "existing") return std::nullopt;
  const bool by_length = words.kind == "rod" || words.kind == "hexagon bar";
  for (const design::StockPiece& piece : table) {
    if (!piece.price || !same_thing(piece, words)) continue;
    if (words.kind == "bought") return piece.price->value;
    const std::vector<double> sizes = in_mm(piece.size.value);
    const std::optional<double> used =
        by_length ? share_of_length(words.size_mm[1], sizes)
                  : share(longest_first(words.rough_mm.empty() ? words.size_mm : words.rough_mm), sizes);
    if (used) return piece.price->value * *used;
  }
  return std::nullopt;
}

}  // namespace visewright::outputs::data
