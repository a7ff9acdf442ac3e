// A wheel in the middle. Expected values: worked by hand from the sizes of the bought things (bearing 15 x 32 x 9, washer
// 37/21/3) and the stack of the five-gear design (glue joint at 43, cover 75 to 83, hub 86 to 131).
#include "layout/planning.h"

namespace visewright::layout {
namespace {

constexpr double exact = 1e-9;

std::string middle() { return with(five_gears, "at = \"ends\"", "at = \"centre\""); }

TEST(CentreDrive, ShaftSitsInTheBackingAndReachesTheHub) {
  const Plan p = good_plan(middle());
  ASSERT_TRUE(p.wheel.on_centre);
  EXPECT_TRUE(p.wheel.on_screw.empty());
  EXPECT_NEAR(p.shaft.relief.mm(), 39, exact);        // 37 + 2
  EXPECT_NEAR(p.shaft.seat.mm(), 32, exact);
  EXPECT_NEAR(p.shaft.seat_depth.mm(), 11, exact);    // 2 + 9
  EXPECT_NEAR(p.shaft.shoulder_out.mm(), 41, exact);  // 43 − 2
  EXPECT_NEAR(p.shaft.rear_out.mm(), 32, exact);      // 41 − 9
  EXPECT_NEAR(p.shaft.front_out.mm(), 131, exact);
}

// Expected: without a wheel a screw ends at the cover's front, 83; 250 + 83 + 78 + 5 + 8 = 424, up to 425.
TEST(CentreDrive, ScrewsEndAtTheCover) {
  const Plan p = good_plan(middle());
  EXPECT_NEAR(p.screw.front_out.mm(), 83, exact);
  EXPECT_NEAR(p.screw.length.mm(), 425, exact);
}

TEST(CentreDrive, MiddleGearTakesAHexagonAndItsAxleIsTheShaft) {
  const Plan p = good_plan(middle());
  ASSERT_EQ(p.shaft_hole.holes.size(), 1U);
  EXPECT_NEAR(p.shaft_hole.holes[0].at.x, 0, exact);
  EXPECT_EQ(p.axles.holes.size(), 2U);
  EXPECT_TRUE(p.train.gears[2].drive && p.train.gears[2].on_shaft);
  EXPECT_FALSE(p.train.gears[1].drive || p.train.gears[0].on_shaft);
}

TEST(CentreDrive, ThinBackingIsRefused) {
  const auto faults = faults_of(with(middle(), "backing = 40", "backing = 20"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults[0].key, "front_jaw.backing");
}

}  // namespace
}  // namespace visewright::layout
