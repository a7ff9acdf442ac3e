#include "outputs/data/explain.h"

#include <algorithm>

#include "base/nearest.h"
#include "outputs/data/basis.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/json.h"
#include "outputs/data/lines.h"

namespace visewright::outputs::data {
namespace {

Topic& topic_of(Explanation& explanation, const reasons::Rule* rule) {
  for (Topic& topic : explanation.topics) {
    if (topic.rule == rule) return topic;
  }
  explanation.topics.push_back({rule, {}, {}, {}});
  return explanation.topics.back();
}

/// A number or choice by its own name alone; by its rule's name, all that follow the rule.
void add_from_plan(Explanation& explanation, const reasons::Ledger& ledger) {
  const std::string& name = explanation.name;
  const auto numbers = ledger.numbers();
  const auto choices = ledger.choices();
  const bool by_own_name = ledger.find(name) != nullptr ||
                           std::any_of(choices.begin(), choices.end(), [&](const auto& c) { return c.name == name; });
  const auto wanted = [&](const auto& entry) { return by_own_name ? entry.name == name : entry.rule->name == name; };
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    if (wanted(numbers[i])) topic_of(explanation, numbers[i].rule).numbers.push_back(static_cast<reasons::NumberId>(i));
  }
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (wanted(choices[i])) topic_of(explanation, choices[i].rule).choices.push_back(i);
  }
}

std::string_view nearest(std::string_view name, std::span<const reasons::Rule* const> rules, const layout::Plan* plan,
                         std::span<const reasons::Finding> findings) {
  std::vector<std::string_view> known;
  if (plan) {
    for (const reasons::Number& number : plan->ledger.numbers()) known.push_back(number.name);
    for (const reasons::Choice& choice : plan->ledger.choices()) known.push_back(choice.name);
  }
  for (const reasons::Rule* rule : rules) known.push_back(rule->name);
  for (const reasons::Finding& finding : findings) known.push_back(finding.rule->name);
  return base::nearest_name(name, known);
}

bool is_slot(std::string_view formula, std::size_t at) {
  return formula[at] == '{' && at + 2 < formula.size() && formula[at + 2] == '}';
}

bool ends_in_word(std::string_view text) {
  while (text.ends_with(' ')) text.remove_suffix(1);
  if (text.empty()) return false;
  const char last = text.back();
  return (last >= 'a' && last <= 'z') || (last >= 'A' && last <= 'Z');
}

std::string number_lines(const Explanation& explanation, const reasons::Number& number) {
  const reasons::Ledger& ledger = *explanation.ledger;
  std::string text = folded(number.name + " = " + reasons::show(number, explanation.show) + " (" +
                                std::string(basis_word(number.basis)) + ")",
                            4);
  if (number.place.line > 0 && number.place.text == 0) {
    text += "    given in line " + std::to_string(number.place.line) + " of the design\n";
  }
  text += folded("    because: " + reasons::say(ledger, number, explanation.show), 6);
  for (const reasons::NumberId id : number.from) {
    text +=
        folded("    from " + ledger.number(id).name + " = " + reasons::show(ledger.number(id), explanation.show), 6);
  }
  return text;
}

std::string topic_text(const Explanation& explanation, const Topic& topic) {
  const reasons::Rule& rule = *topic.rule;
  std::string text = folded("  meaning: " + std::string(rule.meaning), 4);
  text += folded("  formula: " + formula_in_words(rule), 4);
  text += folded("  source: " + std::string(rule.source), 4);
  text += folded("  to change it: " + std::string(rule.remedy), 4);
  for (const reasons::NumberId id : topic.numbers)
    text += "  " + number_lines(explanation, explanation.ledger->number(id));
  for (const std::size_t i : topic.choices) {
    const reasons::Choice& choice = explanation.ledger->choices()[i];
    text += folded("  " + choice.name + " = " + choice.text + " (" + std::string(basis_word(choice.basis)) + ")", 4);
  }
  for (const reasons::Finding& finding : topic.findings) {
    text += folded("  here: " + reasons::say(finding, explanation.show), 4);
    text += folded("    " + formula_filled(finding, explanation.show), 6);
    if (!finding.with.empty()) text += folded("    with " + reasons::say_terms(finding, explanation.show), 6);
  }
  return text;
}

Json topic_json(const Explanation& explanation, const Topic& topic) {
  Json numbers = Json::array(), choices = Json::array();
  for (const reasons::NumberId id : topic.numbers) {
    const reasons::Number& n = explanation.ledger->number(id);
    Json from = Json::array();
    for (const reasons::NumberId source : n.from) from.push_back(explanation.ledger->number(source).name);
    numbers.push_back({{"name", n.name},
                       {key("value", n.unit), number(n.value)},
                       {"basis", basis_word(n.basis)},
                       {"because", reasons::say(*explanation.ledger, n, explanation.show)},
                       {"from", std::move(from)},
                       {"place", place(n.place)}});
  }
  for (const std::size_t i : topic.choices) {
    const reasons::Choice& choice = explanation.ledger->choices()[i];
    choices.push_back({{"name", choice.name},
                       {"text", choice.text},
                       {"basis", basis_word(choice.basis)},
                       {"place", place(choice.place)}});
  }
  Json findings = Json::array();
  for (const reasons::Finding& finding : topic.findings) {
    Json json = finding_json(finding);
    json["because"] = formula_filled(finding, explanation.show);
    json["with"] = reasons::say_terms(finding, explanation.show);
    findings.push_back(std::move(json));
  }
  return {{"rule", topic.rule->name},      {"meaning", topic.rule->meaning}, {"formula", formula_in_words(*topic.rule)},
          {"source", topic.rule->source},  {"remedy", topic.rule->remedy},   {"numbers", std::move(numbers)},
          {"choices", std::move(choices)}, {"findings", std::move(findings)}};
}

}  // namespace

base::Result<Explanation> explain(std::string_view name, std::span<const reasons::Rule* const> rules,
                                  const layout::Plan* plan, std::span<const reasons::Finding> findings,
                                  units::LengthUnit show) {
  Explanation explanation{std::string(name), {}, plan ? &plan->ledger : nullptr, show};
  if (plan) add_from_plan(explanation, plan->ledger);
  for (const reasons::Rule* rule : rules) {
    if (rule->name == name) topic_of(explanation, rule);
  }
  for (const reasons::Finding& finding : sorted(findings)) {
    if (finding.rule->name == name) topic_of(explanation, finding.rule).findings.push_back(finding);
  }
  if (!explanation.topics.empty()) return explanation;
  const std::string_view guess = nearest(name, rules, plan, findings);
  return base::fault(
      base::Cause::input, std::string(name), "no number and no finding has this name",
      guess.empty() ? "a name from a plan or a list of findings" : "perhaps \"" + std::string(guess) + "\"");
}

std::string formula_in_words(const reasons::Rule& rule) {
  std::string text;
  for (std::size_t i = 0; i < rule.formula.size(); ++i) {
    if (!is_slot(rule.formula, i)) {
      text += rule.formula[i];
      continue;
    }
    if (!ends_in_word(text)) {
      text += "…";
    } else if (text.ends_with(' ')) {
      text.pop_back();
    }
    i += 2;
  }
  return text;
}

std::string formula_filled(const reasons::Finding& finding, units::LengthUnit show) {
  reasons::Number value;
  value.unit = finding.unit;
  std::string text;
  for (std::size_t i = 0; i < finding.rule->formula.size(); ++i) {
    if (!is_slot(finding.rule->formula, i)) {
      text += finding.rule->formula[i];
      continue;
    }
    value.value = finding.rule->formula[i + 1] == '=' ? finding.measured : finding.limit;
    text += reasons::show(value, show);
    i += 2;
  }
  return text;
}

std::string explain_text(const Explanation& explanation) {
  std::string text = explanation.name + "\n";
  for (const Topic& topic : explanation.topics) text += topic_text(explanation, topic);
  return text;
}

std::string explain_json(const Explanation& explanation) {
  Json topics = Json::array();
  for (const Topic& topic : explanation.topics) topics.push_back(topic_json(explanation, topic));
  Json json;
  json["schema"] = explain_schema;
  json["name"] = explanation.name;
  json["topics"] = std::move(topics);
  return bytes(json);
}

}  // namespace visewright::outputs::data
