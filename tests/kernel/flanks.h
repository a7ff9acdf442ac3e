// Gear outlines for tests of the kernel, built from nothing but the geometry's curves.
#pragma once

#include <cmath>
#include <vector>

#include "geometry/loop.h"
#include "units/quantity.h"

namespace visewright::kernel_tests {

/// A sector between two involute flanks of one base circle, its tip arc and a straight foot: one tooth without root.
struct Tooth {
  double base_radius_mm, tip_radius_mm, foot_roll_rad, half_angle_rad;

  [[nodiscard]] double tip_roll_rad() const {
    const double ratio = tip_radius_mm / base_radius_mm;
    return std::sqrt(ratio * ratio - 1);
  }
  [[nodiscard]] geometry::Involute right() const {
    return {{0, 0}, base_radius_mm, -half_angle_rad, foot_roll_rad, tip_roll_rad(), true};
  }
  [[nodiscard]] geometry::Involute left() const {
    return {{0, 0}, base_radius_mm, half_angle_rad, tip_roll_rad(), foot_roll_rad, false};
  }
  [[nodiscard]] geometry::Loop outline() const {
    const geometry::Edge up = right(), down = left();
    return geometry::trusted({up, geometry::Arc{geometry::finish(up), geometry::start(down), {0, 0}, true}, down,
                              geometry::Line{geometry::finish(down), geometry::start(up)}});
  }
};

/// Module 5, 24 teeth, 20°: base radius 60·cos 20°, tip radius 65; the thickness at the base is half a pitch and the
/// play of the involute, near enough for a tooth that meets no other.
[[nodiscard]] inline Tooth tooth() {
  const double alpha = 20 * units::pi / 180;
  return {60 * std::cos(alpha), 65, 0.05, units::pi / 48 + std::tan(alpha) - alpha};
}

}  // namespace visewright::kernel_tests
