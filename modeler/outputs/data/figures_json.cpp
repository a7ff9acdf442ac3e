#include "outputs/data/figures_json.h"

#include "outputs/data/basis.h"
#include "outputs/data/marking_words.h"

namespace visewright::outputs::data {
namespace {

Json turned(double rad) { return number(rad * 180 / units::pi); }

Json chance_json(const analysis::Chance& chance) {
  return {{"builds", chance.builds},
          {"percent", number(chance.percent)},
          {"low_percent", number(chance.low_percent)},
          {"high_percent", number(chance.high_percent)}};
}

Json mesh_spacing_json(const analysis::MeshSpacing& mesh) {
  return {{"worst_mm", number(mesh.spread.worst_mm)},
          {"root_sum_square_mm", number(mesh.spread.root_sum_square_mm)},
          {"backlash_at_worst_mm", number(mesh.backlash_at_worst_mm)}};
}

Json way_json(const analysis::SpacingOfWay& way) {
  Json meshes = Json::array(), parts = Json::array(), first = Json::array();
  for (const auto& mesh : way.meshes) meshes.push_back(mesh_spacing_json(mesh));
  for (const auto& part : way.parts)
    parts.push_back({{"part", part.part}, {"worst_mm", number(part.spread.worst_mm)}, {"root_sum_square_mm", number(part.spread.root_sum_square_mm)}});
  for (const double percent : way.gives_first_percent) first.push_back(number(percent));
  return {{"marking", marking_word(way.marking)},
          {"meshes", std::move(meshes)},
          {"parts", std::move(parts)},
          {"binds", chance_json(way.bind)},
          {"slack", chance_json(way.slack)},
          {"does_not_line_up", chance_json(way.line_up)},
          {"any", chance_json(way.any)},
          {"largest_factor_for_99_of_100", number(way.largest_factor)},
          {"largest_factor_of_meshes", number(way.largest_factor_of_meshes)},
          {"gives_first_percent", std::move(first)},
          {"critical_gear", way.critical_gear + 1}};
}

}  // namespace

void add_gear_measures(Json& gear, const analysis::GearMeasures& m) {
  gear["span_teeth"] = m.span.teeth;
  gear["span_mm"] = number(m.span.span_mm);
  gear["pin_diameter_mm"] = number(m.pins.pin_mm);
  gear["size_over_pins_mm"] = number(m.pins.size_mm);
  gear["chordal_thickness_mm"] = number(m.chord.thickness_mm);
  gear["chordal_height_mm"] = number(m.chord.height_mm);
  gear["tip_thickness_modules"] = number(m.tip_thickness_modules);
}

Json drive_json(const analysis::DriveFigures& d) {
  Json rods = Json::array();
  for (const auto& rod : d.rods)
    rods.push_back({{"thread", rod.thread}, {"taken", rod.taken}, {"clamp_force_n", number(rod.clamp_n)},
                    {"von_mises_mpa", number(rod.top_hold_mpa)}, {"turns", number(rod.turns)}, {"self_locking", number(rod.self_locking)}});
  return {{"hand_torque_nm", number(d.hand_torque_nmm / 1000)},
          {"thread_torque_nm_per_kn", number(d.thread_nmm_per_n)},
          {"collar_torque_nm_per_kn", number(d.collar_nmm_per_n)},
          {"collar_friction_diameter_mm", number(d.collar_friction_diameter_mm)},
          {"clamp_force_middle_n", number(d.clamp_middle_n)},
          {"clamp_force_over_left_screw_n", number(d.clamp_left_n)},
          {"clamp_force_over_right_screw_n", number(d.clamp_right_n)},
          {"self_locking", number(d.self_locking)},
          {"efficiency", number(d.efficiency)},
          {"turns", number(d.turns)},
          {"dead_turn_deg", turned(d.dead_turn_rad)},
          {"one_tooth_mm", number(d.tooth_step_mm)},
          {"finest_setting_step_mm", number(d.finest_step_mm)},
          {"skew_from_backlash_mm", number(d.skew_from_backlash_mm)},
          {"tangential_force_n", number(d.tangential_n)},
          {"rods", std::move(rods)}};
}

Json screws_json(const std::array<analysis::ScrewFigures, 2>& screws) {
  Json list = Json::array();
  for (const auto& screw : screws)
    list.push_back({{"clamp_force_n", number(screw.clamp_force_n)},
                    {"torque_nm", number(screw.torque_nmm / 1000)},
                    {"axial_mpa", number(screw.stress.axial_mpa)},
                    {"bending_mpa", number(screw.stress.bending_mpa)},
                    {"torsion_mpa", number(screw.stress.torsion_mpa)},
                    {"von_mises_mpa", number(screw.stress.von_mises_mpa)}});
  return list;
}

Json droop_json(const analysis::DroopFigures& d) {
  return {{"own_weight_mm", number(d.own.sum_mm)},      {"from_bush_mm", number(d.own.bush_mm)},
          {"from_lean_mm", number(d.own.tilt_mm)},      {"from_bending_mm", number(d.own.bending_mm)},
          {"from_front_bush_mm", number(d.own.front_mm)}, {"leaned_on_mm", number(d.leaned_on.sum_mm)},
          {"leaned_on_mpa", number(d.lean_mpa)},        {"top_edge_opens_mm", number(d.top_edge_mm)},
          {"sideways_mm", number(d.sway_mm)}};
}

Json jaws_json(const analysis::JawFigures& j) {
  return {{"front_bow_mm", number(j.front_bow_mm)},
          {"rear_bow_mm", number(j.rear_bow_mm)},
          {"skew_inside_screws_mm", number(j.skew_inside_mm)},
          {"skew_outside_screws_mm", number(j.skew_outside_mm)},
          {"cover_load_n", number(j.cover_load_n)}};
}

Json movement_json(const analysis::MovementFigures& m) {
  return {{"jaw_top_mm", number(m.jaw_top_mm)},
          {"pocket_mm", number(m.pocket_mm)},
          {"cover_play_needed_mm", number(m.cover_play_needed_mm)},
          {"cover_play_mm", number(m.cover_play_mm)},
          {"backlash_lost_mm", number(m.backlash_lost_mm)}};
}

Json strength_json(std::span<const analysis::StrengthRow> rows) {
  Json list = Json::array();
  for (const auto& row : rows)
    list.push_back({{"name", row.rule->name},
                    {"meaning", row.rule->meaning},
                    {"when", row.when},
                    {key("load", row.unit), number(row.stress)},
                    {key("allowed", row.unit), number(row.allowed)},
                    {key("strength", row.unit), number(row.strength)},
                    {"allowed_at_clamp_force_n", number(row.allowed_at_n)},
                    {"gives_at_clamp_force_n", number(row.gives_at_n)},
                    {"parts", row.parts}});
  return list;
}

Json left_out_json(std::span<const analysis::LeftOut> rows) {
  Json list = Json::array();
  for (const auto& row : rows) list.push_back({{"name", row.name}, {"because", row.because}});
  return list;
}

Json spacing_json(const analysis::SpacingFigures& s) {
  Json ways = Json::array();
  for (const auto& way : s.ways) ways.push_back(way_json(way));
  return {{"marking", marking_word(s.chosen)}, {"seed", s.seed}, {"builds", s.trials}, {"axles_measured", s.axles_measured}, {"ways", std::move(ways)}};
}

Json assumptions_json(const reasons::Ledger& ledger) {
  constexpr std::string_view table = "assume.";
  Json list = Json::array();
  for (const reasons::Number& n : ledger.numbers()) {
    const bool settable = n.name.starts_with(table);
    if (!settable && n.basis != reasons::Basis::assumed) continue;
    list.push_back({{"name", settable ? key(std::string_view(n.name).substr(table.size()), n.unit) : n.name},
                    {key("value", n.unit), number(n.value)},
                    {"basis", basis_word(n.basis)},
                    {"meaning", n.rule->meaning},
                    {"source", n.rule->source}});
  }
  return list;
}

}  // namespace visewright::outputs::data
