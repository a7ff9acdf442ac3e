#include "making/making.h"

#include <algorithm>
#include <cmath>

#include "making/rules.h"
#include "units/text.h"

namespace visewright::making {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// Operations of a part that want the same tool, which is not at hand.
struct Missing {
  std::string part, operation;
  int count = 0;
  ToolChoice tool;
};

class Judge {
 public:
  Judge(const Work& work, const layout::Plan& plan, const standards::Catalogue& catalogue)
      : work_(work), plan_(plan), catalogue_(catalogue) {}

  std::vector<Finding> run() {
    judge_shop();
    judge_tools();
    judge_welder();
    judge_corners();
    judge_beds();
    out_.insert(out_.end(), work_.cutting.findings.begin(), work_.cutting.findings.end());
    return std::move(out_);
  }

 private:
  std::string length(double mm) const { return units::write_length(units::mm(mm), plan_.unit); }

  void judge_shop() {
    const std::string& preset = plan_.workshop.owned.preset;
    if (preset.empty()) return;
    Finding finding = judged(rules::shop, catalogue_.shop(preset) != nullptr ? 1 : 0, 1, Unit::count, Better::larger,
                             Verdict::caution);
    if (finding.verdict != Verdict::pass) {
      finding.advice = "no shop is called \"" + preset + "\"; known are:";
      for (const standards::ShopRow& shop : catalogue_.shops())
        finding.advice += (&shop == catalogue_.shops().data() ? " " : ", ") + shop.name;
    }
    out_.push_back(std::move(finding));
  }

  static bool same_tool(const ToolChoice& a, const ToolChoice& b) {
    return a.kind == b.kind && a.thread == b.thread &&
           std::llround(a.wanted_mm * 1000) == std::llround(b.wanted_mm * 1000);
  }

  void judge_tools() {
    int wanted = 0, at_hand = 0;
    std::vector<Missing> missing;
    for (const PartSteps& part : work_.order) {
      for (const Step& step : part.steps) {
        if (step.kind != Step::Kind::operation) continue;
        ++wanted;
        if (step.tool.at_hand) {
          ++at_hand;
          continue;
        }
        const auto like = std::find_if(missing.begin(), missing.end(), [&](const Missing& m) {
          return m.part == part.part && same_tool(m.tool, step.tool);
        });
        if (like == missing.end())
          missing.push_back({part.part, step.text, 1, step.tool});
        else
          ++like->count;
      }
    }
    out_.push_back(judged(rules::tools_owned, at_hand, wanted, Unit::count, Better::larger, Verdict::caution));
    for (const Missing& m : missing) out_.push_back(lacks_machine(m) ? machine_finding(m) : tool_finding(m));
  }

  bool lacks_machine(const Missing& m) const {
    return m.tool.row != nullptr && !m.tool.row->machine.empty() && !work_.tools.has_machine(m.tool.row->machine);
  }

  static std::string said(const Missing& m) {
    return m.part + ", " + m.operation + (m.count > 1 ? " and " + std::to_string(m.count - 1) + " more" : "");
  }

  Finding machine_finding(const Missing& m) const {
    Finding finding = judged(rules::machine, 0, 1, Unit::count, Better::larger, Verdict::caution, {m.part});
    finding.advice = said(m) + ": a " + m.tool.row->machine + " is wanted; have it done by somebody who has one";
    return finding;
  }

  Finding tool_finding(const Missing& m) const {
    Finding finding = judged(rules::tool, m.tool.nearest_mm.value_or(0), m.tool.wanted_mm, Unit::mm, Better::larger,
                             Verdict::caution, {m.part});
    finding.verdict = Verdict::caution;  // the nearest may be too large as well as too small
    const std::string name = m.tool.row == nullptr ? std::string(standards::name_of(m.tool.kind)) : m.tool.row->name;
    const std::string size = m.tool.thread.empty() ? length(m.tool.wanted_mm) : m.tool.thread;
    finding.advice = said(m) + ": " + name + " " + size + " is wanted; ";
    finding.advice += m.tool.nearest_mm ? "the nearest owned is " + length(*m.tool.nearest_mm) : "none is owned";
    return finding;
  }

  void judge_welder() {
    if (work_.welds.empty() || !work_.tools.machines) return;
    std::vector<std::string> parts;
    for (const WeldItem& weld : work_.welds)
      if (parts.empty() || parts.back() != weld.part) parts.push_back(weld.part);
    out_.push_back(judged(rules::machine, work_.tools.has_machine("welder") ? 1 : 0, 1, Unit::count, Better::larger,
                          Verdict::caution, parts));
    if (out_.back().verdict != Verdict::pass)
      out_.back().advice = "the beads want a welder; have them done by somebody with practice";
  }

  /// Every corner that is not reached, and for parts where all are the tightest.
  void judge_corners() {
    std::vector<const Corner*> said;
    for (const Corner& corner : work_.corners) {
      if (!corner.reached) {
        said.push_back(&corner);
        continue;
      }
      const auto same =
          std::find_if(said.begin(), said.end(), [&](const Corner* c) { return c->reached && c->part == corner.part; });
      if (same == said.end())
        said.push_back(&corner);
      else if (spare(corner) < spare(**same))
        *same = &corner;
    }
    for (const Corner* corner : said) {
      out_.push_back(judged(rules::corner, corner->radius_mm, corner->cutter_radius_mm, Unit::mm, Better::larger,
                            Verdict::caution, {corner->part}));
      if (out_.back().verdict != Verdict::pass)
        out_.back().advice = corner->operation + ": " + std::string(rules::corner.remedy);
    }
  }
  static long long spare(const Corner& corner) {
    return std::llround((corner.radius_mm - corner.cutter_radius_mm) * 1e6);
  }

  void judge_beds() {
    for (const OnBed& on : work_.beds) {
      const reasons::Rule& rule = on.bed == OnBed::Bed::print ? rules::print_bed : rules::laser_bed;
      out_.push_back(judged(rule, 100 * on.scale, 100, Unit::percent, Better::larger, Verdict::caution, {on.part}));
    }
  }

  const Work& work_;
  const layout::Plan& plan_;
  const standards::Catalogue& catalogue_;
  std::vector<Finding> out_;
};

}  // namespace

Work work(const layout::Plan& plan, const assembly::Assembly& assembly, const standards::Catalogue& catalogue) {
  Work result;
  result.tools = owned_tools(plan, catalogue);
  result.pieces = workpieces(assembly, plan.workshop.made);
  result.order = order_of_work(result.pieces, plan, result.tools, catalogue);
  result.assembly = assembly_steps(plan, assembly);
  result.cutting = cut_stock(result.pieces, plan);
  result.prints = print_list(result.pieces, plan);
  result.welds = weld_list(result.pieces);
  result.corners = corners(result.pieces, plan, result.tools, catalogue);
  result.beds = on_beds(result.pieces, result.tools);
  result.findings = Judge(result, plan, catalogue).run();
  return result;
}

}  // namespace visewright::making
