// The shaft of a wheel in the middle: a piece of the screws' rod, held by a bearing in the backing and one in the cover.
#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double relief_depth_mm = 2, clearance_mm = 2, least_floor_mm = 8;

}  // namespace

void fix_shaft(Desk& d) {
  auto& plan = d.plan;
  if (!plan.wheel.on_centre) return;
  auto& s = plan.shaft;
  auto& c = d.choose;
  s.relief = c.derived(rules::shaft_relief, c.up(plan.collar.flange_outside.mm() + 2, 1, 4), {plan.collar.flange_outside.id});
  s.relief_depth = c.derived(rules::shaft_relief_depth, relief_depth_mm);
  s.seat = c.derived(rules::shaft_seat, plan.bearing.outside.mm(), {plan.bearing.outside.id});
  s.seat_depth = c.derived(rules::shaft_seat_depth, s.relief_depth.mm() + plan.bearing.width.mm(), {s.relief_depth.id, plan.bearing.width.id});
  s.clearance = c.derived(rules::shaft_clearance, std::round((plan.bearing.inner_land.mm() + plan.bearing.outer_land.mm()) / 2),
                          {plan.bearing.inner_land.id, plan.bearing.outer_land.id});
  s.clearance_depth = c.derived(rules::shaft_clearance_depth, s.seat_depth.mm() + clearance_mm, {s.seat_depth.id});
  s.shoulder_out = c.derived(rules::shaft_shoulder, plan.front_jaw.joint_out.mm() - s.relief_depth.mm(),
                             {plan.front_jaw.joint_out.id, s.relief_depth.id});
  s.rear_out = c.derived(rules::shaft_rear, s.shoulder_out.mm() - plan.bearing.width.mm(), {s.shoulder_out.id, plan.bearing.width.id});
  s.front_out = c.derived(rules::shaft_front, plan.wheel.hub_front_out.mm(), {plan.wheel.hub_front_out.id});
  const double floor = plan.front_jaw.backing.mm() - s.clearance_depth.mm();
  if (floor < least_floor_mm)
    d.wrong("front_jaw.backing",
            "behind the bearing of the wheel in the middle only " + units::write_length(units::mm(floor), plan.unit) + " of backing are left",
            "a thicker backing, or a wheel at the ends", place_of(d.design.front_jaw.backing));
}

}  // namespace visewright::layout
