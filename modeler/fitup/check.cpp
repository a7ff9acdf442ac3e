#include "fitup/check.h"

#include <algorithm>
#include <variant>

#include "fitup/fits.h"
#include "fitup/gaps.h"
#include "fitup/meshes.h"
#include "fitup/removal.h"
#include "fitup/rules.h"
#include "fitup/spread.h"
#include "fitup/walls.h"

namespace visewright::fitup {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

bool meshes(const Couple& c) { return c.fit && std::holds_alternative<assembly::Meshing>(*c.fit); }

/// Twice the largest gap that any rule asks for between two parts.
double range_mm(const assembly::Assembly& assembly) {
  double most = assembly.moving_to_fixed_mm;
  for (const auto& pair : assembly.declared)
    if (const auto* clear = std::get_if<assembly::Clear>(&pair.fit)) most = std::max(most, clear->least_mm);
  return 2 * most;
}

class Check {
 public:
  Check(const layout::Plan& plan, const assembly::Assembly& assembly, const solids::SolidSet& solids, base::Watcher& watcher, Asked asked)
      : plan_(plan), assembly_(assembly), solids_(solids), watcher_(watcher), asked_(asked) {}

  base::Result<Report> run() {
    watcher_.step("fitting the parts", 0.6);
    all_ = stands(assembly_);
    report_.range_mm = range_mm(assembly_);
    report_.couples = couples(assembly_, all_, report_.range_mm);
    if (auto proved = prove_couples(); !proved) return base::passed_on(std::move(proved.error()));
    watcher_.step("turning the gears", 0.8);
    add_meshes();
    add_couples();
    add_fits();
    if (asked_.walls) append(wall_findings(plan_, assembly_));
    if (asked_.removal) append(removal_findings(assembly_, all_));
    reasons::worst_first(report_.findings);
    auto named = named_gap_findings(plan_, assembly_, all_);
    report_.findings.insert(report_.findings.begin(), named.begin(), named.end());
    return std::move(report_);
  }

 private:
  base::Result<void> prove_couples() {
    auto& couples = report_.couples;
    std::vector<char> open(couples.size());
    spread(couples.size(), [&](std::size_t i) {
      if (!meshes(couples[i]) && !watcher_.wants_stop()) open[i] = !prove(couples[i], all_, assembly_.opening_max_mm, report_.range_mm);
    });
    if (watcher_.wants_stop()) return base::fault(base::Cause::interrupted, "check", "stopped before all pairs were checked", "start again");
    for (std::size_t i = 0; i < couples.size(); ++i) {
      if (!open[i]) continue;
      auto asked = ask_solids(couples[i], all_, assembly_, solids_);
      if (!asked) return base::passed_on(std::move(asked.error()));
      report_.poses_measured += *asked;
    }
    return {};
  }

  void add_meshes() {
    MeshChecks checks = mesh_checks(plan_);
    report_.meshes = std::move(checks.as_planned);
    append(std::move(checks.findings));
  }

  void add_couples() {
    int clear = 0;
    for (const Couple& c : report_.couples) {
      if (meshes(c)) continue;
      if (c.gap_mm < report_.range_mm) ++report_.pairs_met;
      if (auto finding = finding_of(c)) append({*finding});
      if (c.common_mm3 <= overlap_mm3 && c.certified) ++clear;
    }
    report_.findings.push_back(judged(rules::clear, clear, 0, Unit::count, Better::larger, Verdict::fail));
  }

  std::optional<Finding> finding_of(const Couple& c) const {
    std::vector<std::string> names{assembly_.placed[c.a].name, assembly_.placed[c.b].name};
    if (c.common_mm3 > overlap_mm3) return judged(rules::overlap, c.common_mm3, overlap_mm3, Unit::one, Better::smaller, Verdict::fail, std::move(names), c.where);
    if (!c.certified && c.gap_mm >= c.limit_mm) return unproved(c, std::move(names));
    if (c.limit_mm <= 0 || (c.certified && c.gap_mm >= report_.range_mm)) return std::nullopt;
    Finding f = judged(c.exact ? rules::gap : rules::gap_at_least, c.gap_mm, c.limit_mm, Unit::mm, Better::larger, Verdict::fail, std::move(names), c.where);
    f.certified = c.certified;
    f.proved_mm = stretches(c);
    return f;
  }

  /// Neither a failure nor a proof: the share of the travel that is proved.
  Finding unproved(const Couple& c, std::vector<std::string> names) const {
    double sure = 0;
    for (const Stretch& s : c.proved) sure += s.to_mm - s.from_mm;
    return judged(rules::unproved, std::min(sure, assembly_.opening_max_mm - shortest_stretch_mm), assembly_.opening_max_mm, Unit::mm, Better::larger,
                  Verdict::caution, std::move(names), c.where);
  }

  void add_fits() {
    std::vector<Finding> all;
    for (const Couple& c : report_.couples)
      if (auto finding = fit_finding(c, all_, assembly_)) all.push_back(std::move(*finding));
    append(worst_of_each_kind(std::move(all)));
  }

  void append(std::vector<Finding> more) { report_.findings.insert(report_.findings.end(), more.begin(), more.end()); }

  const layout::Plan& plan_;
  const assembly::Assembly& assembly_;
  const solids::SolidSet& solids_;
  base::Watcher& watcher_;
  Asked asked_;
  std::vector<Stand> all_;
  Report report_;
};

}  // namespace

base::Result<Report> check(const layout::Plan& plan, const assembly::Assembly& assembly, const solids::SolidSet& solids, base::Watcher& watcher, Asked asked) {
  return Check(plan, assembly, solids, watcher, asked).run();
}

std::span<const reasons::Rule* const> rules_of_fitup() {
  static constexpr const reasons::Rule* all[] = {
      &rules::jaw_to_bench, &rules::screw_to_obstacle, &rules::stop_to_apron, &rules::rim_to_cover, &rules::rim_to_rim, &rules::wheel_to_bench_top,
      &rules::cover_to_gears, &rules::gear_to_wood, &rules::overlap, &rules::gap, &rules::gap_at_least, &rules::unproved, &rules::clear, &rules::press,
      &rules::sliding, &rules::threaded, &rules::touching, &rules::bonded, &rules::mesh_gap, &rules::mesh_backlash, &rules::mesh_at_worst,
      &rules::wall_pocket, &rules::wall_dog, &rules::wall_dog_face, &rules::wall_screw, &rules::wall_other, &rules::removal};
  return all;
}

}  // namespace visewright::fitup
