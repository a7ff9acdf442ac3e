#include "outputs/data/findings_json.h"

namespace visewright::outputs::data {
namespace {

std::string_view unit_word(reasons::Unit unit) {
  if (unit == reasons::Unit::one) return "1";
  if (unit == reasons::Unit::count) return "count";
  return reasons::suffix(unit);
}

Json where_json(const std::optional<reasons::Where>& where) {
  if (!where) return nullptr;
  Json at = nullptr;
  if (where->at_mm)
    at = Json::array({number((*where->at_mm)[0]), number((*where->at_mm)[1]), number((*where->at_mm)[2])});
  return {{"opening_mm", number(where->opening_mm)}, {"grip", where->grip_out ? "out" : "folded"}, {"at_mm", at}};
}

}  // namespace

std::vector<reasons::Finding> sorted(std::span<const reasons::Finding> findings) {
  std::vector<reasons::Finding> list(findings.begin(), findings.end());
  reasons::worst_first(list);
  return list;
}

Counts counts(std::span<const reasons::Finding> findings) {
  Counts found;
  for (const reasons::Finding& finding : findings) {
    switch (finding.verdict) {
      case reasons::Verdict::fail: ++found.fail; break;
      case reasons::Verdict::caution: ++found.caution; break;
      case reasons::Verdict::pass: ++found.pass; break;
    }
  }
  return found;
}

Json finding_json(const reasons::Finding& finding) {
  Json json;
  json["name"] = finding.rule->name;
  json["verdict"] = reasons::word(finding.verdict);
  json["measured"] = number(finding.measured);
  json["limit"] = number(finding.limit);
  json["unit"] = unit_word(finding.unit);
  json["better"] = finding.better == reasons::Better::larger ? "larger" : "smaller";
  json["certified"] = finding.certified;
  json["proved_mm"] = Json::array();
  for (const auto& [from, to] : finding.proved_mm) json["proved_mm"].push_back(Json::array({number(from), number(to)}));
  json["parts"] = finding.parts;
  json["where"] = where_json(finding.where);
  json["advice"] = finding.advice;
  json["meaning"] = finding.rule->meaning;
  return json;
}

Json finding_list(std::span<const reasons::Finding> findings) {
  Json list = Json::array();
  for (const reasons::Finding& finding : sorted(findings)) list.push_back(finding_json(finding));
  return list;
}

std::string findings_json(const Facts& facts) {
  const Counts found = counts(facts.findings);
  Json json;
  json["schema"] = findings_schema;
  json["title"] = facts.title;
  json["program"] = facts.program_version;
  json["counts"] = {{"fail", found.fail}, {"caution", found.caution}, {"pass", found.pass}};
  json["findings"] = finding_list(facts.findings);
  return bytes(json);
}

base::Result<std::vector<File>> write_findings(const Facts& facts, base::Watcher&) {
  return std::vector<File>{
      {"findings.json", findings_json(facts), "what the checks found, worst first", std::nullopt}};
}

}  // namespace visewright::outputs::data
