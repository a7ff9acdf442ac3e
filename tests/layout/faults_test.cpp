// Numbers that contradict each other are faults, and a fault says where both stand.
#include "layout/planning.h"

namespace visewright::layout {
namespace {

// The hand-worked stacks: 131 in front, 78 behind, two pitches of 2.5 and 8 for the stop; so 440 opens to 218.
TEST(Faults, ScrewTooShortNamesBothPlaces) {
  const auto faults = faults_of(with(five_gears, "thread = \"M20\"", "thread = \"M20\", length = 440"));
  ASSERT_EQ(faults.size(), 1U);
  const base::Fault& fault = faults.front();
  EXPECT_EQ(fault.key, "screw.length");
  ASSERT_TRUE(fault.place.has_value());
  EXPECT_EQ(fault.place->line, 3U) << "where the length stands";
  EXPECT_NE(fault.wrong.find("218 mm"), std::string::npos) << fault.wrong;
  EXPECT_NE(fault.wrong.find("line 1 asks for 250 mm"), std::string::npos) << fault.wrong;
  EXPECT_NE(fault.right.find("475 mm"), std::string::npos) << fault.right;
}

TEST(Faults, ScrewLongEnoughIsNone) {
  EXPECT_TRUE(faults_of(with(five_gears, "thread = \"M20\"", "thread = \"M20\", length = 472")).empty());
  EXPECT_EQ(faults_of(with(five_gears, "thread = \"M20\"", "thread = \"M20\", length = 471")).size(), 1U);
}

TEST(Faults, LengthWithoutOpeningSetsTheOpening) {
  const Plan p =
      good_plan(with(with(five_gears, "opening = 250\n", ""), "thread = \"M20\"", "thread = \"M20\", length = 440"));
  EXPECT_NEAR(p.use.opening_max.mm(), 218, 1e-9);
}

// The notch is 39 deep: 139 of top leaves 100, 138 leaves 99.
TEST(Faults, NotchThatLeavesTooLittleTop) {
  EXPECT_TRUE(faults_of(with(five_gears, "top = { thickness = 60", "top = { thickness = 60, depth = 139")).empty());
  const auto faults = faults_of(with(five_gears, "top = { thickness = 60", "top = { thickness = 60, depth = 138"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults.front().key, "bench.top.depth");
  ASSERT_TRUE(faults.front().place.has_value());
  EXPECT_EQ(faults.front().place->line, 6U);
  EXPECT_NE(faults.front().wrong.find("99 mm"), std::string::npos) << faults.front().wrong;
  EXPECT_NE(faults.front().right.find("139 mm"), std::string::npos) << faults.front().right;
}

TEST(Faults, BenchShorterThanTheNotch) {
  EXPECT_TRUE(faults_of(with(five_gears, "top = { thickness = 60", "top = { thickness = 60, length = 526")).empty());
  const auto faults = faults_of(with(five_gears, "top = { thickness = 60", "top = { thickness = 60, length = 519"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults.front().key, "bench.top.length");
  EXPECT_NE(faults.front().wrong.find("526 mm"), std::string::npos) << faults.front().wrong;
}

TEST(Faults, BearingOutsideTheCover) {
  const auto faults = faults_of(with(five_gears, "backing = 40", "backing = 40, gear_layer = 45"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults.front().key, "front_jaw.gear_layer");
  EXPECT_NE(faults.front().right.find("32 mm"), std::string::npos) << faults.front().right;
}

TEST(Faults, TeethThatRunToAPoint) {
  const auto faults = faults_of(with(five_gears, "teeth = [30, 30, 30, 30, 30], module = 3",
                                     "teeth = [30, 10, 30], module = 3, profile_shift = [0, 1.2, 0]"));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults.front().key, "train.teeth");
}

// A hole at the person's left is one at −x; the mirrored design has it at +x, and nothing else about it moves.
TEST(Mirrored, DogHolesMirror) {
  const auto at = [](const std::string& list) {
    return good_plan(with(five_gears, "backing = 40", "backing = 40, dog_holes = { positions = " + list + " }"));
  };
  const Plan left = at("[-150, -45]"), right = at("[45, 150]");
  ASSERT_EQ(left.dogs.holes.size(), 2U);
  ASSERT_EQ(right.dogs.holes.size(), 2U);
  EXPECT_NEAR(left.dogs.holes[0].at.x, -150, 1e-9) << "left of the middle is negative";
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_NEAR(left.dogs.holes[i].at.x, -right.dogs.holes[1 - i].at.x, 1e-9);
    EXPECT_NEAR(left.dogs.holes[i].at.y, right.dogs.holes[1 - i].at.y, 1e-9);
  }
}

TEST(Mirrored, UnequalTrainMirrors) {
  const auto row = [](const std::string& teeth) { return good_plan(with(five_gears, "[30, 30, 30, 30, 30]", teeth)); };
  const Plan a = row("[30, 24, 36, 40, 30]"), b = row("[30, 40, 36, 24, 30]");
  for (std::size_t i = 0; i < 5; ++i) {
    EXPECT_NEAR(a.train.gears[i].centre_x.mm(), -b.train.gears[4 - i].centre_x.mm(), 1e-9);
    EXPECT_NEAR(a.train.gears[i].tip.mm(), b.train.gears[4 - i].tip.mm(), 1e-9);
  }
}

// A box given from the bench edge back and from the top down, in the model's frame: X right, Y back, Z up from the
// axis.
TEST(Obstacle, StandsWhereItIsGiven) {
  const Plan p =
      good_plan(with(five_gears, "bench = {",
                     "bench = { obstacle = [{ name = \"left leg\", from = [-320, 130, 800], to = [-400, 50, 60] }],"));
  ASSERT_EQ(p.bench.obstacles.size(), 1U);
  const auto& box = p.bench.obstacles.front();
  EXPECT_EQ(box.name, "left leg");
  const std::array<double, 3> low{-400, 50, 110 - 800}, high{-320, 130, 110 - 60};
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(box.low_mm[i], low[i], 1e-9);
    EXPECT_NEAR(box.high_mm[i], high[i], 1e-9);
  }
}

}  // namespace
}  // namespace visewright::layout
