#include "geometry/joined.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "shapes.h"

namespace visewright::geometry {
namespace {

using test::counted_area_mm2;
using test::lens_mm2;
using test::Numbers;
using test::pi;

/// The area both ways: without building the union, and of the union built.
void expect_area(const std::vector<Loop>& loops, double area, double tolerance = 1e-9) {
  EXPECT_NEAR(joined_area_mm2(loops), area, tolerance);
  const base::Result<Profile> built = joined(loops);
  ASSERT_TRUE(built.has_value()) << built.error().front().wrong;
  EXPECT_NEAR(area_mm2(*built), area, tolerance);
}

std::size_t edge_count(const Profile& p) {
  std::size_t n = 0;
  for (const Loop& l : p.outer) n += l.edges().size();
  for (const Loop& l : p.holes) n += l.edges().size();
  return n;
}

TEST(Joined, TwoCirclesAreTheirSumLessTheLens) {
  // Closed form of the lens of equal circles; radii and distance from a hairline overlap to nearly the same circle.
  for (const double d : {0.001, 0.5, 4.0, 9.0, 9.999, 9.9999999}) {
    expect_area({circle({0, 0}, 5), circle({d, 0}, 5)}, 2 * pi * 25 - lens_mm2(5, d));
  }
}

TEST(Joined, FiveCirclesInARowOverlapOnlyWithTheirNeighbours) {
  std::vector<Loop> row;
  for (int i = 0; i < 5; ++i) row.push_back(circle({i * 7.0, 3}, 5));
  // Distance 7 < 10 overlaps the neighbour, 14 > 10 leaves the next but one alone: five discs less four lenses.
  expect_area(row, 5 * pi * 25 - 4 * lens_mm2(5, 7));
  const Profile one = joined(row).value();
  EXPECT_EQ(one.outer.size(), 1U);
  EXPECT_TRUE(one.holes.empty());
  EXPECT_EQ(edge_count(one), 8U) << "arcs stay arcs: one for each end circle, two for each between";
}

TEST(Joined, DisjointAndNestedOutlinesKeepWhatTheyCover) {
  expect_area({circle({0, 0}, 2), circle({10, 0}, 3)}, pi * (4 + 9));
  expect_area({circle({0, 0}, 5), circle({1, 0}, 2), rectangle({-1, -1}, {1, 1})}, pi * 25);
  EXPECT_DOUBLE_EQ(joined_area_mm2({}), 0);
}

TEST(Joined, TouchingCirclesStayTwoOutlines) {
  const std::vector<Loop> loops{circle({0, 0}, 2), circle({5, 0}, 3)};
  expect_area(loops, pi * 13);
  EXPECT_EQ(joined(loops)->outer.size(), 2U);
  // One above the other, the walk along each comes to the contact half way and has to choose.
  const std::vector<Loop> tower{circle({0, 0}, 2), circle({0, 5}, 3), circle({0, 9}, 1)};
  expect_area(tower, pi * 14);
  EXPECT_EQ(joined(tower)->outer.size(), 3U);
  EXPECT_EQ(edge_count(*joined(tower)), 3U);
  expect_area({circle({0, 0}, 5), circle({2, 0}, 3)}, pi * 25);  // touching from inside at (5, 0)
}

TEST(Joined, SameOutlineTwiceIsOne) {
  const Loop box = rectangle({0, 0}, {4, 3});
  expect_area({box, box}, 12);
  expect_area({circle({1, 2}, 3), circle({1, 2}, 3), circle({1, 2}, 3)}, 9 * pi);
  // The same circle started elsewhere, so that the two share no end.
  const Loop turned_circle = moved(circle({0, 0}, 3), 1.0, {1, 2});
  expect_area({circle({1, 2}, 3), turned_circle}, 9 * pi);
  EXPECT_EQ(edge_count(*joined(std::vector<Loop>{circle({1, 2}, 3), turned_circle})), 1U);
}

TEST(Joined, RectanglesThatShareAStretchOfSideBecomeOne) {
  // Side by side with a step, hand count: 4·3 + 5·2.
  const std::vector<Loop> step{rectangle({0, 0}, {4, 3}), rectangle({4, 0}, {9, 2})};
  expect_area(step, 22);
  EXPECT_EQ(edge_count(*joined(step)), 6U) << "an L has six sides once collinear pieces are merged";
  // Four blocks round a courtyard of 1 by 1.
  const std::vector<Loop> court{rectangle({0, 0}, {2, 1}), rectangle({2, 0}, {3, 2}), rectangle({1, 2}, {3, 3}),
                                rectangle({0, 1}, {1, 3})};
  expect_area(court, 8);
  const Profile ring = joined(court).value();
  ASSERT_EQ(ring.outer.size(), 1U);
  ASSERT_EQ(ring.holes.size(), 1U);
  EXPECT_NEAR(area_mm2(ring.holes[0]), 1, 1e-12);
  EXPECT_EQ(edge_count(ring), 8U);
}

TEST(Joined, SlotAndCirclesOfItsOwnWidthAreTheSlot) {
  // The circle shares half its arc with the slot's end and touches both sides where they begin: every trap at once.
  for (const double turn : {0.0, 0.3, 1.0, 2.5}) {
    const Point a{3, -2}, b = a + polar(20, turn);
    const std::vector<Loop> loops{slot(a, b, 8), circle(a, 4), circle(b, 4), circle(a + polar(7, turn), 4)};
    expect_area(loops, 160 + 16 * pi);
    EXPECT_EQ(edge_count(*joined(loops)), 4U) << turn;
  }
}

TEST(Joined, SidesOffByLessThanTheToleranceCountAsOne) {
  for (const double gap : {1e-13, 1e-10, 3e-8, -3e-8}) {
    const std::vector<Loop> loops{rectangle({0, 0}, {4, 3}), rectangle({4 + gap, 1}, {9, 2})};
    expect_area(loops, 17, 1e-6);
    EXPECT_EQ(joined(loops)->outer.size(), 1U) << gap;
  }
}

TEST(Joined, FaceToFaceOutlinesAlongAnArcBecomeOne) {
  // A disc and a plate with a round notch that fits it; together a plate of 10·6 with half a disc on top.
  const Loop notched = Loop::of({Line{{0, 0}, {10, 0}}, Line{{10, 0}, {10, 6}}, Line{{10, 6}, {8, 6}},
                                 Arc{{8, 6}, {2, 6}, {5, 6}, false}, Line{{2, 6}, {0, 6}}, Line{{0, 6}, {0, 0}}})
                           .value();
  expect_area({notched, circle({5, 6}, 3)}, 60 + 4.5 * pi);
}

TEST(Joined, GridCountAgreesOnRandomShapes) {
  Numbers numbers(20240229);
  for (int round = 0; round < 12; ++round) {
    std::vector<Loop> loops;
    const int n = 2 + numbers.below(6);
    for (int i = 0; i < n; ++i) loops.push_back(test::any_shape(numbers));
    // The errors of single cells along some 100 mm of outline mostly cancel.
    EXPECT_NEAR(joined_area_mm2(loops), counted_area_mm2(loops, 24, 0.1), 1.0) << round;
  }
}

TEST(Joined, BothWaysAgreeOnManyRandomShapesAndInAnyOrder) {
  Numbers numbers(7);
  for (int round = 0; round < 2000; ++round) {
    std::vector<Loop> loops;
    const int n = 2 + numbers.below(7);
    for (int i = 0; i < n; ++i) loops.push_back(test::any_shape(numbers));
    const double area = joined_area_mm2(loops);
    const base::Result<Profile> built = joined(loops);
    ASSERT_TRUE(built.has_value()) << round;
    ASSERT_NEAR(area_mm2(*built), area, 1e-8) << round;
    std::rotate(loops.begin(), loops.begin() + 1, loops.end());
    ASSERT_NEAR(joined_area_mm2(loops), area, 1e-8) << round;
    // A point well inside exactly when some outline has it.
    for (int k = 0; k < 20; ++k) {
      const Point p{numbers.between(-15, 15), numbers.between(-15, 15)};
      const bool in = std::any_of(loops.begin(), loops.end(), [p](const Loop& l) { return contains(l, p); });
      ASSERT_EQ(contains(*built, p), in) << round << ": " << p.x << ", " << p.y;
    }
  }
}

TEST(Joined, ShapesOnACoarseGridOverlapInEveryDegenerateWay) {
  // Whole-number corners make shared sides, shared corners, touching circles and equal outlines common.
  Numbers numbers(11);
  for (int round = 0; round < 3000; ++round) {
    std::vector<Loop> loops;
    const int n = 2 + numbers.below(5);
    for (int i = 0; i < n; ++i) {
      const double x = numbers.below(6), y = numbers.below(6), w = 1 + numbers.below(4), h = 1 + numbers.below(4);
      const int kind = numbers.below(4);
      if (kind == 0) loops.push_back(circle({x, y}, w));
      if (kind == 1) loops.push_back(rectangle({x, y}, {x + w, y + h}));
      if (kind == 2) loops.push_back(slot({x, y}, {x + w, y}, 2 * h));
      if (kind == 3) loops.push_back(rounded_rectangle({x, y}, {x + 2 * w, y + 2 * w}, w));
    }
    const double area = joined_area_mm2(loops);
    // A turn by no round angle and a large shift change no area, but every rounding.
    std::vector<Loop> elsewhere;
    for (const Loop& l : loops) elsewhere.push_back(moved(l, 0.7, {123.4, -56.7}));
    ASSERT_NEAR(joined_area_mm2(elsewhere), area, 1e-6) << round;
    const base::Result<Profile> built = joined(elsewhere);
    ASSERT_TRUE(built.has_value()) << round;
    ASSERT_NEAR(area_mm2(*built), area, 1e-6) << round;
    if (round % 200 == 0) {
      ASSERT_NEAR(counted_area_mm2(loops, 15, 0.1), area, 1.5) << round;
    }
  }
}

TEST(Joined, GearAndItsBoreAreTheGear) {
  const Loop gear = test::plain_gear({10, 5}, 3, 30);
  EXPECT_NEAR(joined_area_mm2(std::vector<Loop>{gear, circle({10, 5}, 12)}), area_mm2(gear), 1e-9);
  EXPECT_TRUE(joined(std::vector<Loop>{gear, circle({10, 5}, 12)}).has_value());
}

TEST(Joined, CrossedFlanksAreRefusedForBuildingAndMeasuredByChords) {
  const Loop gear = test::plain_gear({0, 0}, 3, 24, 0.02);
  // A window whose upper side, at the pitch radius, runs across flanks.
  const std::vector<Loop> loops{gear, rectangle({-20, 30}, {20, 36})};
  const base::Result<Profile> built = joined(loops);
  ASSERT_FALSE(built.has_value());
  EXPECT_EQ(built.error().front().cause, base::Cause::geometry);
  EXPECT_NEAR(joined_area_mm2(loops), counted_area_mm2(loops, 42, 0.25), 3.0);
  EXPECT_NEAR(joined_area_mm2(std::vector<Loop>{gear, gear}), area_mm2(gear), 1e-3);
}

TEST(LeftArea, PlateLessHolesThatOverlapEachOtherAndTheRim) {
  const Loop plate = rectangle({0, 0}, {40, 20});
  EXPECT_DOUBLE_EQ(left_area_mm2(plate, {}), 800);
  EXPECT_NEAR(left_area_mm2(plate, std::vector<Loop>{circle({100, 0}, 5)}), 800, 1e-12);
  // Two holes of radius 4 at distance 6, and one half over the right side.
  const std::vector<Loop> holes{circle({10, 10}, 4), circle({16, 10}, 4), circle({40, 10}, 3)};
  EXPECT_NEAR(left_area_mm2(plate, holes), 800 - (2 * 16 * pi - lens_mm2(4, 6)) - 4.5 * pi, 1e-9);
  EXPECT_NEAR(left_area_mm2(plate, std::vector<Loop>{plate}), 0, 1e-9);
  EXPECT_NEAR(left_area_mm2(plate, std::vector<Loop>{rectangle({-1, -1}, {41, 21})}), 0, 1e-9);
}

}  // namespace
}  // namespace visewright::geometry
