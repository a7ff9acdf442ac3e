#include "outputs/data/size_text.h"

#include "fitup/rules.h"
#include "outputs/data/figures_text.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/items.h"
#include "outputs/data/lines.h"
#include "outputs/data/notice.h"
#include "outputs/data/size_json.h"
#include "outputs/data/stack.h"
#include "outputs/data/stock_words.h"

namespace visewright::outputs::data {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string shown(const reasons::Size& size, units::LengthUnit show) { return units::write_length(size.value, show); }
std::string cell(const reasons::Size& size, units::LengthUnit show) { return data::cell(size.mm(), show); }
std::string degrees(double angle, int decimals) { return units::write_number(angle, decimals) + "°"; }

std::string heading(const Facts& facts) {
  return folded(facts.title, 0) + "visewright " + std::string(facts.program_version) + ", lengths in " +
         (facts.show == units::LengthUnit::inch ? "inches" : "millimetres") + "\n";
}

std::string train_line(const Facts& facts) {
  const layout::Train& train = facts.plan.train;
  std::string text = "Train: " + std::to_string(train.gears.size()) + " gears, ";
  if (facts.design.train.diametral_pitch) {
    text += "diametral pitch " + units::write_number(facts.design.train.diametral_pitch->value, 3) + " (module ";
    text += units::write_number(train.module.mm(), 4) + " mm)";
  } else {
    text += "module " + units::write_number(train.module.mm(), 4) + " mm";
  }
  text += ", pressure angle " + degrees(units::in_degrees(train.pressure_angle.value), 3);
  text +=
      ", face width " + shown(train.face_width, facts.show) + ", screws " + shown(train.spacing, facts.show) + " apart";
  return folded(train.material ? text + ", " + train.material->name : text, 2);
}

std::string gear_table(const Facts& facts) {
  Rows rows{{"gear", "teeth", "pitch ⌀", "tip ⌀", "root ⌀", "pocket ⌀", "shift", "at x", "tooth at", "turns"}};
  int index = 0;
  for (const layout::Gear& gear : facts.plan.train.gears) {
    rows.push_back({std::to_string(++index) + (gear.on_shaft ? " shaft" : gear.drive ? " drive" : " idler"), std::to_string(gear.teeth.value),
                    cell(gear.pitch_diameter, facts.show), cell(gear.tip, facts.show), cell(gear.root, facts.show),
                    cell(gear.pocket, facts.show), units::write_number(gear.shift.value, 4),
                    cell(gear.centre_x, facts.show), degrees(nearest_tooth_deg(gear), 2),
                    gear.sense > 0 ? "with 1" : "against 1"});
  }
  return table(rows);
}

std::string mesh_table(const Facts& facts) {
  Rows rows{{"mesh", "centres", "angle", "backlash", "normal", "contact ratio", "tip gap"}};
  int index = 0;
  for (const layout::Mesh& mesh : facts.plan.train.meshes) {
    ++index;
    rows.push_back({std::to_string(index) + "–" + std::to_string(index + 1), cell(mesh.centre_distance, facts.show),
                    degrees(units::in_degrees(mesh.operating_angle.value), 2), cell(mesh.backlash, facts.show),
                    cell(mesh.normal_backlash, facts.show), units::write_number(mesh.contact_ratio.value, 2),
                    cell(mesh.tip_clearance, facts.show)});
  }
  return table(rows);
}

std::string parity_line(const layout::Plan& plan) {
  const bool odd = plan.train.gears.size() % 2 == 1;
  std::string text = "Parity: " + std::to_string(plan.train.gears.size()) + " gears, ";
  text += odd ? "an odd count: both screws turn the same way and take the same hand of thread"
              : "an even count: the screws turn opposite ways and one takes the other hand of thread";
  return folded(text, 2);
}

std::string screw_lines(const Facts& facts) {
  const layout::ScrewPlan& screw = facts.plan.screw;
  std::string text = "Screws: ";
  if (screw.thread) {
    text += screw.thread->designation + ", lead " + units::write_length(screw.thread->lead, facts.show) + ", ";
  }
  std::string lines = folded(text + shown(screw.length, facts.show) + " long, class " + screw.strength_class, 2);
  for (std::size_t i = 0; i < 2; ++i) {
    lines += i == 0 ? "  left screw: " : "  right screw: ";
    lines += screw.left_hand[i] ? "left-hand thread, closes " : "right-hand thread, closes ";
    lines += screw.closes_clockwise[i] ? "clockwise\n" : "anticlockwise\n";
  }
  return lines;
}

std::string stack_table(const Facts& facts) {
  Rows rows{{"along the screw at shut", "from", "to", "thick", "group"}};
  for (const Layer& layer : stack(facts.plan)) {
    rows.push_back({layer.name, data::cell(layer.from_out_mm, facts.show), data::cell(layer.to_out_mm, facts.show),
                    data::cell(layer.to_out_mm - layer.from_out_mm, facts.show), std::string(word(layer.group))});
  }
  return table(rows) + "  out from the face of the rear lining; moving and turning layers add the opening\n";
}

std::string use_table(const Facts& facts) {
  const layout::UsePlan& use = facts.plan.use;
  return table({{"in use", ""},
                {"opening wanted", shown(use.opening_wanted, facts.show)},
                {"opening, greatest", shown(use.opening_max, facts.show)},
                {"stands out from the bench edge, shut", shown(use.projection_shut, facts.show)},
                {"  with the grip out", shown(use.projection_grip_out, facts.show)},
                {"free depth behind the bench edge", shown(use.free_depth, facts.show)},
                {"clear width between the screws", shown(use.clear_width, facts.show)}});
}

std::string mass_table(const assembly::Assembly& assembly) {
  double fixed = 0, moving = 0, turning = 0;
  for (const assembly::Placed& placed : assembly.placed) {
    const parts::Part& part = *assembly.parts[placed.part];
    if (exists_already(part)) continue;
    double& group = placed.group == assembly::Group::fixed    ? fixed
                    : placed.group == assembly::Group::moving ? moving
                                                              : turning;
    group += assembly.mass_kg[placed.part];
  }
  const auto kg = [](double mass) { return units::write_number(mass, 2) + " kg"; };
  return table({{"mass", ""},
                {"on the bench", kg(fixed)},
                {"moving with the jaw", kg(moving + turning)},
                {"  of which turning", kg(turning)}});
}

std::string findings_text(const Facts& facts) {
  const Counts found = counts(facts.findings);
  std::string text = "Findings: " + std::to_string(found.fail) + " fail, " + std::to_string(found.caution) +
                     (found.caution == 1 ? " caution, " : " cautions, ") + std::to_string(found.pass) + " pass\n";
  for (const reasons::Finding& finding : sorted(facts.findings)) {
    text += folded(reasons::say(finding, facts.show) + (finding.certified ? " (proved over the whole travel)" : ""), 6);
  }
  return text;
}

/// The gaps that a maker asks for, in their order; then what is not well; then what was proved.
std::string checked_text(const Facts& facts) {
  std::string text;
  for (const reasons::Rule* rule : fitup::named_gaps())
    for (const reasons::Finding& finding : facts.findings)
      if (finding.rule == rule) text += folded(reasons::say(finding, facts.show), 6);
  const Counts found = counts(facts.findings);
  text += "\n" + std::to_string(found.fail) + " fail, " + std::to_string(found.caution) + (found.caution == 1 ? " caution\n" : " cautions\n");
  std::size_t proved = 0;
  for (const reasons::Finding& finding : sorted(facts.findings)) {
    if (finding.certified && finding.verdict == reasons::Verdict::pass) ++proved;
    if (finding.verdict != reasons::Verdict::pass) text += folded(reasons::say(finding, facts.show), 6);
  }
  return text + std::to_string(found.pass) + " pass, " + std::to_string(proved) + " of them proved over the whole travel; --json lists them all\n";
}

std::string closing_words(const Facts& facts) {
  const std::string notice = failing_notice(facts.findings);
  return (notice.empty() ? std::string() : folded(notice, 2)) + folded(planning_note, 0);
}

}  // namespace

std::string size_text(const Facts& facts) {
  return heading(facts) + "\n" + train_line(facts) + gear_table(facts) + "\n" + mesh_table(facts) + "\n" +
         parity_line(facts.plan) + screw_lines(facts) + "\n" + stack_table(facts) + "\n" + use_table(facts) + "\n" +
         mass_table(facts.assembly) + "\n" + figures_text(facts) + "\n" + findings_text(facts) + "\n" + closing_words(facts);
}

std::string check_text(const Facts& facts) {
  return heading(facts) + "\n" + checked_text(facts) + "\n" + closing_words(facts);
}

}  // namespace visewright::outputs::data
