#include "analysis/droop.h"

#include "analysis/drive.h"
#include "analysis/rules_use.h"
#include "analysis/steel.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Better;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr double gravity = 9.80665, thin_work_mm = 25;

/// From the rear bush to the collar, at an opening.
formulas::FreeScrew free_screw(const Plan& plan, double opening_mm) {
  return {opening_mm + plan.front_jaw.joint_out.mm() + plan.lining.thickness.mm(), units::in_mm(plan.screw.thread->root),
          plan.assume.screw_modulus.value};
}

formulas::Guides guides(const Plan& plan) {
  const double bush_middle = (plan.rear_jaw.rear_out.mm() + plan.rear_jaw.front_out.mm()) / 2;
  const double nut_middle = plan.rear_nut.rear_out.mm() + plan.rear_nut.length.mm() / 2;
  return {plan.rear_jaw.bush_bore.mm() - plan.screw.diameter.mm(), plan.assume.nut_play.mm(), bush_middle - nut_middle,
          plan.rear_nut.length.mm(), true};
}

}  // namespace

DroopFigures droop_figures(const Plan& plan, const DriveFigures& drive, double moving_mass_kg) {
  DroopFigures figures;
  const auto open = free_screw(plan, plan.use.opening_max.mm());
  const double weight = moving_mass_kg * gravity, lean = plan.assume.lean_force.value;
  const double front_play = plan.front_jaw.bush_bore.mm() - plan.screw.diameter.mm();
  figures.own = formulas::droop(open, guides(plan), {weight, 2, front_play});
  figures.leaned_on = formulas::droop(open, guides(plan), {weight + lean, 2, front_play});
  figures.lean_mpa = formulas::screw_stress({0, 0, (weight + lean) / 2 * open.length_mm}, open.root_mm).bending_mpa;
  const double height = mid_throat_mm(plan);
  const double moment = formulas::tipping_moment_nmm(drive.clamp_middle_n, height);
  figures.top_edge_mm = formulas::top_edge_opening_mm(formulas::bending_tilt_rad(free_screw(plan, thin_work_mm), moment),
                                                      plan.front_jaw.above.mm());
  figures.sway_mm = formulas::sway_mm(open, guides(plan));
  return figures;
}

void judge_droop(const Plan& plan, const Figures& figures, std::vector<reasons::Finding>& out) {
  constexpr double share = 0.01, too_much = 1.5;
  const auto& droop = figures.droop;
  const double limit = share * plan.use.opening_max.mm();
  const Verdict bad = droop.own.sum_mm > too_much * limit ? Verdict::fail : Verdict::caution;
  auto own = judged(rules::droop, droop.own.sum_mm, limit, Unit::mm, Better::smaller, bad, {"front jaw"},
                    reasons::Where{plan.use.opening_max.mm(), false, {}});
  own.with = {{"play of the bush", droop.own.bush_mm, Unit::mm}, {"lean from play", droop.own.tilt_mm, Unit::mm},
              {"bending of the screws", droop.own.bending_mm, Unit::mm}, {"play of the front bush", droop.own.front_mm, Unit::mm},
              {"mass", figures.moving_mass_kg, Unit::kg}};
  out.push_back(std::move(own));
  const double yield = plan.assume.screw_yield.value;
  auto lean = judged(rules::leaned_on, droop.lean_mpa, yield / steel::safety, Unit::mpa, Better::smaller,
                     droop.lean_mpa > yield ? Verdict::fail : Verdict::caution, {"lead screw"},
                     reasons::Where{plan.use.opening_max.mm(), false, {}});
  lean.with = {{"lean", plan.assume.lean_force.value, Unit::newton}, {"droop then", droop.leaned_on.sum_mm, Unit::mm},
               {"yield", yield, Unit::mpa}};
  out.push_back(std::move(lean));
  const double toe_in = plan.front_jaw.toe_in.value / 100 * plan.front_jaw.above.mm();
  auto edge = judged(rules::top_edge, droop.top_edge_mm, toe_in + 0.5, Unit::mm, Better::smaller, Verdict::caution, {"front jaw"});
  edge.with = {{"clamp", figures.drive.clamp_middle_n, Unit::newton}, {"toe-in", toe_in, Unit::mm}};
  out.push_back(std::move(edge));
}

}  // namespace visewright::analysis
