#include "fitup/check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string>
#include <variant>

#include "fitup/boxes.h"
#include "fitup/mesh_gap.h"
#include "fitup/rules.h"

namespace visewright::fitup {
namespace {

using assembly::Group;
using assembly::Pose;
using reasons::Better;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// Less than this is contact, not overlap: kernel results for touching solids are exactly 0, a micrometre over a palm is 1.
constexpr double overlap_mm3 = 0.01;

/// One body of one placed part.
struct Item {
  std::uint32_t placed, body;
  const kernel::Solid* solid;
  kernel::Box3 own_box;
};

/// Two bodies in one position relative to each other, rounded to a nanometre.
using Key = std::array<long long, 16>;

struct Met {
  double common_mm3 = 0, distance_mm = -1;  // distance −1: not asked
};

struct Worst {
  double value = 0;
  Pose pose;
  bool seen = false;
};

class Check {
 public:
  Check(const layout::Plan& plan, const assembly::Assembly& assembly, const solids::SolidSet& solids, base::Watcher& watcher)
      : plan_(plan), assembly_(assembly), solids_(solids), watcher_(watcher) {
    for (const auto& pair : assembly.declared) fits_[{std::min(pair.a, pair.b), std::max(pair.a, pair.b)}] = &pair.fit;
  }

  base::Result<Report> run() {
    if (auto listed = list_items(); !listed) return base::passed_on(std::move(listed.error()));
    const double full = assembly_.opening_max_mm;
    const std::array<Pose, 6> poses{{{0, false}, {full / 2, false}, {full, false}, {0, true}, {full / 2, true}, {full, true}}};
    for (std::size_t i = 0; i < poses.size(); ++i) {
      watcher_.step("fitting the parts", 0.3 + 0.6 * static_cast<double>(i) / static_cast<double>(poses.size()));
      if (auto done = at_pose(poses[i]); !done) return base::passed_on(std::move(done.error()));
    }
    report_pairs();
    report_meshes();
    reasons::worst_first(report_.findings);
    return report_;
  }

 private:
  base::Result<void> list_items() {
    for (std::uint32_t p = 0; p < assembly_.placed.size(); ++p) {
      const auto bodies = solids_.bodies(assembly_.placed[p].part);
      for (std::uint32_t b = 0; b < bodies.size(); ++b) {
        auto box = kernel::box(bodies[b].solid, bodies[b].name);
        if (!box) return base::passed_on(std::move(box.error()));
        items_.push_back({p, b, &bodies[b].solid, *box});
      }
    }
    return {};
  }

  base::Result<void> at_pose(const Pose& pose) {
    std::vector<geometry::Placement> at;
    std::vector<kernel::Box3> boxes;
    for (const auto& placed : assembly_.placed) at.push_back(assembly::at(placed, pose));
    for (const Item& item : items_) boxes.push_back(placed_box(item.own_box, at[item.placed]));
    for (std::size_t i = 0; i < items_.size(); ++i) {
      if (watcher_.wants_stop()) return base::fault(base::Cause::interrupted, "check", "stopped before all pairs were checked", "start again");
      for (std::size_t j = i + 1; j < items_.size(); ++j) {
        const Item &a = items_[i], &b = items_[j];
        if (pose.grip_out && !assembly_.placed[a.placed].grip_out && !assembly_.placed[b.placed].grip_out) continue;
        if (gap_mm(boxes[i], boxes[j]) > wanted_gap(a, b)) continue;
        if (is_mesh(a, b)) continue;
        if (auto done = meet(a, b, at, pose); !done) return done;
      }
    }
    return {};
  }

  const assembly::Fit* fit(const Item& a, const Item& b) const {
    const auto found = fits_.find({std::min(a.placed, b.placed), std::max(a.placed, b.placed)});
    return found == fits_.end() ? nullptr : found->second;
  }

  bool is_mesh(const Item& a, const Item& b) const {
    const auto* declared = fit(a, b);
    return declared && std::holds_alternative<assembly::Meshing>(*declared);
  }

  /// The gap that this pair must keep: its own, the general one between moving and fixed, or none.
  double wanted_gap(const Item& a, const Item& b) const {
    if (a.placed == b.placed) return 0;
    if (const auto* declared = fit(a, b)) {
      const auto* clear = std::get_if<assembly::Clear>(declared);
      return clear ? clear->least_mm : 0;
    }
    const bool a_fixed = assembly_.placed[a.placed].group == Group::fixed, b_fixed = assembly_.placed[b.placed].group == Group::fixed;
    return a_fixed != b_fixed ? assembly_.moving_to_fixed_mm : 0;
  }

  Key key(const Item& a, const Item& b, const geometry::Placement& relative) const {
    Key k{assembly_.placed[a.placed].part, a.body, assembly_.placed[b.placed].part, b.body};
    std::size_t i = 4;
    for (const auto* vector : {&relative.origin_mm, &relative.x_axis, &relative.z_axis})
      for (const double value : *vector) k[i++] = std::llround(value * 1e6);
    k[i] = wanted_gap(a, b) > 0 ? 1 : 0;
    return k;
  }

  base::Result<void> meet(const Item& a, const Item& b, const std::vector<geometry::Placement>& at, const Pose& pose) {
    const auto relative = geometry::combined(geometry::inverse(at[a.placed]), at[b.placed]);
    const Key k = key(a, b, relative);
    auto known = met_.find(k);
    if (known == met_.end()) {
      auto measured = measure(a, b, relative);
      if (!measured) return base::passed_on(std::move(measured.error()));
      known = met_.emplace(k, *measured).first;
      ++report_.poses_measured;
    }
    note(a, b, known->second, pose);
    return {};
  }

  base::Result<Met> measure(const Item& a, const Item& b, const geometry::Placement& relative) const {
    const kernel::Solid other = kernel::moved(*b.solid, relative);
    const std::string label = assembly_.placed[a.placed].name + " and " + assembly_.placed[b.placed].name;
    auto common = kernel::common_volume_mm3(*a.solid, other, label);
    if (!common) return base::passed_on(std::move(common.error()));
    Met met{*common, -1};
    if (*common <= overlap_mm3 && wanted_gap(a, b) > 0) {
      auto distance = kernel::distance_mm(*a.solid, other, label);
      if (!distance) return base::passed_on(std::move(distance.error()));
      met.distance_mm = *distance;
    }
    return met;
  }

  void note(const Item& a, const Item& b, const Met& met, const Pose& pose) {
    const std::pair<std::uint32_t, std::uint32_t> pair{a.placed, b.placed};
    auto& overlap = overlaps_[pair];
    if (!overlap.seen || met.common_mm3 > overlap.value) overlap = {met.common_mm3, pose, true};
    if (met.distance_mm < 0) return;
    auto& gap = gaps_[pair];
    if (!gap.seen || met.distance_mm < gap.value) gap = {met.distance_mm, pose, true};
    limits_[pair] = wanted_gap(a, b);
  }

  std::vector<std::string> names(const std::pair<std::uint32_t, std::uint32_t>& pair) const {
    return {assembly_.placed[pair.first].name, assembly_.placed[pair.second].name};
  }

  void report_pairs() {
    report_.pairs_met = static_cast<int>(overlaps_.size());
    int clear = 0;
    for (const auto& [pair, worst] : overlaps_) {
      const auto gap = gaps_.find(pair);
      const reasons::Where where{worst.pose.opening_mm, worst.pose.grip_out, std::nullopt};
      if (worst.value > overlap_mm3) {
        auto finding = judged(rules::overlap, worst.value, overlap_mm3, Unit::one, Better::smaller, Verdict::fail, names(pair), where);
        report_.findings.push_back(std::move(finding));
      } else if (gap != gaps_.end()) {
        const reasons::Where there{gap->second.pose.opening_mm, gap->second.pose.grip_out, std::nullopt};
        report_.findings.push_back(judged(rules::gap, gap->second.value, limits_.at(pair), Unit::mm, Better::larger, Verdict::fail, names(pair), there));
      } else {
        ++clear;
      }
    }
    report_.findings.push_back(judged(rules::clear, clear, 0, Unit::count, Better::larger, Verdict::fail));
  }

  void report_meshes() {
    const auto& gears = plan_.train.gears;
    for (std::size_t i = 0; i + 1 < gears.size(); ++i) {
      const Standing left{gears[i].outline.get(), gears[i].phase.rad(), {gears[i].centre_x.mm(), 0}};
      const Standing right{gears[i + 1].outline.get(), gears[i + 1].phase.rad(), {gears[i + 1].centre_x.mm(), 0}};
      report_.findings.push_back(judged(rules::mesh_gap, mesh_gap_mm(left, right, 1e-3), 0, Unit::mm, Better::larger, Verdict::fail,
                                        {"gear " + std::to_string(i + 1), "gear " + std::to_string(i + 2)}, reasons::Where{0, false, std::nullopt}));
    }
  }

  const layout::Plan& plan_;
  const assembly::Assembly& assembly_;
  const solids::SolidSet& solids_;
  base::Watcher& watcher_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, const assembly::Fit*> fits_;
  std::vector<Item> items_;
  std::map<Key, Met> met_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, Worst> overlaps_, gaps_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, double> limits_;
  Report report_;
};

}  // namespace

base::Result<Report> check(const layout::Plan& plan, const assembly::Assembly& assembly, const solids::SolidSet& solids, base::Watcher& watcher) {
  return Check(plan, assembly, solids, watcher).run();
}

std::span<const reasons::Rule* const> rules_of_fitup() {
  static constexpr const reasons::Rule* all[] = {&rules::overlap, &rules::gap, &rules::mesh_gap, &rules::clear};
  return all;
}

}  // namespace visewright::fitup
