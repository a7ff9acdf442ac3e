#include "design/write.h"

#include <array>
#include <charconv>
#include <cmath>
#include <limits>

#include "design/keys.h"
#include "units/text.h"

namespace visewright::design {
namespace {

constexpr int all_digits = 400;

/// The shortest decimal that `reads_back` accepts, near `value`. A conversion there and back may miss by a few last
/// bits, so the neighbours are tried as well. Empty when none is accepted.
template <class ReadsBack>
std::string shortest(double value, ReadsBack reads_back) {
  for (const int decimals : {0, 3, 6, 9, 12}) {
    if (std::string text = units::write_number(value, decimals); reads_back(text)) return text;
  }
  double below = value, above = value;
  for (int i = 0; i < 4; ++i) {
    for (const double near : {below, above}) {
      if (std::string text = units::write_number(near, all_digits); reads_back(text)) return text;
    }
    below = std::nextafter(below, -std::numeric_limits<double>::infinity());
    above = std::nextafter(above, std::numeric_limits<double>::infinity());
  }
  return {};
}

std::string in_quotes(std::string_view text) {
  constexpr std::string_view hexadecimal = "0123456789ABCDEF";
  std::string quoted = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      (quoted += '\\') += c;
    } else if (byte < 0x20 || byte == 0x7F) {
      ((quoted += "\\u00") += hexadecimal[byte >> 4U]) += hexadecimal[byte & 15U];
    } else {
      quoted += c;
    }
  }
  return quoted += '"';
}

/// Writes values as they stand behind the equals sign.
class ValueWriter {
 public:
  ValueWriter(KeyType type, units::LengthUnit unit) : type_(type), unit_(unit) {}

  std::string operator()(Length length) const {
    std::string millimetres = units::write_number(units::in_mm(length), all_digits);
    if (unit_ == units::LengthUnit::millimetre || type_ == KeyType::millimetres) return millimetres;
    const auto same = [&](const std::string& text) {
      const base::Result<Length> back = units::read_length(text, units::LengthUnit::inch, "", {});
      return back && *back == length;
    };
    const std::string fraction = units::write_length(length, units::LengthUnit::inch);
    const bool broken = fraction.find('/') != std::string::npos;
    if (broken && same(fraction)) return in_quotes(fraction);
    const std::string bare = shortest(units::in_inches(length), same);
    return bare.empty() ? in_quotes(millimetres + " mm") : bare;
  }
  std::string operator()(double number) const { return units::write_number(number, all_digits); }
  std::string operator()(int count) const { return std::to_string(count); }
  std::string operator()(units::Angle angle) const {
    return shortest(units::in_degrees(angle), [&](const std::string& text) {
      double read = 0;
      std::from_chars(text.data(), text.data() + text.size(), read);
      return units::degrees(read) == angle;
    });
  }
  std::string operator()(Force force) const {
    return in_quotes(shortest(units::in_newtons(force),
                              [&](const std::string& text) {
                                const base::Result<Force> back = units::read_force(text + " N", "", {});
                                return back && *back == force;
                              }) +
                     " N");
  }
  std::string operator()(bool yes) const { return yes ? "true" : "false"; }
  std::string operator()(const std::string& text) const { return in_quotes(text); }
  std::string operator()(units::LengthUnit unit) const { return unit == units::LengthUnit::inch ? "\"in\"" : "\"mm\""; }
  template <class T>
  std::string operator()(const std::vector<T>& list) const {
    std::string text = "[";
    for (const T& each : list) text += (text.size() > 1 ? ", " : "") + (*this)(each);
    return text + "]";
  }

 private:
  KeyType type_;
  units::LengthUnit unit_;
};

/// "key = value" of every key of the table that is given.
std::vector<std::string> given_lines(const Design& design, std::string_view table, std::size_t index) {
  std::vector<std::string> lines;
  for (const KeyRow& row : keys_of(table)) {
    std::visit(
        [&](const auto& slot) {
          const auto given = slot.get(design, index);
          if (given) lines.push_back(std::string(row.key) + " = " + ValueWriter(row.type, design.unit)(given->value));
        },
        row.binding);
  }
  return lines;
}

std::string joined(const std::vector<std::string>& lines, std::string_view between) {
  std::string text;
  for (const std::string& line : lines) {
    if (!text.empty()) text += between;
    text += line;
  }
  return text;
}

void add_section(std::string& file, std::string_view table, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  if (!file.empty()) file += "\n";
  if (!table.empty()) file += heading(table) + "\n";
  file += joined(lines, "\n") + "\n";
}

/// The tables that stand inside a table once, as "name = { … }".
void add_inner(std::vector<std::string>& lines, const Design& design, const TableRow& outer) {
  const std::string prefix = std::string(outer.name) + ".";
  for (const TableRow& inner : tables()) {
    if (outer.name.empty() || inner.repeated() || !inner.name.starts_with(prefix)) continue;
    const std::vector<std::string> values = given_lines(design, inner.name, 0);
    if (values.empty()) continue;
    lines.push_back(std::string(inner.name.substr(prefix.size())) + " = { " + joined(values, ", ") + " }");
  }
}

template <class T>
bool same(const std::optional<Given<T>>& a, const std::optional<Given<T>>& b) {
  return a.has_value() == b.has_value() && (!a || a->value == b->value);
}

bool same_table(const Design& a, const Design& b, std::string_view table, std::size_t index) {
  for (const KeyRow& row : keys_of(table)) {
    const bool equal =
        std::visit([&](const auto& slot) { return same(slot.get(a, index), slot.get(b, index)); }, row.binding);
    if (!equal) return false;
  }
  return true;
}

}  // namespace

std::string write(const Design& design) {
  std::string file;
  for (const TableRow& table : tables()) {
    if (table.repeated()) {
      for (std::size_t i = 0; i < table.count(design); ++i)
        add_section(file, table.name, given_lines(design, table.name, i));
    } else if (table.name.find('.') == std::string_view::npos) {
      std::vector<std::string> lines = given_lines(design, table.name, 0);
      add_inner(lines, design, table);
      add_section(file, table.name, lines);
    }
  }
  return file;
}

bool same_values(const Design& a, const Design& b) {
  for (const TableRow& table : tables()) {
    const std::size_t times = table.repeated() ? table.count(a) : 1;
    if (table.repeated() && table.count(b) != times) return false;
    for (std::size_t i = 0; i < times; ++i) {
      if (!same_table(a, b, table.name, i)) return false;
    }
  }
  return true;
}

}  // namespace visewright::design
