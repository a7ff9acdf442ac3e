#include "outputs/data/bill.h"

#include <cmath>
#include <map>
#include <utility>

#include "outputs/data/price.h"

namespace visewright::outputs::data {
namespace {

double cents(double price) { return std::round(price * 100) / 100; }

/// Shares of one bought piece are counted together, wherever in the vise they end up: with halves every second one
/// opens a new piece.
class Pieces {
 public:
  int to_buy(const parts::Bought& bought, int shares) {
    int& taken = taken_[{bought.designation, bought.share_of}];
    const int before = whole(taken, bought.share_of);
    taken += shares;
    return whole(taken, bought.share_of) - before;
  }

 private:
  static int whole(int shares, int share_of) { return (shares + share_of - 1) / share_of; }
  std::map<std::pair<std::string, int>, int> taken_;
};

std::string_view making_word(const parts::Part& part) {
  switch (part.making) {
    case parts::Making::bought: return "bought";
    case parts::Making::printed: return "printed";
    case parts::Making::existing: return "existing";
    case parts::Making::made: break;
  }
  return std::holds_alternative<parts::BuiltUp>(part.made) ? "built up" : "made";
}

/// Mass of all bodies of part `index`, of all its copies, by item number.
std::map<std::string, double> masses(const assembly::Assembly& assembly, std::uint32_t index) {
  int copies = 0;
  for (const assembly::Placed& placed : assembly.placed) copies += placed.part == index ? 1 : 0;
  const std::vector<std::string> numbers = body_items(assembly, index);
  const std::vector<parts::Body> bodies = parts::bodies(*assembly.parts[index]);
  std::map<std::string, double> mass;
  for (std::size_t i = 0; i < bodies.size(); ++i) mass[numbers[i]] += copies * parts::mass_kg(bodies[i]);
  return mass;
}

bool stands_under(std::string_view number, std::string_view whole) {
  return number == whole || (number.size() > whole.size() && number.starts_with(whole) && number[whole.size()] == '.');
}

double mass_under(const std::map<std::string, double>& mass, std::string_view whole) {
  double total = 0;
  for (const auto& [number, kg] : mass) total += stands_under(number, whole) ? kg : 0;
  return total;
}

void set_stock(BillLine& line, const parts::Part& part, const Facts& facts, Pieces& pieces) {
  const auto* piece = std::get_if<parts::Piece>(&part.made);
  if (!piece) return;
  line.stock = stock_words(piece->stock);
  const auto* bought = std::get_if<parts::Bought>(&piece->stock);
  if (bought) line.buy = pieces.to_buy(*bought, line.count);
  const std::optional<double> one = price_of_one(piece->stock, facts.design.stock);
  if (!one) return;
  line.price_each = cents(*one);
  line.price = cents(*one * (bought ? *line.buy : line.count));
}

bool is_whole(std::span<const BillLine> lines, std::size_t i) {
  return i + 1 < lines.size() && lines[i + 1].level > lines[i].level;
}

/// Each whole costs what the lines right below it cost; the deepest are added up first.
void price_wholes(std::vector<BillLine>& lines) {
  for (std::size_t i = lines.size(); i-- > 0;) {
    if (!is_whole(lines, i)) continue;
    for (std::size_t j = i + 1; j < lines.size() && lines[j].level > lines[i].level; ++j) {
      if (lines[j].level == lines[i].level + 1 && lines[j].price)
        lines[i].price = lines[i].price.value_or(0) + *lines[j].price;
    }
    if (lines[i].price) lines[i].price = cents(*lines[i].price);
  }
}

}  // namespace

std::vector<BillLine> bill(const Facts& facts) {
  std::vector<BillLine> lines;
  Pieces pieces;
  std::map<std::string, double> mass;
  std::optional<std::uint32_t> weighed;
  for (const Item& item : items(facts.assembly)) {
    if (weighed != item.of) mass = masses(facts.assembly, item.of);
    weighed = item.of;
    BillLine line;
    line.item = item.number;
    line.level = item.level;
    line.part = item.of;
    line.count = item.count;
    line.mass_each_kg = mass_under(mass, item.number) / item.count;
    if (item.bead) {
      line.name = item.bead->name;
      line.making = "made";
      line.stock.kind = "weld";
    } else {
      line.name = item.part->name;
      line.making = making_word(*item.part);
      set_stock(line, *item.part, facts, pieces);
    }
    lines.push_back(std::move(line));
  }
  price_wholes(lines);
  return lines;
}

BillSum sum(std::span<const BillLine> lines) {
  BillSum total;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const BillLine& line = lines[i];
    if (line.level == 0) {
      total.mass_kg += line.mass_kg();
      if (line.price) total.price = cents(total.price.value_or(0) + *line.price);
    }
    const bool costs = !is_whole(lines, i) && line.stock.kind != "weld" && line.stock.kind != "offcut";
    total.unpriced += costs && !line.price ? 1 : 0;
  }
  return total;
}

}  // namespace visewright::outputs::data
