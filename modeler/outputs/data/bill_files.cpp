#include "outputs/data/bill_files.h"

#include <array>

#include "outputs/data/bill.h"
#include "outputs/data/json.h"
#include "outputs/data/notice.h"

namespace visewright::outputs::data {
namespace {

constexpr std::size_t columns = 14;
using Row = std::array<std::string, columns>;

/// Always two decimals, as prices are written.
std::string money(const std::optional<double>& price) {
  if (!price) return {};
  std::string text = units::write_number(*price, 2);
  if (text.find('.') == std::string::npos) text += ".0";
  if (text[text.size() - 2] == '.') text += '0';
  return text;
}
std::string kilograms(double mass) { return units::write_number(mass, 3); }

Row heading(units::LengthUnit show) {
  const std::string unit(unit_word(show));
  return {"item",          "name",        "count",    "buy",          "making",  "material",   "size_" + unit,
          "rough_" + unit, "designation", "standard", "mass_each_kg", "mass_kg", "price_each", "price"};
}

Row row(const BillLine& line, units::LengthUnit show) {
  return {line.item,
          line.name,
          std::to_string(line.count),
          line.buy ? std::to_string(*line.buy) : std::string(),
          std::string(line.making),
          line.stock.material,
          size_cell(line.stock, show),
          rough_cell(line.stock, show),
          line.stock.designation,
          line.stock.standard,
          kilograms(line.mass_each_kg),
          kilograms(line.mass_kg()),
          money(line.price_each),
          money(line.price)};
}

std::string csv_line(const Row& fields) {
  std::string text;
  for (std::size_t i = 0; i < columns; ++i) text.append(i == 0 ? "" : ",").append(csv_field(fields[i]));
  return text + "\n";
}

std::string markdown_cell(std::string_view text) {
  std::string safe;
  for (const char c : text) {
    if (c == '|' || c == '\\' || c == '*' || c == '_' || c == '`' || c == '<') safe += '\\';
    safe += c == '\n' || c == '\r' ? ' ' : c;
  }
  return safe;
}

std::string markdown_line(const Row& fields) {
  std::string text = "|";
  for (const std::string& field : fields)
    text.append(" ").append(markdown_cell(field)).append(field.empty() ? "|" : " |");
  return text + "\n";
}

Row markdown_heading(units::LengthUnit show) {
  const std::string unit(unit_word(show));
  return {"item",           "name",        "count",    "buy",           "making",   "material",   "size, " + unit,
          "rough, " + unit, "designation", "standard", "mass each, kg", "mass, kg", "price each", "price"};
}

std::string rule_line() {
  // Counts, masses and prices stand to the right, words to the left.
  std::string text = "|";
  for (std::size_t i = 0; i < columns; ++i) text += (i == 2 || i == 3 || i >= 10) ? " ---: |" : " --- |";
  return text + "\n";
}

Json sizes_json(const std::vector<double>& sizes) {
  Json list = Json::array();
  for (const double size : sizes) list.push_back(number(size));
  return list;
}

Json line_json(const BillLine& line, units::LengthUnit show) {
  Json json;
  json["item"] = line.item;
  json["name"] = line.name;
  json["level"] = line.level;
  json["count"] = line.count;
  json["buy"] = line.buy ? Json(*line.buy) : Json(nullptr);
  json["making"] = line.making;
  json["stock"] = line.stock.kind;
  json["material"] = line.stock.material;
  json["size_mm"] = sizes_json(line.stock.size_mm);
  json["rough_mm"] = sizes_json(line.stock.rough_mm);
  json["size_shown"] = size_cell(line.stock, show);
  json["designation"] = line.stock.designation;
  json["standard"] = line.stock.standard;
  json["mass_each_kg"] = number(line.mass_each_kg);
  json["mass_total_kg"] = number(line.mass_kg());
  json["price_each"] = number(line.price_each);
  json["price_total"] = number(line.price);
  return json;
}

std::string title_of(const Facts& facts) { return markdown_cell(facts.title); }

std::string sum_text(const BillSum& total) {
  std::string text = "All together " + kilograms(total.mass_kg) + " kg";
  if (total.price) text += "; price of the lines that have one " + money(total.price);
  if (total.price && total.unpriced > 0) text += ", without a price " + std::to_string(total.unpriced);
  return text + ".\n";
}

}  // namespace

std::string csv_field(std::string_view text) {
  const bool plain =
      text.find_first_of(",\"\r\n") == std::string_view::npos && !text.starts_with(' ') && !text.ends_with(' ');
  if (plain) return std::string(text);
  std::string quoted = "\"";
  for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + "\"";
}

std::string bill_csv(const Facts& facts) {
  std::string text = csv_line(heading(facts.show));
  for (const BillLine& line : bill(facts)) text += csv_line(row(line, facts.show));
  if (const std::string notice = failing_notice(facts.findings); !notice.empty()) text += csv_line({"note", notice});
  return text;
}

std::string bill_markdown(const Facts& facts) {
  const std::vector<BillLine> lines = bill(facts);
  std::string text = "# Bill of materials: " + title_of(facts) + "\n\n";
  if (const std::string notice = failing_notice(facts.findings); !notice.empty())
    text.append("**").append(markdown_cell(notice)).append("**\n\n");
  text += markdown_line(markdown_heading(facts.show)) + rule_line();
  for (const BillLine& line : lines) text += markdown_line(row(line, facts.show));
  text.append("\n").append(sum_text(sum(lines))).append("\n");
  text +=
      "Lines with a point in their item number are what the line above them is built up from. `buy` counts bought\n"
      "pieces: two halves are cut from one.\n\n";
  return text.append(planning_note) + "\n";
}

std::string bill_json(const Facts& facts) {
  const std::vector<BillLine> lines = bill(facts);
  const BillSum total = sum(lines);
  Json list = Json::array();
  for (const BillLine& line : lines) list.push_back(line_json(line, facts.show));
  Json json;
  json["schema"] = bill_schema;
  json["title"] = facts.title;
  json["program"] = facts.program_version;
  json["notice"] = failing_notice(facts.findings);
  json["lines"] = std::move(list);
  json["total"] = {
      {"mass_kg", number(total.mass_kg)}, {"price", number(total.price)}, {"lines_without_price", total.unpriced}};
  return bytes(json);
}

base::Result<std::vector<File>> write_bill(const Facts& facts, base::Watcher&) {
  return std::vector<File>{
      {"bill_of_materials.csv", bill_csv(facts), "what the vise is made of, for a spreadsheet", std::nullopt},
      {"bill_of_materials.json", bill_json(facts), "what the vise is made of, for programs", std::nullopt},
      {"bill_of_materials.md", bill_markdown(facts), "what the vise is made of, for reading", std::nullopt},
  };
}

}  // namespace visewright::outputs::data
