#include "standards/record.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace visewright::standards {
namespace {

bool is_columns_or_rows(std::string_view key) { return key == "columns" || key == "rows"; }

bool is_no_figure(const reading::Value& value) {
  const auto* text = std::get_if<std::string>(&value.what);
  return text != nullptr && text->empty();
}

std::optional<double> as_number(const reading::Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value.what)) return static_cast<double>(*whole);
  if (const auto* number = std::get_if<double>(&value.what)) return *number;
  return std::nullopt;
}

}  // namespace

base::Fault own_fault(std::string_view path, base::Place place, std::string wrong, std::string right) {
  return {base::Cause::own_mistake, place, std::string(path), std::move(wrong), std::move(right)};
}

Record::Record(const reading::Table& table, const reading::Array& columns, const reading::Value& row,
               std::string_view path, base::Faults& faults)
    : table_(table), columns_(columns), place_(row.place), path_(path), faults_(faults) {
  const auto* cells = std::get_if<reading::Array>(&row.what);
  if (cells == nullptr || cells->size() != columns.size()) {
    wrong("rows", "the row does not have one figure a column", std::to_string(columns.size()) + " figures in [ ]");
  } else {
    cells_ = cells;
  }
}

const reading::Value* Record::find(std::string_view key) {
  asked_.emplace(key);
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const auto* column = std::get_if<std::string>(&columns_[i].what);
    if (column != nullptr && *column == key) return cells_ == nullptr ? nullptr : &(*cells_)[i];
  }
  const reading::Entry* entry = is_columns_or_rows(key) ? nullptr : table_.find(key);
  return entry == nullptr ? nullptr : &entry->value;
}

template <class T>
const T* Record::typed(std::string_view key, std::string_view wanted) {
  const reading::Value* value = find(key);
  const T* found = value == nullptr ? nullptr : std::get_if<T>(&value->what);
  if (found == nullptr) {
    wrong(key, value == nullptr ? "it is missing" : "it is " + std::string(kind_of(*value)), std::string(wanted));
  }
  return found;
}

bool Record::has(std::string_view key) {
  const reading::Value* value = find(key);
  return value != nullptr && !is_no_figure(*value);
}

std::string Record::text(std::string_view key) {
  const auto* found = typed<std::string>(key, "a text");
  if (found != nullptr && found->empty()) wrong(key, "it is empty", "a text");
  return found == nullptr ? "" : *found;
}

std::vector<std::string> Record::texts(std::string_view key) {
  const reading::Value* value = find(key);
  if (value != nullptr && std::holds_alternative<std::string>(value->what)) return {text(key)};
  std::vector<std::string> all;
  const auto* list = typed<reading::Array>(key, "a list of texts");
  if (list == nullptr) return all;
  for (const reading::Value& each : *list) {
    if (const auto* one = std::get_if<std::string>(&each.what)) {
      all.push_back(*one);
    } else {
      wrong(key, "the list holds " + std::string(kind_of(each)), "a list of texts");
    }
  }
  return all;
}

bool Record::yes(std::string_view key) {
  const bool* found = typed<bool>(key, "true or false");
  return found != nullptr && *found;
}

double Record::number(std::string_view key) {
  const reading::Value* value = find(key);
  const auto number = value == nullptr ? std::nullopt : as_number(*value);
  if (number && std::isfinite(*number) && *number > 0) return *number;
  wrong(key, value == nullptr ? "it is missing" : "it is no such number", "a number above zero");
  return 0;
}

std::optional<double> Record::number_if_any(std::string_view key) {
  if (!has(key)) return std::nullopt;
  return number(key);
}

std::vector<double> Record::numbers(std::string_view key) {
  std::vector<double> all;
  const auto* list = typed<reading::Array>(key, "a list of numbers");
  if (list == nullptr) return all;
  for (const reading::Value& each : *list) {
    if (const auto number = as_number(each)) all.push_back(*number);
  }
  if (all.size() != list->size()) wrong(key, "the list holds something else", "a list of numbers");
  return all;
}

units::LengthUnit Record::unit() {
  const std::string name = text("unit");
  if (name != "mm" && name != "in") wrong("unit", "it is \"" + name + "\"", "\"mm\" or \"in\"");
  return name == "in" ? units::LengthUnit::inch : units::LengthUnit::millimetre;
}

units::Length Record::length(std::string_view key) {
  asked_.emplace("unit");  // a table whose lengths all carry their own unit may still state one
  const reading::Value* value = find(key);
  const auto* said = value == nullptr ? nullptr : std::get_if<std::string>(&value->what);
  if (said == nullptr) return units::length_in(number(key), unit());
  const auto read = units::read_length(*said, std::nullopt, key, value->place);
  if (read && *read > units::Length()) return *read;
  wrong(key, "\"" + *said + "\" is no such length", "a length above zero with its unit");
  return {};
}

std::vector<units::Length> Record::lengths(std::string_view key) {
  std::vector<units::Length> all;
  const auto* list = typed<reading::Array>(key, "a list of lengths");
  if (list == nullptr) return all;
  const units::LengthUnit bare = unit();
  for (const reading::Value& each : *list) {
    const auto* said = std::get_if<std::string>(&each.what);
    const auto number = as_number(each);
    const auto read = said != nullptr ? units::read_length(*said, std::nullopt, key, each.place).value_or(units::Length())
                      : number        ? units::length_in(*number, bare)
                                      : units::Length();
    if (read > units::Length() && std::isfinite(units::in_mm(read)))
      all.push_back(read);
    else
      wrong(key, "the list holds something else", "lengths above zero");
  }
  return all;
}

Source Record::source() {
  static constexpr std::array<std::string_view, 3> ways{"sighted", "computed", "from memory"};
  Source source{text("standard"), text("known")};
  if (std::find(ways.begin(), ways.end(), source.known) == ways.end()) {
    wrong("known", "it is \"" + source.known + "\"", "\"sighted\", \"computed\" or \"from memory\"");
  }
  return source;
}

void Record::wrong(std::string_view key, std::string what, std::string right) {
  faults_.push_back(own_fault(path_, place_, std::string(key) + ": " + std::move(what), std::move(right)));
}

void Record::all_asked_for() {
  const auto unknown = [&](std::string_view key) {
    if (!asked_.contains(key)) wrong(key, "nothing reads this column", "a column that this kind of table has");
  };
  for (const reading::Value& column : columns_) {
    const auto* name = std::get_if<std::string>(&column.what);
    unknown(name == nullptr ? "columns" : std::string_view(*name));
  }
  for (const reading::Entry& entry : table_.entries) {
    if (!is_columns_or_rows(entry.key)) unknown(entry.key);
  }
}

}  // namespace visewright::standards
