#include "analysis/analyse.h"

#include <algorithm>

#include "analysis/drive.h"
#include "analysis/droop.h"
#include "analysis/jaws.h"
#include "analysis/mounting.h"
#include "analysis/movement.h"
#include "analysis/rules.h"
#include "analysis/rules_use.h"
#include "analysis/spacing_rules.h"
#include "analysis/strength.h"
#include "analysis/train.h"

namespace visewright::analysis {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr double knuckles_mm = 10;

void judge_wheels(const layout::Plan& plan, std::vector<Finding>& out) {
  const auto& wheel = plan.wheel;
  const double cover_front = plan.cover.rear_out.mm() + plan.cover.thickness.mm();
  out.push_back(judged(rules::rim_to_cover, wheel.rim_rear_out.mm() - cover_front, plan.gaps.rim_to_cover.mm(), Unit::mm, Better::larger,
                       Verdict::fail, {"hand wheel", "cover"}));
  if (wheel.on_screw.size() == 2)
    out.push_back(judged(rules::rim_to_rim, plan.train.spacing.mm() - wheel.diameter.mm(), plan.gaps.rim_to_rim.mm(), Unit::mm, Better::larger,
                         Verdict::fail, {"hand wheel, left", "hand wheel, right"}));
  out.push_back(judged(rules::rim_to_bench, plan.bench.axis_depth.mm() - wheel.diameter.mm() / 2, knuckles_mm, Unit::mm, Better::larger,
                       Verdict::caution, {"hand wheel", "bench top"}));
  const auto judge_sense = [&](bool clockwise, const char* name) {
    out.push_back(judged(rules::closing_sense, clockwise ? 1 : 0, 1, Unit::count, Better::larger, Verdict::caution, {name}));
  };
  for (const int side : wheel.on_screw)
    judge_sense(plan.screw.closes_clockwise[static_cast<std::size_t>(side)], side == 0 ? "hand wheel, left" : "hand wheel, right");
  if (wheel.on_centre) {
    const bool with_first = plan.train.gears[plan.train.gears.size() / 2].sense > 0;
    judge_sense(plan.screw.closes_clockwise[0] == with_first, "hand wheel, centre");
  }
}

void judge_webs(const layout::Plan& plan, std::vector<Finding>& out) {
  const auto& jaw = plan.front_jaw;
  const double web = plan.gaps.web.mm();
  const auto& gears = plan.train.gears;
  double largest = 0;
  for (const auto& gear : gears) largest = std::max(largest, gear.pocket.mm() / 2);
  const double left = jaw.length.mm() / 2 + gears.front().centre_x.mm() - gears.front().pocket.mm() / 2;
  const double right = jaw.length.mm() / 2 - gears.back().centre_x.mm() - gears.back().pocket.mm() / 2;
  out.push_back(judged(rules::end_web, std::min(left, right), web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
  out.push_back(judged(rules::bottom_web, jaw.below.mm() - largest, web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
  out.push_back(judged(rules::bevel_web, jaw.above.mm() - jaw.bevel_height.mm() - largest, web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
}

void judge_use(const layout::Plan& plan, std::vector<Finding>& out) {
  out.push_back(judged(rules::opening, plan.use.opening_max.mm(), plan.use.opening_wanted.mm(), Unit::mm, Better::larger, Verdict::caution, {"lead screw"}));
  judge_wheels(plan, out);
  judge_webs(plan, out);
  if (plan.bench.has_apron)
    out.push_back(judged(rules::stop_in_apron, (plan.bench.apron_hole.mm() - plan.screw.stop_length.mm()) / 2, 2, Unit::mm, Better::larger,
                         Verdict::fail, {"end stop", "apron"}));
}

std::array<ScrewFigures, 2> screw_figures(const layout::Plan& plan, const DriveFigures& drive) {
  const double each = drive.clamp_middle_n / 2;
  ScrewFigures one{each, each * drive.drive.torque_per_force_nmm_per_n,
                   hold_stress(drive, drive.clamp_middle_n, near_top_mm(plan), units::in_mm(plan.screw.thread->root))};
  return {one, one};
}

}  // namespace

double moving_mass_kg(const assembly::Assembly& assembly) {
  double mass = 0;
  for (const assembly::Placed& placed : assembly.placed)
    if (placed.group != assembly::Group::fixed) mass += assembly.mass_kg[placed.part];
  return mass;
}

Analysis analyse(const layout::Plan& plan, const assembly::Assembly& assembly, Depth depth) {
  Analysis result;
  auto& f = result.figures;
  f.moving_mass_kg = moving_mass_kg(assembly);
  f.drive = drive_figures(plan);
  f.screws = screw_figures(plan, f.drive);
  f.droop = droop_figures(plan, f.drive, f.moving_mass_kg);
  f.gears = gear_measures(plan);
  f.jaws = jaw_figures(plan, f.drive);
  f.movement = movement_figures(plan);
  f.strength = strength_rows(plan, f.drive, f.jaws);
  f.left_out = left_out_of_strength();

  auto& out = result.findings;
  judge_train(plan, out);
  judge_drive(plan, f.drive, out);
  judge_use(plan, out);
  for (const StrengthRow& row : f.strength) out.push_back(finding_of(row));
  judge_droop(plan, f, out);
  judge_jaws(plan, f, out);
  judge_mounting(plan, out);
  judge_movement(plan, f, out);
  if (depth.trials > 0) {
    f.spacing = spacing(plan, depth.trials);
    for (Finding& finding : judge_spacing(f.spacing)) out.push_back(std::move(finding));
  }
  reasons::worst_first(out);
  return result;
}

std::span<const reasons::Rule* const> rules_of_analysis() {
  static const auto all = [] {
    std::vector<const reasons::Rule*> list{&rules::backlash, &rules::contact_ratio, &rules::tip_clearance, &rules::undercut, &rules::rescue, &rules::opening,
        &rules::rim_to_cover, &rules::rim_to_rim, &rules::rim_to_bench, &rules::stop_in_apron, &rules::end_web, &rules::bottom_web,
        &rules::bevel_web, &rules::closing_sense};
    list.insert(list.end(), rules::strength.begin(), rules::strength.end());
    list.insert(list.end(), rules::use.begin(), rules::use.end());
    list.insert(list.end(), rules::spacing.begin(), rules::spacing.end());
    return list;
  }();
  return all;
}

}  // namespace visewright::analysis
