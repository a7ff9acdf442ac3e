// Hand wheels, their grips, and what they need on the screw's journal.
#include <algorithm>

#include "layout/rules_bench.h"
#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double rim_mm = 20, hub_gap_mm = 3, usual_hub_mm = 45;

void fix_place_of_wheels(Desk& d) {
  auto& wheel = d.plan.wheel;
  const std::string at = d.design.drive.at ? d.design.drive.at->value : "ends";
  if (at == "ends") wheel.on_screw = {0, 1};
  if (at == "left") wheel.on_screw = {0};
  if (at == "right") wheel.on_screw = {1};
  wheel.on_centre = at == "centre";
  d.choose.text(rules::hand_force, "drive.at", at, place_of(d.design.drive.at));
}

void fix_grip(Desk& d) {
  auto& wheel = d.plan.wheel;
  wheel.grip_diameter = d.choose.derived(rules::grip_diameter, 24);
  wheel.grip_length = d.choose.length(rules::grip_length, d.design.drive.wheel.grip, 64);
  wheel.grip_radius = d.choose.derived(rules::grip_radius, wheel.diameter.mm() / 2 - 16, {wheel.diameter.id});
  wheel.grip_out = d.choose.derived(rules::grip_out, wheel.hub_front_out.mm() + 1 + wheel.grip_diameter.mm() / 2,
                                    {wheel.hub_front_out.id, wheel.grip_diameter.id});
}

/// Rim and hub must leave a web between them.
void refuse_small_wheel(Desk& d) {
  constexpr double rim_and_web_mm = 50;
  const auto& wheel = d.plan.wheel;
  const double least = wheel.hub_diameter.mm() + rim_and_web_mm;
  if (wheel.diameter.mm() >= least) return;
  const auto words = [&](double mm) { return units::write_length(units::mm(mm), d.plan.unit); };
  const auto& given = d.design.drive.wheel.diameter;
  if (given)
    d.wrong("drive.wheel.diameter", "a wheel of " + words(wheel.diameter.mm()) + " has no room for hub and rim", "at least " + words(least), &given->place);
  else
    d.wrong("train.teeth", "screws " + words(d.plan.train.spacing.mm()) + " apart leave no room for the hand wheels",
            "more or larger gears, or one wheel (drive.at)", &d.design.train.teeth.place);
}

}  // namespace

void fix_wheel(Desk& d) {
  auto& plan = d.plan;
  auto& wheel = plan.wheel;
  auto& c = d.choose;
  const auto& given = d.design.drive.wheel;
  fix_place_of_wheels(d);
  plan.gaps.rim_to_cover = c.length(rules::rim_to_cover, d.design.gaps.rim_to_cover, 25);
  plan.gaps.rim_to_rim = c.length(rules::rim_to_rim, d.design.gaps.rim_to_rim, 40);
  double room = 2 * plan.bench.axis_depth.mm() - 20;
  if (wheel.on_screw.size() == 2) room = std::min(room, plan.train.spacing.mm() - plan.gaps.rim_to_rim.mm());
  wheel.diameter = c.length(rules::wheel_diameter, given.diameter, std::min(180.0, std::floor(room / 5) * 5),
                            {plan.bench.axis_depth.id, plan.train.spacing.id});
  wheel.hub_diameter = c.derived(rules::hub_diameter, std::max(36.0, c.up(2.5 * plan.screw.journal.mm(), 1, 4)), {plan.screw.journal.id});
  refuse_small_wheel(d);
  const double cover_front = plan.cover.rear_out.mm() + plan.cover.thickness.mm();
  wheel.hub_rear_out = c.derived(rules::hub_rear, cover_front + hub_gap_mm, {plan.cover.rear_out.id});
  const double hub_length = given.hub ? units::in_mm(given.hub->value) : usual_hub_mm;
  const double front = std::max(wheel.hub_rear_out.mm() + hub_length, cover_front + plan.gaps.rim_to_cover.mm() + rim_mm);
  wheel.hub_front_out = c.derived(rules::hub_front, front, {wheel.hub_rear_out.id});
  wheel.material = d.material("drive.wheel.material", {}, "aluminium");
  wheel.rim_thickness = c.derived(rules::rim_thickness, rim_mm);
  wheel.rim_rear_out = c.derived(rules::rim_rear, front - rim_mm, {wheel.hub_front_out.id, wheel.rim_thickness.id});
  wheel.web_thickness = c.derived(rules::web_thickness, 8);
  wheel.bore = c.derived(rules::wheel_bore, plan.screw.journal.mm(), {plan.screw.journal.id});
  wheel.lock_screw = c.derived(rules::lock_screw, 6);
  wheel.hand_force = c.ledger().ratio("drive.hand_force", reasons::Unit::newton,
                                      d.design.drive.hand_force ? units::in_newtons(d.design.drive.hand_force->value) : 100.0,
                                      d.design.drive.hand_force ? reasons::Basis::given : reasons::Basis::assumed, rules::hand_force, {},
                                      d.design.drive.hand_force ? d.design.drive.hand_force->place : base::Place{});
  fix_grip(d);
  auto& screw = plan.screw;
  if (wheel.on_centre)  // a screw that carries no wheel would stand in the way of the one in the middle
    screw.front_out = c.named(rules::screw_front_plain, "screw.front_out", cover_front, {plan.cover.rear_out.id, plan.cover.thickness.id});
  else
    screw.front_out = c.derived(rules::screw_front, front, {wheel.hub_front_out.id});
  screw.groove_out = c.derived(rules::groove_out, wheel.hub_rear_out.mm() + 12, {wheel.hub_rear_out.id});
  screw.groove_width = c.derived(rules::groove_width, wheel.lock_screw.mm() + 0.5, {wheel.lock_screw.id});
  screw.groove_depth = c.derived(rules::groove_depth, 1);
  screw.dimple = c.derived(rules::dimple, 0.7 * wheel.lock_screw.mm(), {wheel.lock_screw.id});
}

}  // namespace visewright::layout
