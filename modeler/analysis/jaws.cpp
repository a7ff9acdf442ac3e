#include "analysis/jaws.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "analysis/rules_strength.h"
#include "analysis/rules_use.h"
#include "analysis/strength.h"
#include "formulas/beams.h"
#include "formulas/gear_strength.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Better;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// Across the grain wood is about fifteen times softer than along it; panels are alike through their thickness
/// (Wood Handbook, ratios of moduli; from memory).
constexpr double softer_across = 15, plastic_poisson = 0.38, end_grip_mm = 15;

double largest_pocket(const Plan& plan) {
  double largest = 0;
  for (const auto& gear : plan.train.gears) largest = std::max(largest, gear.pocket.mm());
  return largest;
}

/// The jaw seen along its length: what of its height is there, layer by layer outwards from the clamping face. Pockets,
/// the bevel, and at a screw recess and bush hole, are taken out.
formulas::Section front_section(const Plan& plan, bool at_screw) {
  const auto& jaw = plan.front_jaw;
  const double height = jaw.above.mm() + jaw.below.mm(), modulus = plan.assume.wood_modulus.value;
  const double backing = jaw.backing.mm(), whole = backing + jaw.gear_layer.mm(), recess = at_screw ? jaw.thrust_recess_depth.mm() : 0;
  const double beside_pocket = std::max(1.0, height - largest_pocket(plan) - jaw.bevel_height.mm());
  std::vector<formulas::Strip> strips;
  strips.push_back({height - (at_screw ? jaw.bush_outside.mm() : 0), 0, backing - recess, modulus});
  if (recess > 0) strips.push_back({height - jaw.thrust_recess.mm(), backing - recess, backing, modulus});
  strips.push_back({beside_pocket, backing, whole, modulus});
  return formulas::composite_section(strips, modulus);
}

/// How far the outermost place that work can be gripped at lies beyond the screw.
double overhang(const Plan& plan) { return plan.front_jaw.length.mm() / 2 - plan.train.spacing.mm() / 2 - end_grip_mm; }

double pressed_ring_outer(const Plan& plan) {
  return formulas::effective_washer_diameter_mm(plan.collar.thrust_outside.mm(), plan.collar.flange_outside.mm(), plan.collar.thrust_thickness.mm());
}

/// Of one screw with the wood that it presses in both jaws.
double stiffness(const Plan& plan) {
  const double root = units::in_mm(plan.screw.thread->root), quarter_pi = std::numbers::pi / 4;
  const double length = plan.front_jaw.joint_out.mm() - plan.rear_nut.rear_out.mm();
  const double screw = formulas::bar_stiffness_n_per_mm(plan.assume.screw_modulus.value, quarter_pi * root * root, length);
  const double outer = pressed_ring_outer(plan), hole = plan.front_jaw.bush_outside.mm();
  const double front = formulas::bar_stiffness_n_per_mm(plan.assume.wood_modulus.value / softer_across,
                                                        quarter_pi * (outer * outer - hole * hole), plan.front_jaw.backing.mm());
  const double bar = plan.rear_nut.bar_length.mm() * plan.rear_nut.bar_height.mm() - quarter_pi * plan.rear_jaw.bush_outside.mm() * plan.rear_jaw.bush_outside.mm();
  const double rear = formulas::bar_stiffness_n_per_mm(plan.assume.panel_modulus.value / softer_across, bar, plan.rear_jaw.thickness.mm());
  return formulas::in_series_n_per_mm(formulas::in_series_n_per_mm(screw, front), rear);
}

formulas::ClampedDisc cover_over_pocket(const Plan& plan) {
  return {largest_pocket(plan) / 2, plan.cover.thickness.mm(), plan.cover.material->modulus_mpa.value_or(2000), plastic_poisson,
          plan.bearing.outside.mm() / 2};
}

}  // namespace

JawFigures jaw_figures(const Plan& plan, const DriveFigures& drive) {
  JawFigures figures;
  const double span = plan.train.spacing.mm(), force = drive.clamp_middle_n;
  const auto front = front_section(plan, false);
  const double modulus = plan.assume.wood_modulus.value;
  figures.front_bow_mm = formulas::supported_deflection_mm({span, modulus, front.inertia_mm4}, force, span / 2, span / 2) +
                         formulas::supported_shear_deflection_mm(force, span, formulas::wood_shear_modulus_mpa(modulus), front.area_mm2);
  const double height = plan.rear_jaw.above.mm() + plan.rear_jaw.below.mm();
  const auto rear = formulas::rectangle_section(height, plan.rear_jaw.thickness.mm());
  figures.rear_bow_mm = formulas::supported_deflection_mm({span, plan.assume.panel_modulus.value, rear.inertia_mm4}, force, span / 2, span / 2);
  figures.skew_inside_mm = std::abs(formulas::inner_racking_mm(formulas::split_force(force, span / 4, span), stiffness(plan)));
  const auto outside = formulas::split_force(drive.greatest_clamp_n(), span / 2 + overhang(plan), span);
  figures.cover_load_n = formulas::held_back_n(outside);
  const auto disc = cover_over_pocket(plan);
  figures.skew_outside_mm = formulas::outer_racking_mm(plan.gaps.end_float.mm(),
                                                       formulas::axial_nut_play_mm(plan.assume.nut_play.mm(), drive.screw.half_flank_rad),
                                                       figures.cover_load_n, 1 / formulas::clamped_disc_sag_mm(disc, 1));
  return figures;
}

void add_jaw_rows(const Plan& plan, const DriveFigures& drive, const JawFigures& jaws, Rows& rows) {
  const double span = plan.train.spacing.mm(), middle = drive.clamp_middle_n, most = drive.greatest_clamp_n();
  const auto& assume = plan.assume;
  const double outer = pressed_ring_outer(plan), hole = plan.front_jaw.bush_outside.mm();
  rows.push_back(row_of({rules::washer_on_wood, "work over one screw", formulas::ring_pressure_mpa(most, outer, hole), assume.wood_crushing.value,
                         1.5 * assume.wood_crushing.value, most, {"thrust washer", "front jaw"},
                         {{"force", most, Unit::newton}, {"ring outside", outer, Unit::mm}, {"bush", hole, Unit::mm}}}));
  const double wood = assume.wood_strength.value, share = assume.wood_share.value;
  const double moment = formulas::supported_moment_nmm(span, middle, span / 2);
  const auto between = front_section(plan, false), at_screw = front_section(plan, true);
  rows.push_back(row_of({rules::front_jaw_middle, "narrow work in the middle", formulas::bending_stress_mpa(moment, between.modulus_mm3), share * wood,
                         wood, middle, {"front jaw"},
                         {{"spacing", span, Unit::mm}, {"moment", moment / 1000, Unit::newton_metre}}}));
  const double aside = overhang(plan);
  rows.push_back(row_of({rules::front_jaw_end, "narrow work at the jaw's end", formulas::bending_stress_mpa(most * aside, at_screw.modulus_mm3),
                         share * wood, wood, most, {"front jaw"},
                         {{"overhang", aside, Unit::mm}, {"moment", most * aside / 1000, Unit::newton_metre}}}));
  const double height = plan.rear_jaw.above.mm() + plan.rear_jaw.below.mm();
  const double panel = plan.rear_jaw.core->bending_strength_mpa.value_or(20);
  rows.push_back(row_of({rules::rear_jaw_middle, "narrow work in the middle",
                         formulas::bending_stress_mpa(moment, formulas::rectangle_section(height, plan.rear_jaw.thickness.mm()).modulus_mm3),
                         share * panel, panel, middle, {"rear jaw"},
                         {{"thickness", plan.rear_jaw.thickness.mm(), Unit::mm}, {"moment", moment / 1000, Unit::newton_metre}}}));
  if (jaws.cover_load_n <= 0) return;
  const double cover = assume.cover_strength.value;
  rows.push_back(row_of({rules::cover_outside, "narrow work at the jaw's end", formulas::clamped_disc_stress_mpa(cover_over_pocket(plan), jaws.cover_load_n),
                         assume.cover_share.value * cover, cover, most, {"cover"},
                         {{"cover's load", jaws.cover_load_n, Unit::newton}, {"thickness", plan.cover.thickness.mm(), Unit::mm}}}));
}

void judge_jaws(const Plan& plan, const Figures& figures, std::vector<reasons::Finding>& out) {
  constexpr double bow_limit_mm = 0.5, skew_limit_mm = 0.5, skew_beyond_mm = 2;
  const auto& jaws = figures.jaws;
  const auto add = [&](const reasons::Rule& rule, double measured, double limit, const char* part) {
    auto finding = judged(rule, measured, limit, Unit::mm, Better::smaller, Verdict::caution, {part});
    finding.with = {{"clamp", figures.drive.clamp_middle_n, Unit::newton}, {"spacing", plan.train.spacing.mm(), Unit::mm}};
    out.push_back(std::move(finding));
  };
  add(rules::front_bow, jaws.front_bow_mm, bow_limit_mm, "front jaw");
  add(rules::rear_bow, jaws.rear_bow_mm, bow_limit_mm, "rear jaw");
  add(rules::skew_inside, jaws.skew_inside_mm, skew_limit_mm, "front jaw");
  add(rules::skew_outside, jaws.skew_outside_mm, skew_beyond_mm, "front jaw");
  add(rules::skew_backlash, figures.drive.skew_from_backlash_mm, 0.1, "gears");
  const double each = figures.drive.stuck_push_n / 2;
  const double allowed = plan.assume.cover_share.value * plan.assume.cover_strength.value;
  auto stuck = judged(rules::forced_open, formulas::clamped_disc_stress_mpa(cover_over_pocket(plan), each), allowed, Unit::mpa, Better::smaller,
                      Verdict::caution, {"cover"});
  stuck.with = {{"push on each bearing", each, Unit::newton}, {"thickness", plan.cover.thickness.mm(), Unit::mm},
                {"torque", figures.drive.hand_torque_nmm / 1000, Unit::newton_metre}};
  out.push_back(std::move(stuck));
}

}  // namespace visewright::analysis
