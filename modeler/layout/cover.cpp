// The cover and the idler axles behind it.
#include <algorithm>

#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double band_mm = 22, inside_jaw_mm = 3, cover_expansion = 68e-6;

double largest_pocket_radius(const Plan& plan) {
  double largest = 0;
  for (const Gear& gear : plan.train.gears) largest = std::max(largest, gear.pocket.mm() / 2);
  return largest;
}

void fix_outline(Desk& d) {
  auto& plan = d.plan;
  auto& cover = plan.cover;
  auto& c = d.choose;
  const double radius = largest_pocket_radius(plan);
  const auto pocket_id = plan.train.gears.front().pocket.id;
  const double half = std::min(plan.train.spacing.mm() / 2 + radius + band_mm, plan.front_jaw.length.mm() / 2 - inside_jaw_mm);
  cover.right = c.derived(rules::cover_side, half, {plan.train.spacing.id, pocket_id});
  cover.left = {units::mm(-half), cover.right.id};
  const double height = std::min(radius + band_mm, plan.front_jaw.below.mm() - inside_jaw_mm);
  cover.top = c.derived(rules::cover_height, height, {pocket_id});
  cover.bottom = {units::mm(-height), cover.top.id};
  cover.corner = c.derived(rules::cover_corner, 8);
  cover.ease = c.derived(rules::cover_ease, 1);
}

void fix_holes(Desk& d) {
  auto& plan = d.plan;
  auto& cover = plan.cover;
  auto& c = d.choose;
  const double growth = (cover.material->expansion_per_kelvin.value_or(cover_expansion)) * plan.train.spacing.mm() *
                        plan.accuracy.temperature_swing.value;
  cover.seat = c.derived(rules::seat, c.up(plan.bearing.outside.mm() + 2 * (growth / 2 + 0.25), 1, 4), {plan.bearing.outside.id, plan.train.spacing.id, plan.accuracy.temperature_swing.id});
  cover.lip_bore = c.derived(rules::lip_bore, std::round((plan.bearing.inner_land.mm() + plan.bearing.outer_land.mm()) / 2),
                             {plan.bearing.inner_land.id, plan.bearing.outer_land.id});
  cover.axle_hole = c.derived(rules::axle_hole, plan.axle.tap.mm() + 0.5, {plan.axle.tap.id});
  cover.axle_slot = c.derived(rules::axle_slot, cover.axle_hole.mm() + 2.5, {cover.axle_hole.id});
  cover.edge_screw_row = d.catalogue.wood_screw("wood screw 4 x 30");
  if (!cover.edge_screw_row) cover.edge_screw_row = plan.rear_jaw.screw;
  cover.edge_screw = c.catalogue(rules::edge_screw, "cover.edge_screw", cover.edge_screw_row->shank);
  cover.edge_hole = c.derived(rules::edge_hole, cover.edge_screw.mm() + 1, {cover.edge_screw.id});
  cover.edge_slot = c.derived(rules::edge_slot, cover.edge_hole.mm() + 1.5, {cover.edge_hole.id});
}

}  // namespace

void fix_axle_bearing(Desk& d) {
  auto& plan = d.plan;
  auto& axle = plan.axle;
  auto& c = d.choose;
  axle.material = d.material("axle.material", d.design.axle.material, "steel");
  const bool large = plan.train.module.mm() >= 2.5;
  const double usual = c.inch() ? (large ? 12.7 : 9.525) : (large ? 12.0 : 8.0);
  axle.diameter = c.length(rules::axle_diameter, d.design.axle.diameter, usual);
  const auto* row = usual_bearing(d.catalogue, axle.diameter.value);
  if (!row) {
    d.wrong("axle.diameter", "no bearing of the catalogue has this bore", "the bore of a bearing in `catalogue bearings`",
            place_of(d.design.axle.diameter));
    return;
  }
  auto& b = axle.bearing;
  b.row = row;
  b.bore = c.catalogue(rules::bearing_size, "axle.bearing.bore", row->bore);
  b.outside = c.catalogue(rules::bearing_size, "axle.bearing.outside", row->outside);
  b.width = c.catalogue(rules::bearing_size, "axle.bearing.width", row->width_shielded);
  const double wall = b.outside.mm() - b.bore.mm();
  b.inner_land = c.named(rules::inner_land, "axle.bearing.inner_land", b.bore.mm() + 0.3 * wall, {b.bore.id, b.outside.id});
  b.outer_land = c.named(rules::outer_land, "axle.bearing.outer_land", b.outside.mm() - 0.3 * wall, {b.bore.id, b.outside.id});
}

void fix_axles(Desk& d) {
  auto& plan = d.plan;
  auto& axle = plan.axle;
  auto& c = d.choose;
  const double gap = plan.train.axial_gap.mm(), face = plan.train.face_width.mm(), width = axle.bearing.width.mm();
  axle.hole_depth = c.derived(rules::axle_hole_depth, std::min(2.5 * axle.diameter.mm(), plan.front_jaw.backing.mm() - 10),
                              {axle.diameter.id, plan.front_jaw.backing.id});
  axle.front_out = c.derived(rules::axle_front, plan.cover.rear_out.mm() - 0.3, {plan.cover.rear_out.id});
  axle.spacer_outside = c.derived(rules::spacer_outside, axle.bearing.inner_land.mm(), {axle.bearing.inner_land.id});
  axle.spacer_rear = c.derived(rules::spacer_rear, gap + (face - width) / 2,
                               {plan.train.axial_gap.id, plan.train.face_width.id, axle.bearing.width.id});
  axle.spacer_front = c.derived(rules::spacer_front, axle.front_out.mm() - plan.front_jaw.joint_out.mm() - axle.spacer_rear.mm() - width,
                                {axle.front_out.id});
  axle.tap = c.derived(rules::axle_tap, axle.diameter.mm() >= 10 ? 5 : 4);
  axle.tap_depth = c.derived(rules::axle_tap_depth, 3 * axle.tap.mm(), {axle.tap.id});
}

void fix_cover(Desk& d) {
  d.plan.cover.material = d.material("cover.material", d.design.cover.material, "polycarbonate");
  fix_axles(d);
  fix_outline(d);
  fix_holes(d);
}

}  // namespace visewright::layout
