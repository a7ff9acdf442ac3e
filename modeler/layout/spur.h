// A gear of the Plan as the formulas take it.
#pragma once

#include "formulas/spur_gear.h"
#include "layout/plan.h"

namespace visewright::layout {

[[nodiscard]] inline formulas::SpurGear spur_gear(const Train& train, const Gear& gear) {
  formulas::SpurGear spur;
  spur.teeth = gear.teeth.value;
  spur.module_mm = train.module.mm();
  spur.pressure_angle_rad = train.pressure_angle.rad();
  spur.shift = gear.shift.value;
  spur.thinning_mm = gear.thinning.mm();
  return spur;
}

}  // namespace visewright::layout
