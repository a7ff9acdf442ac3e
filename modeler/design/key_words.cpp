// The key table in words: what a value must be, and the table as a page.
#include <array>
#include <charconv>
#include <cmath>

#include "design/keys.h"
#include "units/text.h"

namespace visewright::design {
namespace {

/// A number as a person writes it; very large and very small ones with their power of ten.
std::string readable(double value, int decimals = 6) {
  if (std::isfinite(value) && (value == 0 || (std::abs(value) >= 1e-6 && std::abs(value) < 1e9))) {
    return units::write_number(value, decimals);
  }
  std::array<char, 64> buffer;
  const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
  return {buffer.data(), end};
}

std::string quoted_choices(std::span<const std::string_view> choices) {
  std::string list;
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (i > 0) list += i + 1 == choices.size() ? " or " : ", ";
    list.append("\"").append(choices[i]).append("\"");
  }
  return list;
}

std::string limits(const KeyRow& row, units::LengthUnit show) {
  return " from " + shown(row.type, row.range.least, show) + " to " + shown(row.type, row.range.most, show);
}

std::string how_many(Items items) {
  if (items.least == items.most) return std::to_string(items.least);
  return std::to_string(items.least) + " to " + std::to_string(items.most);
}

std::string list_of(const KeyRow& row, std::string_view what, units::LengthUnit show) {
  const std::string list = "a list of " + how_many(row.items) + " " + std::string(what) + limits(row, show);
  return row.items.bare ? list + ", or one for all" : list;
}

std::string_view name_words(Known known) {
  switch (known) {
    case Known::thread: return "a thread of the catalogue";
    case Known::nut: return "a nut of the catalogue";
    case Known::washer: return "a washer of the catalogue";
    case Known::wood_screw: return "a wood screw of the catalogue";
    case Known::wood: return "a wood or panel of the catalogue";
    case Known::metal: return "a metal of the catalogue";
    case Known::material: return "a material of the catalogue";
    case Known::nothing: break;
  }
  return "a name";
}

/// A text for a cell of the page: a bar would end the cell.
std::string cell(std::string_view text) {
  std::string safe;
  for (const char c : text) {
    if (c == '|') safe += '\\';
    safe += c;
  }
  return safe;
}

void add_rows(std::string& page, const TableRow& table) {
  const std::string_view tick = table.name.empty() ? "" : "`";
  page.append("\n**").append(tick).append(heading(table.name)).append(tick).append("**: ");
  page.append(table.meaning).append(".\n\n| key | value | example | when left out | meaning |\n");
  page += "| --- | --- | --- | --- | --- |\n";
  for (const KeyRow& row : keys_of(table.name)) {
    page.append("| `").append(row.key).append("` | ").append(cell(wanted(row, units::LengthUnit::millimetre)));
    page.append(" | `").append(cell(row.example)).append("` | ").append(cell(row.left_out)).append(" | ");
    page.append(cell(row.meaning)).append(" |\n");
  }
}

}  // namespace

std::string shown(KeyType type, double value, units::LengthUnit show) {
  switch (type) {
    case KeyType::length:
    case KeyType::lengths:
    case KeyType::points:
      if (show == units::LengthUnit::inch) return readable(units::in_inches(units::mm(value)), 4) + " in";
      return readable(value) + " mm";
    case KeyType::millimetres: return readable(value) + " mm";
    case KeyType::angle: return readable(value) + " degrees";
    case KeyType::force: return readable(value) + " N";
    case KeyType::percent: return readable(value) + " percent";
    default: return readable(value);
  }
}

std::string wanted(const KeyRow& row, units::LengthUnit show) {
  switch (row.type) {
    case KeyType::text: return "a text in quotes, on one line";
    case KeyType::date: return "a date as year-month-day";
    case KeyType::choice: return "one of " + quoted_choices(row.choices);
    case KeyType::strength: return "one of " + quoted_choices(row.choices) + ", or a yield stress in MPa";
    case KeyType::name: {
      const std::string name(name_words(row.known));
      return row.choices.empty() ? name : quoted_choices(row.choices) + ", or " + name;
    }
    case KeyType::hands: return quoted_choices(row.choices) + ", or a list of two of them, left to right";
    case KeyType::texts: return "a list of texts";
    case KeyType::yes_no: return "true or false";
    case KeyType::count: return "a whole number" + limits(row, show);
    case KeyType::counts: return list_of(row, "whole numbers", show);
    case KeyType::number: return "a plain number" + limits(row, show);
    case KeyType::numbers: return list_of(row, "plain numbers", show);
    case KeyType::percent: return "a plain number" + limits(row, show);
    case KeyType::angle: return "a plain number" + limits(row, show);
    case KeyType::force: return "a force with its unit in quotes" + limits(row, show);
    case KeyType::length:
    case KeyType::millimetres: return "a length" + limits(row, show);
    case KeyType::lengths: return list_of(row, "lengths", show);
    case KeyType::points:
      return "a list of " + how_many(row.items) + " lists of one or two lengths" + limits(row, show);
  }
  return {};
}

std::string key_table_markdown() {
  std::string page;
  for (const TableRow& table : tables()) {
    if (!keys_of(table.name).empty()) add_rows(page, table);
  }
  return page.substr(1);
}

}  // namespace visewright::design
