// Gears as the published examples give them.
#pragma once

#include <cmath>
#include <numbers>

#include "formulas/spur_gear.h"

namespace visewright::published {

inline constexpr double degree = std::numbers::pi / 180;

inline formulas::SpurGear gear(int teeth, double module_mm, double shift = 0, double angle_deg = 20) {
  formulas::SpurGear made;
  made.teeth = teeth;
  made.module_mm = module_mm;
  made.pressure_angle_rad = angle_deg * degree;
  made.shift = shift;
  return made;
}

/// Cut by a rack that is straight down to one module and has no clearance, as the textbook limits assume.
inline formulas::SpurGear sharp(int teeth, double angle_deg) {
  formulas::SpurGear made = gear(teeth, 1, 0, angle_deg);
  made.dedendum_factor = 1;
  made.tip_radius_factor = 0;
  return made;
}

inline double base_pitch_mm(const formulas::SpurGear& one) {
  return std::numbers::pi * base_diameter_mm(one) / one.teeth;
}

}  // namespace visewright::published
