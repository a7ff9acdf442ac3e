#include "outputs/data/size_json.h"

#include <cmath>

#include "outputs/data/figures_json.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/json.h"
#include "outputs/data/stack.h"
#include "outputs/data/stock_json.h"

namespace visewright::outputs::data {
namespace {

Json name_or_null(const standards::MaterialRow* row) { return row ? Json(row->name) : Json(nullptr); }

Json gear_json(const layout::Train& train, const layout::Gear& gear) {
  Json json;
  json["teeth"] = gear.teeth.value;
  json["pitch_diameter_mm"] = mm(gear.pitch_diameter);
  json["tip_diameter_mm"] = mm(gear.tip);
  json["root_diameter_mm"] = mm(gear.root);
  json["base_diameter_mm"] = number(gear.pitch_diameter.mm() * std::cos(train.pressure_angle.rad()));
  json["profile_shift"] = number(gear.shift.value);
  json["phase_deg"] = number(nearest_tooth_deg(gear));
  json["centre_x_mm"] = mm(gear.centre_x);
  json["pocket_diameter_mm"] = mm(gear.pocket);
  json["drives_screw"] = gear.drive && !gear.on_shaft;
  json["turns_with_first"] = gear.sense > 0;
  return json;
}

Json mesh_json(const layout::Mesh& mesh) {
  Json json;
  json["centre_distance_mm"] = mm(mesh.centre_distance);
  json["operating_pressure_angle_deg"] = degrees(mesh.operating_angle.value);
  json["backlash_mm"] = mm(mesh.backlash);
  json["normal_backlash_mm"] = mm(mesh.normal_backlash);
  json["contact_ratio"] = number(mesh.contact_ratio.value);
  json["tip_clearance_mm"] = mm(mesh.tip_clearance);
  return json;
}

Json train_json(const layout::Train& train, std::span<const analysis::GearMeasures> measures) {
  Json gears = Json::array(), meshes = Json::array();
  for (std::size_t i = 0; i < train.gears.size(); ++i) {
    gears.push_back(gear_json(train, train.gears[i]));
    if (i < measures.size()) add_gear_measures(gears.back(), measures[i]);
  }
  for (const layout::Mesh& mesh : train.meshes) meshes.push_back(mesh_json(mesh));
  Json json;
  json["module_mm"] = mm(train.module);
  json["pressure_angle_deg"] = degrees(train.pressure_angle.value);
  json["backlash_mm"] = mm(train.backlash);
  json["face_width_mm"] = mm(train.face_width);
  json["material"] = name_or_null(train.material);
  json["gears"] = std::move(gears);
  json["meshes"] = std::move(meshes);
  return json;
}

Json screw_json(const layout::ScrewPlan& screw) {
  Json json;
  json["thread"] = screw.thread ? Json(screw.thread->designation) : Json(nullptr);
  json["lead_mm"] = screw.thread ? number(units::in_mm(screw.thread->lead)) : Json(nullptr);
  json["mean_diameter_mm"] = screw.thread ? number(units::in_mm(screw.thread->mean)) : Json(nullptr);
  json["diameter_mm"] = mm(screw.diameter);
  json["length_mm"] = mm(screw.length);
  json["strength_class"] = screw.strength_class;
  return json;
}

Json hands_json(const layout::ScrewPlan& screw) {
  Json hands = Json::array();
  for (const bool left : screw.left_hand) hands.push_back(left ? "left" : "right");
  return hands;
}

Json closing_json(const layout::ScrewPlan& screw) {
  Json ways = Json::array();
  for (const bool clockwise : screw.closes_clockwise) ways.push_back(clockwise ? "clockwise" : "anticlockwise");
  return ways;
}

Json stack_json(const layout::Plan& plan) {
  Json layers = Json::array();
  for (const Layer& layer : stack(plan)) {
    layers.push_back({{"name", layer.name},
                      {"from_out_mm", number(layer.from_out_mm)},
                      {"to_out_mm", number(layer.to_out_mm)},
                      {"group", word(layer.group)}});
  }
  return layers;
}

Json sizes_json(const Facts& facts) {
  const layout::Plan& plan = facts.plan;
  const analysis::Figures& figures = facts.figures;
  Json json;
  json["train"] = train_json(plan.train, figures.gears);
  json["spacing_mm"] = mm(plan.train.spacing);
  json["parity"] = plan.train.gears.size() % 2 == 1 ? "odd" : "even";
  json["screw"] = screw_json(plan.screw);
  json["hands"] = hands_json(plan.screw);
  json["closes"] = closing_json(plan.screw);
  json["opening_wanted_mm"] = mm(plan.use.opening_wanted);
  json["opening_max_mm"] = mm(plan.use.opening_max);
  json["projection"] = {{"shut_mm", mm(plan.use.projection_shut)}, {"grip_out_mm", mm(plan.use.projection_grip_out)}};
  json["free_depth_mm"] = mm(plan.use.free_depth);
  json["clear_width_mm"] = mm(plan.use.clear_width);
  json["moving_mass_kg"] = number(figures.moving_mass_kg);
  json["stack"] = stack_json(plan);
  json["drive"] = drive_json(figures.drive);
  json["screws"] = screws_json(figures.screws);
  json["droop_mm"] = number(figures.droop.own.sum_mm);
  json["droop"] = droop_json(figures.droop);
  json["jaws"] = jaws_json(figures.jaws);
  json["movement"] = movement_json(figures.movement);
  json["strength"] = strength_json(figures.strength);
  json["not_in_strength"] = left_out_json(figures.left_out);
  json["spacing_error"] = spacing_json(figures.spacing);
  json["stock"] = stock_json(facts.work.cutting);
  json["assumptions"] = assumptions_json(plan.ledger);
  return json;
}

}  // namespace

double nearest_tooth_deg(const layout::Gear& gear) {
  const double pitch = 360.0 / gear.teeth.value;
  const double phase = std::round(units::in_degrees(gear.phase.value) * 1e9) / 1e9;
  double rest = phase - pitch * std::floor(phase / pitch);
  // Judged on rounded values: a phase of half a tooth must not change sides with the processor.
  if (std::round(rest * 1e9) > std::round(pitch / 2 * 1e9)) rest -= pitch;
  return rest;
}

std::string size_json(const Facts& facts) {
  Json json;
  json["schema"] = size_schema;
  json["title"] = facts.title;
  json["program"] = facts.program_version;
  json["plan"] = sizes_json(facts);
  json["findings"] = finding_list(facts.findings);
  return bytes(json);
}

base::Result<std::vector<File>> write_size(const Facts& facts, base::Watcher&) {
  return std::vector<File>{{"size.json", size_json(facts), "the settled sizes and the findings", std::nullopt}};
}

}  // namespace visewright::outputs::data
