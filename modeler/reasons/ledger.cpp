#include "reasons/ledger.h"

#include <algorithm>

namespace visewright::reasons {

std::string_view suffix(Unit unit) {
  switch (unit) {
    case Unit::mm: return "mm";
    case Unit::deg: return "deg";
    case Unit::one:
    case Unit::count: return "";
    case Unit::newton: return "n";
    case Unit::mpa: return "mpa";
    case Unit::percent: return "percent";
    case Unit::kg: return "kg";
    case Unit::kelvin: return "kelvin";
    case Unit::newton_metre: return "nm";
  }
  return "";
}

NumberId Ledger::add(std::string name, Unit unit, double value, Basis basis, const Rule& rule,
                     std::initializer_list<NumberId> from, base::Place place) {
  numbers_.push_back(Number{std::move(name), unit, value, basis, &rule, place, std::vector<NumberId>(from)});
  return static_cast<NumberId>(numbers_.size() - 1);
}

Size Ledger::length(std::string name, units::Length value, Basis basis, const Rule& rule,
                    std::initializer_list<NumberId> from, base::Place place) {
  return {value, add(std::move(name), Unit::mm, units::in_mm(value), basis, rule, from, place)};
}

Count Ledger::count(std::string name, int value, Basis basis, const Rule& rule, std::initializer_list<NumberId> from,
                    base::Place place) {
  return {value, add(std::move(name), Unit::count, value, basis, rule, from, place)};
}

Ratio Ledger::ratio(std::string name, Unit unit, double value, Basis basis, const Rule& rule,
                    std::initializer_list<NumberId> from, base::Place place) {
  return {value, add(std::move(name), unit, value, basis, rule, from, place)};
}

Turn Ledger::angle(std::string name, units::Angle value, Basis basis, const Rule& rule,
                   std::initializer_list<NumberId> from, base::Place place) {
  return {value, add(std::move(name), Unit::deg, units::in_degrees(value), basis, rule, from, place)};
}

void Ledger::choice(std::string name, std::string text, Basis basis, const Rule& rule, base::Place place) {
  choices_.push_back(Choice{std::move(name), std::move(text), basis, &rule, place});
}

const Number* Ledger::find(std::string_view name) const {
  const auto found = std::find_if(numbers_.begin(), numbers_.end(), [&](const Number& n) { return n.name == name; });
  return found == numbers_.end() ? nullptr : &*found;
}

std::string show(const Number& number, units::LengthUnit unit) {
  switch (number.unit) {
    case Unit::mm: return units::write_length(units::mm(number.value), unit);
    case Unit::deg: return units::write_number(number.value, 3) + "°";
    case Unit::one:
    case Unit::count: return units::write_number(number.value, 4);
    case Unit::newton: return units::write_number(number.value, 0) + " N";
    case Unit::mpa: return units::write_number(number.value, 1) + " MPa";
    case Unit::percent: return units::write_number(number.value, 2) + " %";
    case Unit::kg: return units::write_number(number.value, 3) + " kg";
    case Unit::kelvin: return units::write_number(number.value, 1) + " K";
    case Unit::newton_metre: return units::write_number(number.value, 2) + " N·m";
  }
  return {};
}

std::string say(const Ledger& ledger, const Number& number, units::LengthUnit unit) {
  if (number.basis == Basis::given || number.basis == Basis::measured) {
    const std::string how = number.basis == Basis::given ? "given" : "measured";
    return number.place.line > 0 ? how + ", line " + std::to_string(number.place.line) : how;
  }
  const std::string_view formula = number.rule->formula;
  std::string sentence;
  for (std::size_t i = 0; i < formula.size(); ++i) {
    const bool slot = formula[i] == '{' && i + 2 < formula.size() && formula[i + 2] == '}';
    if (!slot) {
      sentence += formula[i];
      continue;
    }
    const char which = formula[i + 1];
    const auto index = static_cast<std::size_t>(which - '0');
    if (which == '=') {
      sentence += show(number, unit);
    } else if (index < number.from.size()) {
      sentence += show(ledger.number(number.from[index]), unit);
    } else {
      sentence += "?";
    }
    i += 2;
  }
  return sentence;
}

}  // namespace visewright::reasons
