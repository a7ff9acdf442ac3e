#include "outputs/papers/pattern_sheet.h"

#include <algorithm>

#include "outputs/papers/jobs.h"
#include "outputs/papers/labels.h"
#include "outputs/papers/template_sheet.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Point;

/// The names of the jobs whose operations follow a pattern, each once.
std::string followers(const assembly::Assembly& assembly, const std::string& pattern) {
  std::vector<std::string> names;
  for (std::uint32_t i = 0; i < assembly.parts.size(); ++i)
    for (const Job& job : jobs(*assembly.parts[i], i)) {
      const bool follows = std::any_of(job.operations.begin(), job.operations.end(),
                                       [&](const parts::Operation& o) { return o.pattern == pattern; });
      if (follows && std::find(names.begin(), names.end(), job.name) == names.end()) names.push_back(job.name);
    }
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

}  // namespace

Sheet pattern_sheet(const Facts& facts) {
  const layout::Plan& plan = facts.plan;
  Sheet sheet;
  sheet.title = "master hole pattern";
  add_notice(facts, sheet);
  sheet.remarks.push_back(
      "As the person at the vise sees it. Datum: where the screw line and the middle line cross. Every part that shares "
      "these holes has them here, and a template of its own.");
  const std::size_t mark = sheet.layer("MARK", Pen::mark, "centres to punch, and their names"),
                    edge = sheet.layer("READ-ONLY", Pen::read_only, "for reading; nothing is cut along it");
  const auto box_of = [&](double left, double right, double below, double above) {
    if (right > left && above > -below) sheet.outline(edge, geometry::rectangle({left, -below}, {right, above}));
  };
  const double front = plan.front_jaw.length.mm() / 2, rear = plan.rear_jaw.length.mm() / 2;
  box_of(-front, front, plan.front_jaw.below.mm(), plan.front_jaw.above.mm());
  box_of(-rear, rear, plan.rear_jaw.below.mm(), plan.rear_jaw.above.mm());
  box_of(plan.cover.left.mm(), plan.cover.right.mm(), -plan.cover.bottom.mm(), plan.cover.top.mm());
  std::vector<Label> labels;
  for (const layout::Pattern* pattern :
       {&plan.screws, &plan.shaft_hole, &plan.axles, &plan.cusps, &plan.cover_edge, &plan.rear_mounting}) {
    if (pattern->holes.empty()) continue;
    const std::string parts = followers(facts.assembly, pattern->name);
    if (!parts.empty()) sheet.remarks.push_back("Pattern \"" + pattern->name + "\" is shared by: " + parts + ".");
    for (const layout::Hole& hole : pattern->holes) {
      sheet.cross(mark, hole.at, 5);
      const std::string place = length(hole.at.x, facts.show) + ", " + length(hole.at.y, facts.show);
      labels.push_back({hole.at, 2, {pattern == &plan.screws ? "screw, " + hole.name : hole.name, place}});
    }
  }
  const geometry::Box all = box(sheet);
  sheet.line(edge, {0, all.low.y - 6}, {0, all.high.y + 6});
  sheet.line(edge, {all.low.x - 6, 0}, {all.high.x + 6, 0});
  sheet.write(mark, {1.5, all.high.y + 3}, "middle line", 2.6);
  sheet.write(mark, {all.low.x - 2, 1.5}, "screw line", 2.6, Anchor::right);
  sheet.write(mark, {all.low.x - 3, 14}, "person's left", 3.5, Anchor::left, units::pi / 2);
  sheet.write(mark, {all.high.x + 3, 14}, "person's right", 3.5, Anchor::right, -units::pi / 2);
  place(sheet, mark, labels, 2.6, all);
  return sheet;
}

}  // namespace visewright::outputs::papers
