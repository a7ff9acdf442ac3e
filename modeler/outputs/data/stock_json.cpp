#include "outputs/data/stock_json.h"

namespace visewright::outputs::data {
namespace {

Json sizes(std::span<const double> mm) {
  Json list = Json::array();
  for (const double size : mm) list.push_back(number(size));
  return list;
}

Json cut_json(const making::CutStock& stock) {
  Json pieces = Json::array(), left = Json::array();
  for (const auto& piece : stock.pieces)
    pieces.push_back({{"part", piece.part}, {"at_mm", sizes(piece.at_mm)}, {"size_mm", sizes(piece.size_mm)}, {"turned", piece.turned}});
  for (const auto& rest : stock.left_mm) left.push_back(sizes(rest));
  return {{"kind", stock.kind},
          {"material", stock.material},
          {"size_mm", sizes(stock.size_mm)},
          {"on_hand", stock.on_hand.has_value()},
          {"number", stock.number},
          {"pieces", std::move(pieces)},
          {"left_mm", std::move(left)},
          {"used_percent", number(100 * stock.used_share)}};
}

}  // namespace

Json stock_json(const making::Cutting& cutting) {
  Json cut = Json::array(), buy = Json::array(), bounds = Json::array();
  for (const auto& stock : cutting.stock) cut.push_back(cut_json(stock));
  for (const auto& line : cutting.to_buy)
    buy.push_back({{"kind", line.kind}, {"material", line.material}, {"size_mm", sizes(line.size_mm)}, {"count", line.count}, {"parts", line.parts}});
  for (const auto& bound : cutting.bounds)
    bounds.push_back({{"kind", bound.kind},
                      {"material", bound.material},
                      {"pieces", bound.pieces},
                      {"from_stock", bound.from_stock},
                      {"least_share_percent", number(bound.opened > 0 ? 100 * bound.least / bound.opened : 0)},
                      {"proved_least", bound.proved}});
  return {{"cut", std::move(cut)}, {"to_buy", std::move(buy)}, {"bounds", std::move(bounds)}};
}

}  // namespace visewright::outputs::data
