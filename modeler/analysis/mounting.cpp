// The screws that hold the rear jaw in its notch.
#include <algorithm>
#include <cmath>

#include "analysis/drive.h"
#include "analysis/mounting.h"
#include "analysis/rules_strength.h"
#include "analysis/rules_use.h"
#include "analysis/strength.h"
#include "formulas/beams.h"
#include "formulas/wood.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Better;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// Of their length, what wood screws have threaded (ASME B18.6.1 gives about two thirds; from memory). Oven-dry wood is
/// a little lighter than the catalogue's air-dry density.
constexpr double threaded = 0.6, oven_dry = 0.94;

/// Pull at failure of one screw, side grain of the notch face.
double hold_of_one_n(const Plan& plan) {
  const auto& screw = *plan.rear_jaw.screw;
  const double length = units::in_mm(screw.length);
  const double inside = length - (plan.rear_jaw.thickness.mm() - plan.rear_jaw.counterbore_depth.mm());
  return formulas::wood_screw_withdrawal_n({oven_dry * plan.bench.wood->density_g_cm3, units::in_mm(screw.shank),
                                            std::max(0.0, std::min(inside, threaded * length)), false});
}

/// Pull on the hardest loaded screw for a moment about an edge of the notch, each screw pulling as its distance.
double hardest_pull_n(const Plan& plan, double moment_nmm, double edge_z_mm) {
  double squares = 0, farthest = 0;
  for (const auto& hole : plan.rear_mounting.holes) {
    const double distance = std::abs(hole.at.y - edge_z_mm);
    squares += distance * distance;
    farthest = std::max(farthest, distance);
  }
  return squares > 0 ? moment_nmm * farthest / squares : 0;
}

double upper_edge(const Plan& plan) { return plan.bench.axis_depth.mm(); }
double lower_edge(const Plan& plan) { return plan.bench.axis_depth.mm() - plan.bench.top_thickness.mm(); }

}  // namespace

void add_mounting_rows(const Plan& plan, const DriveFigures& drive, Rows& rows) {
  const double strength = hold_of_one_n(plan), allowed = plan.assume.withdrawal_share.value * strength, force = drive.clamp_middle_n;
  const auto add = [&](const reasons::Rule& rule, std::string_view when, double lever_mm) {
    const double pull = hardest_pull_n(plan, force * lever_mm, upper_edge(plan));
    rows.push_back(row_of({rule, when, pull, allowed, strength, force, {"mounting screw"},
                           {{"height", lever_mm, Unit::mm}, {"moment", force * lever_mm / 1000, Unit::newton_metre},
                            {"hold of one screw", strength, Unit::newton}},
                           Unit::newton}));
  };
  add(rules::mounting_jaws, "work in the jaws, near the top", near_top_mm(plan));
  if (!plan.front_jaw.dog_x.empty()) add(rules::mounting_dogs, "work between dogs on the bench", plan.bench.axis_depth.mm());
}

void judge_mounting(const Plan& plan, std::vector<reasons::Finding>& out) {
  const double strength = hold_of_one_n(plan), allowed = plan.assume.withdrawal_share.value * strength;
  const double lever = plan.use.opening_max.mm() + plan.front_jaw.joint_out.mm();
  const double lean = plan.assume.lean_force.value;
  const double pull = hardest_pull_n(plan, lean * lever, lower_edge(plan));
  auto finding = judged(rules::mounting_leaned_on, pull, allowed, Unit::newton, Better::smaller, pull > strength ? Verdict::fail : Verdict::caution,
                        {"mounting screw"}, reasons::Where{plan.use.opening_max.mm(), false, {}});
  finding.with = {{"lean", lean, Unit::newton}, {"lever", lever, Unit::mm}, {"hold of one screw", strength, Unit::newton}};
  out.push_back(std::move(finding));
  if (!plan.bench.has_apron) return;
  const auto& bench = plan.bench;
  const double height = bench.apron_height.mm(), middle = lower_edge(plan) - height / 2;
  const double hole = bench.apron_hole.mm(), off = -middle;
  if (std::abs(off) + hole / 2 >= height / 2) return;  // a hole through the edge is a matter of the drawing, not of a section
  const formulas::HoledRectangle apron{bench.apron_thickness.mm(), height, hole, off};
  const formulas::HoledRectangle doubled{apron.breadth_mm + (bench.has_doubler ? bench.doubler.mm() : 0), height, hole, off};
  const double left = formulas::section_with_hole_across(doubled).modulus_mm3 /
                      formulas::rectangle_section(apron.breadth_mm, height).modulus_mm3;
  auto section = judged(rules::apron_section, 100 * left, 80, Unit::percent, Better::larger, Verdict::caution, {"apron"});
  section.with = {{"height", height, Unit::mm}, {"hole", hole, Unit::mm}, {"off its middle", std::abs(off), Unit::mm},
                  {"without a doubler", 100 * formulas::modulus_left(formulas::section_with_hole_across(apron),
                                                                     formulas::rectangle_section(apron.breadth_mm, height)), Unit::percent}};
  out.push_back(std::move(section));
}

}  // namespace visewright::analysis
