#include "analysis/spacing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

#include "analysis/gear_name.h"
#include "analysis/spacing_rules.h"
#include "formulas/statistics.h"
#include "layout/spur.h"

namespace visewright::analysis {
namespace {

using layout::Marking;
using layout::Plan;
using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr double most_failing_percent = 1;
constexpr std::array<std::string_view, 3> followers{"rear jaw", "cover", "gear layer"};

formulas::Marking formula_marking(Marking marking) {
  switch (marking) {
    case Marking::from_template: return formulas::Marking::from_template;
    case Marking::one_datum: return formulas::Marking::one_datum;
    case Marking::chain: return formulas::Marking::chain;
  }
  return formulas::Marking::from_template;
}

bool axles_measured(const Plan& plan) {
  if (plan.train.meshes.empty()) return false;
  const auto id = plan.train.meshes.front().centre_distance.id;
  const auto numbers = plan.ledger.numbers();
  return id < numbers.size() && numbers[id].basis == reasons::Basis::measured;
}

/// The screws pass the bush of either jaw.
formulas::SharedBores rear_jaw(const Plan& plan) {
  const double play = (plan.front_jaw.bush_bore.mm() + plan.rear_jaw.bush_bore.mm()) / 2 - plan.screw.diameter.mm();
  return {{0, play}, {plan.train.gears.size() - 1, play}};
}

/// Bearings have play in their seats, axle screws in their slots; one axle screw holds the cover where it must not
/// move.
formulas::SharedBores cover(const Plan& plan) {
  const auto& gears = plan.train.gears;
  const auto in_a_seat = [&](std::size_t i) { return i == 0 || i + 1 == gears.size() || gears[i].on_shaft; };
  std::size_t held = gears.size();
  for (std::size_t i = 0; i < gears.size(); ++i)
    if (!in_a_seat(i) &&
        (held == gears.size() || std::abs(gears[i].centre_x.mm()) < std::abs(gears[held].centre_x.mm())))
      held = i;
  formulas::SharedBores bores;
  for (std::size_t i = 0; i < gears.size(); ++i) {
    const double axle = (i == held ? plan.cover.axle_hole : plan.cover.axle_slot).mm() - plan.axle.tap.mm();
    bores.push_back({i, (in_a_seat(i) ? plan.cover.seat.mm() - plan.bearing.outside.mm() : axle) / 2});
  }
  return bores;
}

/// Pockets have nothing to meet but the tips of the gears.
formulas::SharedBores gear_layer(const Plan& plan) {
  formulas::SharedBores bores;
  for (std::size_t i = 0; i < plan.train.gears.size(); ++i)
    bores.push_back({i, (plan.train.gears[i].pocket.mm() - plan.train.gears[i].tip.mm()) / 2});
  return bores;
}

Chance chance(std::size_t builds, std::size_t trials) {
  const auto range = formulas::wilson_interval(builds, trials);
  const double share = trials == 0 ? 0 : static_cast<double>(builds) / static_cast<double>(trials);
  return {builds, 100 * share, 100 * range.low, 100 * range.high};
}

std::vector<MeshSpacing> meshes(const Plan& plan, const formulas::SpacingInput& in) {
  std::vector<MeshSpacing> list;
  for (const formulas::MeshSpread& spread : formulas::mesh_spreads(in)) {
    const std::size_t k = list.size();
    const formulas::Mesh nearest{layout::spur_gear(plan.train, plan.train.gears[k]), layout::spur_gear(plan.train, plan.train.gears[k + 1]),
                                 in.distances_mm[k] - spread.worst_mm};
    MeshSpacing mesh{spread, {}};
    if (formulas::involutes_meet(nearest)) mesh.backlash_at_worst_mm = formulas::backlash_mm(nearest);
    list.push_back(mesh);
  }
  return list;
}

SpacingOfWay way(const Plan& plan, Marking marking, std::size_t trials, std::uint64_t seed) {
  const formulas::SpacingInput in = spacing_input(plan, marking);
  SpacingOfWay out;
  out.marking = marking;
  out.meshes = meshes(plan, in);
  for (const formulas::PartSpread& spread : formulas::part_spreads(in))
    out.parts.push_back({std::string(followers[out.parts.size()]), spread});
  const auto odds = formulas::spacing_odds(in, trials, seed, 1 - most_failing_percent / 100);
  out.bind = chance(odds.bind, trials);
  out.slack = chance(odds.slack, trials);
  out.line_up = chance(odds.line_up, trials);
  out.any = chance(odds.any, trials);
  out.largest_factor = odds.largest_scale;
  out.largest_factor_of_meshes = odds.largest_scale_of_meshes;
  for (const double share : odds.gives_first) out.gives_first_percent.push_back(100 * share);
  const auto greatest = std::max_element(out.gives_first_percent.begin(), out.gives_first_percent.end());
  out.critical_gear = static_cast<std::size_t>(greatest - out.gives_first_percent.begin());
  return out;
}

bool fails_nominally(const SpacingOfWay& way) {
  return std::any_of(way.meshes.begin(), way.meshes.end(), [](const MeshSpacing& mesh) {
    return mesh.spread.room_nearer_mm <= 0 || mesh.spread.room_apart_mm < 0;
  });
}

double room_left_mm(const MeshSpacing& mesh) {
  return std::min(mesh.spread.room_nearer_mm, mesh.spread.room_apart_mm) - mesh.spread.worst_mm;
}

/// Adds to the advice what was counted.
void tell(Finding& finding, const std::string& counted) {
  if (finding.verdict != Verdict::pass) finding.advice += "; " + counted;
}

std::string counts(const SpacingFigures& figures) {
  const SpacingOfWay& way = figures.of_chosen();
  std::string text = fmt::format("of {} builds with seed {}, {} jam, {} are slack, {} do not line up", figures.trials,
                                 figures.seed, way.bind.builds, way.slack.builds, way.line_up.builds);
  if (way.largest_factor)
    text += fmt::format("; 99 of 100 work when every error is {:.2f} times what it is", *way.largest_factor);
  return text;
}

Finding judge_worst(const SpacingFigures& figures, Verdict otherwise) {
  const SpacingOfWay& way = figures.of_chosen();
  const auto least =
      std::min_element(way.meshes.begin(), way.meshes.end(),
                       [](const MeshSpacing& a, const MeshSpacing& b) { return room_left_mm(a) < room_left_mm(b); });
  const auto k = static_cast<std::size_t>(least - way.meshes.begin());
  Finding finding = judged(rules::spacing_worst, room_left_mm(*least), 0, Unit::mm, Better::larger, otherwise,
                           {gear_name(k), gear_name(k + 1)});
  tell(finding, fmt::format("{:.2f} in 100 builds jam, {:.2f} are slack", way.bind.percent, way.slack.percent));
  return finding;
}

Finding judge_line_up(const SpacingFigures& figures) {
  const SpacingOfWay& way = figures.of_chosen();
  const auto least =
      std::min_element(way.parts.begin(), way.parts.end(), [](const PartSpacing& a, const PartSpacing& b) {
        return a.spread.allowed_mm * b.spread.worst_mm < b.spread.allowed_mm * a.spread.worst_mm;
      });
  Finding finding = judged(rules::line_up, way.line_up.percent, most_failing_percent, Unit::percent, Better::smaller,
                           Verdict::caution, {"backing", least->part});
  tell(finding, fmt::format("{} and {} may be off by {:.2f} mm in all, their play takes {:.2f} mm",
                            gear_name(least->spread.first), gear_name(least->spread.second), least->spread.worst_mm,
                            least->spread.allowed_mm));
  return finding;
}

}  // namespace

formulas::SpacingInput spacing_input(const Plan& plan, Marking marking) {
  formulas::SpacingInput in;
  for (std::size_t k = 0; k < plan.train.meshes.size(); ++k) {
    in.distances_mm.push_back(plan.train.meshes[k].centre_distance.mm());
    in.working.push_back(formulas::working_distances(layout::spur_gear(plan.train, plan.train.gears[k]), layout::spur_gear(plan.train, plan.train.gears[k + 1])));
  }
  in.parts = {rear_jaw(plan), cover(plan), gear_layer(plan)};
  const auto& accuracy = plan.accuracy;
  in.errors.mark_mm = accuracy.mark_error.mm();
  in.errors.wander_mm = accuracy.drill_wander.mm();
  in.errors.template_mm = accuracy.template_error.mm();
  in.errors.template_scale = accuracy.template_scale.value / 100;
  in.errors.bush_play_mm = plan.front_jaw.bush_bore.mm() - plan.screw.diameter.mm();
  in.errors.run_out_mm = plan.assume.gear_run_out.mm();
  in.marking = formula_marking(marking);
  in.axles_measured = axles_measured(plan);
  return in;
}

SpacingFigures spacing(const Plan& plan, std::size_t trials, std::uint64_t seed) {
  SpacingFigures figures;
  figures.seed = seed;
  figures.trials = trials;
  figures.axles_measured = axles_measured(plan);
  figures.chosen = plan.accuracy.marking;
  for (const Marking marking : {Marking::from_template, Marking::one_datum, Marking::chain})
    figures.ways[static_cast<std::size_t>(marking)] = way(plan, marking, trials, seed);
  return figures;
}

std::vector<Finding> judge_spacing(const SpacingFigures& figures) {
  const SpacingOfWay& way = figures.of_chosen();
  if (way.meshes.empty()) return {};
  const Verdict otherwise = fails_nominally(way) ? Verdict::fail : Verdict::caution;
  Finding all = judged(rules::spacing_error, way.any.percent, most_failing_percent, Unit::percent, Better::smaller,
                       otherwise, {gear_name(way.critical_gear)});
  tell(all, counts(figures));
  return {all, judge_worst(figures, otherwise), judge_line_up(figures)};
}

}  // namespace visewright::analysis
