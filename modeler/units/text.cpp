#include "units/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <numeric>
#include <span>
#include <system_error>

namespace visewright::units {
namespace {

/// Whole numbers up to here are exact in a double, so that a quotient of two is rounded once.
constexpr double exact_limit = 9007199254740992.0;

/// A number as it was written: numerator over denominator when both are exact, else only its nearest double.
struct Number {
  double numerator = 0, denominator = 1;
};

/// What a unit multiplies by to reach the unit a quantity is counted in, as a fraction.
struct Unit {
  std::string_view name;
  double numerator, denominator;
};

constexpr std::array<Unit, 4> length_units{Unit{"mm", 1, 1}, {"cm", 10, 1}, {"in", 254, 10}, {"\"", 254, 10}};
// 1 lbf is 0.45359237 kg · 9.80665 m/s², both exact by definition (NIST SP 811, 2008, app. B).
constexpr std::array<Unit, 3> force_units{Unit{"N", 1, 1}, {"kN", 1000, 1}, {"lbf", 44482216152605.0, 1e13}};

constexpr std::string_view blanks = " \t";

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string_view take_digits(std::string_view& text) {
  const auto end = std::find_if_not(text.begin(), text.end(), is_digit);
  const std::string_view digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
  text.remove_prefix(digits.size());
  return digits;
}

bool take(std::string_view& text, char wanted) {
  if (text.empty() || text.front() != wanted) return false;
  text.remove_prefix(1);
  return true;
}

/// The nearest double to a run of digits and at most one point.
std::optional<double> nearest(std::string_view digits) {
  double value = 0;
  const auto [end, error] =
      std::from_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed);
  if (error != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
  return value;
}

/// Whole digits, a point and more digits. As a fraction over a power of ten when that is exact.
std::optional<Number> decimal(std::string_view whole, std::string_view places) {
  std::string digits(whole);
  digits += places;
  const std::optional<double> all = nearest(digits);
  double scale = 1;
  for (std::size_t i = 0; i < places.size() && scale < exact_limit; ++i) scale *= 10;
  if (all && *all < exact_limit && scale < exact_limit) return Number{*all, scale};
  digits = std::string(whole.empty() ? "0" : whole) + "." + std::string(places.empty() ? "0" : places);
  const std::optional<double> value = nearest(digits);
  if (!value) return std::nullopt;
  return Number{*value, 1};
}

/// A numerator has been read up to the slash; reads the rest. With a whole number before it the fraction is proper.
std::optional<Number> fraction(std::string_view whole, std::string_view above, std::string_view& text) {
  const std::optional<double> n = nearest(above), d = nearest(take_digits(text));
  const std::optional<double> w = whole.empty() ? 0.0 : nearest(whole);
  if (!n || !d || !w || *d == 0 || (!whole.empty() && *n >= *d)) return std::nullopt;
  const double numerator = *w * *d + *n;
  if (numerator >= exact_limit || *d >= exact_limit) return std::nullopt;
  return Number{numerator, *d};
}

/// A whole number before a fraction is parted from it by a hyphen or blanks: "1-1/4", "1 1/4".
std::optional<std::string_view> numerator_after_whole(std::string_view& text) {
  std::string_view rest = text;
  if (!take(rest, '-')) {
    const std::string_view closer = trimmed(rest);
    if (closer.size() == rest.size()) return std::nullopt;
    rest = closer;
  }
  const std::string_view above = take_digits(rest);
  if (above.empty() || !take(rest, '/')) return std::nullopt;
  text = rest;
  return above;
}

/// Takes an unsigned number off the front of the text.
std::optional<Number> take_unsigned(std::string_view& text) {
  const std::string_view whole = take_digits(text);
  if (take(text, '.')) {
    const std::string_view places = take_digits(text);
    if (whole.empty() && places.empty()) return std::nullopt;
    return decimal(whole, places);
  }
  if (whole.empty()) return std::nullopt;
  if (take(text, '/')) return fraction({}, whole, text);
  if (const std::optional<std::string_view> above = numerator_after_whole(text)) return fraction(whole, *above, text);
  return decimal(whole, {});
}

double in_base_unit(Number number, const Unit& unit) {
  const double above = number.numerator * unit.numerator, below = number.denominator * unit.denominator;
  if (std::abs(above) < exact_limit && below < exact_limit) return above / below;
  return number.numerator / number.denominator * (unit.numerator / unit.denominator);
}

std::string names_of(std::span<const Unit> units) {
  std::string names;
  for (std::size_t i = 0; i < units.size(); ++i) {
    if (i > 0) names += i + 1 == units.size() ? " or " : ", ";
    names += units[i].name;
  }
  return names;
}

struct Asked {
  std::string_view key;
  base::Place place;
  std::string_view example;
};

tl::unexpected<base::Faults> refused(const Asked& asked, std::string wrong, std::string right) {
  return base::fault(base::Cause::input, std::string(asked.key), std::move(wrong), std::move(right), asked.place);
}

/// Reads a number and its unit in the unit with factor 1.
base::Result<double> read(std::string_view text, std::span<const Unit> units, const Unit* bare, const Asked& asked) {
  const std::string quoted = "'" + std::string(text) + "'";
  const std::string example = "a number and its unit, for example " + std::string(asked.example);
  std::string_view rest = trimmed(text);
  if (rest.empty()) return refused(asked, "it is empty", example);
  const bool negative = take(rest, '-');
  const std::optional<Number> number = take_unsigned(rest);
  if (!number && text.find('/') != std::string_view::npos) {
    return refused(asked, quoted + " has a fraction that cannot be read",
                   "a fraction such as 3/4 or 1-1/4, with a denominator above zero");
  }
  if (!number) return refused(asked, quoted + " does not begin with a number", example);
  const std::string_view name = trimmed(rest);
  const Unit* unit = bare;
  if (!name.empty()) {
    const auto found = std::find_if(units.begin(), units.end(), [&](const Unit& u) { return u.name == name; });
    if (found == units.end()) {
      return refused(asked, quoted + " has '" + std::string(name) + "' after the number, which is no unit known here",
                     "one of the units " + names_of(units));
    }
    unit = &*found;
  }
  if (unit == nullptr) return refused(asked, quoted + " has no unit", "one of the units " + names_of(units));
  const double value = in_base_unit(*number, *unit);
  if (!std::isfinite(value)) return refused(asked, quoted + " is too large to count with", example);
  return negative && value != 0 ? -value : value;
}

const Unit& unit_of(LengthUnit unit) { return length_units[unit == LengthUnit::millimetre ? 0 : 2]; }

std::string fixed(double value, std::optional<int> decimals) {
  // The longest double in full has 309 digits before the point; after it come at most 1074.
  std::array<char, 1500> buffer;
  char* const end = buffer.data() + buffer.size();
  const std::to_chars_result result =
      decimals ? std::to_chars(buffer.data(), end, value, std::chars_format::fixed, std::min(*decimals, 1074))
               : std::to_chars(buffer.data(), end, value, std::chars_format::fixed);
  return {buffer.data(), result.ptr};
}

std::size_t places_of(std::string_view digits) {
  const std::size_t point = digits.find('.');
  return point == std::string_view::npos ? 0 : digits.size() - point - 1;
}

/// Sixty-fourths of an inch as whole and reduced fraction: "-1-1/4".
std::string in_fractions(long sixty_fourths) {
  const long size = std::labs(sixty_fourths), whole = size / 64, above = size % 64;
  std::string text = sixty_fourths < 0 ? "-" : "";
  if (whole > 0 || above == 0) text += std::to_string(whole);
  if (above == 0) return text;
  if (whole > 0) text += "-";
  const long shared = std::gcd(above, 64L);
  return text + std::to_string(above / shared) + "/" + std::to_string(64 / shared);
}

}  // namespace

base::Result<Length> read_length(std::string_view text, std::optional<LengthUnit> bare, std::string_view key,
                                 base::Place place) {
  const Unit* unit = bare ? &unit_of(*bare) : nullptr;
  return read(text, length_units, unit, {key, place, "19 mm or 3/4 in"}).map(mm);
}

Length length_in(double value, LengthUnit unit) {
  return unit == LengthUnit::millimetre ? mm(value) : mm(value * 254.0 / 10.0);
}

base::Result<Force> read_force(std::string_view text, std::string_view key, base::Place place) {
  return read(text, force_units, nullptr, {key, place, "100 N or 22 lbf"}).map(newtons);
}

std::string write_length(Length length, LengthUnit show) {
  if (show == LengthUnit::millimetre) return write_number(in_mm(length), 3) + " mm";
  const double inches_long = in_inches(length), sixty_fourths = std::round(inches_long * 64);
  if (std::abs(inches_long - sixty_fourths / 64) <= 1e-9 && std::abs(sixty_fourths) < exact_limit) {
    return in_fractions(static_cast<long>(sixty_fourths)) + " in";
  }
  return write_number(inches_long, 4) + " in";
}

std::string write_number(double value, int decimals) {
  std::string text = fixed(value, std::nullopt);
  if (places_of(text) > static_cast<std::size_t>(std::max(decimals, 0))) text = fixed(value, std::max(decimals, 0));
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

}  // namespace visewright::units
