// The five-gear design against figures worked out by hand before the program, from statics and the sizes of the bought
// things: M20 x 2.5 rod, washers 37/21/3 and 60/21/4, spacing 360, wheel 180, 100 N, friction 0.15, 3 % a mesh.
#include <cmath>

#include "analysis/analyse.h"
#include "analysis/rules_strength.h"
#include "assembly/assemble.h"
#include "layout/planning.h"

namespace visewright::analysis {
namespace {

using layout::five_gears;
using layout::good_plan;
using layout::with;

Analysis of(const std::string& text) {
  const layout::Plan plan = good_plan(text);
  return analyse(plan, assembly::assemble(plan), {0});
}

const Analysis& five() {
  static const Analysis analysis = of(five_gears);
  return analysis;
}

const StrengthRow& row(const Analysis& a, const reasons::Rule& rule) {
  for (const StrengthRow& r : a.figures.strength)
    if (r.rule == &rule) return r;
  throw std::runtime_error("no row");
}

// Thread: 1/2 × 18.376 × (2.5 + π 0.15 × 18.376 / cos 30°)/(π 18.376 − 0.15 × 2.5 / cos 30°) = 2.00 N·m a kN. Collar: mean
// diameter ⅔ (37³ − 21³)/(37² − 21²) = 29.7, times 0.15/2 = 2.23.
TEST(WorkedExample, TorqueAndClamp) {
  const DriveFigures& d = five().figures.drive;
  EXPECT_NEAR(d.thread_nmm_per_n, 2.00, 0.01);
  EXPECT_NEAR(d.collar_friction_diameter_mm, 29.7, 0.05);
  EXPECT_NEAR(d.collar_nmm_per_n, 2.23, 0.01);
  EXPECT_NEAR(d.clamp_middle_n, 2000, 10);
  EXPECT_NEAR(d.clamp_right_n, 1880, 10);  // the far screw: every mesh takes its share
  EXPECT_NEAR(d.stuck_push_n, 4500, 30);   // 9 N·m over 2.00
}

TEST(WorkedExample, TurnsAndPlay) {
  const DriveFigures& d = five().figures.drive;
  EXPECT_NEAR(d.turns, 253.0 / 2.5, 0.5);
  EXPECT_NEAR(d.dead_turn_rad * 180 / units::pi, 2.3, 0.05);  // 4 × 0.45 over 45
  EXPECT_NEAR(d.skew_from_backlash_mm, 0.016, 0.0005);
  EXPECT_NEAR(d.tooth_step_mm, 0.083, 0.0005);
  EXPECT_NEAR(d.finest_step_mm, 0.083, 0.0005);  // 30 is a multiple of 6: the hexagon adds nothing
}

// 200 N on a tooth: 200/(24 × 3 × 0.359) = 7.7; allowed on an idler 0.7 × 12 = 8.4.
TEST(WorkedExample, TeethHexagonAndPin) {
  EXPECT_NEAR(row(five(), rules::tooth_of_idler).stress, 7.7, 0.05);
  EXPECT_NEAR(row(five(), rules::tooth_of_idler).allowed, 8.4, 1e-9);
  EXPECT_NEAR(row(five(), rules::hexagon_pocket).stress, 3.3, 0.05);
  EXPECT_NEAR(row(five(), rules::collar_pin).stress, 23, 0.5);
  EXPECT_NEAR(row(of(with(five_gears, "100 N", "200 N")), rules::idler_axle).stress, 64, 0.5);
}

// Bending alone: 2000 × 55/2 and 2000 × 95/2 over π 16.93³/32 are 115 and 199; pull and twist add a little.
TEST(WorkedExample, ScrewsBend) {
  const auto bending = [](const reasons::Rule& rule) {
    for (const auto& term : row(five(), rule).with)
      if (term.name == "bending") return term.value;
    return 0.0;
  };
  EXPECT_NEAR(bending(rules::screw_mid), 115, 1);
  EXPECT_NEAR(bending(rules::screw_top), 199, 1);
  EXPECT_NEAR(row(five(), rules::screw_top).allowed, 640 / 1.5, 1e-9);  // class 8.8
  EXPECT_GT(row(five(), rules::screw_top).stress, 199);
}

// Ring 45/26 under the force over the driven screw, 9 N·m over 4.235 N·m a kN: 4 × 2125/(π (45² − 26²)) = 2.0; composite of backing and strips bows 0.07, the panel 0.30 at 9000 MPa.
TEST(WorkedExample, WoodAndBow) {
  EXPECT_NEAR(row(five(), rules::washer_on_wood).stress, 2.0, 0.02);
  EXPECT_NEAR(five().figures.jaws.front_bow_mm, 0.07, 0.015);
  const Analysis soft = of(five_gears + "assume = { panel_modulus_mpa = 9000 }\n");
  EXPECT_NEAR(soft.figures.jaws.rear_bow_mm, 0.30, 0.005);
  EXPECT_NEAR(five().figures.droop.top_edge_mm, 0.5, 0.03);
  EXPECT_NEAR(five().figures.jaws.skew_inside_mm, 0.07, 0.03);
}

// Hole 34 on the centre of 100: 1 − 0.34³ = 0.96 of the section; the doubler of 18 behind 25 adds 18/25 of that.
TEST(WorkedExample, ApronKeepsItsSection) {
  const auto share = [](const Analysis& a) {
    for (const auto& finding : a.findings)
      if (finding.rule->name == "bench.apron_section") return finding.measured;
    return 0.0;
  };
  EXPECT_NEAR(share(of(with(five_gears, ", doubler = 18", ""))), 96, 0.1);
  EXPECT_NEAR(share(five()), 96.07 * (25 + 18) / 25, 0.1);
}

// 4 % of moisture, flat-sawn beech 0.41 % a percent.
TEST(WorkedExample, Movement) {
  EXPECT_NEAR(five().figures.movement.jaw_top_mm, 110 * 0.0041 * 4, 1e-9);
  EXPECT_NEAR(five().figures.movement.pocket_mm, 50 * 0.0041 * 4, 1e-9);
  EXPECT_NEAR(five().figures.movement.cover_play_needed_mm, 360 * (68e-6 - 4e-6) * 20 / 2 + 0.25, 1e-9);
}

TEST(WorkedExample, RankedByTheClampAtWhichItGives) {
  const auto& rows = five().figures.strength;
  ASSERT_GE(rows.size(), 18U);
  for (std::size_t i = 1; i < rows.size(); ++i) EXPECT_LE(rows[i - 1].gives_at_n, rows[i].gives_at_n * (1 + 1e-9));
  // In proportion: twice the hand force halves nothing but what is left.
  const Analysis twice = of(with(five_gears, "100 N", "200 N"));
  for (const auto& r : rows) EXPECT_NEAR(row(twice, *r.rule).gives_at_n / r.gives_at_n, 1, 1e-9) << r.rule->name;
}

}  // namespace
}  // namespace visewright::analysis
