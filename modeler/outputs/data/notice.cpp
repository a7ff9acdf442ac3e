#include "outputs/data/notice.h"

#include <set>

namespace visewright::outputs::data {

std::string failing_notice(std::span<const reasons::Finding> findings) {
  std::set<std::string_view> names;
  for (const reasons::Finding& finding : findings) {
    if (finding.verdict == reasons::Verdict::fail) names.insert(finding.rule->name);
  }
  if (names.empty()) return {};
  std::string text = "Not ready to build: " + std::to_string(names.size());
  text += names.size() == 1 ? " check fails: " : " checks fail: ";
  bool first = true;
  for (const std::string_view name : names) {
    text.append(first ? "" : ", ").append(name);
    first = false;
  }
  return text;
}

}  // namespace visewright::outputs::data
