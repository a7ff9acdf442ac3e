#include "outputs/data/plan_json.h"

#include "outputs/data/basis.h"
#include "outputs/data/json.h"

namespace visewright::outputs::data {
namespace {

Json number_json(const reasons::Ledger& ledger, const reasons::Number& n, units::LengthUnit show) {
  Json from = Json::array();
  for (const reasons::NumberId id : n.from) from.push_back(ledger.number(id).name);
  Json json;
  json["name"] = n.name;
  json[key("value", n.unit)] = number(n.value);
  json["shown"] = reasons::show(n, show);
  json["basis"] = basis_word(n.basis);
  json["rule"] = n.rule->name;
  json["because"] = reasons::say(ledger, n, show);
  json["from"] = std::move(from);
  json["place"] = place(n.place);
  return json;
}

Json choice_json(const reasons::Choice& choice) {
  return {{"name", choice.name},
          {"text", choice.text},
          {"basis", basis_word(choice.basis)},
          {"rule", choice.rule->name},
          {"because", choice.rule->formula},
          {"place", place(choice.place)}};
}

Json pattern_json(const layout::Pattern& pattern) {
  Json holes = Json::array();
  for (const layout::Hole& hole : pattern.holes) {
    holes.push_back({{"name", hole.name}, {"x_mm", number(hole.at.x)}, {"y_mm", number(hole.at.y)}});
  }
  return {{"name", pattern.name}, {"holes", std::move(holes)}};
}

}  // namespace

std::string plan_json(const Facts& facts) {
  const layout::Plan& plan = facts.plan;
  Json numbers = Json::array(), choices = Json::array(), patterns = Json::array();
  for (const reasons::Number& n : plan.ledger.numbers()) numbers.push_back(number_json(plan.ledger, n, facts.show));
  for (const reasons::Choice& choice : plan.ledger.choices()) choices.push_back(choice_json(choice));
  for (const layout::Pattern* pattern :
       {&plan.screws, &plan.shaft_hole, &plan.axles, &plan.cusps, &plan.dogs, &plan.cover_edge, &plan.rear_mounting}) {
    patterns.push_back(pattern_json(*pattern));
  }
  Json json;
  json["schema"] = plan_schema;
  json["title"] = facts.title;
  json["program"] = facts.program_version;
  json["numbers"] = std::move(numbers);
  json["choices"] = std::move(choices);
  json["patterns"] = std::move(patterns);
  return bytes(json);
}

base::Result<std::vector<File>> write_plan(const Facts& facts, base::Watcher&) {
  return std::vector<File>{{"plan.json", plan_json(facts), "every number with its reason", std::nullopt}};
}

}  // namespace visewright::outputs::data
