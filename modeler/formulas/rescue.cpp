#include "formulas/rescue.h"

#include <algorithm>
#include <cmath>

#include "formulas/involute.h"
#include "formulas/spacing_error.h"

namespace visewright::formulas {
namespace {

constexpr double rounding = 1e-9;  // of a shift or of mm: below it nothing is trespassed

Mesh mesh_at(const std::vector<SpurGear>& gears, const RescueInput& in, std::size_t k) {
  return {gears[k], gears[k + 1], in.distances_mm[k]};
}

/// What x1 + x2 has to be, less what it is as designed.
double change_of_sum(const RescueInput& in, std::size_t k) {
  // Backlash falls by 2 m tan a for each unit of the sum, and nothing else in it moves while the distance stays.
  const Mesh mesh = mesh_at(in.gears, in, k);
  const double per_shift = 2 * mesh.first.module_mm * std::tan(mesh.first.pressure_angle_rad);
  return (backlash_mm(mesh) - in.backlash_mm[k]) / per_shift;
}

/// The largest shift that leaves this arc at the tip: it gets thinner as the shift grows. Found by halving.
double shift_of_tip_thickness(SpurGear gear, double arc_mm) {
  double thick = -2, thin = 4;
  for (int i = 0; i < 60; ++i) {
    gear.shift = (thick + thin) / 2;
    (tip_thickness_mm(gear) >= arc_mm ? thick : thin) = gear.shift;
  }
  return thick;
}

/// Shifts that a gear may have, limit by limit.
struct Bounds {
  double undercut = 0, rim = 0;  // not below
  double tip = 0, pocket = 0;    // not above
  [[nodiscard]] double low() const { return std::max(undercut, rim); }
  [[nodiscard]] double high() const { return std::min(tip, pocket); }
};

Bounds bounds_of(const SpurGear& gear, const GearRoom& room, const RescueLimits& limits) {
  const double m = gear.module_mm, designed = gear.shift;
  SpurGear plain = gear;
  plain.shift = 0;
  const double wall = root_diameter_mm(plain) / 2 - room.flange_recess_radius_mm - limits.rim_factor * m;
  const double gap = room.pocket_radius_mm - limits.gear_to_wood_mm - tip_diameter_mm(plain) / 2;
  return {std::min(least_shift_without_undercut(gear), designed),
          room.flange_recess_radius_mm > 0 ? std::min(-wall / m, designed) : -HUGE_VAL,
          std::max(shift_of_tip_thickness(gear, limits.tip_thickness_factor * m), designed),
          std::max(gap / m, designed)};
}

/// All shifts as a function of the one free number c: gear i changes by sense_i (of_i + c), the sense alternating.
struct Family {
  std::vector<double> of;
  static double sense(std::size_t i) { return i % 2 == 0 ? 1 : -1; }
  [[nodiscard]] double change(std::size_t i, double c) const { return sense(i) * (of[i] + c); }
};

Family family_of(const RescueInput& in) {
  Family family{{0.0}};
  double change = 0;
  for (std::size_t k = 0; k < in.distances_mm.size(); ++k) {
    change = change_of_sum(in, k) - change;
    family.of.push_back(Family::sense(k + 1) * change);
  }
  return family;
}

/// The free number with the least largest change, moved as little as the bounds ask.
double chosen(const Family& family, const RescueInput& in, const std::vector<Bounds>& bounds) {
  const auto [least, most] = std::minmax_element(family.of.begin(), family.of.end());
  double low = -HUGE_VAL, high = HUGE_VAL;
  for (std::size_t i = 0; i < bounds.size(); ++i) {
    const double down = bounds[i].low() - in.gears[i].shift, up = bounds[i].high() - in.gears[i].shift;
    const bool rising = Family::sense(i) > 0;
    low = std::max(low, (rising ? down : -up) - family.of[i]);
    high = std::min(high, (rising ? up : -down) - family.of[i]);
  }
  if (low > high) return (low + high) / 2;
  return std::clamp(-(*least + *most) / 2, low, high);
}

void note(std::vector<Beyond>& list, std::size_t gear, RescueLimit why, double by_mm) {
  if (by_mm > rounding) list.push_back({gear, why, by_mm});
}

void judge_gear(Rescue& out, std::size_t i, const SpurGear& gear, const Bounds& bounds) {
  const double m = gear.module_mm, x = gear.shift;
  note(out.beyond, i, RescueLimit::undercut, m * (bounds.undercut - x));
  note(out.beyond, i, RescueLimit::tip_thickness, m * (x - bounds.tip));
  note(out.beyond, i, RescueLimit::pocket, m * (x - bounds.pocket));
  note(out.beyond, i, RescueLimit::rim, m * (bounds.rim - x));
}

void judge_mesh(Rescue& out, std::size_t k, const Mesh& mesh, const RescueLimits& limits) {
  // Where tips fall inside the base circles the ratio is no number, and no distance is near enough.
  if (!(contact_ratio(mesh) >= limits.contact_ratio))
    note(out.beyond, k, RescueLimit::contact_ratio,
         mesh.centre_distance_mm - distance_at_contact_ratio_mm(mesh.first, mesh.second, limits.contact_ratio));
  note(out.beyond, k, RescueLimit::tip_clearance,
       limits.tip_clearance_factor * mesh.first.module_mm - tip_clearance_mm(mesh));
}

}  // namespace

Rescue rescue(const RescueInput& in) {
  Rescue out;
  for (std::size_t k = 0; k < in.distances_mm.size(); ++k) {
    const Mesh mesh = mesh_at(in.gears, in, k);
    const double bases = (base_diameter_mm(mesh.first) + base_diameter_mm(mesh.second)) / 2;
    if (!involutes_meet(mesh)) out.beyond.push_back({k, RescueLimit::too_close, bases - mesh.centre_distance_mm});
  }
  if (!out.beyond.empty()) return out;

  std::vector<Bounds> bounds;
  for (std::size_t i = 0; i < in.gears.size(); ++i) bounds.push_back(bounds_of(in.gears[i], in.room[i], in.limits));
  const Family family = family_of(in);
  const double c = chosen(family, in, bounds);
  std::vector<SpurGear> gears = in.gears;
  for (std::size_t i = 0; i < gears.size(); ++i) {
    double change = family.change(i, c);
    if (std::abs(change) < 1e-12) change = 0;  // holes that came out right leave a gear the very same
    gears[i].shift += change;
    out.shifts.push_back(gears[i].shift);
    out.largest_change = std::max(out.largest_change, std::abs(change));
  }
  for (std::size_t i = 0; i < gears.size(); ++i) {
    judge_gear(out, i, gears[i], bounds[i]);
    if (i + 1 < gears.size()) judge_mesh(out, i, mesh_at(gears, in, i), in.limits);
  }
  return out;
}

}  // namespace visewright::formulas
