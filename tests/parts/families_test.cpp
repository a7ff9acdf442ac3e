// Each family against closed forms that start from the numbers of the worked design (support/hand_plan.h), derived by
// hand here. Every figure below is one of that design's, in mm.
#include "parts/list.h"
#include "parts/round_forms.h"
#include "support/hand_plan.h"

namespace visewright::parts {
namespace {

using namespace by_hand;

class Families : public testing::Test {
 protected:
  support::HandPlan hand;
  const layout::Plan& plan = hand.plan;
};

void expect_volume(const Part& part, double expected) {
  EXPECT_NEAR(volume_mm3(part), expected, 2e-7 * expected) << part.name;
}

std::vector<std::string> names(const Part& part) {
  std::vector<std::string> result;
  for (const Body& body : bodies(part)) result.push_back(body.name);
  return result;
}

double star() { return 30 * 48 * 41.25 * std::sin(pi / 30); }

TEST_F(Families, DriveGear) {
  const Part gear = drive_gear(plan, 0);
  EXPECT_EQ(gear.name, "drive gear");
  EXPECT_EQ(gear.making, Making::printed);
  expect_volume(gear, star() * 24 - disc(38) * 1.5 - hexagon(30.2) * 18.5 - disc(20.6) * 4);
}

TEST_F(Families, IdlerGearWithItsSeatAndLip) {
  expect_volume(idler_gear(plan, 2), star() * 24 - disc(28) * 16 - disc(23.2) * 8);
}

TEST_F(Families, GearsDifferByNameOnlyWhereTheyDifferInShape) {
  EXPECT_EQ(gear(plan, 4).name, "drive gear");
  EXPECT_EQ(gear(plan, 3).name, "idler gear");
  hand.plan.train.gears[2].outline = support::star(31, 99, 85.5);
  EXPECT_EQ(gear(plan, 2).name, "idler gear 3");
  hand.plan.train.gears[4].outline = support::star(31, 99, 85.5);
  EXPECT_EQ(gear(plan, 4).name, "drive gear, right");
}

// A bevel of 3 × 3 along a flat takes ∫ v · 2(18 − v)/√3 dv from 0 to 3 = 144/√3 out of the nut: at the depth 3 − v the
// hexagon is 2(30 − 12 − v)/√3 wide.
TEST_F(Families, ThrustCollar) {
  const Part collar = thrust_collar(plan, 0);
  EXPECT_THAT(names(collar), testing::ElementsAre("collar flange", "collar nut", "bead 1", "bead 2", "bead 3"));
  const double pin_hole = disc(5) * 30 - cross_hole(20, 5);
  const std::vector<double> expected{ring(37, 21) * 3,
                                     (hexagon(30) - disc(20)) * 18 - 3 * 144 / std::sqrt(3.0) - pin_hole,
                                     4.5 * 30 / std::sqrt(3.0), 4.5 * 30 / std::sqrt(3.0), 4.5 * 30 / std::sqrt(3.0)};
  const std::vector<Body> all = bodies(collar);
  ASSERT_EQ(all.size(), expected.size());
  for (std::size_t i = 0; i < all.size(); ++i)
    EXPECT_NEAR(volume_mm3(all[i]), expected[i], 2e-7 * expected[i]) << all[i].name;
}

// Before it is ground the bead stands 0.6 out of the flat: a triangle of 3.6 × 3.
TEST_F(Families, GrindingTakesTheCrownAndNothingElse) {
  Part collar = thrust_collar(plan, 0);
  const double ground = volume_mm3(collar);
  auto& after = std::get<BuiltUp>(collar.made).after;
  std::erase_if(after, [](const Operation& o) { return std::holds_alternative<Grind>(o.work); });
  EXPECT_NEAR(volume_mm3(collar) - ground, 3 * 0.9 * 30 / std::sqrt(3.0), 1e-3);
}

TEST_F(Families, CollarOfHexagonBarAndOfTheOtherHand) {
  hand.plan.collar.nut[1] = &hand.hexagon_bar;
  hand.plan.screw.left_hand = {false, true};
  const Part left = thrust_collar(plan, 0), right = thrust_collar(plan, 1);
  EXPECT_EQ(left.name, "thrust collar, left");
  EXPECT_EQ(right.name, "thrust collar, right");
  EXPECT_NEAR(volume_mm3(left), volume_mm3(right), 1e-3);
  EXPECT_TRUE(std::holds_alternative<HexBar>(bodies(right)[1].piece->stock));
  EXPECT_TRUE(std::holds_alternative<Bought>(bodies(left)[1].piece->stock));
  EXPECT_EQ(lead_screw(plan, 1).name, "lead screw, right");
  EXPECT_TRUE(std::get<Rod>(bodies(lead_screw(plan, 1))[0].piece->stock).left_hand);
}

TEST_F(Families, PinsAndWashersAndBushes) {
  expect_volume(collar_pin(plan), disc(5) * 29.5);
  expect_volume(end_stop_pin(plan), disc(5) * 26);
  expect_volume(thrust_washer(plan), ring(60, 21) * 4);
  expect_volume(front_bush(plan), ring(26, 20.15) * 36);
  expect_volume(rear_bush(plan), ring(26, 20.15) * 36);
  expect_volume(keeper_ring(plan), ring(24, 15.2) - ring(24, 20) * 0.4);
  expect_volume(axle(plan), disc(12) * 61.7 - disc(5) * 15);
  expect_volume(rear_spacer(plan), ring(16.8, 12.2) * 9.5);
  expect_volume(front_spacer(plan), ring(16.8, 12.2) * 14.2);
}

// The dimple is drilled 1 deep from a flat 6.5 off the axis into a neck of 13.
TEST_F(Families, LeadScrew) {
  const double dimple = sum(-pi / 2, pi / 2, 4000, [](double t) {
    const double y = 2.1 * std::sin(t);
    return 2 * 2.1 * 2.1 * std::cos(t) * std::cos(t) * (std::sqrt(6.5 * 6.5 - y * y) - 5.5);
  });
  const double expected = disc(20) * 475 - ring(20, 15) * 62 - ring(15, 13) * 6.5 - dimple - 2 * cross_hole(20, 5);
  const Part screw = lead_screw(plan, 0);
  EXPECT_EQ(screw.name, "lead screw");
  EXPECT_NEAR(volume_mm3(screw), expected, 1e-7 * expected);
  // At the mean diameter the journal and its holes stay as they are.
  const double solid = expected + 2 * cross_hole(20, 5) - 2 * cross_hole(18.376, 5) - ring(20, 18.376) * 413;
  EXPECT_NEAR(mass_kg(screw), solid * 7.85e-6, 1e-6 * solid * 7.85e-6);
}

TEST_F(Families, HandWheelLockScrewAndGrip) {
  const double lock_hole = sum(-pi / 2, pi / 2, 4000, [](double t) {
    const double y = 3 * std::sin(t);
    return 2 * 9 * std::cos(t) * std::cos(t) * (std::sqrt(19 * 19 - y * y) - std::sqrt(7.5 * 7.5 - y * y));
  });
  expect_volume(hand_wheel(plan),
                disc(38) * 45 + ring(140, 38) * 8 + ring(180, 140) * 20 - disc(15) * 45 - lock_hole - 5 * disc(30) * 8);
  expect_volume(lock_screw(plan), disc(6) * 12.5 + disc(4.2) * 1);
  expect_volume(grip(plan), 2 * pi * 12 * 12 * 12 / 3 + disc(24) * 64);
}

TEST_F(Families, BearingRingsShareTheCataloguesMass) {
  const Part inner = inner_ring(plan, plan.bearing), outer = outer_ring(plan, plan.bearing);
  EXPECT_EQ(inner.name, "bearing 6002, inner ring");
  expect_volume(inner, ring(20.1, 15) * 9);
  expect_volume(outer, ring(32, 26.9) * 9);
  EXPECT_NEAR(mass_kg(inner) + mass_kg(outer), 0.030, 1e-12);
  EXPECT_NEAR(mass_kg(inner) / mass_kg(outer), ring(20.1, 15) / ring(32, 26.9), 1e-12);
  EXPECT_NEAR(mass_kg(inner_ring(plan, plan.axle.bearing)), ring(16.8, 12) * 8 * 7.85e-6, 1e-12)
      << "no mass in the catalogue";
}

TEST_F(Families, Cover) {
  const double outline = 512 * 144 - (4 - pi) * 64;
  const double holes = disc(33) * 4.3 * 2 + disc(24) * 3.7 * 2 + (disc(5.5) + 2 * slot(5.5, 8) + 12 * slot(5, 6.5)) * 8;
  const double eased = 0.5 * 2 * (496 + 128) + 2 * pi * (8 - 1.0 / 3) * 0.5;
  expect_volume(cover(plan), outline * 8 - holes - eased);
}

TEST_F(Families, CoverIsHeldInTheMiddleAlone) {
  int round = 0, slots = 0;
  for (const Operation& o : bodies(cover(plan))[0].piece->operations) {
    if (o.pattern != "axles") continue;
    if (std::holds_alternative<Drill>(o.work)) {
      ++round;
      EXPECT_EQ(o.hole, "axle 3");
    } else {
      ++slots;
    }
  }
  EXPECT_EQ(round, 1);
  EXPECT_EQ(slots, 2);
}

TEST_F(Families, Linings) {
  expect_volume(front_lining(plan), (520 * 185 - 2 * disc(26)) * 3);
  expect_volume(rear_lining(plan), (520 * 185 - 2 * disc(26)) * 3);
}

// Pilot holes of 4 for screws of 6: 30 deep behind the nut blocks' bars (40 − 10), 34 behind the brackets (40 − 6).
TEST_F(Families, RearJaw) {
  const Part jaw = rear_jaw(plan);
  EXPECT_THAT(names(jaw), testing::ElementsAre("rear jaw core", "rear jaw cap"));
  const double mounting = disc(15) * 8 + disc(6.5) * 28;
  expect_volume(jaw, 520 * 185 * 36 - 2 * disc(26) * 36 - 8 * mounting - 4 * disc(4) * 30 - 2 * disc(4) * 34);
}

TEST_F(Families, NutBlock) {
  const Part block = nut_block(plan, 0);
  EXPECT_THAT(names(block), testing::ElementsAre("nut bar", "rear nut", "bead 1", "bead 2", "bead 3"));
  const double bar = (110 * 60 - disc(22) - 2 * disc(9)) * 10, nut = (hexagon(30) - disc(20)) * 29;
  expect_volume(block, bar + nut + 3 * 8 * 30 / std::sqrt(3.0));
  EXPECT_EQ(std::get<Bought>(bodies(block)[1].piece->stock).share_of, 2);
}

TEST_F(Families, Bracket) {
  expect_volume(bracket(plan), (40 * 45 - slot(7, 13)) * 6 + (40 * 64 - disc(7)) * 6 + 12.5 * 40);
}

TEST_F(Families, Bench) {
  expect_volume(bench_top_part(plan), 1500.0 * 600 * 60 - 526 * 39 * 60 - 8 * disc(4) * 62 - 2 * disc(4) * 34);
  expect_volume(apron(plan), (1500 * 100 - 2 * disc(34)) * 25);
  expect_volume(doubler(plan), ((360 + 6 * 34) * 100 - 2 * disc(34)) * 18);
  hand.plan.bench.obstacles.push_back({"leg", {300, 20, -700}, {390, 110, 50}});
  const std::vector<Part> near = obstacles(plan);
  ASSERT_EQ(near.size(), 1U);
  EXPECT_EQ(near[0].making, Making::existing);
  expect_volume(near[0], 90.0 * 90 * 750);
}

// Heads 0.6 of the shank high; the plain shank ends where the pilot hole starts.
TEST_F(Families, Screws) {
  expect_volume(mounting_screw(plan), disc(12) * 3.6 + disc(6) * 28 + disc(4) * 62);
  expect_volume(nut_block_screw(plan), disc(12) * 3.6 + disc(6) * 10 + disc(4) * 30);
  expect_volume(bracket_screw(plan), disc(12) * 3.6 + disc(6) * 6 + disc(4) * 34);
  expect_volume(edge_screw(plan), disc(8) * 2.4 + disc(4) * 8 + disc(3) * 22);
  expect_volume(axle_screw(plan), disc(10) * 3.5 + disc(5) * 21);
}

}  // namespace
}  // namespace visewright::parts
