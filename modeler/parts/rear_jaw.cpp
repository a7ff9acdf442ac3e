#include "parts/rear_jaw.h"

#include "layout/rules_bench.h"
#include "layout/rules_jaw.h"
#include "parts/compose.h"

namespace visewright::parts {
namespace {

Part core(const layout::Plan& plan, double joint) {
  const auto& jaw = plan.rear_jaw;
  Sheet sheet{jaw.core, {-jaw.length.mm() / 2, -jaw.below.mm(), 0}, {jaw.length.mm(), joint + jaw.below.mm(), jaw.thickness.mm()}, true};
  return {"rear jaw core", Piece{sheet, {}}, Making::made};
}

Part cap(const layout::Plan& plan, double joint) {
  const auto& jaw = plan.rear_jaw;
  const geometry::Vector size{jaw.length.mm(), jaw.above.mm() - joint, jaw.thickness.mm()};
  Board board{jaw.cap, {-jaw.length.mm() / 2, joint, 0}, size, rough(size[0], size[1], size[2])};
  return {"rear jaw cap", Piece{board, {}}, Making::made};
}

void mounting(const layout::Plan& plan, std::vector<Operation>& work) {
  const auto& jaw = plan.rear_jaw;
  const Face face = front(jaw.thickness.mm());
  for (const auto& hole : plan.rear_mounting.holes) {
    const geometry::Point at = on(face, hole.at);
    work.push_back({"counterbore, " + hole.name, Drill{face, at, jaw.counterbore.mm(), jaw.counterbore_depth.mm(), true}, plan.rear_mounting.name,
                    hole.name, &layout::rules::counterbore});
    work.push_back({"hole, " + hole.name, Drill{face, at, units::in_mm(jaw.screw->shank), std::nullopt}, plan.rear_mounting.name, hole.name,
                    &layout::rules::mounting_screw});
  }
}

void pilots(const std::vector<geometry::Point>& places, double diameter, double depth, const std::string& name, std::vector<Operation>& work) {
  const Face face = back();
  for (std::size_t i = 0; i < places.size(); ++i)
    work.push_back({name + " " + std::to_string(i + 1), Drill{face, on(face, places[i]), diameter, depth}, "", "", nullptr});
}

}  // namespace

std::vector<geometry::Point> nut_block_screws(const layout::Plan& plan) {
  std::vector<geometry::Point> places;
  for (const auto& hole : plan.screws.holes)
    for (const double side : {-1.0, 1.0}) places.push_back({hole.at.x + side * plan.rear_nut.bolt_offset.mm(), hole.at.y});
  return places;
}

std::vector<geometry::Point> bracket_screws(const layout::Plan& plan) {
  std::vector<geometry::Point> places;
  // In the lower third of the leg, well below the bench top.
  const double z = plan.bench.axis_depth.mm() - plan.bench.top_thickness.mm() - 2 * plan.bracket.down_leg.mm() / 3;
  for (const auto& x : plan.bracket.x) places.push_back({x.mm(), z});
  return places;
}

double nut_block_screw_depth(const layout::Plan& plan) {
  return units::in_mm(plan.rear_nut.screw->length) - plan.rear_nut.bar_thickness.mm();
}

double bracket_screw_depth(const layout::Plan& plan) {
  return std::min(units::in_mm(plan.bracket.screw->length) - plan.bracket.thickness.mm(), plan.rear_jaw.thickness.mm() - 1);
}

Part rear_jaw(const layout::Plan& plan) {
  const auto& jaw = plan.rear_jaw;
  const double joint = jaw.above.mm() - jaw.cap_height.mm();
  BuiltUp whole{{member(core(plan, joint)), member(cap(plan, joint))}, {{Joint::Kind::glued, {}}}, {}};
  const Face face = front(jaw.thickness.mm());
  for (const auto& hole : plan.screws.holes)
    whole.after.push_back({"bore for the bush, " + hole.name, Drill{face, on(face, hole.at), jaw.bush_outside.mm(), std::nullopt}, plan.screws.name,
                           hole.name, &layout::rules::bush_outside});
  mounting(plan, whole.after);
  pilots(nut_block_screws(plan), units::in_mm(plan.rear_nut.screw->shank), nut_block_screw_depth(plan), "pilot for a nut block screw", whole.after);
  pilots(bracket_screws(plan), units::in_mm(plan.bracket.screw->shank), bracket_screw_depth(plan), "pilot for a bracket screw", whole.after);
  return {"rear jaw", std::move(whole), Making::made};
}

}  // namespace visewright::parts
