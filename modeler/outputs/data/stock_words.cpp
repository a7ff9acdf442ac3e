#include "outputs/data/stock_words.h"

#include <algorithm>
#include <functional>

namespace visewright::outputs::data {
namespace {

std::vector<double> longest_first(const geometry::Vector& size) {
  std::vector<double> list(size.begin(), size.end());
  std::sort(list.begin(), list.end(), std::greater<>());
  return list;
}

/// Grain runs along x, so that is a board's length however short it is.
std::vector<double> along_grain(const geometry::Vector& size) {
  return {size[0], std::max(size[1], size[2]), std::min(size[1], size[2])};
}

struct Words {
  StockWords operator()(const parts::Board& board) const {
    StockWords words{"board", board.wood->name, {}, {}, along_grain(board.size_mm), {}};
    words.rough_mm.assign(board.rough_mm.begin(), board.rough_mm.end());
    return words;
  }
  StockWords operator()(const parts::Sheet& sheet) const {
    return {"sheet", sheet.material->name, {}, {}, longest_first(sheet.size_mm), {}};
  }
  StockWords operator()(const parts::Rod& rod) const {
    std::string thread;
    if (rod.thread) thread = rod.thread->designation + (rod.left_hand ? " left-hand" : "");
    return {"rod",
            rod.material->name,
            thread,
            rod.thread ? rod.thread->source.standard : "",
            {rod.diameter_mm, rod.length_mm},
            {}};
  }
  StockWords operator()(const parts::Bar& bar) const {
    return {"bar", bar.material->name, {}, {}, longest_first(bar.size_mm), {}};
  }
  StockWords operator()(const parts::HexBar& bar) const {
    return {"hexagon bar", bar.material->name, {}, {}, {bar.across_flats_mm, bar.length_mm}, {}};
  }
  StockWords operator()(const parts::Bought& bought) const {
    return {"bought", bought.material ? bought.material->name : "", bought.designation, bought.standard, {}, {}};
  }
  StockWords operator()(const parts::Printed& printed) const {
    return {"printed", printed.material->name, {}, {}, {}, {}};
  }
  StockWords operator()(const parts::Offcut& offcut) const {
    return {"offcut", offcut.material->name, "offcut of " + offcut.of, {}, {}, {}};
  }
  StockWords operator()(const parts::Existing& existing) const {
    return {"existing",
            existing.material ? existing.material->name : "",
            existing.what,
            {},
            longest_first(existing.size_mm),
            {}};
  }
};

std::string joined(const std::vector<double>& sizes, units::LengthUnit unit) {
  std::string text;
  for (const double size : sizes) text += (text.empty() ? "" : " × ") + cell(size, unit);
  return text;
}

}  // namespace

StockWords stock_words(const parts::Stock& stock) { return std::visit(Words{}, stock); }

std::string cell(double mm, units::LengthUnit unit) {
  const std::string text = units::write_length(units::mm(mm), unit);
  return text.substr(0, text.rfind(' '));
}

std::string size_cell(const StockWords& words, units::LengthUnit unit) {
  if (words.size_mm.empty()) return {};
  if (words.kind == "rod") return "⌀" + joined(words.size_mm, unit);
  if (words.kind == "hexagon bar") return cell(words.size_mm[0], unit) + " AF × " + cell(words.size_mm[1], unit);
  return joined(words.size_mm, unit);
}

std::string rough_cell(const StockWords& words, units::LengthUnit unit) { return joined(words.rough_mm, unit); }

std::string_view unit_word(units::LengthUnit unit) { return unit == units::LengthUnit::inch ? "in" : "mm"; }

}  // namespace visewright::outputs::data
