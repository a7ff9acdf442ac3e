// What a name means: a number of the Plan, a choice, a rule or a finding; with a design, its own numbers put in.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::outputs::data {

inline constexpr std::string_view explain_schema = "visewright.explain/1";

/// One rule that goes by the name, and what the design made of it.
struct Topic {
  const reasons::Rule* rule = nullptr;
  std::vector<reasons::NumberId> numbers;  // in the ledger of the Plan
  std::vector<std::size_t> choices;        // in that ledger
  std::vector<reasons::Finding> findings;  // worst first
};

struct Explanation {
  std::string name;
  std::vector<Topic> topics;
  const reasons::Ledger* ledger = nullptr;  // null without a design
  units::LengthUnit show = units::LengthUnit::millimetre;
};

/// Looks `name` up among the Plan's numbers and choices (when a Plan is given), the rules and the findings. What is
/// pointed at must outlive the answer. Unknown: Cause::input, and the nearest known name.
[[nodiscard]] base::Result<Explanation> explain(std::string_view name, std::span<const reasons::Rule* const> rules,
                                                const layout::Plan*, std::span<const reasons::Finding>,
                                                units::LengthUnit show);

/// The formula for a reader: without a design its slots fall away where a word before them already says what stands
/// there, else they read "…".
[[nodiscard]] std::string formula_in_words(const reasons::Rule&);
/// A finding's formula: {=} is what was measured, {0} the limit.
[[nodiscard]] std::string formula_filled(const reasons::Finding&, units::LengthUnit);

[[nodiscard]] std::string explain_text(const Explanation&);
/// Schema visewright.explain/1.
[[nodiscard]] std::string explain_json(const Explanation&);

}  // namespace visewright::outputs::data
