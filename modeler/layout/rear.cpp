// Rear jaw, nut blocks and brackets: what is bolted to the bench.
#include <algorithm>

#include "layout/rules_bench.h"
#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

/// Usual thicknesses of panels and doubled panels, mm.
double panel(double least_mm) {
  for (const double size : {18.0, 24.0, 30.0, 36.0, 42.0, 48.0, 54.0, 60.0})
    if (size >= least_mm - 1e-9) return size;
  return std::ceil(least_mm);
}

void fix_jaw(Desk& d) {
  auto& plan = d.plan;
  auto& jaw = plan.rear_jaw;
  const auto& given = d.design.rear_jaw;
  auto& c = d.choose;
  jaw.core = d.material("rear_jaw.core", given.core, "birch plywood");
  jaw.cap = d.material("rear_jaw.cap", given.cap, plan.front_jaw.wood->name);
  const double rod = plan.screw.diameter.mm();
  const double least = std::max(30.0, rod + 14);
  jaw.thickness = c.length(rules::rear_thickness, given.thickness, c.inch() ? c.up(least, 1, 16) : panel(least), {plan.screw.diameter.id});
  jaw.length = c.length(rules::rear_length, given.length, plan.front_jaw.length.mm(), {plan.front_jaw.length.id});
  jaw.above = c.derived(rules::rear_above, plan.bench.axis_depth.mm(), {plan.bench.axis_depth.id});
  const double below = given.height ? units::in_mm(given.height->value) - jaw.above.mm() : plan.front_jaw.below.mm();
  jaw.below = c.derived(rules::rear_below, below, {plan.front_jaw.below.id});
  jaw.cap_height = c.derived(rules::cap_height, 25);
  jaw.front_out = c.derived(rules::rear_front, -plan.lining.thickness.mm(), {plan.lining.thickness.id});
  jaw.rear_out = c.derived(rules::rear_rear, jaw.front_out.mm() - jaw.thickness.mm(), {jaw.front_out.id, jaw.thickness.id});
  jaw.bush_outside = plan.front_jaw.bush_outside;
  jaw.bush_bore = plan.front_jaw.bush_bore;
  const std::string usual = c.inch() ? "wood screw 1/4 x 3-1/2 in" : "wood screw 6 x 90";
  const std::string name = given.mounting.screw ? given.mounting.screw->value : usual;
  jaw.screw = d.catalogue.wood_screw(name);
  c.text(rules::mounting_screw, "rear_jaw.mounting.screw", name, place_of(given.mounting.screw));
  if (!jaw.screw) {
    d.wrong("rear_jaw.mounting.screw", "the catalogue knows no \"" + name + "\"", "see `catalogue screws`", place_of(given.mounting.screw));
    return;
  }
  const Size head = c.catalogue(rules::mounting_head, "rear_jaw.mounting.head", jaw.screw->head);
  jaw.counterbore = c.derived(rules::counterbore, head.mm() + 3, {head.id});
  jaw.counterbore_depth = c.derived(rules::counterbore_depth, 8);
}

void fix_nut_block(Desk& d) {
  auto& plan = d.plan;
  auto& nut = plan.rear_nut;
  const auto& bar = d.design.rear_nut.bar;
  auto& c = d.choose;
  const auto rod_id = plan.screw.diameter.id;
  const double rod = plan.screw.diameter.mm();
  c.text(rules::rear_nut_kind, "rear_nut.kind", nut.kind, place_of(d.design.rear_nut.kind));
  const auto& row = *nut.nut[0];
  nut.across_flats = c.catalogue(rules::rear_nut_across, "rear_nut.across_flats", row.across_flats_max);
  const double whole = units::in_mm(row.height_max);
  const double length = nut.kind == "hexagon bar" ? c.up(1.5 * rod, 1, 8) : nut.kind == "half long nut" ? (whole - 2) / 2 : whole;
  nut.length = c.derived(rules::rear_nut_length, length, {rod_id});
  nut.bar_thickness = c.length(rules::bar_thickness, bar.thickness, c.up(rod / 2, 1, 8), {rod_id});
  nut.bar_length = c.length(rules::bar_length, bar.length, c.up(5.5 * rod, 1, 16), {rod_id});
  nut.bar_bore = c.derived(rules::bar_bore, rod + 2, {rod_id});
  nut.bar_rear_out = c.derived(rules::bar_rear, plan.rear_jaw.rear_out.mm() - nut.bar_thickness.mm(), {plan.rear_jaw.rear_out.id, nut.bar_thickness.id});
  nut.rear_out = c.derived(rules::nut_rear, nut.bar_rear_out.mm() - nut.length.mm(), {nut.bar_rear_out.id, nut.length.id});
  nut.bolt_offset = c.derived(rules::bolt_offset, 2 * rod, {rod_id});
  nut.screw = d.catalogue.wood_screw(c.inch() ? "wood screw 1/4 x 1-1/2 in" : "wood screw 6 x 40");
  if (!nut.screw) nut.screw = plan.rear_jaw.screw;
  const Size shank = c.catalogue(rules::bolt_shank, "rear_nut.bolt_shank", nut.screw->shank);
  nut.bolt_hole = c.derived(rules::bolt_hole, shank.mm() + 3, {shank.id});
  nut.bead = c.derived(rules::rear_bead, 4);
}

/// The apron limits the brackets, so its place is fixed before them.
void fix_setback(Desk& d) {
  auto& plan = d.plan;
  auto& c = d.choose;
  const auto& given = d.design.bench.apron;
  plan.bench.has_apron = given.thickness || given.height || given.setback || given.doubler;
  const Size setback = c.length(rules::apron_setback, given.setback, 10 - plan.rear_nut.rear_out.mm(), {plan.rear_nut.rear_out.id});
  plan.bench.apron_front_out = c.derived(rules::apron_front, -setback.mm(), {setback.id});
}

void fix_brackets(Desk& d) {
  auto& plan = d.plan;
  auto& b = plan.bracket;
  const auto& given = d.design.bracket;
  auto& c = d.choose;
  b.material = d.material("bracket.material", given.material, "steel");
  b.thickness = c.length(rules::bracket_thickness, given.thickness, c.inch() ? 6.35 : 6);
  b.width = c.length(rules::bracket_width, given.width, c.inch() ? 38.1 : 40);
  const Size &apron = plan.bench.apron_front_out, &jaw = plan.rear_jaw.rear_out;
  const double room = plan.bench.has_apron ? std::floor(jaw.mm() - apron.mm() - 3) : 45.0;
  b.top_leg = c.length(rules::bracket_top, given.top_leg, std::min(45.0, room), {apron.id, jaw.id});
  b.down_leg = c.length(rules::bracket_down, given.down_leg, 70);
  const double beside = plan.train.spacing.mm() / 2 - plan.rear_nut.bar_length.mm() / 2 - 15 - b.width.mm() / 2;
  const auto spacing_id = plan.train.spacing.id, bar_id = plan.rear_nut.bar_length.id;
  if (beside >= b.width.mm() / 2 + 5) {
    b.x = {c.named(rules::bracket_x, "bracket.x 1", -beside, {spacing_id, bar_id}), c.named(rules::bracket_x, "bracket.x 2", beside, {spacing_id, bar_id})};
  } else {
    b.x = {c.named(rules::bracket_x, "bracket.x 1", 0, {spacing_id, bar_id})};
  }
  b.screw = plan.rear_nut.screw;
  b.hole = c.derived(rules::bracket_hole, units::in_mm(b.screw->shank) + 1);
  b.slot_width = c.derived(rules::bracket_slot_width, b.hole.mm(), {b.hole.id});
  b.slot_length = c.derived(rules::bracket_slot_length, b.hole.mm() + 6, {b.hole.id});
  b.bead = c.derived(rules::bracket_bead, 5);
}

}  // namespace

void fix_rear(Desk& d) {
  fix_jaw(d);
  if (!d.plan.rear_jaw.screw) return;
  fix_nut_block(d);
  fix_setback(d);
  fix_brackets(d);
}

}  // namespace visewright::layout
