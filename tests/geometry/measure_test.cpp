#include "geometry/measure.h"

#include <gtest/gtest.h>

#include "shapes.h"

namespace visewright::geometry {
namespace {

using test::Numbers;
using test::pi;
using test::Rack;

double polygon_area(const std::vector<Point>& points) {
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) twice += cross(points[i], points[(i + 1) % points.size()]);
  return twice / 2;
}

/// A tooth space of a real gear: fillet, flank, tip line and back along straight lines. Every kind of edge takes part.
Loop every_kind() {
  const Rack rack;
  const Trochoid fillet = rack.fillet();
  const double a = rack.pressure_rad, rb = rack.base_radius();
  const double turn =
      (rack.offset() * std::tan(a) + rack.tip_radius() / std::cos(a)) / rack.pitch_radius() - (std::tan(a) - a);
  const double roll = std::tan(a) - (rack.offset() / std::sin(a) + rack.tip_radius()) / rb;
  const Involute flank{{0, 0}, rb, turn, roll, 0.5, true};
  const Point low = start(fillet), high = finish(flank), far{length(high), 0};
  return Loop::of({fillet, flank, Arc{high, far, {0, 0}, false}, Line{far, low}}).value();
}

TEST(Measure, AreaAndLengthAgreeWithAFinePolyline) {
  const Loop loop = every_kind();
  const Sampled fine = sample(loop, 1e-8);
  double around = 0;
  for (std::size_t i = 0; i < fine.points.size(); ++i) {
    around += distance(fine.points[i], fine.points[(i + 1) % fine.points.size()]);
  }
  EXPECT_NEAR(area_mm2(loop), polygon_area(fine.points), 1e-6);
  EXPECT_NEAR(perimeter_mm(loop), around, 1e-6);
}

TEST(Measure, SweptAreaOfAClosedChainDoesNotDependOnTheHub) {
  const Loop loop = every_kind();
  for (const Point hub : {Point{0, 0}, Point{100, -50}, Point{-3000, 800}}) {
    double area = 0;
    for (const Edge& e : loop.edges()) area += swept_area_mm2(e, hub);
    EXPECT_NEAR(area, area_mm2(loop), 1e-8);
  }
}

TEST(Measure, SmallOutlinesFarFromTheOriginKeepTheirDigits) {
  EXPECT_NEAR(area_mm2(circle({1e5, -1e5}, 0.01)), pi * 1e-4, 1e-12);
}

TEST(Measure, LengthsOfKnownCurves) {
  EXPECT_DOUBLE_EQ(perimeter_mm(slot({0, 0}, {10, 0}, 4)), 20 + 4 * pi);
  // Arc length of an involute from its base circle: rb·t²/2.
  EXPECT_NEAR(length_mm(Involute{{1, 1}, 40, 0.2, 0, 0.5, true}), 40 * 0.125, 1e-12);
}

TEST(Measure, ProfileIsOutersLessHoles) {
  const Profile plate = region(rectangle({0, 0}, {10, 10}), {circle({3, 3}, 1), circle({7, 7}, 2)});
  EXPECT_NEAR(area_mm2(plate), 100 - 5 * pi, 1e-12);
  EXPECT_TRUE(contains(plate, {5, 1}));
  EXPECT_FALSE(contains(plate, {7, 6}));
  EXPECT_FALSE(contains(plate, {11, 1}));
}

TEST(Contains, LevelWithCornersAndCentres) {
  // Points level with ends of edges, where a ray count slips, against the plain definition of each shape.
  const Loop ring = circle({0, 0}, 5), lying = slot({0, 0}, {10, 0}, 4), box = rectangle({0, 0}, {4, 4});
  const Loop six = hexagon({0, 0}, 8, 0);
  for (const double x : {-6.0, -5.5, -4.5, -2.5, -1.5, 0.0, 0.5, 1.5, 3.5, 4.5, 5.5, 9.5, 11.5, 12.5}) {
    for (const double y : {-4.5, -2.5, -1.5, 0.0, 1.5, 2.5, 4.5}) {
      const Point p{x, y};
      EXPECT_EQ(contains(ring, p), length(p) < 5) << x << ", " << y;
      EXPECT_EQ(contains(lying, p), distance(p, {std::clamp(x, 0.0, 10.0), 0}) < 2) << x << ", " << y;
      if (x != 0 && y != 0) {
        EXPECT_EQ(contains(box, p), x > 0 && x < 4 && y > 0 && y < 4) << x << ", " << y;
      }
      const bool in_six = std::abs(y) < 4 && std::abs(x) * std::sqrt(3.0) / 2 + std::abs(y) / 2 < 4;
      EXPECT_EQ(contains(six, p), in_six) << x << ", " << y;
    }
  }
}

TEST(Contains, PointsOnTheChordOfAnArcAreJudgedByTheArc) {
  // The chord is no part of the outline. Half discs turned every way, points along the whole chord line.
  for (int k = 0; k < 16; ++k) {
    const double turn = k * pi / 8;
    const Loop pacman =
        moved(Loop::of({Arc{{2, 0}, {0, -2}, {0, 0}, true}, Line{{0, -2}, {-1, 1}}, Line{{-1, 1}, {2, 0}}}).value(),
              turn, {0.3, 0.1});
    for (const double u : {-0.5, 0.2, 0.5, 0.8, 1.5}) {
      const Point on_chord = Point{2, 0} + u * Point{-2, -2};
      // Between its ends the chord lies outside of this shape; past them as well.
      EXPECT_FALSE(contains(pacman, turned(on_chord, turn) + Point{0.3, 0.1})) << k << ": " << u;
    }
    EXPECT_TRUE(contains(pacman, turned({-1.5, 0}, turn) + Point{0.3, 0.1}));
    EXPECT_TRUE(contains(pacman, turned({-0.5, 1.5}, turn) + Point{0.3, 0.1}));
  }
}

TEST(Contains, PointsOnALevelChordExactly) {
  // The lower half of a circle about the origin, closed below its chord (a crescent) and above it (a kite on a bowl).
  const Arc bowl{{-2, 0}, {2, 0}, {0, 0}, true};
  const Loop crescent = Loop::of({bowl, Line{{2, 0}, {0, -1}}, Line{{0, -1}, {-2, 0}}}).value();
  const Loop kite = Loop::of({bowl, Line{{2, 0}, {0, 1}}, Line{{0, 1}, {-2, 0}}}).value();
  for (const double x : {-1.5, -0.5, 0.0, 1.0}) {
    EXPECT_FALSE(contains(crescent, {x, 0})) << x;
    EXPECT_TRUE(contains(kite, {x, 0})) << x;
  }
  // Upside down the chord runs the other way.
  const Arc dome{{2, 0}, {-2, 0}, {0, 0}, true};
  const Loop arch = Loop::of({dome, Line{{-2, 0}, {0, 1}}, Line{{0, 1}, {2, 0}}}).value();
  for (const double x : {-1.5, -0.5, 0.0, 1.0}) EXPECT_FALSE(contains(arch, {x, 0})) << x;
  const Loop drop = Loop::of({dome, Line{{-2, 0}, {0, -1}}, Line{{0, -1}, {2, 0}}}).value();
  for (const double x : {-1.5, -0.5, 0.0, 1.0}) EXPECT_TRUE(contains(drop, {x, 0})) << x;
}

TEST(Contains, GearPointsAgreeWithTheInvoluteItself) {
  // By polar form: inside at radius r when within the half tooth angle there.
  const double rp = 36, alpha = 20 * pi / 180, rb = rp * std::cos(alpha);
  const Loop gear = test::plain_gear({0, 0}, 3, 24);
  Numbers numbers(5);
  for (int i = 0; i < 20000; ++i) {
    const double r = numbers.between(rb + 0.01, rp + 2.99), angle = numbers.between(-pi, pi);
    const double t = std::sqrt(r * r / (rb * rb) - 1);
    const double half = pi / 48 + std::tan(alpha) - alpha - (t - std::atan(t));
    const double from_tooth = std::abs(std::remainder(angle, 2 * pi / 24));
    if (std::abs(from_tooth - half) < 1e-9) continue;
    ASSERT_EQ(contains(gear, polar(r, angle)), from_tooth < half) << r << ", " << angle;
  }
}

TEST(Sample, NeverStraysFurtherThanItSays) {
  for (const Loop& loop : {every_kind(), circle({1, 2}, 5), slot({0, 0}, {3, 4}, 6), rectangle({0, 0}, {1, 2})}) {
    for (const double error : {1.0, 0.1, 1e-3, 1e-5}) {
      const Sampled sampled = sample(loop, error);
      ASSERT_LE(sampled.error_mm, error);
      // The band between outline and polyline is no wider than the error all along.
      EXPECT_LE(std::abs(polygon_area(sampled.points) - area_mm2(loop)), sampled.error_mm * perimeter_mm(loop) + 1e-9);
      for (const Edge& e : loop.edges()) {
        for (int i = 0; i <= 50; ++i) {
          const Point p = at(e, i / 50.0);
          double nearest = 1e9;
          for (std::size_t k = 0; k < sampled.points.size(); ++k) {
            const Point a = sampled.points[k], b = sampled.points[(k + 1) % sampled.points.size()];
            const double u = std::clamp(dot(p - a, b - a) / dot(b - a, b - a), 0.0, 1.0);
            nearest = std::min(nearest, distance(p, a + u * (b - a)));
          }
          ASSERT_LE(nearest, sampled.error_mm + 1e-12);
        }
      }
    }
  }
}

TEST(Sample, FullCircleHasAtLeastTwelveChordsAndItsPointsLieOnIt) {
  EXPECT_EQ(sample(circle({0, 0}, 1), 10).points.size(), 12U);
  EXPECT_EQ(sample(slot({0, 0}, {9, 0}, 2), 10).points.size(), 14U);
  EXPECT_EQ(sample(rectangle({0, 0}, {1, 1}), 0.1).points.size(), 4U);
  for (const Point p : sample(circle({3, 4}, 7), 1e-4).points) EXPECT_NEAR(distance(p, {3, 4}), 7, 1e-12);
}

TEST(Sample, StartsWithTheFirstPointOfTheOutline) {
  const Loop loop = every_kind();
  const Sampled sampled = sample(loop, 0.01);
  EXPECT_LE(distance(sampled.points.front(), start(loop.edges()[0])), same_point_mm);
  EXPECT_GT(polygon_area(sampled.points), 0) << "anticlockwise as the outline";
}

}  // namespace
}  // namespace visewright::geometry
