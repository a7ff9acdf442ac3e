#include "design/keys.h"

#include <algorithm>
#include <array>

#include "design/key_rows.h"

namespace visewright::design {
namespace {

constexpr std::array all_tables{
    TableRow{"", "What stands before the first heading"},
    TableRow{"train", "The gears between the screws"},
    TableRow{"screw", "The two lead screws"},
    TableRow{"collar", "The thrust collars on the screws"},
    TableRow{"rear_nut", "The nut blocks behind the rear jaw"},
    TableRow{"rear_nut.bar", "The bar that a rear nut is welded to"},
    TableRow{"drive", "What turns the screws"},
    TableRow{"drive.wheel", "The hand wheels"},
    TableRow{"front_jaw", "The moving jaw"},
    TableRow{"front_jaw.bevel", "The bevel on its front top edge"},
    TableRow{"front_jaw.dog_holes", "The holes for bench dogs in its top"},
    TableRow{"rear_jaw", "The fixed jaw"},
    TableRow{"rear_jaw.mounting", "What holds it in the bench"},
    TableRow{"cover", "The sheet over the gears"},
    TableRow{"lining", "The linings of both jaws"},
    TableRow{"axle", "The axles of the idler gears"},
    TableRow{"bracket", "The brackets under the bench top"},
    TableRow{"bench", "The bench as it stands"},
    TableRow{"bench.top", "Its top"},
    TableRow{"bench.apron", "The board under the front of the top"},
    TableRow{"bench.obstacle", "Something in the way, a box between two opposite corners",
             [](const Design& design) { return design.bench.obstacles.size(); },
             [](Design& design) { design.bench.obstacles.emplace_back(); }},
    TableRow{"gaps", "The room that is left"},
    TableRow{"accuracy", "How exactly the work is done, and how much wood and weather move"},
    TableRow{"assume", "Coefficients that nobody has measured"},
    TableRow{"shop", "The tools and machines owned"},
    TableRow{"stock", "A piece of stock in hand or in the shop",
             [](const Design& design) { return design.stock.size(); },
             [](Design& design) { design.stock.emplace_back(); }},
    TableRow{"measured", "Figures taken on parts already made or bought; they replace the derived ones"},
};

std::vector<KeyRow> gathered() {
  std::vector<KeyRow> all;
  for (const std::span<const KeyRow> group : {drive_rows(), jaw_rows(), bench_rows(), workshop_rows()}) {
    all.insert(all.end(), group.begin(), group.end());
  }
  return all;
}

}  // namespace

const std::vector<KeyRow>& keys() {
  static const std::vector<KeyRow> all = gathered();
  return all;
}

std::span<const TableRow> tables() { return all_tables; }

std::span<const KeyRow> keys_of(std::string_view table) {
  const auto here = [&](const KeyRow& row) { return row.table == table; };
  const auto first = std::find_if(keys().begin(), keys().end(), here);
  return {first, std::find_if_not(first, keys().end(), here)};
}

const KeyRow* key_row(std::string_view table, std::string_view key) {
  const auto found = std::find_if(keys().begin(), keys().end(),
                                  [&](const KeyRow& row) { return row.table == table && row.key == key; });
  return found == keys().end() ? nullptr : &*found;
}

const TableRow* table_row(std::string_view name) {
  const auto* const found =
      std::find_if(all_tables.begin(), all_tables.end(), [&](const TableRow& row) { return row.name == name; });
  return found == all_tables.end() ? nullptr : found;
}

std::string dotted(std::string_view table, std::string_view key) {
  std::string name(table);
  if (!name.empty()) name += '.';
  return name += key;
}

std::string heading(std::string_view table) {
  if (table.empty()) return "the top level";
  const TableRow* row = table_row(table);
  const bool repeated = row != nullptr && row->repeated();
  return (repeated ? "[[" : "[") + std::string(table) + (repeated ? "]]" : "]");
}

}  // namespace visewright::design
