// Distances of bodies in known places, against closed forms.
#include <cmath>

#include "fitup/stood.h"

namespace visewright::fitup {
namespace {

using geometry::Placement;

/// Distances come out to a micrometre.
constexpr double to_1_um = 1e-3;

parts::Part cube(double half) { return piece("cube", {block({-half, -half, -half}, {half, half, half})}); }
parts::Part rod(double radius, double length) { return piece("rod", {parts::cylinder(2 * radius, 0, length)}); }
parts::Part ball(double radius) { return piece("ball", {turned(half_disc(radius))}); }
parts::Part ring(double radius, double thick) { return piece("ring", {turned(geometry::circle({radius, 0}, thick))}); }

Placement lying_along_x(const geometry::Vector& at) { return {at, {0, 0, 1}, {1, 0, 0}}; }

// Expected: by hand. Corners 3-4-12 apart: 13; faces: 2.5; a shared face: 0 without overlap; 1 µm more: overlap.
TEST(Nearness, Boxes) {
  const Nearness corners = near(cube(1), cube(1), {{2 + 3, 2 + 4, 2 + 12}, {1, 0, 0}, {0, 0, 1}});
  EXPECT_NEAR(corners.distance, 13, to_1_um);
  EXPECT_TRUE(corners.exact);
  EXPECT_NEAR(near(cube(1), cube(1), {{4.5, 0.3, -0.2}, {1, 0, 0}, {0, 0, 1}}).distance, 2.5, to_1_um);
  const Nearness touching = near(cube(1), cube(1), {{0.5, 2, 0}, {1, 0, 0}, {0, 0, 1}});
  EXPECT_EQ(touching.distance, 0);
  EXPECT_FALSE(touching.overlap);
  EXPECT_TRUE(near(cube(1), cube(1), {{0.5, 1.99, 0}, {1, 0, 0}, {0, 0, 1}}).overlap);
}

// Expected: by hand. A cube turned by 45° about z shows its edge: √2 − 1 nearer. Wherever it lies in space.
TEST(Nearness, TurnedBoxes) {
  const double s = std::sqrt(0.5);
  const Nearness edge = near(cube(1), cube(1), {{5, 0, 0}, {s, s, 0}, {0, 0, 1}});
  EXPECT_NEAR(edge.distance, 5 - 1 - std::sqrt(2.0), to_1_um);
  EXPECT_TRUE(edge.exact);
  EXPECT_NEAR(near(cube(1), cube(1), {{0, 5, 0}, {0, s, s}, {1, 0, 0}}).distance, 5 - 1 - std::sqrt(2.0), to_1_um);
}

// Expected: by definition: a smaller one inside is overlap, not distance; in a cavity it is clear of the walls by 0.5.
TEST(Nearness, Containment) {
  EXPECT_TRUE(near(cube(5), cube(1), {}).overlap);
  const auto hollow = piece("case", {block({-5, -5, -5}, {5, 5, 5})}, {block({-1.5, -1.5, -1.5}, {1.5, 1.5, 1.5})});
  const Nearness inside = near(hollow, cube(1), {});
  EXPECT_FALSE(inside.overlap);
  EXPECT_NEAR(inside.distance, 0.5, to_1_um);
}

// Expected: by hand. Side by side: centres less radii. End to end and aside: √(3² + 4²) from rim to rim. Crossed: the
// common perpendicular less both radii.
TEST(Nearness, Cylinders) {
  EXPECT_NEAR(near(rod(5, 40), rod(3, 40), {{6, 8, 1}, {1, 0, 0}, {0, 0, 1}}).distance, 2, to_1_um);
  EXPECT_NEAR(near(rod(5, 40), rod(3, 40), {{8 + 3, 0, 44}, {1, 0, 0}, {0, 0, 1}}).distance, 5, to_1_um);
  EXPECT_NEAR(near(rod(5, 40), rod(3, 40), lying_along_x({-20, 8.4, 20})).distance, 0.4, to_1_um);
  EXPECT_TRUE(near(rod(5, 40), rod(3, 40), lying_along_x({-20, 7.9, 20})).overlap);
}

// Expected: by hand: 0.075 all round, anywhere in the bore; 0 for equal sizes, without overlap.
TEST(Nearness, BoreOverShaft) {
  const auto bush = [](double bore) { return piece("bush", {parts::cylinder(30, 0, 20)}, {parts::cylinder(bore, -1, 21)}); };
  EXPECT_NEAR(near(bush(20.15), rod(10, 60), {{0, 0, -20}, {1, 0, 0}, {0, 0, 1}}).distance, 0.075, to_1_um);
  const Nearness tight = near(bush(20), rod(10, 60), {{0, 0, -20}, {1, 0, 0}, {0, 0, 1}});
  EXPECT_EQ(tight.distance, 0);
  EXPECT_FALSE(tight.overlap);
  EXPECT_TRUE(near(bush(19.99), rod(10, 60), {{0, 0, -20}, {1, 0, 0}, {0, 0, 1}}).overlap);
}

// Expected: by hand; round in two directions only bounds are proved, never above the truth and close below it: ball over a
// plate 3 − 2; two balls on a line; a torus of radii 10 and 1 round a rod of 8.5: 0.5; beside a plate at 11.5.
TEST(Nearness, BallsAndTori) {
  const auto bound = [](const Nearness& n, double truth) {
    EXPECT_LE(n.distance, truth + 1e-6);
    EXPECT_GE(n.distance, truth - 0.01 * 10);
    EXPECT_FALSE(n.overlap);
  };
  bound(near(ball(2), cube(4), {{0, 0, 7}, {1, 0, 0}, {0, 0, 1}}), 1);
  bound(near(ball(2), ball(3), {{0, 0, 5.5}, {1, 0, 0}, {0, 0, 1}}), 0.5);
  bound(near(ring(10, 1), rod(8.5, 40), {{0, 0, -20}, {1, 0, 0}, {0, 0, 1}}), 0.5);
  bound(near(ring(10, 1), cube(4), {{15.5, 0, 0}, {1, 0, 0}, {0, 0, 1}}), 0.5);
  EXPECT_TRUE(near(ball(2), cube(4), {{0, 0, 5.9}, {1, 0, 0}, {0, 0, 1}}).overlap);
}

// Expected: by hand. A cross hole takes nothing from the gap where it is not, and lets a pin through that fills it.
TEST(Nearness, PinInItsCrossHole) {
  const parts::Shape hole = parts::placed(parts::cylinder(6, -30, 30), {{0, 0, 20}, {0, 0, 1}, {1, 0, 0}});
  const auto drilled = piece("rod", {parts::cylinder(20, 0, 40)}, {hole});
  const Nearness pin = near(drilled, rod(3, 40), lying_along_x({-20, 0, 20}));
  EXPECT_EQ(pin.distance, 0);
  EXPECT_FALSE(pin.overlap);
  EXPECT_TRUE(near(drilled, rod(3, 40), lying_along_x({-20, 0, 20.01})).overlap);
  EXPECT_NEAR(near(drilled, rod(2.8, 40), lying_along_x({-20, 0, 20})).distance, 0.2, to_1_um);
}

// Expected: by hand. A block on a turning axis passes √(3² + 4²) = 5 at its corners: 0.5 from a plate 5.5 off, at any
// turn, though it stands 1.5 away; sliding out 10 it passes a nose that ends 0.2 from its path, at opening 6 to 8.
TEST(Nearness, TurningAndSliding) {
  Stood s;
  s.assembly.opening_max_mm = 10;
  const Placement front{{0, 0, 0}, {1, 0, 0}, {0, -1, 0}};
  s.add(piece("arm", {block({-4, -3, 0}, {4, 3, 2})}), front, assembly::Group::turning);
  s.assembly.placed.back().turn_rad_per_mm = 1;
  s.add(piece("plate", {block({5.5, -20, -2}, {9, 20, 12})}), front);
  auto all = stands(s.assembly);
  EXPECT_NEAR(as_they_stand(all[0], all[1], 100).distance, 1.5, to_1_um);
  const Nearness turning = nearness(all[0], all[1], Motion::turn, {}, false, 100);
  EXPECT_NEAR(turning.distance, 0.5, to_1_um);
  Stood slide;
  slide.add(piece("jaw", {block({-4, -3, 0}, {4, 3, 2})}), front, assembly::Group::moving);
  slide.add(piece("nose", {block({-9, 3.2, 8}, {9, 9, 10})}), front);
  all = stands(slide.assembly);
  const Nearness passing = nearness(all[0], all[1], Motion::slide, {0, 20}, false, 100);
  EXPECT_NEAR(passing.distance, 0.2, to_1_um);
  EXPECT_NEAR(passing.opening_mm, 6, 1e-6);
  EXPECT_NEAR(nearness(all[0], all[1], Motion::slide, {0, 3}, false, 100).distance, std::hypot(3, 0.2), to_1_um);
  EXPECT_NEAR(nearness(all[1], all[0], Motion::slide, {0, 3}, true, 100).distance, std::hypot(3, 0.2), to_1_um);
}

}  // namespace
}  // namespace visewright::fitup
