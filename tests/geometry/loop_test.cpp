#include "geometry/loop.h"

#include <gtest/gtest.h>

#include "shapes.h"

namespace visewright::geometry {
namespace {

using test::pi;

void expect_closed(const Loop& loop) {
  const auto edges = loop.edges();
  for (std::size_t i = 0; i < edges.size(); ++i) {
    EXPECT_LE(distance(finish(edges[i]), start(edges[(i + 1) % edges.size()])), same_point_mm);
  }
  EXPECT_GT(area_mm2(loop), 0);
  // Every shape must pass the checks that a chain from outside has to pass.
  EXPECT_TRUE(Loop::of({edges.begin(), edges.end()}).has_value());
}

void expect_box(const Box& b, double x0, double y0, double x1, double y1, double tolerance = 1e-12) {
  EXPECT_NEAR(b.low.x, x0, tolerance);
  EXPECT_NEAR(b.low.y, y0, tolerance);
  EXPECT_NEAR(b.high.x, x1, tolerance);
  EXPECT_NEAR(b.high.y, y1, tolerance);
}

TEST(LoopOf, RefusesWhatIsNoOutline) {
  const auto wrong = [](std::vector<Edge> edges) { return Loop::of(std::move(edges)).error().front().wrong; };
  const Point a{0, 0}, b{4, 0}, c{4, 3}, d{0, 3};
  EXPECT_EQ(wrong({}), "there is no edge in it");
  EXPECT_EQ(wrong({Line{a, b}, Line{b, c}, Line{c, d}}), "edge 3 does not end where the next one starts");
  EXPECT_EQ(wrong({Line{a, b}, Line{b, a}}), "it encloses no area");
  EXPECT_EQ(wrong({Line{a, {NAN, 0}}, Line{{NAN, 0}, a}}), "a coordinate is not a number");
  const std::string crossing = "it crosses or touches itself";
  EXPECT_EQ(wrong({Line{a, {4, 4}}, Line{{4, 4}, b}, Line{b, d}, Line{d, a}}), crossing) << "a bow tie";
  EXPECT_EQ(wrong({Line{a, {6, 0}}, Line{{6, 0}, b}, Line{b, c}, Line{c, a}}), crossing) << "a spike";
  EXPECT_EQ(wrong({Line{a, b}, Line{b, c}, Line{c, {2, 0}}, Line{{2, 0}, d}, Line{d, a}}), crossing) << "a pinch";
  EXPECT_EQ(wrong({Line{a, b}, Arc{b, a, {2, 1}, true}, Line{a, d}, Line{d, a}}), crossing);
  // An arc that bulges through the opposite side.
  EXPECT_EQ(wrong({Line{a, b}, Line{b, {4, 1}}, Arc{{4, 1}, {0, 1}, {2, 1}, false}, Line{{0, 1}, a}}), crossing);
}

TEST(LoopOf, FindsAFlankThatCrossesALine) {
  const Involute flank{{0, 0}, 40, 0, 0, 0.8, true};
  const Point from = start(flank), to = finish(flank);
  EXPECT_TRUE(Loop::of({flank, Line{to, {30, 0}}, Line{{30, 0}, from}}).has_value());
  const Point beyond = at(flank, 0.6) + Point{2, -2};
  const auto crossed = Loop::of({flank, Line{to, {30, 20}}, Line{{30, 20}, beyond}, Line{beyond, from}});
  EXPECT_FALSE(crossed.has_value());
}

TEST(LoopOf, TurnsAClockwiseChainRound) {
  const Loop loop = Loop::of({Arc{{2, 0}, {-2, 0}, {0, 0}, false}, Line{{-2, 0}, {2, 0}}}).value();
  EXPECT_NEAR(area_mm2(loop), 2 * pi, 1e-12);
  EXPECT_EQ(start(loop.edges()[0]), (Point{2, 0}));
}

TEST(LoopOf, LeavesOutLinesOfNoLength) {
  const Point a{0, 0}, b{4, 0}, c{4, 3};
  const Loop loop = Loop::of({Line{a, b}, Line{b, {4, 5e-8}}, Line{{4, 5e-8}, c}, Line{c, a}}).value();
  EXPECT_EQ(loop.edges().size(), 3U);
}

TEST(Shapes, HaveTheAreasOfTheirFormulas) {
  EXPECT_NEAR(area_mm2(circle({7, -3}, 2.5)), pi * 6.25, 1e-12);
  EXPECT_NEAR(area_mm2(rectangle({-1, 2}, {4, 5})), 15, 1e-12);
  // A square of side 2r is missing (4 − π)·r² when its four corners are rounded.
  EXPECT_NEAR(area_mm2(rounded_rectangle({0, 0}, {10, 6}, 1.5)), 60 - (4 - pi) * 2.25, 1e-12);
  EXPECT_NEAR(area_mm2(rounded_rectangle({0, 0}, {10, 6}, 3)), 60 - (4 - pi) * 9, 1e-12);
  EXPECT_NEAR(area_mm2(rounded_rectangle({0, 0}, {6, 6}, 3)), pi * 9, 1e-12);
  // √3/2 times the square of the width across flats.
  EXPECT_NEAR(area_mm2(hexagon({3, 3}, 30, 0.2)), std::sqrt(3.0) / 2 * 900, 1e-9);
  EXPECT_NEAR(area_mm2(slot({1, 1}, {4, 5}, 2)), 10 + pi, 1e-12);
  EXPECT_NEAR(area_mm2(slot({1, 1}, {1, 1}, 2)), pi, 1e-12);
}

TEST(Shapes, AreClosedSimpleAndAnticlockwise) {
  expect_closed(circle({1, 2}, 3));
  expect_closed(rectangle({0, 0}, {3, 2}));
  for (const double r : {0.0, 0.5, 2.0}) expect_closed(rounded_rectangle({-1, -1}, {5, 3}, r));
  expect_closed(rounded_rectangle({0, 0}, {4, 4}, 2));
  expect_closed(hexagon({1, 1}, 13, 0.7));
  expect_closed(slot({0, 0}, {-5, 3}, 4));
  const std::vector<Point> clockwise{{0, 0}, {0, 3}, {4, 0}};
  expect_closed(polygon(clockwise));
  expect_closed(test::plain_gear({5, 5}, 3, 24));
  expect_closed(mirrored(test::plain_gear({5, 5}, 3, 24)));
}

TEST(Shapes, HexagonAtTurnZeroHasLevelFlats) {
  expect_box(box(hexagon({0, 0}, 30, 0)), -30 / std::sqrt(3.0), -15, 30 / std::sqrt(3.0), 15);
  expect_box(box(hexagon({0, 0}, 30, pi / 6)), -15, -30 / std::sqrt(3.0), 15, 30 / std::sqrt(3.0));
}

TEST(Shapes, BoxTakesInTheBulgeOfArcsAndOnlyThat) {
  expect_box(box(slot({0, 0}, {10, 0}, 4)), -2, -2, 12, 2);
  expect_box(box(circle({1, 2}, 3)), -2, -1, 4, 5);
  expect_box(box(rounded_rectangle({0, 0}, {10, 6}, 2)), 0, 0, 10, 6);
  // A quarter of a circle bulges nowhere past its ends; turned by 45° it does.
  expect_box(box(Edge(Arc{{2, 0}, {0, 2}, {0, 0}, true})), 0, 0, 2, 2);
  const Point a = polar(2, pi / 4), b = polar(2, 3 * pi / 4);
  expect_box(box(Edge(Arc{a, b, {0, 0}, true})), b.x, a.y, a.x, 2);
  // Tip circle of a gear with a tooth on each axis: module 3, 24 teeth, radius 39.
  const Box gear = box(test::plain_gear({0, 0}, 3, 24));
  expect_box(gear, -39, -39, 39, 39, 2e-4);
}

TEST(Shapes, MovedAndMirroredCarryEveryPointAlong) {
  test::Numbers numbers(3);
  const Loop gear = test::plain_gear({4, 1}, 3, 20, 0.1);
  const Loop there = moved(gear, 0.4, {10, -20}), other_hand = mirrored(gear);
  EXPECT_NEAR(area_mm2(there), area_mm2(gear), 1e-9);
  EXPECT_NEAR(area_mm2(other_hand), area_mm2(gear), 1e-9);
  for (int i = 0; i < 3000; ++i) {
    const Point p{numbers.between(-35, 40), numbers.between(-35, 35)};
    ASSERT_EQ(contains(there, turned(p, 0.4) + Point{10, -20}), contains(gear, p));
    ASSERT_EQ(contains(other_hand, {-p.x, p.y}), contains(gear, p));
  }
}

}  // namespace
}  // namespace visewright::geometry
