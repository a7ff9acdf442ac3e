// Teeth as plain polar geometry, to check formulas against something that knows nothing of them but the tooth
// thickness.
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "formulas/spur_gear.h"

namespace visewright::formulas {

struct Spot {
  double x, y;
};

inline double half_tooth_rad(const SpurGear& gear, double radius_mm) {
  return thickness_at_mm(gear, 2 * radius_mm) / (2 * radius_mm);
}

/// A gear on an axle, one of its tooth centres at `phase_rad`.
struct Standing {
  SpurGear gear;
  Spot axle;
  double phase_rad;

  [[nodiscard]] bool holds(Spot spot) const {
    const double radius = std::hypot(spot.x - axle.x, spot.y - axle.y);
    if (radius <= root_diameter_mm(gear) / 2) return true;
    if (radius >= tip_diameter_mm(gear) / 2) return false;
    const double pitch = 2 * std::numbers::pi / gear.teeth;
    const double off = std::remainder(std::atan2(spot.y - axle.y, spot.x - axle.x) - phase_rad, pitch);
    return std::abs(off) < half_tooth_rad(gear, radius);
  }

  /// Whether a sampled spot of a flank of this gear, near the direction of `other`, lies inside the other.
  [[nodiscard]] bool pokes_into(const Standing& other) const {
    constexpr int samples = 400;
    const double low = root_diameter_mm(gear) / 2;
    const double high = tip_diameter_mm(gear) / 2;
    const double pitch = 2 * std::numbers::pi / gear.teeth;
    const double towards = std::atan2(other.axle.y - axle.y, other.axle.x - axle.x);
    const double nearest = towards + std::remainder(phase_rad - towards, pitch);
    for (int tooth = -3; tooth <= 3; ++tooth) {
      for (int i = 1; i < samples; ++i) {
        const double radius = low + (high - low) * i / samples;
        for (const int side : {-1, 1}) {
          const double angle = nearest + tooth * pitch + side * half_tooth_rad(gear, radius);
          if (other.holds({axle.x + radius * std::cos(angle), axle.y + radius * std::sin(angle)})) return true;
        }
      }
    }
    return false;
  }
};

inline bool overlap(const Standing& a, const Standing& b) { return a.pokes_into(b) || b.pokes_into(a); }

/// How far `moved` can be turned from where it stands until it meets `fixed`; negative when they overlap as they stand.
inline double free_turn_rad(const Standing& fixed, Standing moved, int sense) {
  if (overlap(fixed, moved)) return -1;
  const double start = moved.phase_rad;
  double free = 0;
  double met = std::numbers::pi / moved.gear.teeth;
  for (int i = 0; i < 30; ++i) {
    const double middle = (free + met) / 2;
    moved.phase_rad = start + sense * middle;
    (overlap(fixed, moved) ? met : free) = middle;
  }
  return free;
}

}  // namespace visewright::formulas
