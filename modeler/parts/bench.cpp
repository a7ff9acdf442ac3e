#include "parts/bench.h"

#include <algorithm>

#include "layout/rules_bench.h"
#include "parts/bracket.h"
#include "parts/compose.h"

namespace visewright::parts {
namespace {

void screw_holes(const layout::Plan& plan, const Face& face, std::vector<Operation>& work) {
  for (const auto& hole : plan.screws.holes)
    work.push_back({"clearance hole, " + hole.name, Drill{face, hole.at, plan.bench.apron_hole.mm(), std::nullopt}, plan.screws.name, hole.name,
                    &layout::rules::apron_hole});
}

}  // namespace

double mounting_screw_depth(const layout::Plan& plan) {
  return units::in_mm(plan.rear_jaw.screw->length) - plan.rear_jaw.thickness.mm() + plan.rear_jaw.counterbore_depth.mm();
}

double bracket_top_screw_depth(const layout::Plan& plan) {
  return units::in_mm(plan.bracket.screw->length) - plan.bracket.thickness.mm();
}

Part bench_top(const layout::Plan& plan) {
  const auto& b = plan.bench;
  const double axis = b.axis_depth.mm(), t = b.top_thickness.mm();
  Piece piece{Existing{"bench top", b.wood, {-b.top_length.mm() / 2, 0, axis - t}, {b.top_length.mm(), b.top_depth.mm(), t}}, {}};
  const Face above = bench_top(axis);
  const double half = b.notch_length.mm() / 2;
  piece.operations.push_back({"notch", CutOut{above, geometry::region(geometry::rectangle({-half, -5}, {half, b.notch_depth.mm()}))}, "", "",
                              &layout::rules::notch_depth});
  const Face notch = bench_front(b.notch_depth.mm());
  for (const auto& hole : plan.rear_mounting.holes)
    piece.operations.push_back({"pilot, " + hole.name, Drill{notch, hole.at, units::in_mm(plan.rear_jaw.screw->shank), mounting_screw_depth(plan)},
                                plan.rear_mounting.name, hole.name, &layout::rules::mounting_screw});
  const Face below = bench_underside(axis - t);
  const double y = -(plan.rear_jaw.rear_out.mm() - plan.bracket.top_leg.mm() + bracket_top_screw_z(plan));
  for (const auto& x : plan.bracket.x)
    piece.operations.push_back({"pilot for a bracket screw", Drill{below, {x.mm(), -y}, units::in_mm(plan.bracket.screw->shank), bracket_top_screw_depth(plan)},
                                "", "", &layout::rules::bracket_hole});
  return {"bench top", std::move(piece), Making::existing};
}

Part apron(const layout::Plan& plan) {
  const auto& b = plan.bench;
  const double y = -b.apron_front_out.mm(), top = b.axis_depth.mm() - b.top_thickness.mm();
  Piece piece{Existing{"apron", b.wood, {-b.top_length.mm() / 2, y, top - b.apron_height.mm()},
                       {b.top_length.mm(), b.apron_thickness.mm(), b.apron_height.mm()}}, {}};
  screw_holes(plan, bench_front(y), piece.operations);
  return {"apron", std::move(piece), Making::existing};
}

Part doubler(const layout::Plan& plan) {
  const auto& b = plan.bench;
  const double y = -b.apron_front_out.mm() + b.apron_thickness.mm(), top = b.axis_depth.mm() - b.top_thickness.mm();
  const double half = std::min(b.top_length.mm() / 2, plan.train.spacing.mm() / 2 + 3.5 * b.apron_hole.mm());
  const geometry::Vector size{2 * half, b.doubler.mm(), b.apron_height.mm()};
  Piece piece{Board{b.wood, {-half, y, top - b.apron_height.mm()}, size, rough(size[0], size[2], size[1])}, {}};
  screw_holes(plan, bench_front(y), piece.operations);
  return {"apron doubler", std::move(piece), Making::made};
}

Part obstacle(const layout::Plan& plan, std::size_t index) {
  const auto& o = plan.bench.obstacles[index];
  const geometry::Vector size{o.high_mm[0] - o.low_mm[0], o.high_mm[1] - o.low_mm[1], o.high_mm[2] - o.low_mm[2]};
  return {o.name, Piece{Existing{o.name, plan.bench.wood, o.low_mm, size}, {}}, Making::existing};
}

}  // namespace visewright::parts
