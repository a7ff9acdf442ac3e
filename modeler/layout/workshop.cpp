// What the design says of the workshop, and what is assumed where it says nothing.
#include "design/strength.h"
#include "layout/rules_workshop.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

using reasons::Basis;
using reasons::Unit;

void fix_accuracy(Desk& d) {
  auto& plan = d.plan.accuracy;
  auto& c = d.choose;
  const auto& given = d.design.accuracy;
  const std::string way = given.marking ? given.marking->value : "template";
  plan.marking = way == "one datum" ? Marking::one_datum : way == "one from the next" ? Marking::chain : Marking::from_template;
  c.text(rules::marking, "accuracy.marking", way, place_of(given.marking));
  const auto usual = [&](const reasons::Rule& rule, const design::Maybe<units::Length>& value, double mm) {
    return value ? c.length(rule, value, 0) : c.ledger().length(std::string(rule.name), units::mm(mm), Basis::assumed, rule);
  };
  plan.mark_error = usual(rules::mark_error, given.mark_error, 0.3);
  plan.drill_wander = usual(rules::drill_wander, given.drill_wander, 0.2);
  plan.template_error = usual(rules::template_error, given.template_error, 0.1);
  plan.template_scale = c.assumed(rules::template_scale, Unit::percent, given.template_scale, 0);
  plan.moisture_swing = c.assumed(rules::moisture_swing, Unit::percent, given.moisture_swing, 4);
  plan.temperature_swing = c.assumed(rules::temperature_swing, Unit::kelvin, given.temperature_swing, 20);
  plan.hole_allowance = usual(rules::hole_allowance, given.hole_allowance, 0.2);
  if (given.kerf) plan.kerf = c.length(rules::kerf, given.kerf, 0);
  if (given.cutter) plan.cutter = c.length(rules::cutter, given.cutter, 0);
}

std::vector<double> in_mm(const design::Maybe<std::vector<units::Length>>& given) {
  std::vector<double> result;
  if (given)
    for (const auto& size : given->value) result.push_back(units::in_mm(size));
  return result;
}

/// The shops there are, quoted: "one of "small", …".
std::string shop_names(const Desk& d) {
  std::string text = "one of";
  for (const auto& shop : d.catalogue.shops()) text += (text == "one of" ? " \"" : ", \"") + shop.name + "\"";
  return text;
}

void fix_owned(Desk& d) {
  auto& owned = d.plan.workshop.owned;
  const auto& given = d.design.shop;
  if (given.preset) {
    owned.preset = given.preset->value;
    if (!d.catalogue.shop(owned.preset)) d.wrong("shop.preset", "the catalogue knows no shop \"" + owned.preset + "\"", shop_names(d), &given.preset->place);
  }
  owned.drills_mm = in_mm(given.drills);
  owned.hole_saws_mm = in_mm(given.hole_saws);
  owned.flat_bits_mm = in_mm(given.flat_bits);
  owned.cutters_mm = in_mm(given.cutters);
  owned.print_bed_mm = in_mm(given.print_bed);
  owned.laser_bed_mm = in_mm(given.laser_bed);
}

void fix_stock(Desk& d) {
  for (const design::StockPiece& piece : d.design.stock) {
    StockPiece kept{piece.kind.value, piece.material.value, {}, piece.count ? piece.count->value : 1, {}, piece.kind.place};
    for (const auto& size : piece.size.value) kept.size_mm.push_back(units::in_mm(size));
    if (piece.price) kept.price = piece.price->value;
    d.plan.workshop.stock.push_back(std::move(kept));
  }
  if (d.design.measured.made) d.plan.workshop.made = d.design.measured.made->value;
}

/// A figure of a material: given, or its row's, or a careful one where the row has none.
Ratio of_material(Desk& d, const reasons::Rule& rule, const design::Maybe<double>& given, const std::optional<double>& row, double careful) {
  if (given || !row) return d.choose.assumed(rule, Unit::mpa, given, careful);
  return d.choose.ledger().ratio(std::string(rule.name), Unit::mpa, *row, Basis::catalogue, rule);
}

void assume_materials(Desk& d) {
  auto& plan = d.plan;
  auto& a = plan.assume;
  const auto& given = d.design.assume;
  a.screw_modulus = d.choose.assumed(rules::screw_modulus, Unit::mpa, given.screw_modulus_mpa, 205000);
  const auto yield = design::yield_stress(plan.screw.strength_class);
  a.screw_yield = d.choose.ledger().ratio("assume.screw_yield", Unit::mpa, yield ? units::in_megapascals(*yield) : 240,
                                          d.design.screw.strength_class ? Basis::given : Basis::assumed, rules::screw_yield, {},
                                          d.design.screw.strength_class ? d.design.screw.strength_class->place : base::Place{});
  const auto& wood = *plan.front_jaw.wood;
  a.wood_modulus = of_material(d, rules::wood_modulus, given.wood_modulus_mpa, wood.modulus_mpa, 10000);
  a.panel_modulus = of_material(d, rules::panel_modulus, given.panel_modulus_mpa, plan.rear_jaw.core->modulus_mpa, 8000);
  a.wood_strength = of_material(d, rules::wood_strength, given.wood_strength_mpa, wood.bending_strength_mpa, 60);
  a.wood_crushing = of_material(d, rules::wood_crushing, given.wood_crushing_mpa, wood.crushing_across_mpa, 4);
  a.gear_strength = of_material(d, rules::gear_strength, given.gear_strength_mpa, plan.train.material->bending_strength_mpa, 40);
  a.cover_strength = of_material(d, rules::cover_strength, given.cover_strength_mpa, plan.cover.material->bending_strength_mpa, 40);
  a.pin_strength = d.choose.assumed(rules::pin_strength, Unit::mpa, given.pin_strength_mpa, 240);
  a.weld_strength = d.choose.assumed(rules::weld_strength, Unit::mpa, given.weld_strength_mpa, 120);
}

void assume_shares(Desk& d) {
  auto& a = d.plan.assume;
  const auto& given = d.design.assume;
  const bool printed = !d.design.train.made_by || d.design.train.made_by->value == "printed";
  a.wood_share = d.choose.assumed(rules::wood_share, Unit::one, given.wood_share, 0.33);
  a.tooth_share = d.choose.assumed(rules::tooth_share, Unit::one, given.tooth_share, printed ? 0.24 : 0.35);
  a.cover_share = d.choose.assumed(rules::cover_share, Unit::one, given.cover_share, 0.3);
  a.withdrawal_share = d.choose.assumed(rules::withdrawal_share, Unit::one, given.withdrawal_share, 0.2);
}

void assume_play(Desk& d) {
  using standards::ThreadFamily;
  auto& a = d.plan.assume;
  auto& c = d.choose;
  const auto& given = d.design.assume;
  const auto family = d.plan.screw.thread->family;
  const bool coarse = family == ThreadFamily::trapezoidal || family == ThreadFamily::acme;
  const auto usual = [&](const reasons::Rule& rule, const design::Maybe<units::Length>& value, double mm) {
    return value ? c.length(rule, value, 0) : c.ledger().length(std::string(rule.name), units::mm(mm), Basis::assumed, rule);
  };
  a.nut_play = usual(rules::nut_play, given.nut_play, coarse ? 0.45 : 0.24);
  a.gear_run_out = usual(rules::gear_run_out, given.gear_run_out, 0.1);
  const auto& lean = given.lean_force;
  a.lean_force = c.ledger().ratio("assume.lean_force", Unit::newton, lean ? units::in_newtons(lean->value) : 300, lean ? Basis::given : Basis::assumed,
                                  rules::lean_force, {}, lean ? lean->place : base::Place{});
}

}  // namespace

void fix_workshop(Desk& d) {
  fix_accuracy(d);
  fix_owned(d);
  fix_stock(d);
}

void fix_assumptions(Desk& d) {
  auto& a = d.plan.assume;
  a.thread_friction = d.choose.assumed(rules::thread_friction, Unit::one, d.design.assume.thread_friction, 0.15);
  a.collar_friction = d.choose.assumed(rules::collar_friction, Unit::one, d.design.assume.collar_friction, 0.15);
  a.mesh_efficiency = d.choose.assumed(rules::mesh_efficiency, Unit::one, d.design.assume.mesh_efficiency, 0.97);
  assume_materials(d);
  assume_shares(d);
  assume_play(d);
}

}  // namespace visewright::layout
