#include "outputs/papers/order_of_work.h"

#include <algorithm>

#include "outputs/data/stock_words.h"
#include "outputs/papers/words.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

void collect(const std::vector<const making::Caution*>& some, std::vector<const making::Caution*>& all) {
  for (const making::Caution* each : some)
    if (std::find(all.begin(), all.end(), each) == all.end()) all.push_back(each);
}

std::string names(const std::vector<const making::Caution*>& cautions) {
  std::string text;
  for (const making::Caution* each : cautions) text += (text.empty() ? "" : ", ") + std::string(each->name);
  return text;
}

std::string depth_words(const making::Step& s, units::LengthUnit show) {
  if (s.depth_mm) return length(*s.depth_mm, show) + (s.flat_floor ? " deep, flat floor" : " deep");
  return s.through_mm > 0 ? "through " + length(s.through_mm, show) : "";
}

bool sized(standards::ToolKind kind) {
  using standards::ToolKind;
  return kind == ToolKind::drill || kind == ToolKind::flat_bit || kind == ToolKind::hole_saw || kind == ToolKind::cutter;
}

std::string tool_text(const making::Step& s, units::LengthUnit show) {
  if (s.kind != making::Step::Kind::operation) return {};
  std::string text(standards::name_of(s.tool.kind));
  if (!s.tool.thread.empty()) text += " " + s.tool.thread;
  else if (s.tool.size_mm > 0 && sized(s.tool.kind)) text += " " + length(s.tool.size_mm, show);
  if (!s.tool.at_hand) text += " (not at hand" + (s.tool.nearest_mm ? ", nearest " + length(*s.tool.nearest_mm, show) : std::string()) + ")";
  if (s.speed) text += ", " + units::write_number(s.speed->low, 0) + " to " + units::write_number(s.speed->high, 0) + " turns a minute";
  return text;
}

std::vector<std::string> row(int number, const making::Step& s, units::LengthUnit show) {
  std::string at;
  if (s.at_mm) at = data::cell(s.at_mm->x, show) + ", " + data::cell(s.at_mm->y, show);
  std::string size;
  if (s.size_mm > 0) size = s.length_mm > 0 ? data::cell(s.length_mm, show) + " × " + data::cell(s.size_mm, show) : data::cell(s.size_mm, show);
  return {std::to_string(number), s.text, s.face, at, size, depth_words(s, show), tool_text(s, show), names(s.cautions)};
}

}  // namespace

Document order_of_work(const Facts& facts, const making::Work& work) {
  Document d = document(facts, "Order of work");
  std::vector<const making::Caution*> cautions;
  for (const making::PartSteps& part : work.order)
    for (const making::Step& step : part.steps) collect(step.cautions, cautions);
  for (const making::AssemblyStep& step : work.assembly) collect(step.cautions, cautions);
  d.blocks.emplace_back(Heading{2, "Before you start"});
  d.blocks.emplace_back(CautionText{"Eyes, ears and lungs guarded; work clamped; no gloves, sleeves or hair near turning tools; blades and bits changed with the plug out. Follow the makers' manuals, local codes and the advice of people who are licensed where a trade is."});
  for (const making::Caution* each : cautions) d.blocks.emplace_back(CautionText{std::string(each->name) + ": " + std::string(each->text)});
  const std::string unit(data::unit_word(facts.show));
  d.blocks.emplace_back(Heading{2, "Parts"});
  d.blocks.emplace_back(Paragraph{"Places are x, y in " + unit + " from the datum of the face, x to the right and y up as one looks at it. Holes come in an order in which each still finds its centre."});
  for (const making::PartSteps& part : work.order) {
    d.blocks.emplace_back(Heading{3, part.part + " (" + std::to_string(part.count) + " off)" + (part.material.empty() ? "" : ", " + part.material)});
    Table table{{{"step", "do", "face", "at", "size, " + unit, "depth", "tool", "see caution"}}};
    int number = 0;
    for (const making::Step& step : part.steps) table.rows.push_back(row(++number, step, facts.show));
    d.blocks.emplace_back(std::move(table));
  }
  d.blocks.emplace_back(Heading{2, "Putting it together"});
  std::string group;
  Steps steps;
  const auto close = [&] {
    if (!steps.lines.empty()) d.blocks.emplace_back(std::move(steps));
    steps = {};
  };
  for (const making::AssemblyStep& step : work.assembly) {
    if (step.group != group) {
      close();
      d.blocks.emplace_back(Heading{3, step.group});
      group = step.group;
    }
    const std::string see = names(step.cautions);
    steps.lines.push_back(step.text + (see.empty() ? "" : " (See caution: " + see + ".)"));
  }
  close();
  return d;
}

}  // namespace visewright::outputs::papers
