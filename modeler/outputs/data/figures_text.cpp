#include "outputs/data/figures_text.h"

#include <cmath>

#include "outputs/data/lines.h"
#include "outputs/data/marking_words.h"
#include "outputs/data/stock_words.h"
#include "units/text.h"

namespace visewright::outputs::data {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string newtons(double n) { return units::write_number(n, 0) + " N"; }
std::string plain(double value, int decimals) { return std::isfinite(value) ? units::write_number(value, decimals) : "–"; }
std::string millimetres(const Facts& facts, double mm) {
  return facts.show == units::LengthUnit::inch ? units::write_number(mm / 25.4, 3) + " in" : units::write_number(mm, 2) + " mm";
}

std::string clamp_table(const Facts& facts) {
  const auto& d = facts.figures.drive;
  Rows rows{{"how hard it clamps", ""},
            {"hand " + newtons(facts.plan.wheel.hand_force.value) + " on the wheel", plain(d.hand_torque_nmm / 1000, 2) + " N·m"},
            {"torque for 1 kN on one screw: thread + collar", plain(d.thread_nmm_per_n, 2) + " + " + plain(d.collar_nmm_per_n, 2) + " N·m"},
            {"clamp force, work in the middle", newtons(d.clamp_middle_n)},
            {"  over the left screw", newtons(d.clamp_left_n)},
            {"  over the right screw", newtons(d.clamp_right_n)},
            {"thread holds by itself, friction over what is needed", plain(d.self_locking, 1)},
            {"turns of the wheel, shut to open", plain(d.turns, 0)},
            {"dead turn of the wheel", plain(d.dead_turn_rad * 180 / units::pi, 1) + "°"},
            {"parallel set by one tooth / with the hexagon",
             plain(d.tooth_step_mm, 3) + " / " + plain(d.finest_step_mm, 3) + " mm"}};
  return table(rows);
}

std::string rod_table(const Facts& facts) {
  Rows rows{{"other rods, same hand", "clamp", "near the top", "turns", "holds"}};
  for (const auto& rod : facts.figures.drive.rods)
    rows.push_back({rod.thread + (rod.taken ? " (taken)" : ""), newtons(rod.clamp_n), plain(rod.top_hold_mpa, 0) + " MPa", plain(rod.turns, 0),
                    plain(rod.self_locking, 1)});
  return table(rows);
}

std::string strength_table(const Facts& facts) {
  Rows rows{{"what gives, weakest first", "now", "may be", "allowed at", "gives at"}};
  for (const auto& row : facts.figures.strength) {
    const int decimals = row.unit == reasons::Unit::newton ? 0 : 1;
    const std::string name(row.rule->name.substr(row.rule->name.find('.') + 1));
    rows.push_back({name + ", " + std::string(row.when), plain(row.stress, decimals), plain(row.allowed, decimals), newtons(row.allowed_at_n),
                    newtons(row.gives_at_n)});
  }
  std::string text = table(rows) + folded("  stresses in MPa, pulls on screws in N; \"at\" is the clamp force. Not in the list:", 2);
  for (const auto& left : facts.figures.left_out) text += folded("  " + std::string(left.name) + " " + std::string(left.because), 4);
  return text;
}

std::string droop_table(const Facts& facts) {
  const auto& f = facts.figures;
  return table({{"droop, bow and movement", ""},
                {"jaw hangs at the greatest opening", millimetres(facts, f.droop.own.sum_mm)},
                {"  with a person leaning on it", millimetres(facts, f.droop.leaned_on.sum_mm)},
                {"jaws part at the top, thin work at mid-throat", millimetres(facts, f.droop.top_edge_mm)},
                {"front jaw bows", millimetres(facts, f.jaws.front_bow_mm)},
                {"rear jaw bows", millimetres(facts, f.jaws.rear_bow_mm)},
                {"skew, work inside / beyond the screws",
                 millimetres(facts, f.jaws.skew_inside_mm) + " / " + millimetres(facts, f.jaws.skew_outside_mm)},
                {"skew from backlash", millimetres(facts, f.drive.skew_from_backlash_mm)},
                {"jaw top moves through the year", millimetres(facts, f.movement.jaw_top_mm)},
                {"pockets shrink on a side", millimetres(facts, f.movement.pocket_mm)},
                {"cover's seats have / need", millimetres(facts, f.movement.cover_play_mm) + " / " + millimetres(facts, f.movement.cover_play_needed_mm)},
                {"backlash that heat takes", millimetres(facts, f.movement.backlash_lost_mm)}});
}

std::string spacing_table(const Facts& facts) {
  const auto& s = facts.figures.spacing;
  if (s.trials == 0) return {};
  Rows rows{{"marked by", "jams", "slack", "no line-up", "any", "errors may grow"}};
  for (const auto& way : s.ways) {
    const auto percent = [](const analysis::Chance& chance) { return plain(chance.percent, 2) + " %"; };
    rows.push_back({std::string(marking_word(way.marking)) + (way.marking == s.chosen ? " (chosen)" : ""), percent(way.bind), percent(way.slack),
                    percent(way.line_up), percent(way.any), way.largest_factor ? "× " + plain(*way.largest_factor, 2) : "–"});
  }
  const auto& chosen = s.of_chosen();
  std::string text = "Spacing errors, " + std::to_string(s.trials) + " builds counted, seed " + std::to_string(s.seed) + "\n" + table(rows);
  double worst = 0, rss = 0;
  for (const auto& mesh : chosen.meshes) {
    worst = std::max(worst, mesh.spread.worst_mm);
    rss = std::max(rss, mesh.spread.root_sum_square_mm);
  }
  return text + folded("  a mesh's distance is off by " + millimetres(facts, worst) + " at worst, " + millimetres(facts, rss) +
                           " root-sum-square; the hole of gear " + std::to_string(chosen.critical_gear + 1) + " matters most", 2);
}

std::string measure_table(const Facts& facts) {
  Rows rows{{"to measure a gear", "span", "over teeth", "pins", "over pins"}};
  const auto& gears = facts.plan.train.gears;
  for (std::size_t i = 0; i < facts.figures.gears.size() && i < gears.size(); ++i) {
    const auto& m = facts.figures.gears[i];
    rows.push_back({"gear " + std::to_string(i + 1), millimetres(facts, m.span.span_mm), std::to_string(m.span.teeth), millimetres(facts, m.pins.pin_mm),
                    millimetres(facts, m.pins.size_mm)});
  }
  return table(rows);
}

}  // namespace

std::string figures_text(const Facts& facts) {
  std::string text = clamp_table(facts) + "\n" + rod_table(facts) + "\n" + strength_table(facts) + "\n" + droop_table(facts) + "\n";
  const std::string spacing = spacing_table(facts);
  if (!spacing.empty()) text += spacing + "\n";
  return text + measure_table(facts);
}

}  // namespace visewright::outputs::data
