// The boards of the front jaw and the stack along the screw up to the cover.
#include <algorithm>
#include <cmath>

#include "layout/rules_bench.h"
#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double end_web = 30, bottom_web = 25, cover_band = 22;

double largest_pocket(const Plan& plan) {
  double largest = 0;
  for (const Gear& gear : plan.train.gears) largest = std::max(largest, gear.pocket.mm());
  return largest;
}

void fix_thickness(Desk& d) {
  auto& jaw = d.plan.front_jaw;
  const auto& given = d.design.front_jaw;
  auto& c = d.choose;
  jaw.dog_diameter = c.length(rules::dog_diameter, given.dog_holes.diameter, c.inch() ? 19.05 : 19.0);
  jaw.dog_depth = c.length(rules::dog_depth, given.dog_holes.depth, c.inch() ? 63.5 : 60.0);
  const double axle = d.plan.axle.diameter.mm(), rod = d.plan.screw.diameter.mm();
  const double wanted = std::max({jaw.dog_diameter.mm() + 20, 2.5 * axle + 10, 1.5 * rod});
  jaw.backing = c.length(rules::backing, d.design.measured.backing, given.backing, c.up(wanted, 5, 8),
                         {jaw.dog_diameter.id, d.plan.screw.diameter.id});
  jaw.backing_rear_out = c.derived(rules::backing_rear, d.plan.lining.thickness.mm(), {d.plan.lining.thickness.id});
  jaw.joint_out = c.derived(rules::joint, jaw.backing_rear_out.mm() + jaw.backing.mm(),
                            {d.plan.lining.thickness.id, jaw.backing.id});
}

/// A module of rim at least is left round the hexagon, the flange's recess and the bearing.
void refuse_small_gears(Desk& d) {
  const auto& plan = d.plan;
  const double corners = plan.collar.hexagon.mm() * 2 / std::sqrt(3.0);
  const double drive = std::max(corners, plan.collar.flange_recess.mm()), idler = plan.axle.bearing.outside.mm();
  const auto words = [&](double mm) { return units::write_length(units::mm(mm), plan.unit); };
  for (const Gear& gear : plan.train.gears) {
    const double core = gear.drive ? drive : idler, least = core + 2 * plan.train.module.mm();
    if (gear.root.mm() >= least) continue;
    d.wrong("train.teeth",
            "a gear of " + std::to_string(gear.teeth.value) + " teeth is " + words(gear.root.mm()) + " at the root, and the " +
                (gear.drive ? "collar" : "bearing") + " in it takes " + words(core),
            "at least " + words(least) + " at the root: more teeth, a larger module, or a thinner " + (gear.drive ? "screw" : "axle"),
            &d.design.train.teeth.place);
    return;
  }
}

/// Gears, shoulder, keeper and bearing follow each other outwards from the glue joint.
void fix_stack(Desk& d) {
  auto& plan = d.plan;
  auto& c = d.choose;
  auto& t = plan.train;
  t.rear_out = c.derived(rules::gear_rear, plan.front_jaw.joint_out.mm() + t.axial_gap.mm(), {plan.front_jaw.joint_out.id, t.axial_gap.id});
  t.front_out = c.derived(rules::gear_front, t.rear_out.mm() + t.face_width.mm(), {t.rear_out.id, t.face_width.id});
  plan.collar.flange_recess_depth = c.derived(rules::flange_recess_depth, plan.collar.flange_thickness.mm() - t.axial_gap.mm(),
                                              {plan.collar.flange_thickness.id, t.axial_gap.id});
  plan.collar.hexagon_depth = c.derived(rules::hexagon_depth, plan.collar.nut_height.mm() + 0.5, {plan.collar.nut_height.id});
  const double joint = plan.front_jaw.joint_out.mm();
  const double nut_front = joint + plan.collar.flange_thickness.mm() + plan.collar.nut_height.mm();
  plan.screw.collar_pin_out = c.derived(rules::collar_pin_out, nut_front - plan.collar.nut_height.mm() / 2,
                                        {plan.front_jaw.joint_out.id, plan.collar.flange_thickness.id, plan.collar.nut_height.id});
  plan.screw.shoulder_out = c.derived(rules::shoulder, std::max(t.front_out.mm(), nut_front) + 0.5, {t.front_out.id});

  auto& k = plan.keeper;
  k.bore = c.derived(rules::keeper_bore, plan.screw.journal.mm() + 0.2, {plan.screw.journal.id});
  k.outside = c.derived(rules::keeper_outside, plan.screw.diameter.mm() + 4, {plan.screw.diameter.id});
  k.thickness = c.derived(rules::keeper_thickness, 1.0);
  k.relief_diameter = c.derived(rules::keeper_relief, plan.bearing.inner_land.mm(), {plan.bearing.inner_land.id});
  k.relief_depth = c.derived(rules::keeper_relief_depth, 0.4);
  k.rear_out = c.derived(rules::keeper_rear, plan.screw.shoulder_out.mm(), {plan.screw.shoulder_out.id});
}

void fix_gear_layer(Desk& d) {
  auto& plan = d.plan;
  auto& jaw = plan.front_jaw;
  auto& c = d.choose;
  plan.cover.thickness = c.length(rules::cover_thickness, d.design.measured.cover, d.design.cover.thickness, 8.0);
  const double bearing_front = plan.keeper.rear_out.mm() + plan.keeper.thickness.mm() + plan.gaps.end_float.mm() + plan.bearing.width.mm();
  const double lip = std::max(3.0, 0.4 * plan.cover.thickness.mm());
  const double least = std::max(bearing_front - (plan.cover.thickness.mm() - lip), plan.train.front_out.mm() + 1.5);
  jaw.gear_layer = c.length(rules::gear_layer, d.design.measured.gear_layer, d.design.front_jaw.gear_layer,
                            c.up(least - jaw.joint_out.mm(), 1, 8), {plan.cover.thickness.id, plan.train.face_width.id});
  jaw.front_out = c.derived(rules::jaw_front, jaw.joint_out.mm() + jaw.gear_layer.mm(), {jaw.joint_out.id, jaw.gear_layer.id});
  plan.cover.rear_out = c.derived(rules::cover_rear, jaw.front_out.mm(), {jaw.front_out.id});
  plan.cover.seat_depth = c.derived(rules::seat_depth, bearing_front - jaw.front_out.mm(), {jaw.front_out.id});
  const double seat = plan.cover.seat_depth.mm();
  if (seat <= 0.5 || seat >= plan.cover.thickness.mm() - 1)
    d.wrong("front_jaw.gear_layer", "the bearing's front does not come to lie inside the cover",
            "leave the gear layer out, or take one of " + units::write_length(units::mm(c.up(least - jaw.joint_out.mm(), 1, 8)), plan.unit),
            place_of(d.design.front_jaw.gear_layer));
}

void fix_outline(Desk& d) {
  auto& plan = d.plan;
  auto& jaw = plan.front_jaw;
  const auto& given = d.design.front_jaw;
  auto& c = d.choose;
  const double radius = largest_pocket(plan) / 2;
  const auto pocket_id = plan.train.gears.front().pocket.id;
  jaw.length = c.length(rules::jaw_length, given.length, c.up(plan.train.spacing.mm() + 2 * (radius + end_web), 1, 16), {plan.train.spacing.id, pocket_id});
  jaw.below = c.length(rules::jaw_below, given.below_axis, c.up(radius + bottom_web, 1, 8), {pocket_id});

  auto& bench = plan.bench;
  bench.top_thickness = c.length(rules::top_thickness, d.design.bench.top.thickness, c.inch() ? 57.15 : 60.0);
  const double bar = d.design.rear_nut.bar.height ? units::in_mm(d.design.rear_nut.bar.height->value) : 3 * plan.screw.diameter.mm();
  plan.rear_nut.bar_height = c.length(rules::bar_height, d.design.rear_nut.bar.height, bar, {plan.screw.diameter.id});
  const double bevel_wish = given.bevel.height ? units::in_mm(given.bevel.height->value) : 35.0;
  const double wheel = d.design.drive.wheel.diameter ? units::in_mm(d.design.drive.wheel.diameter->value) / 2 + 10 : 0;
  const double axis = std::max({bench.top_thickness.mm() + bar / 2 + 10, radius + cover_band + 3 + bevel_wish, wheel});
  const double room = std::max(axis, 0.0);
  const double above_guess = d.design.axis_depth ? units::in_mm(d.design.axis_depth->value) : c.up(room, 1, 8);
  jaw.bevel_height = c.length(rules::bevel_height, given.bevel.height, std::min(35.0, above_guess - radius - cover_band - 3), {pocket_id});
  bench.axis_depth = c.length(rules::axis_depth, d.design.axis_depth, above_guess,
                              {bench.top_thickness.id, plan.rear_nut.bar_height.id, pocket_id, jaw.bevel_height.id});
  const double proud = given.top_offset ? units::in_mm(given.top_offset->value) : 0;
  jaw.above = c.derived(rules::jaw_above, bench.axis_depth.mm() + proud, {bench.axis_depth.id});
  jaw.bevel_depth = c.length(rules::bevel_depth, given.bevel.depth, c.up(0.6 * (jaw.backing.mm() + jaw.gear_layer.mm()), 5, 8));
}

/// Midway between two axles, 25 mm or more from a screw and 75 mm or more from the hole before.
void usual_dogs(Desk& d) {
  const auto& gears = d.plan.train.gears;
  auto& list = d.plan.front_jaw.dog_x;
  for (std::size_t i = 0; i + 1 < gears.size(); ++i) {
    const Size &left = gears[i].centre_x, &right = gears[i + 1].centre_x;
    const double x = (left.mm() + right.mm()) / 2;
    const bool clear = std::abs(x - gears.front().centre_x.mm()) >= 25 && std::abs(x - gears.back().centre_x.mm()) >= 25;
    if (clear && (list.empty() || x - list.back().mm() >= 75))
      list.push_back(d.choose.named(rules::dog_x, "front_jaw.dog_holes.x " + std::to_string(list.size() + 1), x, {left.id, right.id}));
  }
}

void fix_dogs(Desk& d) {
  auto& jaw = d.plan.front_jaw;
  auto& c = d.choose;
  const double thickness = jaw.backing.mm() + jaw.gear_layer.mm();
  const bool in_backing = jaw.backing.mm() >= jaw.dog_diameter.mm() + 18;
  const double from_face = in_backing ? jaw.backing.mm() / 2 : thickness / 2;
  jaw.dog_out = c.derived(rules::dog_out, jaw.backing_rear_out.mm() + from_face, {jaw.backing.id, jaw.dog_diameter.id});
  const auto& given = d.design.front_jaw.dog_holes.positions;
  if (given) {
    for (const auto& x : given->value)
      jaw.dog_x.push_back(c.ledger().length("front_jaw.dog_holes.x " + std::to_string(jaw.dog_x.size() + 1), x,
                                            reasons::Basis::given, rules::dog_x, {}, given->place));
  } else {
    usual_dogs(d);
  }
  const double land = thickness - jaw.bevel_depth.mm();
  const bool needed = !jaw.dog_x.empty() && from_face + jaw.dog_diameter.mm() / 2 + 5 > land;
  jaw.landing_length = c.derived(rules::landing, needed ? jaw.dog_diameter.mm() + 30 : 0, {jaw.dog_diameter.id});
}

}  // namespace

void fix_front_jaw(Desk& d) {
  auto& plan = d.plan;
  auto& jaw = plan.front_jaw;
  auto& c = d.choose;
  jaw.wood = d.material("front_jaw.wood", d.design.front_jaw.wood, "beech");
  plan.lining.material = d.material("lining.material", d.design.lining.material, "beech");
  plan.lining.thickness = c.length(rules::lining_thickness, d.design.lining.thickness, c.inch() ? 3.175 : 3.0);
  plan.gaps.end_float = c.length(rules::end_float, d.design.gaps.end_float, 0.3);
  jaw.bush_outside = c.derived(rules::bush_outside, c.inch() ? plan.screw.diameter.mm() + 6.35 : plan.screw.diameter.mm() + 6, {plan.screw.diameter.id});
  jaw.bush_bore = c.derived(rules::bush_bore, plan.screw.diameter.mm() + 0.15, {plan.screw.diameter.id});
  plan.lining.hole = c.derived(rules::lining_hole, jaw.bush_outside.mm(), {jaw.bush_outside.id});
  fix_thickness(d);
  refuse_small_gears(d);
  fix_stack(d);
  fix_gear_layer(d);
  jaw.thrust_recess = c.derived(rules::thrust_recess, c.up(plan.collar.thrust_outside.mm() + 2, 5, 8), {plan.collar.thrust_outside.id});
  jaw.thrust_recess_depth = c.derived(rules::thrust_recess_depth, plan.collar.thrust_thickness.mm(), {plan.collar.thrust_thickness.id});
  jaw.bush_length = c.derived(rules::front_bush_length, jaw.backing.mm() - jaw.thrust_recess_depth.mm(), {jaw.backing.id, jaw.thrust_recess_depth.id});
  fix_outline(d);
  fix_dogs(d);
  jaw.ease = c.derived(rules::ease, 2.0);
  jaw.toe_in = c.assumed(rules::toe_in, reasons::Unit::percent, d.design.front_jaw.toe_in, 0.5);
  jaw.hand_grips = d.design.front_jaw.hand_grips && d.design.front_jaw.hand_grips->value;
  jaw.hand_grip_length = c.derived(rules::hand_grip_length, 100);
  jaw.hand_grip_width = c.derived(rules::hand_grip_width, 20);
  jaw.hand_grip_depth = c.derived(rules::hand_grip_depth, 12);
}

}  // namespace visewright::layout
