#include "parts/axle.h"

#include <cmath>

#include "parts/compose.h"

namespace visewright::parts {
namespace {

/// What a spacer's bore is larger than the axle, to slide on.
constexpr double spacer_play_mm = 0.2;

Part spacer(std::string name, const layout::Plan& plan, const layout::Size& length) {
  return made_of(std::move(name), Rod{plan.axle.material, plan.axle.spacer_outside.mm(), length.mm()},
                 {because(drill("bore", front(length.mm()), {0, 0}, plan.axle.diameter.mm() + spacer_play_mm), plan,
                          plan.axle.diameter)});
}

}  // namespace

Part axle(const layout::Plan& plan) {
  const layout::AxlePlan& a = plan.axle;
  const double length = a.hole_depth.mm() + a.front_out.mm() - plan.front_jaw.joint_out.mm();
  const Face end = front(length);
  const std::string thread = "M" + std::to_string(std::lround(a.tap.mm()));
  return made_of("axle", Rod{a.material, a.diameter.mm(), length},
                 {because(drill("hole for the cover's screw", end, {0, 0}, a.tap.mm(), a.tap_depth.mm()), plan, a.tap),
                  because({"thread for the cover's screw", CutThread{end, {0, 0}, thread, a.tap_depth.mm()}, {}, {}},
                          plan, a.tap)});
}

Part rear_spacer(const layout::Plan& plan) { return spacer("spacer, rear", plan, plan.axle.spacer_rear); }
Part front_spacer(const layout::Plan& plan) { return spacer("spacer, front", plan, plan.axle.spacer_front); }

}  // namespace visewright::parts
