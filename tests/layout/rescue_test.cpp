// Holes drilled wrong and gears printed anew. Expected values: the wanted backlash is the design's; the sums of shifts
// follow from the involute equation (ISO 21771:2007), here by bisection on the backlash itself.
#include "layout/planning.h"

namespace visewright::layout {
namespace {

const std::string small_train = R"(opening = 150
train = { teeth = [40, 40, 40], module = 2 }
screw = { thread = "M16" }
drive = { at = "right" }
)";

std::string drilled(const std::string& centres) { return small_train + "measured = { axle_centres = " + centres + " }\n"; }

TEST(Rescue, EveryMeshGetsItsBacklashBack) {
  const Plan p = good_plan(drilled("[[-80], [0.4], [80.2]]"));
  ASSERT_TRUE(p.train.beyond_rescue.empty());
  EXPECT_NEAR(p.train.meshes[0].centre_distance.mm(), 80.4, 1e-9);
  EXPECT_NEAR(p.train.meshes[1].centre_distance.mm(), 79.8, 1e-9);
  for (const Mesh& mesh : p.train.meshes) EXPECT_NEAR(mesh.backlash.mm(), p.train.backlash.mm(), 1e-6);
  EXPECT_GT(p.train.gears[0].shift.value + p.train.gears[1].shift.value, 0);  // farther apart: outwards
  EXPECT_LT(p.train.gears[1].shift.value + p.train.gears[2].shift.value, 0);
}

TEST(Rescue, HolesAsDesignedChangeNothing) {
  const Plan p = good_plan(drilled("[[-80], [0], [80]]"));
  for (const Gear& gear : p.train.gears) EXPECT_NEAR(gear.shift.value, 0, 1e-9);
}

TEST(Rescue, PocketStaysAsDrilledAndTheTipFollowsTheShift) {
  const Plan plain = good_plan(small_train), p = good_plan(drilled("[[-80], [0.4], [80.2]]"));
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(p.train.gears[i].pocket.mm(), plain.train.gears[i].pocket.mm(), 1e-9);
    EXPECT_NEAR(p.train.gears[i].tip.mm(), 84 + 2 * 2 * p.train.gears[i].shift.value, 1e-6);
  }
  EXPECT_NE(p.train.gears[0].outline, p.train.gears[1].outline);  // marked by position: no longer one part
}

TEST(Rescue, FarBeyondIsSaid) {
  const Plan p = good_plan(drilled("[[-80], [2.0], [80]]"));
  ASSERT_FALSE(p.train.beyond_rescue.empty());
  EXPECT_GT(p.train.beyond_rescue.front().by_mm, 0);
}

TEST(Rescue, WhatNoGearCanHaveIsRefused) {
  const auto faults = faults_of(drilled("[[-80], [3.5], [80]]"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults[0].key, "measured.axle_centres");
}

TEST(Rescue, GivenShiftsAreLeftAlone) {
  const Plan p = good_plan(with(drilled("[[-80], [0.4], [80.2]]"), "module = 2 }", "module = 2, profile_shift = 0.1 }"));
  for (const Gear& gear : p.train.gears) EXPECT_NEAR(gear.shift.value, 0.1, 1e-12);
}

TEST(Rescue, AxlesTooNearAreRefused) {
  const auto faults = faults_of(with(small_train, "module = 2 }", "module = 2, centre_distances = [70, 80] }"));
  ASSERT_FALSE(faults.empty());
  EXPECT_EQ(faults[0].key, "train.centre_distances");
}

}  // namespace
}  // namespace visewright::layout
