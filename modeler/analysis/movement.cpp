#include "analysis/movement.h"

#include <algorithm>

#include "analysis/rules_use.h"
#include "formulas/thermal.h"
#include "formulas/wood.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Better;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// A flat-sawn board, the worst; 0.3 % a percent where the catalogue has no figure.
double rate(const standards::MaterialRow& wood) { return wood.movement_tangential.value_or(0.3) / 100; }

double expansion(const standards::MaterialRow& material, double usual) { return material.expansion_per_kelvin.value_or(usual); }

}  // namespace

MovementFigures movement_figures(const Plan& plan) {
  MovementFigures figures;
  const double moisture = plan.accuracy.moisture_swing.value, heat = plan.accuracy.temperature_swing.value;
  const auto& wood = *plan.front_jaw.wood;
  double pocket = 0;
  for (const auto& gear : plan.train.gears) pocket = std::max(pocket, gear.pocket.mm() / 2);
  figures.jaw_top_mm = formulas::wood_movement_mm(plan.front_jaw.above.mm(), rate(wood), moisture);
  figures.pocket_mm = formulas::wood_movement_mm(pocket, rate(wood), moisture);
  const double along = expansion(wood, 4e-6);
  const double growth = formulas::growth_difference_mm(plan.train.spacing.mm(), expansion(*plan.cover.material, 68e-6), along, heat);
  figures.cover_play_needed_mm = formulas::play_needed_mm(growth, formulas::HeldAt::middle, 0.25);
  figures.cover_play_mm = (plan.cover.seat.mm() - plan.bearing.outside.mm()) / 2;
  for (const auto& mesh : plan.train.meshes)
    figures.backlash_lost_mm = std::max(figures.backlash_lost_mm, formulas::backlash_lost_to_growth_mm(
        mesh.operating_angle.rad(), mesh.centre_distance.mm(), expansion(*plan.train.material, 70e-6), along, heat));
  return figures;
}

void judge_movement(const Plan& plan, const Figures& figures, std::vector<reasons::Finding>& out) {
  constexpr double proud_limit_mm = 2.5, gap_left_mm = 0.5;
  const auto& m = figures.movement;
  const reasons::Term moisture{"moisture", plan.accuracy.moisture_swing.value, Unit::percent};
  const reasons::Term heat{"heat", plan.accuracy.temperature_swing.value, Unit::kelvin};
  const auto add = [&](const reasons::Rule& rule, double measured, double limit, Better better, const char* part, std::vector<reasons::Term> with) {
    auto finding = judged(rule, measured, limit, Unit::mm, better, Verdict::caution, {part});
    finding.with = std::move(with);
    out.push_back(std::move(finding));
  };
  add(rules::jaw_top, m.jaw_top_mm, proud_limit_mm, Better::smaller, "front jaw", {{"above the screw line", plan.front_jaw.above.mm(), Unit::mm}, moisture});
  double gap = plan.train.gears.front().pocket.mm();
  for (const auto& gear : plan.train.gears) gap = std::min(gap, (gear.pocket.mm() - gear.tip.mm()) / 2);
  add(rules::pocket_left, gap - m.pocket_mm, gap_left_mm, Better::larger, "gear layer", {{"gap", gap, Unit::mm}, {"shrinks by", m.pocket_mm, Unit::mm}, moisture});
  add(rules::cover_play, m.cover_play_mm, m.cover_play_needed_mm, Better::larger, "cover", {{"play of a seat", m.cover_play_mm, Unit::mm}, heat});
  double play = plan.train.meshes.empty() ? 0 : plan.train.meshes.front().backlash.mm();
  for (const auto& mesh : plan.train.meshes) play = std::min(play, mesh.backlash.mm());
  add(rules::gear_growth, play - m.backlash_lost_mm, 0.1 * plan.train.backlash.mm(), Better::larger, "gears",
      {{"backlash", play, Unit::mm}, {"lost to growth", m.backlash_lost_mm, Unit::mm}, heat});
}

}  // namespace visewright::analysis
