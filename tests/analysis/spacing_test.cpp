#include "analysis/spacing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "analysis/spacing_rules.h"
#include "layout/planning.h"

namespace visewright::analysis {
namespace {

using layout::Marking;
using layout::Plan;
using reasons::Finding;
using reasons::Verdict;
using testing::HasSubstr;

constexpr std::size_t few = 20000;

Plan five_gears(const std::string& more = "") { return layout::good_plan(layout::five_gears + more); }

const Finding& finding(const std::vector<Finding>& list, const reasons::Rule& rule) {
  return *std::find_if(list.begin(), list.end(), [&](const Finding& f) { return f.rule == &rule; });
}

// By hand for five gears of module 3 and 90 mm apart: usual errors 0.3 mark, 0.2 wander, 0.1 template; bore 0.15 over
// the rod, run-out 0.1. A mesh at the end through a template: 2 × 0.2 + 2 × 0.1 + 0.1 + 0.075; an inner one less the
// play of the bush.
TEST(Spacing, ErrorsOfTheUsualWorkshop) {
  const SpacingFigures figures = spacing(five_gears(), few);
  const auto worst = [&](Marking marking, std::size_t mesh) {
    return figures.ways[static_cast<std::size_t>(marking)].meshes[mesh].spread.worst_mm;
  };
  EXPECT_EQ(figures.chosen, Marking::from_template);
  EXPECT_NEAR(worst(Marking::from_template, 0), 0.775, 1e-9);
  EXPECT_NEAR(worst(Marking::from_template, 1), 0.7, 1e-9);
  EXPECT_NEAR(worst(Marking::one_datum, 1), 0.4 + 0.6 + 0.1, 1e-9);
  EXPECT_NEAR(worst(Marking::chain, 1), 0.4 + 0.3 + 0.1, 1e-9);
  for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(static_cast<std::size_t>(figures.ways[i].marking), i);
}

// By hand: 0.15 mm of play in the bush of either jaw is 0.15 to each side for the screw, so 0.30 for the two; the jaws
// share the template, and two drills wander in each of two holes of each.
TEST(Spacing, PlayOfTheScrewsInBothBushes) {
  const SpacingFigures figures = spacing(five_gears(), few);
  const PartSpacing& jaw = figures.of_chosen().parts.front();
  EXPECT_EQ(jaw.part, "rear jaw");
  EXPECT_NEAR(jaw.spread.allowed_mm, 0.30, 1e-9);
  EXPECT_NEAR(jaw.spread.worst_mm, 0.8, 1e-9);
  EXPECT_EQ(jaw.spread.first, 0U);
  EXPECT_EQ(jaw.spread.second, 4U);
}

// By hand: one axle in the middle is held in a hole half a millimetre wider than its screw, the bearings have more.
TEST(Spacing, TheCoverIsHeldByOneAxleOnly) {
  const Plan plan = five_gears();
  const auto in = spacing_input(plan, Marking::from_template);
  const auto& cover = in.parts[1];
  ASSERT_EQ(cover.size(), 5U);
  EXPECT_NEAR(cover[2].play_mm, 0.25, 1e-9);
  EXPECT_NEAR(cover[1].play_mm, 0.25 + 1.25, 1e-9);
  EXPECT_NEAR(cover[0].play_mm, (plan.cover.seat.mm() - 32) / 2, 1e-9);
}

TEST(Spacing, EachErrorOfThePlanCounts) {
  const SpacingFigures before = spacing(five_gears(), 100);
  const auto worst = [](const SpacingFigures& figures, std::size_t way) {
    return figures.ways[way].meshes[0].spread.worst_mm;
  };
  const auto change = [&](const std::string& more, std::size_t way) {
    return worst(spacing(five_gears(more), 100), way) - worst(before, way);
  };
  EXPECT_NEAR(change("[accuracy]\nmark_error = 0.4\n", 1), 0.2, 1e-9);
  EXPECT_NEAR(change("[accuracy]\nmark_error = 0.4\n", 0), 0, 1e-9);
  EXPECT_NEAR(change("[accuracy]\ndrill_wander = 0.3\n", 2), 0.2, 1e-9);
  EXPECT_NEAR(change("[accuracy]\ntemplate_error = 0.2\n", 0), 0.2, 1e-9);
  EXPECT_NEAR(change("[accuracy]\ntemplate_scale = 0.1\n", 0), 0.09, 1e-9);
  EXPECT_NEAR(change("[assume]\ngear_run_out = 0.2\n", 0), 0.1, 1e-9);
}

// Usual play is 0.45 mm; errors that leave room pass, the same with little play are told with their chance, and
// distances that leave none fail.
TEST(Spacing, TroubleFromErrorsIsACautionAndNominalTroubleFails) {
  const std::string exact =
      "[accuracy]\nmark_error = 0.02\ndrill_wander = 0.02\ntemplate_error = 0.02\n[assume]\ngear_run_out = 0.02\n";
  for (const Finding& one : judge_spacing(spacing(five_gears(exact), few))) {
    EXPECT_EQ(one.verdict, Verdict::pass) << one.rule->name;
    EXPECT_TRUE(one.advice.empty());
  }
  const SpacingFigures rough = spacing(five_gears("[accuracy]\nmarking = \"one datum\"\n"), few);
  const auto told = judge_spacing(rough);
  const Finding& chance = finding(told, rules::spacing_error);
  EXPECT_EQ(chance.verdict, Verdict::caution);
  EXPECT_DOUBLE_EQ(chance.measured, rough.of_chosen().any.percent);
  EXPECT_THAT(chance.advice, HasSubstr("of 20000 builds with seed 1"));
  EXPECT_EQ(finding(told, rules::spacing_worst).verdict, Verdict::caution);
  EXPECT_EQ(finding(told, rules::line_up).verdict, Verdict::caution);

  const auto tight =
      judge_spacing(spacing(layout::good_plan(layout::with(layout::five_gears, "module = 3",
                                                           "module = 3, centre_distances = [90, 89, 90, 90]")),
                            few));
  EXPECT_EQ(finding(tight, rules::spacing_error).verdict, Verdict::fail);
  EXPECT_EQ(finding(tight, rules::spacing_worst).verdict, Verdict::fail);
  EXPECT_EQ(finding(tight, rules::spacing_worst).parts, (std::vector<std::string>{"gear 2", "gear 3"}));
}

// Measured holes have no error left but what turns and rattles: 0.1 run-out, and 0.075 in the bush.
TEST(Spacing, MeasuredAxlesStandWhereTheyStand) {
  const SpacingFigures figures =
      spacing(five_gears("[measured]\naxle_centres = [[0], [90.1], [180], [270.2], [360]]\n"), few);
  EXPECT_TRUE(figures.axles_measured);
  EXPECT_NEAR(figures.of_chosen().meshes[0].spread.worst_mm, 0.175, 1e-9);
  EXPECT_NEAR(figures.of_chosen().meshes[1].spread.worst_mm, 0.1, 1e-9);
  EXPECT_EQ(figures.of_chosen().bind.builds, 0U);
  EXPECT_GT(figures.of_chosen().parts[0].spread.worst_mm, 0.5);  // the rear jaw is still to be drilled
}

TEST(Spacing, ChancesHoldTogether) {
  const SpacingFigures figures = spacing(five_gears(), few);
  for (const SpacingOfWay& way : figures.ways) {
    for (const Chance* one : {&way.bind, &way.slack, &way.line_up, &way.any}) {
      EXPECT_NEAR(one->percent, 100.0 * static_cast<double>(one->builds) / few, 1e-9);
      EXPECT_LE(one->low_percent, one->percent);
      EXPECT_GE(one->high_percent, one->percent);
      EXPECT_LE(one->builds, way.any.builds);
    }
    EXPECT_LE(way.any.builds, way.bind.builds + way.slack.builds + way.line_up.builds);
    ASSERT_EQ(way.gives_first_percent.size(), 5U);
    EXPECT_EQ(way.gives_first_percent[way.critical_gear],
              *std::max_element(way.gives_first_percent.begin(), way.gives_first_percent.end()));
    ASSERT_TRUE(way.meshes[0].backlash_at_worst_mm);
    // By hand: 2 tan 20° = 0.728 mm of play for each mm of distance, a little less the nearer they are.
    EXPECT_NEAR(*way.meshes[0].backlash_at_worst_mm, 0.45 - 0.70 * way.meshes[0].spread.worst_mm, 0.03);
  }
}

TEST(Spacing, EveryPresetIsJudged) {
  for (const char* name : layout::preset_names) {
    const SpacingFigures figures = spacing(layout::good_plan(layout::preset_text(name)), few);
    EXPECT_EQ(judge_spacing(figures).size(), 3U) << name;
    EXPECT_EQ(figures.of_chosen().parts.size(), 3U);
  }
}

}  // namespace
}  // namespace visewright::analysis
