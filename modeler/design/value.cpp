#include "design/value.h"

#include <algorithm>
#include <cmath>

#include "base/nearest.h"
#include "design/calendar.h"
#include "design/names.h"
#include "design/strength.h"
#include "units/text.h"

namespace visewright::design {
namespace {

using reading::Value;

constexpr std::size_t longest_name = 200;

std::string quoted(std::string_view text) { return std::string("\"").append(text).append("\""); }

/// More digits than any double has, so that a bare number and the same number with a unit are one length.
constexpr int all_digits = 400;

bool is_length(KeyType type) {
  return type == KeyType::length || type == KeyType::millimetres || type == KeyType::lengths || type == KeyType::points;
}

std::string_view unit_name(units::LengthUnit unit) { return unit == units::LengthUnit::inch ? "in" : "mm"; }

}  // namespace

void ValueReader::read(const KeyRow& row, const Value& value, Design& design, std::size_t index) {
  row_ = &row;
  item_.clear();
  std::visit(
      [&](const auto& slot) {
        typename std::remove_cvref_t<decltype(slot)>::Value taken{};
        if (take(value, taken)) slot.put(design, index, {std::move(taken), value.place});
      },
      row.binding);
}

std::string ValueReader::key() const { return dotted(row_->table, row_->key); }

std::string ValueReader::right() const { return wanted(*row_, bare_) + ", for example " + std::string(row_->example); }

bool ValueReader::refuse(const Value& value, const std::string& wrong, std::string right_words) {
  const std::string where = item_.empty() ? "" : item_ + ": ";
  faults_->push_back({base::Cause::input, value.place, key(), where + wrong, std::move(right_words)});
  return false;
}

bool ValueReader::refuse(const Value& value, const std::string& wrong) { return refuse(value, wrong, right()); }

bool ValueReader::wrong_type(const Value& value) { return refuse(value, "this is " + std::string(kind_of(value))); }

bool ValueReader::in_range(const Value& value, double number) {
  const Range range = row_->range;
  if (number >= range.least && number <= range.most) return true;
  const bool small = number < range.least;
  return refuse(value, "this is " + shown(row_->type, number, bare_) + ", which is " +
                           (small ? "less than " : "more than ") +
                           shown(row_->type, small ? range.least : range.most, bare_));
}

/// A whole number or one with a point; nan and infinity are refused here for every key.
std::optional<double> ValueReader::plain_number(const Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value.what)) return static_cast<double>(*whole);
  if (const auto* number = std::get_if<double>(&value.what)) {
    if (std::isfinite(*number)) return *number;
    refuse(value, std::isnan(*number) ? "this is nan, which is no number" : "this is infinite");
    return std::nullopt;
  }
  wrong_type(value);
  return std::nullopt;
}

bool ValueReader::take_bare_length(const Value& value, double number, Length& length) {
  const units::LengthUnit unit = row_->type == KeyType::millimetres ? units::LengthUnit::millimetre : bare_;
  // Through the text, so that 0.018 and "0.018 in" are the same length to the last bit.
  base::Result<Length> read = units::read_length(units::write_number(number, all_digits), unit, key(), value.place);
  if (!read) return refuse(value, "this is " + shown(KeyType::number, number, bare_) + ", which is too large");
  length = *read;
  return true;
}

bool ValueReader::take_length_text(const Value& value, Length& length) {
  base::Result<Length> read = units::read_length(std::get<std::string>(value.what), std::nullopt, key(), value.place);
  if (!read) {
    for (const base::Fault& fault : read.error()) refuse(value, fault.wrong, fault.right + "; here " + right());
    return false;
  }
  length = *read;
  return true;
}

bool ValueReader::take(const Value& value, Length& length) {
  if (std::holds_alternative<std::string>(value.what)) {
    if (!take_length_text(value, length)) return false;
  } else {
    const std::optional<double> number = plain_number(value);
    if (!number || !take_bare_length(value, *number, length)) return false;
  }
  return in_range(value, units::in_mm(length));
}

bool ValueReader::take(const Value& value, double& number) {
  const std::optional<double> read = plain_number(value);
  if (!read || !in_range(value, *read)) return false;
  number = *read;
  return true;
}

bool ValueReader::take(const Value& value, int& count) {
  const std::optional<double> read = plain_number(value);
  if (!read) return false;
  if (*read != std::floor(*read))
    return refuse(value, "this is " + shown(row_->type, *read, bare_) + ", not a whole number");
  if (!in_range(value, *read)) return false;
  count = static_cast<int>(*read);
  return true;
}

bool ValueReader::take(const Value& value, units::Angle& angle) {
  const std::optional<double> read = plain_number(value);
  if (!read || !in_range(value, *read)) return false;
  angle = units::degrees(*read);
  return true;
}

bool ValueReader::take(const Value& value, Force& force) {
  const auto* text = std::get_if<std::string>(&value.what);
  if (text == nullptr) {
    const std::optional<double> bare = plain_number(value);
    if (!bare) return false;
    return refuse(value,
                  "this is " + shown(KeyType::number, *bare, bare_) + " without a unit; a force must carry its own");
  }
  base::Result<Force> read = units::read_force(*text, key(), value.place);
  if (!read) {
    for (const base::Fault& fault : read.error()) refuse(value, fault.wrong, fault.right + "; here " + right());
    return false;
  }
  force = *read;
  return in_range(value, units::in_newtons(force));
}

bool ValueReader::take(const Value& value, bool& yes) {
  const auto* read = std::get_if<bool>(&value.what);
  if (read == nullptr) return wrong_type(value);
  yes = *read;
  return true;
}

bool ValueReader::take(const Value& value, std::string& text) {
  const auto* read = std::get_if<std::string>(&value.what);
  if (read == nullptr) return wrong_type(value);
  if (read->empty()) return refuse(value, "this text is empty");
  if (read->size() > longest_name) {
    return refuse(value, "this text is longer than " + std::to_string(longest_name) + " bytes");
  }
  const bool control = std::any_of(read->begin(), read->end(), [](unsigned char c) { return c < 0x20 || c == 0x7F; });
  if (control) return refuse(value, "this text holds a line break, a tab or another control character");
  if (!right_words(value, *read)) return false;
  text = *read;
  return true;
}

bool ValueReader::take(const Value& value, units::LengthUnit& unit) {
  std::string name;
  if (!take(value, name)) return false;
  unit = name == unit_name(units::LengthUnit::inch) ? units::LengthUnit::inch : units::LengthUnit::millimetre;
  return true;
}

bool ValueReader::right_words(const Value& value, const std::string& text) {
  if (row_->type == KeyType::date && !is_date(text)) return refuse(value, quoted(text) + " is no day of the calendar");
  if (row_->type == KeyType::name) {
    const std::optional<WrongName> wrong = wrong_name(*row_, text, *catalogue_);
    return !wrong || refuse(value, wrong->wrong, wrong->right);
  }
  const bool listed = std::find(row_->choices.begin(), row_->choices.end(), text) != row_->choices.end();
  if (row_->choices.empty() || listed) return true;
  if (row_->type == KeyType::strength) {
    const std::optional<units::Pressure> stress = yield_stress(text);
    if (stress) return in_range(value, units::in_megapascals(*stress));
  }
  return refuse(value, quoted(text) + " is none of the words for this key",
                right() + "; the nearest is " + quoted(base::nearest_name(text, row_->choices)));
}

bool ValueReader::right_count(const Value& value, std::size_t count, Items items) {
  if (count >= items.least && count <= items.most) return true;
  return refuse(value, "this list holds " + std::to_string(count) + (count == 1 ? " value" : " values"));
}

template <class T>
bool ValueReader::take(const Value& value, std::vector<T>& list) {
  const std::string outer = item_;
  const bool point = is_length(row_->type) && !outer.empty();  // the list of one or two inside a list of points
  const auto* values = std::get_if<reading::Array>(&value.what);
  if (values == nullptr) {
    if (!row_->items.bare) return wrong_type(value);
    return take(value, list.emplace_back());
  }
  if (!right_count(value, values->size(), point ? Items{1, 2} : row_->items)) return false;
  bool all = true;
  for (std::size_t i = 0; i < values->size(); ++i) {
    item_ = outer + (outer.empty() ? "value " : ", value ") + std::to_string(i + 1);
    T taken{};
    if (take((*values)[i], taken)) {
      list.push_back(std::move(taken));
    } else {
      all = false;
    }
  }
  item_ = outer;
  return all;
}

}  // namespace visewright::design
