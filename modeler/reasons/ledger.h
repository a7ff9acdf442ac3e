// Every number that somebody could have chosen otherwise, with the rule that set it and what it came from.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "reasons/rule.h"
#include "units/quantity.h"
#include "units/text.h"

namespace visewright::reasons {

/// How a number came to be.
enum class Basis : std::uint8_t { given, measured, catalogue, derived, assumed };

/// The unit a number is kept and shown in.
enum class Unit : std::uint8_t { mm, deg, one, count, newton, mpa, percent, kg, kelvin, newton_metre };
[[nodiscard]] std::string_view suffix(Unit);  // as key names end: "mm", "deg", "", "", "n", "mpa", "percent", …

/// Index of a number in its ledger.
using NumberId = std::uint16_t;

/// A number of the Plan: its value, and where its reason is found.
struct Size {
  units::Length value;
  NumberId id = 0;
  [[nodiscard]] double mm() const { return units::in_mm(value); }
};
struct Count {
  int value = 0;
  NumberId id = 0;
};
struct Ratio {
  double value = 0;
  NumberId id = 0;
};
struct Turn {
  units::Angle value;
  NumberId id = 0;
  [[nodiscard]] double rad() const { return units::in_radians(value); }
};

struct Number {
  std::string name;  // dotted, as in the JSON, without the unit: "front_jaw.backing"
  Unit unit = Unit::one;
  double value = 0;  // in that unit
  Basis basis = Basis::derived;
  const Rule* rule = nullptr;
  base::Place place;           // where the design gives it; line 0 when it does not
  std::vector<NumberId> from;  // in the order of the rule's {0}, {1} …
};

/// A choice by name: a thread, a washer, a wood.
struct Choice {
  std::string name, text;
  Basis basis = Basis::derived;
  const Rule* rule = nullptr;
  base::Place place;
};

/// The list of all numbers and choices of one Plan, in the order in which they were fixed. Laws: names are unique; a
/// number's `from` were fixed before it.
class Ledger {
 public:
  Size length(std::string name, units::Length, Basis, const Rule&, std::initializer_list<NumberId> from = {},
              base::Place = {});
  Count count(std::string name, int, Basis, const Rule&, std::initializer_list<NumberId> from = {}, base::Place = {});
  Ratio ratio(std::string name, Unit, double, Basis, const Rule&, std::initializer_list<NumberId> from = {},
              base::Place = {});
  Turn angle(std::string name, units::Angle, Basis, const Rule&, std::initializer_list<NumberId> from = {},
             base::Place = {});
  void choice(std::string name, std::string text, Basis, const Rule&, base::Place = {});

  [[nodiscard]] std::span<const Number> numbers() const { return numbers_; }
  [[nodiscard]] std::span<const Choice> choices() const { return choices_; }
  [[nodiscard]] const Number& number(NumberId id) const { return numbers_[id]; }
  /// Null when no number has this name.
  [[nodiscard]] const Number* find(std::string_view name) const;

 private:
  NumberId add(std::string name, Unit, double, Basis, const Rule&, std::initializer_list<NumberId>, base::Place);
  std::vector<Number> numbers_;
  std::vector<Choice> choices_;
};

/// The value with its unit, as shown: "100 mm", "3/4 in", "20°".
[[nodiscard]] std::string show(const Number&, units::LengthUnit);
/// The sentence that says why: "tip 96 mm + 2 × gear to wood 2 mm, up to the next cutter". Formed when asked for.
[[nodiscard]] std::string say(const Ledger&, const Number&, units::LengthUnit);

}  // namespace visewright::reasons
