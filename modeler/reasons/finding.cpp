#include "reasons/finding.h"

#include <algorithm>
#include <cmath>

namespace visewright::reasons {
namespace {

double rounded(double value) { return std::round(value * 1e9) / 1e9; }

std::string shown(double value, Unit unit, units::LengthUnit length_unit) {
  Number number;
  number.unit = unit;
  number.value = value;
  return show(number, length_unit);
}

std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
  return text;
}

}  // namespace

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::pass: return "pass";
    case Verdict::caution: return "caution";
    case Verdict::fail: return "fail";
  }
  return "";
}

Finding judged(const Rule& rule, double measured, double limit, Unit unit, Better better, Verdict otherwise,
               std::vector<std::string> parts, std::optional<Where> where) {
  const double m = rounded(measured), l = rounded(limit);
  const bool well = better == Better::larger ? m >= l : m <= l;
  Finding finding{&rule, well ? Verdict::pass : otherwise, measured, limit, unit, better, false,
                  std::move(parts), where, well ? std::string() : std::string(rule.remedy), {}, {}};
  return finding;
}

void worst_first(std::vector<Finding>& findings) {
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    if (a.verdict != b.verdict) return a.verdict > b.verdict;
    return a.rule->name < b.rule->name;
  });
}

std::string say(const Finding& finding, units::LengthUnit unit) {
  std::string text = std::string(word(finding.verdict)) + "  " + std::string(finding.rule->name);
  if (!finding.parts.empty()) text += " (" + listed(finding.parts) + ")";
  text += ": " + shown(finding.measured, finding.unit, unit);
  text += finding.better == Better::larger ? ", wanted at least " : ", wanted at most ";
  text += shown(finding.limit, finding.unit, unit);
  if (finding.where) {
    text += ", at opening " + shown(finding.where->opening_mm, Unit::mm, unit);
    text += finding.where->grip_out ? " with the grip out" : "";
  }
  if (!finding.advice.empty()) text += "; " + finding.advice;
  return text;
}

std::string say_terms(const Finding& finding, units::LengthUnit unit) {
  std::string text;
  for (const Term& term : finding.with) {
    if (!text.empty()) text += ", ";
    text += std::string(term.name) + " " + shown(term.value, term.unit, unit);
  }
  return text;
}

}  // namespace visewright::reasons
