#include "parts/lining.h"

#include "layout/rules_jaw.h"
#include "parts/faces.h"

namespace visewright::parts {
namespace {

Part lining(const layout::Plan& plan, std::string name, double length, double below, double above) {
  const double thickness = plan.lining.thickness.mm();
  Piece piece{Sheet{plan.lining.material, {-length / 2, -below, 0}, {length, below + above, thickness}, true}, {}};
  const Face face = front(thickness);
  for (const auto& hole : plan.screws.holes)
    piece.operations.push_back({"hole for the " + hole.name + " screw", Drill{face, on(face, hole.at), plan.lining.hole.mm(), std::nullopt},
                                plan.screws.name, hole.name, &layout::rules::lining_hole});
  return {std::move(name), std::move(piece), Making::made};
}

}  // namespace

Part front_lining(const layout::Plan& plan) {
  // The bevel leaves the clamping face whole, so the lining covers it up to the top.
  return lining(plan, "front lining", plan.front_jaw.length.mm(), plan.front_jaw.below.mm(), plan.front_jaw.above.mm());
}

Part rear_lining(const layout::Plan& plan) {
  return lining(plan, "rear lining", plan.rear_jaw.length.mm(), plan.rear_jaw.below.mm(), plan.rear_jaw.above.mm());
}

}  // namespace visewright::parts
