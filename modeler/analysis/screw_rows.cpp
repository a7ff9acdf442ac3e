// The screws and the threads they run in.
#include <cmath>
#include <numbers>

#include "analysis/drive.h"
#include "analysis/rules_strength.h"
#include "analysis/steel.h"
#include "analysis/strength.h"
#include "formulas/gear_strength.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Unit;

constexpr std::string_view one_screw = "work over one screw";

void add_thread(const Plan& plan, const DriveFigures& d, const reasons::Rule& rule, double height_mm, const char* part, Rows& rows) {
  const auto& thread = *plan.screw.thread;
  // A chamfer at each end takes half a pitch of thread away.
  const formulas::Engagement nut{units::in_mm(thread.major), units::in_mm(thread.mean), units::in_mm(thread.root),
                                 formulas::engaged_length_mm(height_mm, units::in_mm(thread.pitch) / 2)};
  const double force = d.greatest_clamp_n(), yield = steel::shear_of_yield * steel::yield_mpa;
  rows.push_back(row_of({rule, one_screw, formulas::nut_thread_shear_mpa(nut, force), yield / steel::safety, yield, force, {part},
                         {{"force", force, Unit::newton}, {"major diameter", nut.major_mm, Unit::mm}, {"engaged length", nut.length_mm, Unit::mm}}}));
}

void add_hold(const Plan& plan, const DriveFigures& d, const reasons::Rule& rule, std::string_view when, double height_mm, Rows& rows) {
  const double yield = plan.assume.screw_yield.value;
  const auto stress = hold_stress(d, d.clamp_middle_n, height_mm, units::in_mm(plan.screw.thread->root));
  rows.push_back(row_of({rule, when, stress.von_mises_mpa, yield / steel::safety, yield, d.clamp_middle_n, {"lead screw"},
                         {{"height", height_mm, Unit::mm}, {"core", units::in_mm(plan.screw.thread->root), Unit::mm},
                          {"bending", stress.bending_mpa, Unit::mpa}, {"pull", stress.axial_mpa, Unit::mpa}, {"twist", stress.torsion_mpa, Unit::mpa}}}));
}

}  // namespace

void add_screw_rows(const Plan& plan, const DriveFigures& d, Rows& rows) {
  add_hold(plan, d, rules::screw_mid, "work in the middle, at mid-throat", mid_throat_mm(plan), rows);
  add_hold(plan, d, rules::screw_top, "work in the middle, near the top", near_top_mm(plan), rows);
  if (!plan.front_jaw.dog_x.empty()) add_hold(plan, d, rules::screw_dogs, "work between dogs on the bench", at_dogs_mm(plan), rows);
  add_thread(plan, d, rules::rear_nut, plan.rear_nut.length.mm(), "nut block", rows);
  add_thread(plan, d, rules::collar_nut, plan.collar.nut_height.mm(), "thrust collar", rows);
  const double yield = plan.assume.screw_yield.value, force = d.greatest_clamp_n();
  const double area = formulas::core_area_at_pin_mm2(units::in_mm(plan.screw.thread->root), plan.collar.pin.mm());
  rows.push_back(row_of({rules::screw_at_pin, one_screw, force / area, yield / steel::safety, yield, force, {"lead screw"},
                         {{"force", force, Unit::newton}, {"pin", plan.collar.pin.mm(), Unit::mm}}}));
}

}  // namespace visewright::analysis
