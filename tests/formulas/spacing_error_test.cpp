#include "formulas/spacing_error.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

namespace visewright::formulas {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr std::size_t many = 100000;
// Four standard deviations of a share counted over that many trials, at its widest.
constexpr double scatter = 0.0064;

SpurGear gear(int teeth, double module_mm, double thinning_mm) {
  SpurGear made;
  made.teeth = teeth;
  made.module_mm = module_mm;
  made.pressure_angle_rad = 20 * degree;
  made.thinning_mm = thinning_mm;
  return made;
}

/// A row of meshes 80 mm apart that each may come this much nearer, or go this much farther apart.
SpacingInput row(std::size_t gears, double nearer_mm, double apart_mm = 1000) {
  SpacingInput in;
  in.distances_mm.assign(gears - 1, 80.0);
  in.working.assign(gears - 1, {80 - nearer_mm, 80 + apart_mm});
  return in;
}

double share(std::size_t count, std::size_t trials = many) {
  return static_cast<double>(count) / static_cast<double>(trials);
}

// m 2, 30 and 30 teeth, each 0.05 mm thinner than π: tight at 59.86141 mm (from the published formula for tight mesh
// from tooth thickness; the number computed apart from this program).
TEST(WorkingDistances, TightWhereThePlayIsUsedUp) {
  const SpurGear thin = gear(30, 2, 0.05);
  const auto range = working_distances(thin, thin);
  EXPECT_NEAR(range.tight_mm, 59.86141, 5e-6);
  EXPECT_NEAR(backlash_mm({thin, thin, range.tight_mm}), 0, 1e-12);
  EXPECT_LT(backlash_mm({thin, thin, range.tight_mm - 1e-4}), 0);
  EXPECT_NEAR(contact_ratio({thin, thin, range.loose_mm}), 1.1, 1e-9);
  EXPECT_LT(contact_ratio({thin, thin, range.loose_mm + 1e-4}), 1.1);
}

// By hand: thinned by 1 mm together the flanks leave 1/(2 tan 20°) = 1.37 mm, the tips stand a quarter module off.
TEST(WorkingDistances, TipsMeetTheRootsWhenFlanksArePlentyThin) {
  const SpurGear thin = gear(30, 2, 0.5);
  EXPECT_NEAR(working_distances(thin, thin).tight_mm, 60 - 0.5, 1e-12);
}

// By hand: each step of a chain is its own even error, so meshes jam independently: 1 - (1 - p)^4, p = (1 - L/e)/2.
TEST(SpacingOdds, AChainOfStepsJamsAsItsMeshesDoOneByOne) {
  SpacingInput in = row(5, 0.6);
  in.errors.mark_mm = 0.75;
  in.marking = Marking::chain;
  const double one = (1 - 0.6 / 0.75) / 2;
  EXPECT_NEAR(share(spacing_odds(in, many, 1).bind), 1 - std::pow(1 - one, 4), scatter);
}

// By hand: two marks from one datum leave a triangle ±2e, so P(nearer by more than L) = (1 - L/2e)²/2; it is 1 % when
// e has grown to L/(2 (1 - √0.02)).
TEST(SpacingOdds, TwoMarksFromOneDatumMakeATriangle) {
  SpacingInput in = row(2, 0.4);
  in.errors.mark_mm = 0.3;
  in.marking = Marking::one_datum;
  const SpacingOdds odds = spacing_odds(in, many, 7);
  EXPECT_NEAR(share(odds.bind), std::pow(1 - 0.4 / 0.6, 2) / 2, scatter);
  EXPECT_EQ(odds.slack, 0U);
  EXPECT_EQ(odds.any, odds.bind);
  ASSERT_TRUE(odds.largest_scale);
  EXPECT_NEAR(*odds.largest_scale, 0.4 / 0.6 / (1 - std::sqrt(0.02)), 0.008);
}

// The sum of three even errors ±e is below -(3 - 2x) e with chance x³/6, for x up to 1 (Irwin and Hall; by hand: the
// corner of a cube).
TEST(SpacingOdds, AStepAndTwoWandersMakeTheCornerOfACube) {
  const double e = 0.2;
  for (const double x : {0.6, 0.8, 1.0}) {
    SpacingInput in = row(2, (3 - 2 * x) * e);
    in.errors.mark_mm = in.errors.wander_mm = e;
    in.marking = Marking::chain;
    EXPECT_NEAR(share(spacing_odds(in, many, 3).bind), x * x * x / 6, scatter) << x;
  }
}

// Five even errors of one size are near enough to a normal distribution: σ = e √(5/3).
TEST(SpacingOdds, ManySmallErrorsFollowTheNormalDistribution) {
  const double e = 0.1, sigma = e * std::sqrt(5.0 / 3);
  for (const double at : {0.5, 1.0, 1.5}) {
    SpacingInput in = row(2, at * sigma, 0.8 * sigma);
    in.errors.wander_mm = in.errors.template_mm = e;
    in.errors.template_scale = e / 80;
    const SpacingOdds odds = spacing_odds(in, many, 11);
    EXPECT_NEAR(share(odds.bind), std::erfc(at / std::sqrt(2.0)) / 2, scatter + 0.004) << at;
    EXPECT_NEAR(share(odds.slack), std::erfc(0.8 / std::sqrt(2.0)) / 2, scatter + 0.004);
    EXPECT_EQ(odds.any, odds.bind + odds.slack);  // one mesh cannot do both
  }
}

// Three gears marked from one datum: the whole box of errors, cut into small cells, summed cell by cell.
TEST(SpacingOdds, ThreeGearsAgreeWithTheSumOverAllErrors) {
  const double e = 0.3, nearer = 0.25, apart = 0.4;
  SpacingInput in = row(3, nearer, apart);
  in.parts = {{{0, 0.1}, {2, 0.25}}};
  in.errors.mark_mm = e;
  in.marking = Marking::one_datum;
  constexpr int cells = 40;  // an error each
  const auto at = [&](int i) { return e * ((2.0 * i + 1) / cells - 1); };
  double bind = 0, slack = 0, any = 0, line_up = 0;
  for (int a = 0; a < cells; ++a)
    for (int b = 0; b < cells; ++b)
      for (int c = 0; c < cells; ++c) {
        const double first = at(b) - at(a), second = at(c) - at(b);
        const bool tight = std::min(first, second) <= -nearer, loose = std::max(first, second) > apart;
        // The other part's two marks make a triangle ±2e about the span of this one: its tails beyond ±0.35.
        const auto tail = [&](double t) {
          return t < -2 * e  ? 0.0
                 : t > 2 * e ? 1.0
                 : t < 0     ? std::pow(1 + t / (2 * e), 2) / 2
                             : 1 - std::pow(1 - t / (2 * e), 2) / 2;
        };
        const double span = at(c) - at(a), apart_too_far = tail(span - 0.35) + 1 - tail(span + 0.35);
        bind += tight;
        slack += loose;
        line_up += apart_too_far;
        any += tight || loose ? 1 : apart_too_far;
      }
  const double all = std::pow(cells, 3);
  const SpacingOdds odds = spacing_odds(in, many, 5);
  EXPECT_NEAR(share(odds.bind), bind / all, scatter + 0.01);  // the cells' edges do not follow the limits
  EXPECT_NEAR(share(odds.slack), slack / all, scatter + 0.01);
  EXPECT_NEAR(share(odds.line_up), line_up / all, scatter + 0.001);
  EXPECT_NEAR(share(odds.any), any / all, scatter + 0.01);
}

// Every corner of the box of errors of three gears, from the meaning of each error.
TEST(MeshSpreads, TheWorstIsTheWorstCorner) {
  SpacingInput in = row(3, 1);
  in.distances_mm = {70, 90};
  in.errors = {0.3, 0.2, 0.1, 0.002, 0.15, 0.08};
  for (const Marking marking : {Marking::from_template, Marking::one_datum, Marking::chain}) {
    in.marking = marking;
    std::array<double, 2> worst{0, 0};
    for (unsigned corner = 0; corner < (1U << 15U); ++corner) {
      const auto sign = [&](unsigned bit) { return (corner >> bit & 1U) != 0 ? 1.0 : -1.0; };
      const std::array<double, 3> x{-80, -10, 80};
      std::array<double, 3> hole{};
      for (unsigned i = 0; i < 3; ++i) {
        hole[i] = 0.2 * sign(i);
        if (marking == Marking::from_template) hole[i] += 0.1 * sign(3 + i) + 0.002 * x[i] * sign(6);
        if (marking == Marking::one_datum) hole[i] += 0.3 * sign(3 + i);
        if (marking == Marking::chain)
          for (unsigned k = 0; k <= i; ++k) hole[i] += 0.3 * sign(3 + k);
      }
      hole[0] += 0.075 * sign(7);
      hole[2] += 0.075 * sign(8);
      for (unsigned k = 0; k < 2; ++k) {
        const double off_centre = 0.04 * sign(9 + k) + 0.04 * sign(10 + k);  // half the run-out of either gear
        worst[k] = std::max(worst[k], std::abs(hole[k + 1] - hole[k] + off_centre));
      }
    }
    const auto spreads = mesh_spreads(in);
    EXPECT_NEAR(spreads[0].worst_mm, worst[0], 1e-12);
    EXPECT_NEAR(spreads[1].worst_mm, worst[1], 1e-12);
    // No build is worse than the worst, and no room less than that is sure.
    for (std::size_t k = 0; k < 2; ++k) {
      const double room = spreads[k].worst_mm + 1e-6;
      in.working[k] = {in.distances_mm[k] - room, in.distances_mm[k] + room};
    }
    EXPECT_EQ(spacing_odds(in, many, 2).any, 0U);
    EXPECT_GE(*spacing_odds(in, many, 2).largest_scale, 1);
  }
}

// By hand: two wanders, and each error once or twice, squared.
TEST(MeshSpreads, RootSumSquareOfEachWayOfMarking) {
  SpacingInput in = row(3, 1);
  in.errors = {0.3, 0.2, 0.1, 0.001, 0.16, 0.1};
  const double common = 2 * 0.04 + 2 * 0.0025 + 0.0064;  // wanders, half the run-out twice, half the bush play
  EXPECT_NEAR(mesh_spreads(in)[0].root_sum_square_mm, std::sqrt(common + 2 * 0.01 + 0.0064), 1e-12);
  in.marking = Marking::chain;
  EXPECT_NEAR(mesh_spreads(in)[0].root_sum_square_mm, std::sqrt(common + 0.09), 1e-12);
  in.marking = Marking::one_datum;
  EXPECT_NEAR(mesh_spreads(in)[1].root_sum_square_mm, std::sqrt(common + 2 * 0.09), 1e-12);
  in.axles_measured = true;  // only what turns and rattles is left
  EXPECT_NEAR(mesh_spreads(in)[1].worst_mm, 0.1 + 0.08, 1e-12);
}

// Common practice, no source: five holes each three quarters of a millimetre too close to the last ruin a train of
// small module. Here m 2, 40 teeth, 0.35 mm of play.
TEST(SpacingOdds, ThreeQuartersShortOverFiveHolesRuinsASmallModule) {
  const SpurGear one = gear(40, 2, 0.175);
  SpacingInput in = row(5, 0);
  in.working.assign(4, working_distances(one, one));
  for (const WorkingDistances& range : in.working) EXPECT_GT(range.tight_mm, 80 - 0.75);
  EXPECT_LT(backlash_mm({one, one, 80 - 0.75}), 0);
  in.errors.mark_mm = 0.75;
  in.marking = Marking::chain;
  EXPECT_GT(share(spacing_odds(in, many, 1).bind), 0.25);
  // The same train drilled through a template that is right, with a usual drill.
  in.errors.wander_mm = 0.2;
  in.marking = Marking::from_template;
  EXPECT_EQ(spacing_odds(in, many, 1).any, 0U);
}

// By hand: a neighbour is one step away in a chain but two marks away from a datum; over the whole row the chain has
// gathered four steps in each part with all the holes.
TEST(SpacingOdds, AChainMeshesBetterAndLinesUpWorseThanADatum) {
  SpacingInput in = row(5, 0.6);
  const SharedBores all{{0, 0.5}, {1, 0.5}, {2, 0.5}, {3, 0.5}, {4, 0.5}}, ends{{0, 0.5}, {4, 0.5}};
  in.parts = {all};
  in.errors.mark_mm = 0.75;
  in.marking = Marking::chain;
  EXPECT_NEAR(part_spreads(in)[0].worst_mm, 2 * 4 * 0.75, 1e-12);
  EXPECT_EQ(part_spreads(in)[0].first, 0U);
  EXPECT_EQ(part_spreads(in)[0].second, 4U);
  in.marking = Marking::one_datum;
  EXPECT_NEAR(part_spreads(in)[0].worst_mm, 4 * 0.75, 1e-12);
  in.parts = {ends};
  const auto datum = spacing_odds(in, many, 1);
  in.marking = Marking::chain;  // the rear jaw has two bores only, one step
  const auto chain = spacing_odds(in, many, 1);
  EXPECT_NEAR(part_spreads(in)[0].worst_mm, 5 * 0.75, 1e-12);
  EXPECT_GT(datum.bind, chain.bind + many / 10);
  EXPECT_GT(chain.line_up, datum.line_up + many / 50);
}

TEST(SpacingOdds, PartsThatShareATemplateShareItsErrors) {
  SpacingInput in = row(4, 1000);
  in.parts = {{{0, 0.05}, {3, 0.05}}};
  in.errors.template_mm = 1;
  in.errors.template_scale = 0.01;
  EXPECT_EQ(spacing_odds(in, many, 1).line_up, 0U);
  EXPECT_EQ(part_spreads(in)[0].worst_mm, 0);
  // A part that is made already, and one that follows it through a new template, share nothing. By hand: two holes and
  // the scale over 240 mm.
  in.axles_measured = true;
  EXPECT_NEAR(part_spreads(in)[0].worst_mm, 2 + 2.4, 1e-12);
  EXPECT_GT(spacing_odds(in, many, 1).line_up, many / 2);
}

// The part is put where it fits best, so only differences between its bores count: by hand, four wanders against the
// play of both bores, a sum of four even errors; P(|sum| > 2.8e) = 2 × 0.6⁴ × 16/(24 × 16) (the corner again, x = 0.6).
TEST(SpacingOdds, APartIsLaidWhereItsBoresFitBest) {
  const double e = 0.2, x = 0.6;
  SpacingInput in = row(3, 1000);
  in.errors.wander_mm = e;
  const double allowed = (4 - 2 * x) * e;
  in.parts = {{{0, 0.3 * allowed}, {2, 0.7 * allowed}}};
  EXPECT_NEAR(share(spacing_odds(in, many, 1).line_up), 2 * std::pow(x, 4) / 24, scatter / 2);
}

TEST(SpacingOdds, RunOutTakesFromBothSides) {
  SpacingInput in = row(2, 0.03, 0.03);
  in.errors.run_out_mm = 0.1;
  const auto odds = spacing_odds(in, many, 1);
  // By hand: two eccentricities, each even from 0 to 0.05, exceed 0.03 together but for the corner 0.6²/2.
  EXPECT_NEAR(share(odds.bind), 1 - 0.6 * 0.6 / 2, scatter);
  EXPECT_EQ(odds.bind, odds.slack);
  EXPECT_EQ(odds.any, odds.bind);
}

// By hand: the axle lies anywhere within ±0.2 in its bush, so either end mesh jams in a quarter of the builds; the
// middle mesh has no bush, though it has next to no room.
TEST(SpacingOdds, BushesRattleAtTheEndsOnly) {
  SpacingInput in = row(4, 0.1);
  in.working[1] = {79.999, 80.001};
  in.errors.bush_play_mm = 0.4;
  const auto odds = spacing_odds(in, many, 1);
  EXPECT_NEAR(share(odds.bind), 1 - 0.75 * 0.75, scatter);
  EXPECT_EQ(odds.slack, 0U);
}

TEST(SpacingOdds, TheLargestFactorIsWhereOneInAHundredFails) {
  SpacingInput in = row(5, 0.5, 0.9);
  in.parts = {{{0, 0.4}, {4, 0.4}}, {{0, 0.5}, {2, 0.2}, {4, 0.5}}};
  in.errors = {0.2, 0.15, 0.1, 0.001, 0.15, 0.1};
  for (const Marking marking : {Marking::from_template, Marking::one_datum, Marking::chain}) {
    in.marking = marking;
    const double factor = spacing_odds(in, many, 9).largest_scale.value();
    const auto failing = [&](double times) {
      SpacingInput scaled = in;
      for (double* error : {&scaled.errors.mark_mm, &scaled.errors.wander_mm, &scaled.errors.template_mm,
                            &scaled.errors.template_scale, &scaled.errors.bush_play_mm, &scaled.errors.run_out_mm})
        *error *= times;
      return spacing_odds(scaled, many, 9).any;
    };
    EXPECT_LE(failing(factor * 0.9999), many / 100);
    EXPECT_GE(failing(factor * 1.0001), many / 100);
    SpacingInput without = in;
    without.parts.clear();
    EXPECT_EQ(spacing_odds(in, many, 9).largest_scale_of_meshes, spacing_odds(without, many, 9).largest_scale);
  }
}

TEST(SpacingOdds, WithoutErrorsAllWorksOrNothingDoes) {
  const auto well = spacing_odds(row(4, 0.3, 0.3), 1000, 1);
  EXPECT_EQ(well.any, 0U);
  EXPECT_FALSE(well.largest_scale);
  SpacingInput jammed = row(4, 0.3);
  jammed.working[1].tight_mm = 80;
  const auto ill = spacing_odds(jammed, 1000, 1);
  EXPECT_EQ(ill.bind, 1000U);
  EXPECT_EQ(ill.largest_scale, 0);
  EXPECT_EQ(spacing_odds(row(4, 0.3), 0, 1).any, 0U);
}

TEST(SpacingOdds, SaysWhichHolesGiveFirst) {
  SpacingInput in = row(4, 0.5);
  in.working[1].tight_mm = 79.99;
  in.errors.mark_mm = 0.1;
  in.marking = Marking::chain;
  const auto shares = spacing_odds(in, many, 1).gives_first;
  EXPECT_NEAR(std::accumulate(shares.begin(), shares.end(), 0.0), 1, 1e-9);
  // By hand: the tight mesh gives first when it comes nearer, 1/2, and in a third of the builds in which all three go
  // apart, 1/24; the other two share the rest. Each hole takes half from the meshes on both sides of it.
  const double tight = 13.0 / 24, other = 11.0 / 48;
  EXPECT_NEAR(shares[0], other / 2, scatter);
  EXPECT_NEAR(shares[1], (tight + other) / 2, scatter);
  EXPECT_NEAR(shares[2], (tight + other) / 2, scatter);
}

TEST(SpacingOdds, ABuildFollowsFromTheSeedAndItsNumberAlone) {
  SpacingInput in = row(5, 0.3);
  in.parts = {{{0, 0.1}, {4, 0.1}}};
  in.errors.wander_mm = 0.3;
  std::size_t before = 0;
  for (std::size_t trials = 0; trials < 200; ++trials) {
    const std::size_t any = spacing_odds(in, trials, 4).any;
    EXPECT_LE(any - before, 1U);  // one more build changes none of those before it
    before = any;
  }
  const auto one = spacing_odds(in, many, 4);
  in.marking = Marking::chain;  // without errors of marking, all ways are the same builds
  const auto other = spacing_odds(in, many, 4);
  EXPECT_EQ(one.bind, other.bind);
  EXPECT_EQ(one.line_up, other.line_up);
  EXPECT_EQ(one.gives_first, other.gives_first);
  const auto fresh = spacing_odds(in, many, 5);
  EXPECT_NE(fresh.bind, other.bind);
  EXPECT_NEAR(share(fresh.bind), share(other.bind), 2 * scatter);
}

}  // namespace
}  // namespace visewright::formulas
