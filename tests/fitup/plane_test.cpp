// Gaps in the plane: curves, outlines and regions in known places.
#include <gtest/gtest.h>

#include <cmath>

#include "fitup/region.h"
#include "units/quantity.h"

namespace visewright::fitup {
namespace {

using units::pi;

const Lay plain{{0, 0}, {1, 0}, {0, 1}};

Outline of(const geometry::Loop& loop, std::vector<geometry::Loop> holes = {}, const Lay& lay = plain) {
  return outline(geometry::region(loop, std::move(holes)), lay, 1e-4);
}
Region alone(const geometry::Loop& loop) { return Region(of(loop), {}); }

PlaneGap gap(const Region& a, const Region& b) { return plane_gap(a, b, 1000); }

// Expected: by hand. A 3-4-5 triangle between corners; crossing lines; parallel lines side by side.
TEST(Curves, LinesApart) {
  EXPECT_NEAR(nearest(line({0, 0}, {1, 0}), line({4, 4}, {9, 7})).distance, 5, 1e-12);
  EXPECT_EQ(nearest(line({0, 0}, {2, 2}), line({0, 2}, {2, 0})).distance, 0);
  EXPECT_NEAR(nearest(line({0, 0}, {10, 0}), line({3, 0.25}, {4, 0.25})).distance, 0.25, 1e-12);
}

// Expected: by hand. Half circles of radius 2 and 1 with their bulges towards each other, centres 5 apart: 2. A line 3
// above the top of a circle of radius 2 about the origin is 1 from it; on the far half it is nearest to an end, √(9 + 4).
TEST(Curves, ArcsApart) {
  const Curve right = arc({0, -2}, {0, 2}, {0, 0}, 2, true), left = arc({5, 1}, {5, -1}, {5, 0}, 1, false);
  EXPECT_NEAR(nearest(right, left).distance, 2, 1e-12);
  EXPECT_NEAR(nearest(right, line({-5, 3}, {5, 3})).distance, 1, 1e-12);
  EXPECT_NEAR(nearest(arc({0, 2}, {0, -2}, {0, 0}, 2, false), line({3, 2}, {9, 2})).distance, 3, 1e-12);
  EXPECT_NEAR(nearest(arc({0, 2}, {0, -2}, {0, 0}, 2, false), line({3, 0}, {9, 0})).distance, std::sqrt(13.0), 1e-12);
}

// Expected: by hand, distance of the centres less both radii: 15.75 − 15; and overlap when it is negative.
TEST(Regions, Circles) {
  const Region big = alone(geometry::circle({0, 0}, 10));
  const PlaneGap clear = gap(big, alone(geometry::circle({12.6, 9.45}, 5)));
  EXPECT_NEAR(clear.distance, 0.75, 1e-12);
  EXPECT_FALSE(clear.overlap);
  EXPECT_NEAR(geometry::distance(clear.a, clear.b), 0.75, 1e-9);
  EXPECT_TRUE(gap(big, alone(geometry::circle({14.5, 0}, 5))).overlap);
}

// Expected: by hand. Flats of 20 mm that face each other stand 10 mm from the centres; corners at 20/√3.
TEST(Regions, Hexagons) {
  const double corner = 20 / std::sqrt(3.0);
  EXPECT_NEAR(gap(alone(geometry::hexagon({0, 0}, 20, pi / 6)), alone(geometry::hexagon({20.4, 0}, 20, pi / 6))).distance, 0.4, 1e-9);
  EXPECT_NEAR(gap(alone(geometry::hexagon({0, 0}, 20, 0)), alone(geometry::hexagon({2 * corner + 0.3, 0}, 20, 0))).distance, 0.3, 1e-9);
  EXPECT_TRUE(gap(alone(geometry::hexagon({0, 0}, 20, pi / 6)), alone(geometry::hexagon({10 + corner - 0.25, 0}, 20, 0))).overlap);
}

// Expected: by definition. Equal circles in a bore touch and do not overlap; ten micrometres more do; half a millimetre of
// play in diameter is a gap of a quarter.
TEST(Regions, ShaftsInABore) {
  const Region plate(of(geometry::rectangle({-50, -30}, {50, 30})), {of(geometry::circle({7, 3}, 12))});
  const PlaneGap touching = gap(plate, alone(geometry::circle({7, 3}, 12)));
  EXPECT_EQ(touching.distance, 0);
  EXPECT_FALSE(touching.overlap);
  EXPECT_TRUE(gap(plate, alone(geometry::circle({7, 3}, 12.01))).overlap);
  EXPECT_NEAR(gap(plate, alone(geometry::circle({7, 3}, 11.75))).distance, 0.25, 1e-12);
}

// Expected: by definition. Plates that share an edge, or part of one, touch; one within the other overlaps though their
// edges are far apart; a plate in the hole of a frame does not.
TEST(Regions, TouchingAndContained) {
  const Region square = alone(geometry::rectangle({0, 0}, {10, 10}));
  EXPECT_FALSE(gap(square, alone(geometry::rectangle({10, 3}, {20, 6}))).overlap);
  EXPECT_EQ(gap(square, alone(geometry::rectangle({10, 3}, {20, 6}))).distance, 0);
  EXPECT_TRUE(gap(square, alone(geometry::rectangle({4, 4}, {6, 6}))).overlap);
  EXPECT_TRUE(gap(square, square).overlap);
  const Region frame(of(geometry::rectangle({0, 0}, {30, 30}), {geometry::rectangle({5, 5}, {25, 25})}), {});
  const PlaneGap inside = gap(frame, alone(geometry::rectangle({7, 9}, {20, 20})));
  EXPECT_FALSE(inside.overlap);
  EXPECT_NEAR(inside.distance, 2, 1e-12);
}

// Expected: by hand. Of two pockets that run into each other the land between them is gone: a plug that covers the place
// where their circles cross (0, ±√(100 − 64)) keeps 6 − 2 from the cusps.
TEST(Regions, PocketsThatRunTogether) {
  const Region plate(of(geometry::rectangle({-40, -20}, {40, 20})), {of(geometry::circle({-8, 0}, 10)), of(geometry::circle({8, 0}, 10))});
  const PlaneGap plug = gap(plate, alone(geometry::circle({0, 0}, 2)));
  EXPECT_FALSE(plug.overlap);
  EXPECT_NEAR(plug.distance, 4, 1e-9);
}

// Expected: by hand. Seen from behind, x runs the other way: a hole at (7, 3) stands at (−7, 3).
TEST(Regions, MirroredLay) {
  const Lay mirrored{{0, 0}, {-1, 0}, {0, 1}};
  const Region plate(of(geometry::rectangle({-50, -30}, {50, 30}), {}, mirrored), {of(geometry::circle({7, 3}, 12), {}, mirrored)});
  EXPECT_NEAR(gap(plate, alone(geometry::circle({-7, 3}, 11))).distance, 1, 1e-12);
  EXPECT_TRUE(gap(plate, alone(geometry::circle({7, 3}, 11))).overlap);
}

}  // namespace
}  // namespace visewright::fitup
