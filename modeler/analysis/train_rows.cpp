// Teeth, hexagon, pins and axles: everything between the hand and the screws.
#include <algorithm>

#include "analysis/gear_name.h"
#include "analysis/rules_strength.h"
#include "analysis/steel.h"
#include "analysis/strength.h"
#include "formulas/gear_strength.h"
#include "units/quantity.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using reasons::Unit;

constexpr std::string_view whole_torque = "the whole hand torque through one mesh";

/// The gear with the fewest teeth among drives or idlers; its index, or the row's length when there is none.
std::size_t smallest(const layout::Train& train, bool drive) {
  std::size_t at = train.gears.size();
  for (std::size_t i = 0; i < train.gears.size(); ++i)
    if (train.gears[i].drive == drive && (at == train.gears.size() || train.gears[i].teeth.value < train.gears[at].teeth.value)) at = i;
  return at;
}

void add_tooth(const Plan& plan, const DriveFigures& d, bool drive, Rows& rows) {
  const auto& train = plan.train;
  const std::size_t i = smallest(train, drive);
  if (i == train.gears.size()) return;
  const double form = formulas::lewis_form_factor(train.gears[i].teeth.value);
  const formulas::ToothLoad load{d.tangential_n, train.face_width.mm(), train.module.mm(), form};
  const double factor = drive ? 1 : formulas::reversed_bending_factor;
  const double strength = factor * plan.assume.gear_strength.value;
  rows.push_back(row_of({drive ? rules::tooth_of_drive : rules::tooth_of_idler, whole_torque, formulas::tooth_bending_mpa(load),
                         strength * plan.assume.tooth_share.value, strength, d.clamp_middle_n, {gear_name(i)},
                         {{"tangential force", d.tangential_n, Unit::newton}, {"face width", load.face_mm, Unit::mm},
                          {"module", load.module_mm, Unit::mm}, {"form factor", form, Unit::one}}}));
}

/// The friction of the flange is all that the bead carries while clamping; the thrust goes from nut to washer.
void add_bead(const Plan& plan, const DriveFigures& d, Rows& rows) {
  constexpr double throat_of_leg = 0.7071, welded = 0.5;  // three of six flats
  const formulas::RingBead bead{plan.collar.across_flats.mm(), throat_of_leg * plan.collar.bevel.mm(), welded};
  const double torque = d.collar_nmm_per_n * d.greatest_clamp_n();
  rows.push_back(row_of({rules::bead, "work over one screw", formulas::bead_shear_mpa(bead, torque, 0), plan.assume.weld_strength.value,
                         steel::safety * plan.assume.weld_strength.value, d.greatest_clamp_n(), {"thrust collar"},
                         {{"friction torque", torque / 1000, Unit::newton_metre}, {"throat", bead.throat_mm, Unit::mm},
                          {"diameter", bead.diameter_mm, Unit::mm}, {"share welded", bead.share, Unit::one}}}));
}

void add_axle(const Plan& plan, const DriveFigures& d, Rows& rows) {
  if (smallest(plan.train, false) == plan.train.gears.size()) return;
  const double load = formulas::idler_axle_load_n(d.tangential_n);
  const double lever = plan.train.rear_out.mm() + plan.train.face_width.mm() / 2 - plan.front_jaw.joint_out.mm();
  const double yield = steel::yield_mpa;
  rows.push_back(row_of({rules::idler_axle, whole_torque, formulas::axle_bending_mpa(load, lever, plan.axle.diameter.mm()), yield / steel::safety, yield,
                         d.clamp_middle_n, {"axle"},
                         {{"load", load, Unit::newton}, {"lever", lever, Unit::mm}, {"diameter", plan.axle.diameter.mm(), Unit::mm}}}));
}

}  // namespace

void add_train_rows(const Plan& plan, const DriveFigures& d, Rows& rows) {
  add_tooth(plan, d, true, rows);
  add_tooth(plan, d, false, rows);
  const double torque = d.hand_torque_nmm, torque_nm = torque / 1000, gear = plan.assume.gear_strength.value;
  const auto& collar = plan.collar;
  rows.push_back(row_of({rules::hexagon_pocket, whole_torque,
                         formulas::hexagon_pressure_mpa(torque, collar.nut_height.mm(), collar.across_flats.mm()),
                         gear * plan.assume.tooth_share.value, gear, d.clamp_middle_n, {"drive gear", "thrust collar"},
                         {{"torque", torque_nm, Unit::newton_metre}, {"depth", collar.nut_height.mm(), Unit::mm},
                          {"across flats", collar.across_flats.mm(), Unit::mm}}}));
  const double pin = steel::shear_of_yield * plan.assume.pin_strength.value;
  rows.push_back(row_of({rules::collar_pin, whole_torque,
                         formulas::pin_double_shear_mpa({plan.screw.diameter.mm(), collar.pin.mm()}, torque), pin / steel::safety, pin, d.clamp_middle_n,
                         {"collar pin"},
                         {{"torque", torque_nm, Unit::newton_metre}, {"screw", plan.screw.diameter.mm(), Unit::mm}, {"pin", collar.pin.mm(), Unit::mm}}}));
  const double across = formulas::dog_point_force_n(torque, plan.screw.journal.mm());
  rows.push_back(row_of({rules::lock_screw, "the whole hand torque at the wheel", formulas::dog_point_shear_mpa(across, plan.screw.dimple.mm()),
                         pin / steel::safety, pin, d.clamp_middle_n, {"lock screw", "hand wheel"},
                         {{"torque", torque_nm, Unit::newton_metre}, {"journal", plan.screw.journal.mm(), Unit::mm},
                          {"point", plan.screw.dimple.mm(), Unit::mm}}}));
  add_bead(plan, d, rows);
  add_axle(plan, d, rows);
}

}  // namespace visewright::analysis
