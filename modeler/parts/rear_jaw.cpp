#include "parts/rear_jaw.h"

#include "parts/bracket.h"
#include "parts/compose.h"
#include "parts/fasteners.h"

namespace visewright::parts {
namespace {

using geometry::Point;
using layout::Hole;
using layout::Plan;

Part core(const Plan& plan) {
  const layout::RearJawPlan& jaw = plan.rear_jaw;
  const double height = jaw.below.mm() + jaw.above.mm() - jaw.cap_height.mm();
  return made_of(
      "rear jaw core",
      Sheet{jaw.core, {-jaw.length.mm() / 2, -jaw.below.mm(), 0}, {jaw.length.mm(), height, jaw.thickness.mm()}, true});
}

Part cap(const Plan& plan) {
  const layout::RearJawPlan& jaw = plan.rear_jaw;
  const double length = jaw.length.mm(), height = jaw.cap_height.mm(), thickness = jaw.thickness.mm();
  return made_of("rear jaw cap", Board{jaw.cap,
                                       {-length / 2, jaw.above.mm() - height, 0},
                                       {length, height, thickness},
                                       rough(length, thickness, height)});
}

/// The counterbore comes first: the clearance hole would take away its centre.
void add_mounting(const Plan& plan, std::vector<Operation>& work) {
  const layout::RearJawPlan& jaw = plan.rear_jaw;
  const Face face = front(jaw.thickness.mm());
  for (const Hole& hole : plan.rear_mounting.holes)
    work.push_back(follows(
        because(recess("counterbore, " + hole.name, face, hole.at, jaw.counterbore.mm(), jaw.counterbore_depth.mm()),
                plan, jaw.counterbore),
        plan.rear_mounting, hole));
  for (const Hole& hole : plan.rear_mounting.holes)
    work.push_back(
        follows(drill("screw hole, " + hole.name, face, hole.at, clearance_mm(units::in_mm(jaw.screw->shank))),
                plan.rear_mounting, hole));
}

/// From the back: the bolts of the nut blocks and the down legs of the brackets.
void add_pilots(const Plan& plan, std::vector<Operation>& work) {
  const Face face = back();
  const double nut_screw = pilot_mm(units::in_mm(plan.rear_nut.screw->shank)),
               bracket_screw_mm = pilot_mm(units::in_mm(plan.bracket.screw->shank));
  for (const Hole& hole : plan.screws.holes)
    for (const double side : {-1.0, 1.0})
      work.push_back(follows(because(drill("pilot hole, nut block " + hole.name, face,
                                           on(face, hole.at + Point{side * plan.rear_nut.bolt_offset.mm(), 0}),
                                           nut_screw, nut_block_pilot_mm(plan)),
                                     plan, plan.rear_nut.bolt_offset),
                             plan.screws, hole));
  for (std::size_t i = 0; i < plan.bracket.x.size(); ++i)
    work.push_back(
        because(drill("pilot hole, bracket " + std::to_string(i + 1), face,
                      on(face, Point{plan.bracket.x[i].mm(), bracket_line_mm(plan) + bracket_hole_y_mm(plan)}),
                      bracket_screw_mm, bracket_pilot_mm(plan)),
                plan, plan.bracket.x[i]));
}

}  // namespace

Part rear_jaw(const Plan& plan) {
  const layout::RearJawPlan& jaw = plan.rear_jaw;
  const Face face = front(jaw.thickness.mm());
  BuiltUp glued{{member(core(plan)), member(cap(plan))}, {{Joint::Kind::glued, {}}}, {}};
  for (const Hole& hole : plan.screws.holes)
    glued.after.push_back(follows(
        because(drill("bore for the bush, " + hole.name, face, hole.at, jaw.bush_outside.mm()), plan, jaw.bush_outside),
        plan.screws, hole));
  add_mounting(plan, glued.after);
  add_pilots(plan, glued.after);
  return {"rear jaw", std::move(glued)};
}

}  // namespace visewright::parts
