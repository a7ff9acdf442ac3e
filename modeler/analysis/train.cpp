#include "analysis/train.h"

#include <numbers>

#include "analysis/gear_name.h"
#include "analysis/rules.h"
#include "analysis/rules_use.h"
#include "layout/spur.h"

namespace visewright::analysis {
namespace {

using layout::Plan;
using layout::spur_gear;
using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr double least_contact_ratio = 1.1, least_tip_clearance = 0.125, least_tip_modules = 0.25;

struct Worst {
  double value = 0;
  std::size_t at = 0;
};
/// The smallest value of a figure over a list, and where; the first of equals.
template <class List, class Figure>
Worst smallest(const List& list, Figure figure) {
  Worst worst;
  for (std::size_t i = 0; i < list.size(); ++i)
    if (const double value = figure(list[i], i); i == 0 || value < worst.value) worst = {value, i};
  return worst;
}

std::vector<std::string> pair_at(std::size_t mesh) { return {gear_name(mesh), gear_name(mesh + 1)}; }

void judge_meshes(const layout::Train& train, std::vector<Finding>& out) {
  const auto play = smallest(train.meshes, [](const layout::Mesh& m, std::size_t) { return m.backlash.mm(); });
  // A mesh with no play at all jams at the first grain of dust; a twentieth of the wanted play is "none".
  out.push_back(judged(rules::backlash, play.value, 0.05 * train.backlash.mm(), Unit::mm, Better::larger, Verdict::fail, pair_at(play.at)));
  const auto ratio = smallest(train.meshes, [](const layout::Mesh& m, std::size_t) { return m.contact_ratio.value; });
  out.push_back(judged(rules::contact_ratio, ratio.value, least_contact_ratio, Unit::one, Better::larger, Verdict::fail, pair_at(ratio.at)));
  const auto gap = smallest(train.meshes, [](const layout::Mesh& m, std::size_t) { return m.tip_clearance.mm(); });
  out.push_back(judged(rules::tip_clearance, gap.value, least_tip_clearance * train.module.mm(), Unit::mm, Better::larger, Verdict::fail, pair_at(gap.at)));
  const auto room = smallest(train.meshes, [&](const layout::Mesh& m, std::size_t i) {
    return formulas::flank_room_mm({spur_gear(train, train.gears[i]), spur_gear(train, train.gears[i + 1]), m.centre_distance.mm()});
  });
  out.push_back(judged(rules::root_room, room.value, 0, Unit::mm, Better::larger, Verdict::caution, pair_at(room.at)));
}

/// What stops a rescue, in words.
std::string_view why(formulas::RescueLimit limit) {
  using enum formulas::RescueLimit;
  switch (limit) {
    case undercut: return "the tooth would be undercut";
    case tip_thickness: return "the tooth's tip would be too thin";
    case pocket: return "the tip would come too near the pocket's wall";
    case rim: return "the rim over the collar would be too thin";
    case contact_ratio: return "the mesh with the next gear would lose contact";
    case tip_clearance: return "the tip would meet the next gear's root";
    case too_close: return "the next axle stands too near";
  }
  return "";
}

void judge_rescue(const layout::Train& train, std::vector<Finding>& out) {
  for (const formulas::Beyond& beyond : train.beyond_rescue) {
    auto finding = judged(rules::rescue, beyond.by_mm, 0, Unit::mm, Better::smaller, Verdict::fail, {gear_name(beyond.gear)});
    finding.advice = std::string(why(beyond.why)) + "; " + finding.advice;
    out.push_back(std::move(finding));
  }
}

}  // namespace

std::vector<GearMeasures> gear_measures(const Plan& plan) {
  std::vector<GearMeasures> all;
  for (const auto& g : plan.train.gears) {
    const auto gear = spur_gear(plan.train, g);
    all.push_back({formulas::span_measure(gear), formulas::pin_measure(gear), formulas::chordal_measure(gear), formulas::tip_thickness_modules(gear)});
  }
  return all;
}

void judge_train(const Plan& plan, std::vector<Finding>& out) {
  const auto& train = plan.train;
  judge_meshes(train, out);
  judge_rescue(train, out);
  const auto spare = smallest(train.gears, [&](const layout::Gear& g, std::size_t) {
    const auto gear = spur_gear(train, g);
    return gear.shift - formulas::least_shift_without_undercut(gear);
  });
  out.push_back(judged(rules::undercut, spare.value, 0, Unit::one, Better::larger, Verdict::caution, {gear_name(spare.at)}));
  const auto tip = smallest(train.gears, [&](const layout::Gear& g, std::size_t) { return formulas::tip_thickness_modules(spur_gear(train, g)); });
  out.push_back(judged(rules::tip_thickness, tip.value, least_tip_modules, Unit::one, Better::larger, tip.value <= 0 ? Verdict::fail : Verdict::caution,
                       {gear_name(tip.at)}));
}

void judge_drive(const Plan& plan, const DriveFigures& drive, std::vector<Finding>& out) {
  constexpr double most_turns = 60, most_dead_turn_deg = 10;
  auto holds = judged(rules::self_locking, drive.self_locking, 1, Unit::one, Better::larger, Verdict::fail, {"lead screw"});
  holds.with = {{"friction", drive.screw.friction, Unit::one}, {"mean diameter", drive.screw.mean_mm, Unit::mm}, {"lead", drive.screw.lead_mm, Unit::mm}};
  out.push_back(std::move(holds));
  auto turns = judged(rules::turns, drive.turns, most_turns, Unit::count, Better::smaller, Verdict::caution, {"hand wheel"});
  turns.with = {{"opening", plan.use.opening_max.mm(), Unit::mm}, {"lead", drive.screw.lead_mm, Unit::mm}};
  out.push_back(std::move(turns));
  out.push_back(judged(rules::dead_turn, drive.dead_turn_rad * 180 / std::numbers::pi, most_dead_turn_deg, Unit::deg, Better::smaller, Verdict::caution,
                       {"hand wheel"}));
}

}  // namespace visewright::analysis
