#include "fitup/meshes.h"

#include <algorithm>
#include <cmath>

#include "fitup/rules.h"
#include "fitup/spread.h"
#include "formulas/spacing_error.h"

namespace visewright::fitup {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

constexpr int steps = 24;            // positions in one pitch
constexpr double error_mm = 2e-4;    // of the outlines as points
constexpr double agreement_mm = 2e-3;  // of measured and planned backlash

formulas::Marking marking(layout::Marking way) {
  switch (way) {
    case layout::Marking::from_template: return formulas::Marking::from_template;
    case layout::Marking::one_datum: return formulas::Marking::one_datum;
    case layout::Marking::chain: return formulas::Marking::chain;
  }
  return formulas::Marking::from_template;
}

/// Axles that are made stand where they stand: their errors are part of the distances.
bool axles_measured(const layout::Plan& plan) {
  const auto id = plan.train.meshes.front().centre_distance.id;
  const auto numbers = plan.ledger.numbers();
  return id < numbers.size() && numbers[id].basis == reasons::Basis::measured;
}

/// How far each distance may come out short: all errors of marking and drilling at their ends.
std::vector<double> worst_errors(const layout::Plan& plan) {
  formulas::SpacingInput in;
  for (const layout::Mesh& mesh : plan.train.meshes) {
    in.distances_mm.push_back(mesh.centre_distance.mm());
    in.working.push_back({});
  }
  in.errors.mark_mm = plan.accuracy.mark_error.mm();
  in.errors.wander_mm = plan.accuracy.drill_wander.mm();
  in.errors.template_mm = plan.accuracy.template_error.mm();
  in.errors.template_scale = plan.accuracy.template_scale.value / 100;
  in.errors.bush_play_mm = plan.front_jaw.bush_bore.mm() - plan.screw.diameter.mm();
  in.errors.run_out_mm = plan.assume.gear_run_out.mm();
  in.marking = marking(plan.accuracy.marking);
  in.axles_measured = axles_measured(plan);
  std::vector<double> worst;
  for (const formulas::MeshSpread& spread : formulas::mesh_spreads(in)) worst.push_back(spread.worst_mm);
  return worst;
}

std::vector<std::string> names(std::size_t i) { return {"gear " + std::to_string(i + 1), "gear " + std::to_string(i + 2)}; }

Finding gap_finding(const reasons::Rule& rule, const MeshTurn& turn, std::size_t i, Verdict otherwise) {
  Finding f = judged(rule, turn.least_mm(), 0, Unit::mm, Better::larger, otherwise, names(i), reasons::Where{0, false, std::nullopt});
  f.certified = false;  // at so many positions of one pitch
  return f;
}

std::size_t tightest(const std::vector<MeshTurn>& turns) {
  return static_cast<std::size_t>(std::min_element(turns.begin(), turns.end(), [](const MeshTurn& a, const MeshTurn& b) { return a.least_mm() < b.least_mm() - 1e-9; }) -
                                  turns.begin());
}

}  // namespace

MeshChecks mesh_checks(const layout::Plan& plan) {
  const layout::Train& train = plan.train;
  const std::size_t count = train.meshes.size();
  MeshChecks all;
  all.as_planned.resize(count);
  all.at_worst.resize(count);
  if (count == 0) return all;
  all.nearer_mm = worst_errors(plan);
  const auto gear = [&](const layout::Gear& g) {
    const double radius = train.module.mm() * g.teeth.value / 2;
    return MeshGear{g.outline.get(), g.teeth.value, g.phase.rad(), radius * std::cos(train.pressure_angle.rad()), radius};
  };
  spread(count, [&](std::size_t i) {
    const MeshGear one = gear(train.gears[i]), two = gear(train.gears[i + 1]);
    const double distance = train.meshes[i].centre_distance.mm();
    all.as_planned[i] = through_one_pitch(one, two, distance, steps, error_mm);
    all.at_worst[i] = through_one_pitch(one, two, distance - all.nearer_mm[i], steps, error_mm);
  });
  const std::size_t worst = tightest(all.as_planned), worst_spaced = tightest(all.at_worst);
  for (std::size_t i = 0; i < count; ++i) {
    if (i == worst || all.as_planned[i].least_mm() < 0) all.findings.push_back(gap_finding(rules::mesh_gap, all.as_planned[i], i, Verdict::fail));
    const bool only_then = all.as_planned[i].least_mm() >= 0;
    if (only_then && (i == worst_spaced || all.at_worst[i].least_mm() < 0))
      all.findings.push_back(gap_finding(rules::mesh_at_worst, all.at_worst[i], i, Verdict::caution));
  }
  const MeshTurn& tight = all.as_planned[worst];
  all.findings.push_back(judged(rules::mesh_backlash, tight.backlash_mm, train.meshes[worst].backlash.mm() - agreement_mm, Unit::mm, Better::larger,
                                Verdict::fail, names(worst)));
  return all;
}

}  // namespace visewright::fitup
