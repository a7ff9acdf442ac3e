#include "analysis/drive.h"

#include <algorithm>
#include <cmath>

#include "formulas/gear_strength.h"
#include "formulas/train.h"

namespace visewright::analysis {
namespace {

using layout::Plan;

constexpr double below_top_mm = 15, dog_above_bench_mm = 12;

formulas::PowerScrew power_screw(const standards::ThreadRow& thread, double friction) {
  return {units::in_mm(thread.lead), units::in_mm(thread.mean), units::in_radians(thread.half_flank), friction};
}

/// The real contact ring: the smaller of flange and thrust washer outside, the larger hole inside.
double friction_diameter(const Plan& plan) {
  const double outer = std::min(plan.collar.flange_outside.mm(), plan.collar.thrust_outside.mm());
  const double inner = std::max(units::in_mm(plan.collar.flange->bore), units::in_mm(plan.collar.thrust->bore));
  return formulas::ring_friction_diameter_mm(outer, inner);
}

/// Clamp force with all the hand's torque, work at x from the middle.
double clamp_at(const Plan& plan, const DriveFigures& d, double x_mm, double torque_nmm) {
  if (plan.wheel.on_centre) {
    const auto& gears = plan.train.gears;
    const double ratio = static_cast<double>(gears.front().teeth.value) / gears[gears.size() / 2].teeth.value;
    const double passed = std::pow(d.drive.mesh_efficiency, d.drive.meshes);
    return torque_nmm * ratio * passed / d.drive.torque_per_force_nmm_per_n;
  }
  // The formula's first screw is the driven one; a wheel at both ends is turned at the left one.
  const bool right_driven = plan.wheel.on_screw.size() == 1 && plan.wheel.on_screw.front() == 1;
  return formulas::clamp_force_n(d.drive, torque_nmm, right_driven ? -x_mm : x_mm, plan.train.spacing.mm());
}

void add_rods(const Plan& plan, DriveFigures& d) {
  std::vector<const standards::ThreadRow*> rows = plan.screw.near_sizes;
  rows.push_back(plan.screw.thread);
  std::sort(rows.begin(), rows.end(), [](const auto* a, const auto* b) { return a->major < b->major; });
  const double major = units::in_mm(plan.screw.thread->major);
  for (const auto* row : rows) {
    const auto screw = power_screw(*row, plan.assume.thread_friction.value);
    DriveFigures other = d;
    other.thread_nmm_per_n = formulas::raising_torque_nmm(screw, 1);
    other.collar_nmm_per_n = d.collar_nmm_per_n * units::in_mm(row->major) / major;
    other.drive.torque_per_force_nmm_per_n = other.thread_nmm_per_n + other.collar_nmm_per_n;
    RodChoice rod;
    rod.thread = row->designation;
    rod.taken = row == plan.screw.thread;
    rod.clamp_n = clamp_at(plan, other, 0, d.hand_torque_nmm);
    rod.top_hold_mpa = hold_stress(other, rod.clamp_n, near_top_mm(plan), units::in_mm(row->root)).von_mises_mpa;
    rod.turns = d.turns * d.screw.lead_mm / screw.lead_mm;
    rod.self_locking = formulas::self_locking_margin(screw);
    d.rods.push_back(std::move(rod));
  }
}

}  // namespace

double mid_throat_mm(const Plan& plan) { return plan.front_jaw.above.mm() / 2; }
double near_top_mm(const Plan& plan) { return plan.front_jaw.above.mm() - below_top_mm; }
double at_dogs_mm(const Plan& plan) { return plan.bench.axis_depth.mm() + dog_above_bench_mm; }

formulas::ScrewStress hold_stress(const DriveFigures& d, double clamp_n, double height_mm, double root_mm) {
  const double each = clamp_n / 2;
  return formulas::screw_stress({each, each * d.thread_nmm_per_n, formulas::tipping_moment_nmm(clamp_n, height_mm)}, root_mm);
}

DriveFigures drive_figures(const Plan& plan) {
  const auto& gears = plan.train.gears;
  const std::size_t driven = plan.wheel.on_centre ? gears.size() / 2 : plan.wheel.on_screw.front() == 0 ? 0 : gears.size() - 1;
  DriveFigures d;
  d.hand_torque_nmm = plan.wheel.hand_force.value * plan.wheel.diameter.mm() / 2;
  d.screw = power_screw(*plan.screw.thread, plan.assume.thread_friction.value);
  d.thread_nmm_per_n = formulas::raising_torque_nmm(d.screw, 1);
  d.collar_friction_diameter_mm = friction_diameter(plan);
  d.collar_nmm_per_n = formulas::collar_torque_nmm(1, plan.assume.collar_friction.value, d.collar_friction_diameter_mm);
  const int meshes = static_cast<int>(gears.size()) - 1;
  d.drive = {d.thread_nmm_per_n + d.collar_nmm_per_n, plan.assume.mesh_efficiency.value, plan.wheel.on_centre ? meshes / 2 : meshes};
  const double half = plan.train.spacing.mm() / 2;
  d.clamp_middle_n = clamp_at(plan, d, 0, d.hand_torque_nmm);
  d.clamp_left_n = clamp_at(plan, d, -half, d.hand_torque_nmm);
  d.clamp_right_n = clamp_at(plan, d, half, d.hand_torque_nmm);
  d.self_locking = formulas::self_locking_margin(d.screw);
  d.efficiency = formulas::screw_efficiency(d.screw.lead_mm, 1, d.drive.torque_per_force_nmm_per_n);
  const double to_wheel = static_cast<double>(gears.front().teeth.value) / gears[driven].teeth.value;
  d.turns = plan.use.opening_max.mm() / d.screw.lead_mm * to_wheel;
  double play = 0;
  for (const auto& mesh : plan.train.meshes) play += mesh.backlash.mm();
  if (plan.wheel.on_centre) play /= 2;
  d.dead_turn_rad = formulas::dead_turn_rad(play, gears[driven].pitch_diameter.mm());
  const int teeth = gears.front().teeth.value;
  d.tooth_step_mm = formulas::skew_for_one_tooth_mm(d.screw.lead_mm, teeth);
  d.finest_step_mm = formulas::finest_setting_step_mm(d.screw.lead_mm, teeth);
  d.skew_from_backlash_mm = formulas::travel_mm(d.screw.lead_mm, formulas::dead_turn_rad(play, gears.front().pitch_diameter.mm()));
  d.tangential_n = formulas::tangential_force_n(d.hand_torque_nmm, gears[driven].pitch_diameter.mm());
  d.stuck_push_n = d.hand_torque_nmm * to_wheel / d.thread_nmm_per_n;
  add_rods(plan, d);
  return d;
}

}  // namespace visewright::analysis
