#include "design/strength.h"

#include <algorithm>
#include <charconv>

#include "design/keys.h"

namespace visewright::design {
namespace {

/// Digits with at most one point; absent for anything else.
std::optional<double> plain_number(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  const bool only_digits = text.find_first_not_of("0123456789.") == std::string_view::npos;
  if (text.empty() || !only_digits || error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

bool is_class(std::string_view text) {
  const KeyRow* row = key_row("screw", "strength_class");
  return std::find(row->choices.begin(), row->choices.end(), text) != row->choices.end();
}

}  // namespace

std::optional<units::Pressure> yield_stress(std::string_view strength_class) {
  if (is_class(strength_class)) {
    const std::size_t point = strength_class.find('.');
    const std::optional<double> tensile = plain_number(strength_class.substr(0, point));
    const std::optional<double> tenths = plain_number(strength_class.substr(point + 1));
    return units::megapascals(10 * *tensile * *tenths);
  }
  constexpr std::string_view unit = "MPa";
  if (!strength_class.ends_with(unit)) return std::nullopt;
  std::string_view number = strength_class.substr(0, strength_class.size() - unit.size());
  while (number.ends_with(' ')) number.remove_suffix(1);
  const std::optional<double> mpa = plain_number(number);
  if (!mpa) return std::nullopt;
  return units::megapascals(*mpa);
}

}  // namespace visewright::design
