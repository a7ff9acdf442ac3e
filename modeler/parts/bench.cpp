#include "parts/bench.h"

#include "parts/bracket.h"
#include "parts/compose.h"
#include "parts/fasteners.h"

namespace visewright::parts {
namespace {

using geometry::Point;
using layout::Hole;
using layout::Plan;

/// What the cutter runs out of the bench edge.
constexpr double run_out_mm = 5;
/// How far the doubler reaches beyond the middle of a hole: so that the wood round the hole is held.
constexpr double doubler_reach_holes = 3;

void add_screw_holes(const Plan& plan, double front_y_mm, std::vector<Operation>& work) {
  const Face face = bench_front(front_y_mm);
  for (const Hole& hole : plan.screws.holes)
    work.push_back(follows(because(drill("hole for the screw, " + hole.name, face, hole.at, plan.bench.apron_hole.mm()),
                                   plan, plan.bench.apron_hole),
                           plan.screws, hole));
}

}  // namespace

Part bench_top_part(const Plan& plan) {
  const layout::BenchPlan& b = plan.bench;
  const double half = b.notch_length.mm() / 2, depth = b.notch_depth.mm(),
               under = b.axis_depth.mm() - b.top_thickness.mm();
  const Face upper = bench_top(b.axis_depth.mm()), notch = bench_front(depth), lower = bench_underside(under);
  std::vector<Operation> work{
      because(cut_out("notch for the rear jaw", upper, geometry::rectangle({-half, -run_out_mm}, {half, depth})), plan,
              b.notch_depth)};
  const double mount = pilot_mm(units::in_mm(plan.rear_jaw.screw->shank)),
               bracket = pilot_mm(units::in_mm(plan.bracket.screw->shank));
  for (const Hole& hole : plan.rear_mounting.holes)
    work.push_back(
        follows(drill("pilot hole in the notch, " + hole.name, notch, hole.at, mount, mounting_pilot_mm(plan)),
                plan.rear_mounting, hole));
  for (std::size_t i = 0; i < plan.bracket.x.size(); ++i) {
    const double y = -plan.rear_jaw.rear_out.mm() - bracket_slot_z_mm(plan);
    work.push_back(because(drill("pilot hole, bracket " + std::to_string(i + 1), lower,
                                 on(lower, {plan.bracket.x[i].mm(), y, under}), bracket, bracket_pilot_mm(plan)),
                           plan, plan.bracket.x[i]));
  }
  return made_of("bench top",
                 Existing{"bench top",
                          b.wood,
                          {-b.top_length.mm() / 2, 0, under},
                          {b.top_length.mm(), b.top_depth.mm(), b.top_thickness.mm()}},
                 std::move(work), Making::existing);
}

Part apron(const Plan& plan) {
  const layout::BenchPlan& b = plan.bench;
  const double y = -b.apron_front_out.mm(), under = b.axis_depth.mm() - b.top_thickness.mm();
  std::vector<Operation> work;
  add_screw_holes(plan, y, work);
  return made_of("apron",
                 Existing{"apron",
                          b.wood,
                          {-b.top_length.mm() / 2, y, under - b.apron_height.mm()},
                          {b.top_length.mm(), b.apron_thickness.mm(), b.apron_height.mm()}},
                 std::move(work), Making::existing);
}

Part doubler(const Plan& plan) {
  const layout::BenchPlan& b = plan.bench;
  const double y = -b.apron_front_out.mm() + b.apron_thickness.mm(), under = b.axis_depth.mm() - b.top_thickness.mm();
  const double length = plan.train.spacing.mm() + 2 * doubler_reach_holes * b.apron_hole.mm(),
               height = b.apron_height.mm(), thickness = b.doubler.mm();
  std::vector<Operation> work;
  add_screw_holes(plan, y, work);
  return made_of(
      "doubler",
      Board{b.wood, {-length / 2, y, under - height}, {length, thickness, height}, rough(length, height, thickness)},
      std::move(work));
}

std::vector<Part> obstacles(const Plan& plan) {
  std::vector<Part> result;
  for (const auto& o : plan.bench.obstacles) {
    const geometry::Vector low = o.low_mm;
    result.push_back(
        made_of(o.name, Existing{o.name, plan.bench.wood, low, geometry::plus(o.high_mm, geometry::times(-1, low))}, {},
                Making::existing));
  }
  return result;
}

}  // namespace visewright::parts
