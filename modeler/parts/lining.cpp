#include "parts/lining.h"

#include "parts/compose.h"

namespace visewright::parts {
namespace {

Part lining(std::string name, const layout::Plan& plan, double length_mm, double below_mm, double above_mm) {
  const double thickness = plan.lining.thickness.mm();
  const Face face = front(thickness);
  std::vector<Operation> work;
  for (const layout::Hole& hole : plan.screws.holes)
    work.push_back(follows(because(drill("hole for the screw, " + hole.name, face, hole.at, plan.lining.hole.mm()),
                                   plan, plan.lining.hole),
                           plan.screws, hole));
  return made_of(
      std::move(name),
      Sheet{plan.lining.material, {-length_mm / 2, -below_mm, 0}, {length_mm, below_mm + above_mm, thickness}, false},
      std::move(work));
}

}  // namespace

Part front_lining(const layout::Plan& plan) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  return lining("front lining", plan, jaw.length.mm(), jaw.below.mm(), jaw.above.mm());
}

Part rear_lining(const layout::Plan& plan) {
  const layout::RearJawPlan& jaw = plan.rear_jaw;
  return lining("rear lining", plan, jaw.length.mm(), jaw.below.mm(), jaw.above.mm());
}

}  // namespace visewright::parts
