// What a check found. A finding is built from a rule, so none lacks its explanation.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reasons/ledger.h"
#include "reasons/rule.h"

namespace visewright::reasons {

enum class Verdict : std::uint8_t { pass, caution, fail };
[[nodiscard]] std::string_view word(Verdict);

/// Which way is better for the measured value.
enum class Better : std::uint8_t { larger, smaller };

/// Where the worst was met: at which opening, with the grip folded or out, at which point of the model.
struct Where {
  double opening_mm = 0;
  bool grip_out = false;
  std::optional<std::array<double, 3>> at_mm;
};

/// A number that went into a finding's formula, by the name that the formula gives it.
struct Term {
  std::string_view name;
  double value = 0;
  Unit unit = Unit::one;
};

struct Finding {
  const Rule* rule;
  Verdict verdict;
  double measured, limit;
  Unit unit;
  Better better;
  bool certified = false;          // proved over the whole range, or measured at samples
  std::vector<std::string> parts;  // names, as in the bill
  std::optional<Where> where;
  std::string advice;              // one sentence on what to change; empty for a pass
  std::vector<Term> with = {};     // this design's numbers in the formula
  std::vector<std::array<double, 2>> proved_mm = {};  // stretches of opening over which it is proved
};

/// A finding judged on values rounded to 1e-9, so that every processor decides alike: pass when `measured` is on the
/// better side of `limit` or equal to it, else `otherwise`.
[[nodiscard]] Finding judged(const Rule&, double measured, double limit, Unit, Better, Verdict otherwise,
                             std::vector<std::string> parts = {}, std::optional<Where> = std::nullopt);

/// Worst first, then by rule name, then as given.
void worst_first(std::vector<Finding>&);

/// "fail  train.parity: measured …, limit …; what to change".
[[nodiscard]] std::string say(const Finding&, units::LengthUnit);
/// "torque 9 N·m, face 24 mm": this design's numbers in the rule's formula; empty where there are none.
[[nodiscard]] std::string say_terms(const Finding&, units::LengthUnit);

}  // namespace visewright::reasons
