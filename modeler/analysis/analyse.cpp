#include "analysis/analyse.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "analysis/rules.h"
#include "formulas/spur_gear.h"

namespace visewright::analysis {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr double least_contact_ratio = 1.1, least_tip_clearance = 0.125, knuckles_mm = 10;

std::string gear_name(std::size_t index) { return "gear " + std::to_string(index + 1); }

/// The mesh with the smallest value of a figure, and that value.
template <class Figure>
std::pair<double, std::vector<std::string>> worst_mesh(const layout::Train& train, Figure figure) {
  double least = 0;
  std::size_t at = 0;
  for (std::size_t i = 0; i < train.meshes.size(); ++i) {
    const double value = figure(train.meshes[i]);
    if (i == 0 || value < least) {
      least = value;
      at = i;
    }
  }
  return {least, {gear_name(at), gear_name(at + 1)}};
}

void judge_train(const layout::Plan& plan, std::vector<Finding>& out) {
  const auto& train = plan.train;
  const auto [play, tight] = worst_mesh(train, [](const layout::Mesh& m) { return m.backlash.mm(); });
  // A mesh with no play at all jams at the first grain of dust; a twentieth of the wanted play is "none".
  out.push_back(judged(rules::backlash, play, 0.05 * train.backlash.mm(), Unit::mm, Better::larger, Verdict::fail, tight));
  const auto [ratio, loose] = worst_mesh(train, [](const layout::Mesh& m) { return m.contact_ratio.value; });
  out.push_back(judged(rules::contact_ratio, ratio, least_contact_ratio, Unit::one, Better::larger, Verdict::fail, loose));
  const auto [gap, close] = worst_mesh(train, [](const layout::Mesh& m) { return m.tip_clearance.mm(); });
  out.push_back(judged(rules::tip_clearance, gap, least_tip_clearance * train.module.mm(), Unit::mm, Better::larger, Verdict::fail, close));

  double spare = 0;
  std::size_t at = 0;
  for (std::size_t i = 0; i < train.gears.size(); ++i) {
    formulas::SpurGear gear;
    gear.teeth = train.gears[i].teeth.value;
    gear.module_mm = train.module.mm();
    gear.pressure_angle_rad = train.pressure_angle.rad();
    gear.shift = train.gears[i].shift.value;
    const double beyond = gear.shift - formulas::least_shift_without_undercut(gear);
    if (i == 0 || beyond < spare) {
      spare = beyond;
      at = i;
    }
  }
  out.push_back(judged(rules::undercut, spare, 0, Unit::one, Better::larger, Verdict::caution, {gear_name(at)}));
}

void judge_wheels(const layout::Plan& plan, std::vector<Finding>& out) {
  const auto& wheel = plan.wheel;
  const double cover_front = plan.cover.rear_out.mm() + plan.cover.thickness.mm();
  out.push_back(judged(rules::rim_to_cover, wheel.rim_rear_out.mm() - cover_front, plan.gaps.rim_to_cover.mm(), Unit::mm, Better::larger,
                       Verdict::fail, {"hand wheel", "cover"}));
  if (wheel.on_screw.size() == 2)
    out.push_back(judged(rules::rim_to_rim, plan.train.spacing.mm() - wheel.diameter.mm(), plan.gaps.rim_to_rim.mm(), Unit::mm, Better::larger,
                         Verdict::fail, {"hand wheel, left", "hand wheel, right"}));
  out.push_back(judged(rules::rim_to_bench, plan.bench.axis_depth.mm() - wheel.diameter.mm() / 2, knuckles_mm, Unit::mm, Better::larger,
                       Verdict::caution, {"hand wheel", "bench top"}));
  const auto judge_sense = [&](bool clockwise, const char* name) {
    out.push_back(judged(rules::closing_sense, clockwise ? 1 : 0, 1, Unit::count, Better::larger, Verdict::caution, {name}));
  };
  for (const int side : wheel.on_screw)
    judge_sense(plan.screw.closes_clockwise[static_cast<std::size_t>(side)], side == 0 ? "hand wheel, left" : "hand wheel, right");
  if (wheel.on_centre) {
    const bool with_first = plan.train.gears[plan.train.gears.size() / 2].sense > 0;
    judge_sense(plan.screw.closes_clockwise[0] == with_first, "hand wheel, centre");
  }
}

void judge_jaw(const layout::Plan& plan, std::vector<Finding>& out) {
  const auto& jaw = plan.front_jaw;
  const double web = plan.gaps.web.mm();
  const auto& gears = plan.train.gears;
  double largest = 0;
  for (const auto& gear : gears) largest = std::max(largest, gear.pocket.mm() / 2);
  const double left = jaw.length.mm() / 2 + gears.front().centre_x.mm() - gears.front().pocket.mm() / 2;
  const double right = jaw.length.mm() / 2 - gears.back().centre_x.mm() - gears.back().pocket.mm() / 2;
  out.push_back(judged(rules::end_web, std::min(left, right), web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
  out.push_back(judged(rules::bottom_web, jaw.below.mm() - largest, web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
  out.push_back(judged(rules::bevel_web, jaw.above.mm() - jaw.bevel_height.mm() - largest, web, Unit::mm, Better::larger, Verdict::fail, {"gear layer"}));
}

}  // namespace

std::vector<Finding> analyse(const layout::Plan& plan) {
  std::vector<Finding> out;
  judge_train(plan, out);
  out.push_back(judged(rules::opening, plan.use.opening_max.mm(), plan.use.opening_wanted.mm(), Unit::mm, Better::larger, Verdict::caution, {"lead screw"}));
  judge_wheels(plan, out);
  judge_jaw(plan, out);
  if (plan.bench.has_apron)
    out.push_back(judged(rules::stop_in_apron, (plan.bench.apron_hole.mm() - plan.screw.stop_length.mm()) / 2, 2, Unit::mm, Better::larger,
                         Verdict::fail, {"end stop", "apron"}));
  reasons::worst_first(out);
  return out;
}

std::span<const reasons::Rule* const> rules_of_analysis() {
  static constexpr const reasons::Rule* all[] = {&rules::backlash, &rules::contact_ratio, &rules::tip_clearance, &rules::undercut, &rules::opening,
      &rules::rim_to_cover, &rules::rim_to_rim, &rules::rim_to_bench, &rules::stop_in_apron, &rules::end_web, &rules::bottom_web,
      &rules::bevel_web, &rules::closing_sense};
  return all;
}

}  // namespace visewright::analysis
