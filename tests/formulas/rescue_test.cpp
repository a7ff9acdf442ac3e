#include "formulas/rescue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double degree = std::numbers::pi / 180;

SpurGear gear(int teeth, double module_mm = 3, double shift = 0, double thinning_mm = 0.225) {
  SpurGear made;
  made.teeth = teeth;
  made.module_mm = module_mm;
  made.pressure_angle_rad = 20 * degree;
  made.shift = shift;
  made.thinning_mm = thinning_mm;
  return made;
}

/// A row as designed: every distance the tight one of unthinned teeth, pockets 2 mm off the tips.
RescueInput designed(const std::vector<SpurGear>& gears) {
  RescueInput in;
  in.gears = gears;
  in.limits.gear_to_wood_mm = 1;
  for (const SpurGear& one : gears) in.room.push_back({tip_diameter_mm(one) / 2 + 2, 0});
  for (std::size_t k = 0; k + 1 < gears.size(); ++k) {
    in.distances_mm.push_back(tight_centre_distance_mm(gears[k], gears[k + 1]));
    in.backlash_mm.push_back(gears[k].thinning_mm + gears[k + 1].thinning_mm);
  }
  return in;
}

std::vector<SpurGear> shifted(const RescueInput& in, const Rescue& out) {
  std::vector<SpurGear> gears = in.gears;
  for (std::size_t i = 0; i < gears.size(); ++i) gears[i].shift = out.shifts[i];
  return gears;
}

void expect_wanted_play(const RescueInput& in, const Rescue& out) {
  ASSERT_EQ(out.shifts.size(), in.gears.size());
  const auto gears = shifted(in, out);
  for (std::size_t k = 0; k < in.distances_mm.size(); ++k)
    EXPECT_NEAR(backlash_mm({gears[k], gears[k + 1], in.distances_mm[k]}), in.backlash_mm[k], 1e-9) << k;
}

const std::vector<double> amiss{-0.4, 0.25, 0.3, -0.15, 0.05, -0.3};

// m 2, 30 and 30 teeth on 59.86141 mm mesh without play when each is shifted by -0.0343435 (from the published formula
// for tight mesh; the number computed apart from this program).
TEST(Rescue, TwoGearsShareTheShiftThatTightMeshAsksFor) {
  RescueInput in = designed({gear(30, 2, 0, 0), gear(30, 2, 0, 0)});
  in.distances_mm = {59.86141};
  in.backlash_mm = {0};
  const Rescue out = rescue(in);
  EXPECT_NEAR(out.shifts[0], -0.0343435, 2e-6);
  EXPECT_NEAR(out.shifts[1], -0.0343435, 2e-6);
}

TEST(Rescue, EveryMeshHasItsPlayAgain) {
  for (const auto& gears : {std::vector<SpurGear>(5, gear(30)), std::vector<SpurGear>(7, gear(24, 4)),
                            std::vector<SpurGear>{gear(40, 2), gear(24, 2, 0.2), gear(31, 2, -0.1), gear(40, 2)}}) {
    RescueInput in = designed(gears);
    for (std::size_t k = 0; k < in.distances_mm.size(); ++k) in.distances_mm[k] += amiss[k];
    in.backlash_mm[1] = 0.6;
    const Rescue out = rescue(in);
    expect_wanted_play(in, out);
    double largest = 0;
    for (std::size_t i = 0; i < gears.size(); ++i)
      largest = std::max(largest, std::abs(out.shifts[i] - gears[i].shift));
    EXPECT_DOUBLE_EQ(out.largest_change, largest);
  }
}

TEST(Rescue, HolesThatCameOutRightChangeNothing) {
  const RescueInput in = designed({gear(30), gear(24, 3, 0.1), gear(15), gear(30)});
  const Rescue out = rescue(in);
  EXPECT_EQ(out.shifts, (std::vector<double>{0, 0.1, 0, 0}));
  EXPECT_EQ(out.largest_change, 0);
  EXPECT_TRUE(out.beyond.empty());  // the 15 teeth are undercut as designed, which no hole is to blame for
}

TEST(Rescue, AMirroredRowGetsMirroredShifts) {
  for (const std::size_t count : {4U, 5U}) {
    RescueInput in = designed(std::vector<SpurGear>(count, gear(30)));
    for (std::size_t k = 0; k < in.distances_mm.size(); ++k) in.distances_mm[k] += amiss[k];
    RescueInput mirrored = in;
    std::reverse(mirrored.distances_mm.begin(), mirrored.distances_mm.end());
    Rescue there = rescue(in), back = rescue(mirrored);
    std::reverse(back.shifts.begin(), back.shifts.end());
    for (std::size_t i = 0; i < count; ++i) EXPECT_NEAR(there.shifts[i], back.shifts[i], 1e-12);
  }
}

// All solutions differ by one number that alternates in sign: none of them has a smaller largest change.
TEST(Rescue, NoOtherChoiceHasASmallerLargestShift) {
  RescueInput in = designed(std::vector<SpurGear>(6, gear(30)));
  for (std::size_t k = 0; k < in.distances_mm.size(); ++k) in.distances_mm[k] += amiss[k];
  const Rescue out = rescue(in);
  for (int step = -1000; step <= 1000; ++step) {
    double largest = 0;
    for (std::size_t i = 0; i < out.shifts.size(); ++i)
      largest = std::max(largest, std::abs(out.shifts[i] + (i % 2 == 0 ? 1e-3 : -1e-3) * step));
    EXPECT_GE(largest, out.largest_change - 1e-12);
  }
}

// One hole moved along the row takes from one mesh what it gives to the other: left to one gear alone it would pile up.
TEST(Rescue, OneHoleAmissIsNotPiledUpAlongTheRow) {
  RescueInput in = designed(std::vector<SpurGear>(7, gear(30)));
  in.distances_mm[2] += 0.3;
  in.distances_mm[3] -= 0.3;
  const Rescue out = rescue(in);
  expect_wanted_play(in, out);
  EXPECT_TRUE(out.beyond.empty());
  // By hand: 0.3 mm is about 0.1 of a module in each sum, one up and one down, so the gears left and right of the hole
  // differ by 0.2 and none has to take more than half of that. Shifts that begin at 0 on the left would end at 0.2.
  EXPECT_NEAR(out.largest_change, 0.1, 0.001);
}

TEST(Rescue, APocketMovesTheShiftsToTheOtherGears) {
  RescueInput in = designed(std::vector<SpurGear>(3, gear(30)));
  in.distances_mm = {90.3, 90.3};
  const Rescue free = rescue(in);
  // The middle gear's pocket leaves it 0.06 mm, less than it would take.
  ASSERT_GT(free.shifts[1], 0.03);
  in.room[1].pocket_radius_mm = 48 + 1 + 0.06;
  const Rescue held = rescue(in);
  expect_wanted_play(in, held);
  EXPECT_TRUE(held.beyond.empty());
  EXPECT_NEAR(held.shifts[1], 0.02, 1e-9);
  EXPECT_GT(held.largest_change, free.largest_change);
}

TEST(Rescue, SaysWhichPocketsAreTooSmallAndByHowMuch) {
  RescueInput in = designed(std::vector<SpurGear>(3, gear(30)));
  in.distances_mm = {92, 92};
  for (GearRoom& room : in.room) room.pocket_radius_mm = 48 + 1 + 0.3;
  const Rescue out = rescue(in);
  expect_wanted_play(in, out);
  ASSERT_FALSE(out.beyond.empty());
  double worst = 0;
  for (const Beyond& one : out.beyond) {
    EXPECT_EQ(one.why, RescueLimit::pocket);
    const auto gears = shifted(in, out);
    EXPECT_NEAR(one.by_mm, tip_diameter_mm(gears[one.gear]) / 2 + 1 - in.room[one.gear].pocket_radius_mm, 1e-9);
    worst = std::max(worst, one.by_mm);
  }
  // The trespass is shared: by hand, half of what both gears of a mesh need together beyond what both have.
  EXPECT_NEAR(worst, 3 * (out.shifts[0] + out.shifts[1]) / 2 - 0.3, 1e-9);
}

TEST(Rescue, NearHolesAskForThinnerRimsAndUndercutFeet) {
  RescueInput in = designed(std::vector<SpurGear>(3, gear(18)));
  in.distances_mm = {53, 53};  // designed 54
  const Rescue out = rescue(in);
  ASSERT_FALSE(out.beyond.empty());
  EXPECT_EQ(out.beyond.front().why, RescueLimit::undercut);
  const auto gears = shifted(in, out);
  const SpurGear& first = gears[out.beyond.front().gear];
  EXPECT_NEAR(out.beyond.front().by_mm, 3 * (least_shift_without_undercut(first) - first.shift), 1e-9);

  in = designed(std::vector<SpurGear>(3, gear(30)));
  in.distances_mm = {89.5, 89.5};
  in.room.front().flange_recess_radius_mm = in.room.back().flange_recess_radius_mm = 41.25 - 4.5 - 0.03;
  const Rescue held = rescue(in);
  expect_wanted_play(in, held);
  EXPECT_TRUE(held.beyond.empty());  // the middle gear, which has no recess, takes the rest
  EXPECT_NEAR(held.shifts.front(), -0.01, 1e-9);
  EXPECT_NEAR(held.shifts.back(), -0.01, 1e-9);
}

TEST(Rescue, SharpTipsEndItToo) {
  RescueInput in = designed(std::vector<SpurGear>(2, gear(30)));
  for (GearRoom& room : in.room) room.pocket_radius_mm = 100;
  in.distances_mm = {96};
  in.limits.tip_thickness_factor = 0.4;
  const Rescue out = rescue(in);
  ASSERT_FALSE(out.beyond.empty());
  EXPECT_TRUE(std::any_of(out.beyond.begin(), out.beyond.end(),
                          [](const Beyond& one) { return one.why == RescueLimit::tip_thickness; }));
  // Moved back by what is said, the tip has its limit.
  for (const Beyond& one : out.beyond) {
    if (one.why != RescueLimit::tip_thickness) continue;
    SpurGear back = shifted(in, out)[one.gear];
    back.shift -= one.by_mm / 3;
    EXPECT_NEAR(tip_thickness_mm(back), 0.4 * 3, 1e-9);
  }
}

// Wide apart, shifts close the play; the tips then stand deep in the mate and in the end too little overlaps.
TEST(Rescue, MeshesHaveLimitsOfTheirOwn) {
  RescueInput in = designed(std::vector<SpurGear>(2, gear(30)));
  for (GearRoom& room : in.room) room.pocket_radius_mm = 100;
  in.limits.contact_ratio = 1.6;
  in.distances_mm = {91.5};
  const Rescue out = rescue(in);
  const auto gears = shifted(in, out);
  ASSERT_LT(contact_ratio({gears[0], gears[1], 91.5}), 1.6);
  ASSERT_FALSE(out.beyond.empty());
  EXPECT_EQ(out.beyond.front().why, RescueLimit::contact_ratio);
  EXPECT_NEAR(contact_ratio({gears[0], gears[1], 91.5 - out.beyond.front().by_mm}), 1.6, 1e-9);

  in.limits.contact_ratio = 1.1;
  in.limits.tip_clearance_factor = 0.24;
  in.distances_mm = {93};
  const Rescue deep = rescue(in);
  const auto pair = shifted(in, deep);
  ASSERT_FALSE(deep.beyond.empty());
  EXPECT_EQ(deep.beyond.back().why, RescueLimit::tip_clearance);
  EXPECT_NEAR(deep.beyond.back().by_mm, 0.72 - tip_clearance_mm({pair[0], pair[1], 93}), 1e-9);
}

// Base circles of 30 teeth of module 3 at 20°: radius 45 cos 20° = 42.2862 mm, by hand.
TEST(Rescue, NoInvoluteReachesWithinTheBaseCircles) {
  RescueInput in = designed(std::vector<SpurGear>(3, gear(30)));
  in.distances_mm = {90, 84};
  const Rescue out = rescue(in);
  EXPECT_TRUE(out.shifts.empty());
  ASSERT_EQ(out.beyond.size(), 1U);
  EXPECT_EQ(out.beyond.front().gear, 1U);
  EXPECT_EQ(out.beyond.front().why, RescueLimit::too_close);
  EXPECT_NEAR(out.beyond.front().by_mm, 0.5723, 1e-4);
}

}  // namespace
}  // namespace visewright::formulas
