// Growing outlines. Expected areas are Steiner's formula for convex outlines, area + perimeter·d + π·d² (Steiner 1840,
// from memory), or worked out by hand beside the case.
#include "geometry/grown.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "geometry/joined.h"
#include "geometry/measure.h"
#include "units/quantity.h"

namespace visewright::geometry {
namespace {

using units::pi;

std::vector<Loop> grow(const Loop& loop, double by) { return grown(loop, by).value(); }

double least_distance(const Loop& result, const Loop& from) {
  double least = 1e300;
  for (const Point p : sample(result, 1e-3).points) least = std::min(least, distance_mm(p, from));
  return least;
}

TEST(Grown, KeepsACircleACircle) {
  const auto out = grow(circle({3, -2}, 5), 0.125);
  ASSERT_EQ(out.size(), 1u);
  ASSERT_EQ(out[0].edges().size(), 1u);
  EXPECT_DOUBLE_EQ(distance(std::get<Arc>(out[0].edges()[0]).centre, start(out[0].edges()[0])), 5.125);
  EXPECT_TRUE(grow(circle({0, 0}, 3), -3).empty());
  EXPECT_TRUE(grow(circle({0, 0}, 3), -4).empty());
}

TEST(Grown, RoundsTheCornersOfARectangleOutwards) {
  const auto out = grow(rectangle({0, 0}, {30, 20}), 3);
  ASSERT_EQ(out.size(), 1u);
  EXPECT_EQ(out[0].edges().size(), 8u);
  EXPECT_NEAR(area_mm2(out[0]), 600 + 100 * 3 + pi * 9, 1e-6);
}

TEST(Grown, KeepsTheCornersOfARectangleInwards) {
  const auto in = grow(rectangle({0, 0}, {30, 20}), -3);
  ASSERT_EQ(in.size(), 1u);
  EXPECT_EQ(in[0].edges().size(), 4u);
  EXPECT_NEAR(area_mm2(in[0]), 24 * 14, 1e-6);
}

TEST(Grown, KeepsArcsAsArcs) {
  // A slot 10 wide, 40 between its centres: inwards by 2 it is one 6 wide.
  const auto in = grow(slot({0, 0}, {40, 0}, 10), -2);
  ASSERT_EQ(in.size(), 1u);
  EXPECT_NEAR(area_mm2(in[0]), 40 * 6 + pi * 9, 1e-6);
  const auto out = grow(slot({0, 0}, {40, 0}, 10), 2);
  ASSERT_EQ(out.size(), 1u);
  EXPECT_NEAR(area_mm2(out[0]), 40 * 14 + pi * 49, 1e-6);
}

TEST(Grown, RoundsACornerThatLooksInwards) {
  // An L of two 40 × 10 legs.
  const std::array<Point, 6> corners{Point{0, 0}, {40, 0}, {40, 10}, {10, 10}, {10, 40}, {0, 40}};
  const Loop l = polygon(corners);
  const auto in = grow(l, -2);
  ASSERT_EQ(in.size(), 1u);
  // Leg along x: x 2…38, y 2…8; leg along y: x 2…8, y 8…38; at the inner corner (10, 10) the square 8…10 × 8…10 less
  // the quarter disc.
  EXPECT_NEAR(area_mm2(in[0]), 36 * 6 + 6 * 30 + (4 - pi), 1e-6);
  EXPECT_NEAR(least_distance(in[0], l), 2, 1e-6);
}

TEST(Grown, FallsIntoPiecesAtANeck) {
  // Two 20 squares joined by a neck 4 wide: 3 inwards the neck is gone and two 14 squares are left.
  const std::array<Point, 12> corners{Point{0, 0},   {20, 0},  {20, 8},  {40, 8},  {40, 0},  {60, 0},
                                      {60, 20}, {40, 20}, {40, 12}, {20, 12}, {20, 20}, {0, 20}};
  const auto in = grow(polygon(corners), -3);
  ASSERT_EQ(in.size(), 2u);
  for (const Loop& each : in) EXPECT_GT(area_mm2(each), 14 * 14 - 1e-6);
}

TEST(Grown, GoesRoundOverlappingPockets) {
  // Three pockets whose circles cross, joined: inwards by 3 the outline is that of circles 3 smaller, also joined.
  std::vector<Loop> pockets, smaller;
  for (const double x : {0.0, 90.0, 180.0}) {
    pockets.push_back(circle({x, 0}, 50));
    smaller.push_back(circle({x, 0}, 47));
  }
  const Loop outline = joined(pockets)->outer.front();
  const auto in = grow(outline, -3);
  ASSERT_EQ(in.size(), 1u);
  // About each cusp the path runs a little round the corner: it lies inside the smaller circles' union plus that.
  EXPECT_NEAR(least_distance(in[0], outline), 3, 1e-6);
  EXPECT_GT(area_mm2(in[0]), joined_area_mm2(smaller));
  EXPECT_LT(area_mm2(in[0]), area_mm2(outline));
  for (const Edge& e : in[0].edges()) EXPECT_TRUE(std::holds_alternative<Arc>(e));
}

TEST(Grown, TakesInvolutesByChordsWithinTwoThousandths) {
  // An involute closed by its base circle's chord and a line; the least distance of the result from the outline's own
  // points must be the growth.
  const Involute flank{{0, 0}, 40, 0, 0.1, 0.5, true};
  const Loop loop = Loop::of({flank, Line{finish(flank), {60, 0}}, Line{{60, 0}, start(flank)}}).value();
  const auto out = grow(loop, 0.1);
  ASSERT_EQ(out.size(), 1u);
  const auto points = sample(loop, 1e-5).points;
  for (const Point p : sample(out[0], 1e-3).points) {
    double least = 1e300;
    for (std::size_t i = 0; i < points.size(); ++i) {
      const Point a = points[i], along = points[(i + 1) % points.size()] - a;
      const double u = std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0);
      least = std::min(least, distance(p, a + u * along));
    }
    EXPECT_NEAR(least, 0.1, 2e-3);
  }
}

TEST(Grown, RefusesWhatIsNoNumber) { EXPECT_FALSE(grown(circle({0, 0}, 1), std::nan(""))); }

}  // namespace
}  // namespace visewright::geometry
