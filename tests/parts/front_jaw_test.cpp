// The front jaw with all its pockets, worked out by hand from the design's numbers: boards of 520 × 185, 40 and 32
// thick; five pockets of 100, 90 apart; relief holes of 12 where they cross; bevel of 35 × 45.
#include "parts/front_jaw.h"

#include <algorithm>

#include "parts/round_forms.h"
#include "support/hand_plan.h"

namespace visewright::parts {
namespace {

using namespace by_hand;

/// All pockets and relief holes together, the pockets grown by `wider` along the radius.
double pockets(double wider) {
  const double r = 50 + wider;
  return 5 * pi * r * r - 4 * lens(r, 90) + 8 * outside_both(50, r, 90, 6);
}

double gear_layer_before_bevel() {
  const double eased = sum(0, 2, 40, [](double s) { return pockets(s); }) - 2 * pockets(0);
  return 520 * 185 * 32 - pockets(0) * 32 - 12 * disc(3) * 22 - eased;
}
double backing_before_bevel() { return 520 * 185 * 40 - 3 * disc(12) * 30 - 2 * (disc(65) * 4 + disc(26) * 36); }

constexpr double wedge = 35 * 45 / 2.0;  // section of the offcut

/// The dog hole reaches from 10.5 to 29.5 behind the face; the bevel starts at 27, so the landing block loses a slice:
/// at z behind the face the wedge is (z − 27)·35/45 high.
double dog_share_of_block() {
  return sum(27, 29.5, 100000,
             [](double z) { return 2 * std::sqrt(9.5 * 9.5 - (z - 20) * (z - 20)) * (z - 27) * 35 / 45; });
}

class FrontJaw : public testing::Test {
 protected:
  support::HandPlan hand;
  Part jaw = front_jaw(hand.plan);

  BuiltUp& whole() { return std::get<BuiltUp>(jaw.made); }
};

TEST_F(FrontJaw, IsTheBoardsWithTheirHolesAndTheBlocksGluedBack) {
  const double dogs = 4 * disc(19) * 60;
  const double expected = backing_before_bevel() + gear_layer_before_bevel() - wedge * 520 + 4 * wedge * 50 - dogs;
  EXPECT_NEAR(volume_mm3(jaw), expected, 1e-7 * expected);
  EXPECT_NEAR(mass_kg(jaw), expected * 0.72e-6, 1e-7 * expected * 0.72e-6);
}

TEST_F(FrontJaw, ListsItsBodiesInOrder) {
  const std::vector<Body> all = bodies(jaw);
  std::vector<std::string> names;
  for (const Body& body : all) names.push_back(body.name);
  EXPECT_THAT(names, testing::ElementsAre("front jaw backing", "gear layer", "landing block 1", "landing block 2",
                                          "landing block 3", "landing block 4"));
  // Of the bevel's section the part in the gear layer is the trapezium between z 40 and 72.
  const double in_layer = wedge - 13 * 13 * 35.0 / 45 / 2;
  EXPECT_NEAR(volume_mm3(all[1]), gear_layer_before_bevel() - in_layer * 520, 1);
  const double block = wedge * 50 - dog_share_of_block();
  for (std::size_t i = 2; i < all.size(); ++i) EXPECT_NEAR(volume_mm3(all[i]), block, 1e-6 * block) << all[i].name;
}

TEST_F(FrontJaw, ADogHoleMovedHalfOffTheEndGivesBackHalfItself) {
  const double before = volume_mm3(jaw);
  auto& hole = std::get<Drill>(whole().after.at(0).work);
  hole.at.x = -260;
  // At the end there is no landing block: the bevel has taken what lies above the slope.
  const double half_hole = (disc(19) * 60 - dog_share_of_block()) / 2;
  EXPECT_NEAR(volume_mm3(jaw) - before, disc(19) * 60 - half_hole, 1);
}

TEST_F(FrontJaw, AnOperationLeftOutLeavesItsWood) {
  const double before = volume_mm3(jaw);
  whole().after.pop_back();
  EXPECT_NEAR(volume_mm3(jaw) - before, disc(19) * 60, 1);
}

TEST_F(FrontJaw, HandGripsAreTwoSlotsFromBelow) {
  hand.plan.front_jaw.hand_grip_length = support::mm(100);
  hand.plan.front_jaw.hand_grip_width = support::mm(20);
  hand.plan.front_jaw.hand_grip_depth = support::mm(12);
  const double before = volume_mm3(jaw);
  hand.plan.front_jaw.hand_grips = true;
  EXPECT_NEAR(before - volume_mm3(front_jaw(hand.plan)), 2 * slot(20, 100) * 12, 1);
}

TEST_F(FrontJaw, WithoutLandingBlocksOrBevelHasTwoBodies) {
  hand.plan.front_jaw.landing_length = support::mm(0);
  EXPECT_EQ(bodies(front_jaw(hand.plan)).size(), 2U);
  hand.plan.front_jaw.bevel_height = support::mm(0);
  const double expected = backing_before_bevel() + gear_layer_before_bevel() - 4 * disc(19) * 60;
  EXPECT_NEAR(volume_mm3(front_jaw(hand.plan)), expected, 1e-7 * expected);
}

// What is drilled with a centre comes before what takes that centre away.
TEST_F(FrontJaw, ReliefHolesComeBeforePocketsAndRecessesBeforeBores) {
  const auto place = [](const Body& body, std::string_view start) {
    const auto& list = body.piece->operations;
    return std::find_if(list.begin(), list.end(), [&](const Operation& o) { return o.name.starts_with(start); }) -
           list.begin();
  };
  const std::vector<Body> all = bodies(jaw);
  EXPECT_LT(place(all[0], "thrust recess"), place(all[0], "bore for the bush"));
  EXPECT_LT(place(all[1], "relief hole"), place(all[1], "pocket for gear"));
}

}  // namespace
}  // namespace visewright::parts
