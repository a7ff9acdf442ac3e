#include "geometry/edge.h"

#include <gtest/gtest.h>

#include "shapes.h"

namespace visewright::geometry {
namespace {

using test::Numbers;
using test::pi;
using test::Rack;

void expect_point(Point a, Point b, double tolerance = 1e-12) {
  EXPECT_NEAR(a.x, b.x, tolerance);
  EXPECT_NEAR(a.y, b.y, tolerance);
}

/// One of each kind, none at a special place.
std::vector<Edge> one_of_each() {
  return {Line{{1, 2}, {5, -3}},
          Arc{{3, 1}, {1, 3}, {1, 1}, true},
          Arc{{3, 1}, {1, 3}, {1, 1}, false},
          Involute{{4, -2}, 40, 0.3, 0.1, 0.7, true},
          Involute{{4, -2}, 40, 0.3, 0.7, 0.0, false},
          Trochoid{{-3, 7}, 45, 1.14, 2.61, 1.1, 0, 0.15, true},
          Trochoid{{-3, 7}, 18, 1.14, 2.61, 1.1, 0.3, -0.1, false}};
}

TEST(Edge, ArcsSweepTheWayTheyAreTold) {
  EXPECT_NEAR(swept_rad({{1, 0}, {0, 1}, {0, 0}, true}), pi / 2, 1e-15);
  EXPECT_NEAR(swept_rad({{1, 0}, {0, 1}, {0, 0}, false}), -3 * pi / 2, 1e-15);
  EXPECT_NEAR(swept_rad({{1, 0}, {-1, 0}, {0, 0}, true}), pi, 1e-15);
  EXPECT_NEAR(swept_rad({{1, 0}, {1, 0}, {0, 0}, true}), 2 * pi, 1e-15);
  EXPECT_NEAR(swept_rad({{1, 0}, {1, 0}, {0, 0}, false}), -2 * pi, 1e-15);
  expect_point(at(Arc{{1, 0}, {0, 1}, {0, 0}, false}, 1.0 / 3), {0, -1});
}

TEST(Edge, RateIsTheSlopeOfThePointAndDirectionItsUnitVector) {
  for (const Edge& e : one_of_each()) {
    for (const double u : {0.1, 0.35, 0.5, 0.9}) {
      const double h = 1e-5;
      const Point slope = (0.5 / h) * (at(e, u + h) - at(e, u - h));
      expect_point(rate(e, u), slope, 1e-6 * (1 + length(slope)));
      expect_point(direction(e, u), (1 / length(slope)) * slope, 1e-6);
    }
  }
}

TEST(Edge, ReversedRunsBackOverTheSamePoints) {
  for (const Edge& e : one_of_each()) {
    for (const double u : {0.0, 0.25, 0.6, 1.0}) expect_point(at(reversed(e), u), at(e, 1 - u));
  }
}

TEST(Edge, MovedTurnsThenShiftsEveryPoint) {
  for (const Edge& e : one_of_each()) {
    for (const double u : {0.0, 0.25, 0.6, 1.0}) {
      expect_point(at(moved(e, 0.8, {3, -4}), u), turned(at(e, u), 0.8) + Point{3, -4});
    }
  }
}

TEST(Edge, ChordsStrayNoFurtherThanSaid) {
  for (const Edge& e : one_of_each()) {
    for (const auto& [u0, u1] : {std::pair{0.0, 1.0}, {0.2, 0.7}, {0.5, 0.55}}) {
      const Point a = at(e, u0), b = at(e, u1), along = b - a;
      double furthest = 0;
      for (int i = 0; i <= 200; ++i) {
        const Point p = at(e, u0 + (u1 - u0) * i / 200);
        furthest = std::max(furthest, std::abs(cross(p - a, along)) / length(along));
      }
      EXPECT_LE(furthest, strays_mm(e, u0, u1) + 1e-12);
    }
  }
}

TEST(Involute, NormalTouchesTheBaseCircleAndIsAsLongAsTheArcUnrolled) {
  // The defining property of a string unwound from the base circle.
  for (const bool left : {true, false}) {
    const Involute e{{2, 3}, 40, 0.4, 0.05, 0.8, left};
    for (const double u : {0.0, 0.3, 1.0}) {
      const double t = 0.05 + u * 0.75;
      const Point p = at(e, u), tangent = direction(e, u);
      const Point normal{-tangent.y, tangent.x};
      // Distance of the centre from the normal is the base radius; the foot is one string length away.
      EXPECT_NEAR(std::abs(cross(normal, e.centre - p)), 40, 1e-9);
      EXPECT_NEAR(std::abs(dot(normal, e.centre - p)), 40 * t, 1e-9);
    }
  }
}

TEST(Involute, PolarFormOfTheInvoluteFunction) {
  // inv 20° = 0.0149043839 (tables of tan a − a, e.g. in gear handbooks; computed: tan 20° − 20·π/180).
  const double alpha = 20 * pi / 180, rb = 50 * std::cos(alpha);
  const Involute left{{0, 0}, rb, 0.1, 0, std::tan(alpha), true};
  expect_point(start(left), polar(rb, 0.1));
  expect_point(finish(left), polar(50, 0.1 + 0.0149043839), 1e-8);
  expect_point(finish(Involute{{0, 0}, rb, 0.1, 0, std::tan(alpha), false}), polar(50, 0.1 - 0.0149043839), 1e-8);
  expect_point(direction(left, 0), polar(1, 0.1), 1e-6);
}

TEST(Trochoid, StartsOnTheRootCircleAndClimbsTowardsItsSide) {
  const Rack rack;
  const double root = rack.pitch_radius() - 1.25 * rack.module_mm;
  for (const bool left : {true, false}) {
    const Edge e = rack.fillet(left);
    expect_point(start(e), {root, 0});
    expect_point(direction(e, 0), {0, left ? 1.0 : -1.0}, 1e-9);
    EXPECT_GT(length(finish(e)), root);
    EXPECT_GT(left ? finish(e).y : -finish(e).y, 0);
  }
}

TEST(Trochoid, EndsOnTheInvoluteInItsDirectionWithoutUndercut) {
  // The rack's straight flank leaves off where its normal through the pitch point meets the rounding. There the gear
  // has the roll angle tan α − (offset/sin α + ρ)/rb, by the length of the line of action from the base circle on.
  for (const int teeth : {30, 24, 60}) {
    const Rack rack{.module_mm = 3, .teeth = teeth};
    const double rb = rack.base_radius(), a = rack.pressure_rad;
    const double roll = std::tan(a) - (rack.offset() / std::sin(a) + rack.tip_radius()) / rb;
    ASSERT_GT(roll, 0) << "no undercut with this many teeth";
    const Edge fillet = rack.fillet();
    EXPECT_NEAR(length(finish(fillet)), rb * std::hypot(1, roll), 1e-9);
    const Point way = direction(fillet, 1);
    const double turn = std::atan2(finish(fillet).y, finish(fillet).x) - (roll - std::atan(roll));
    expect_point(way, direction(Involute{{0, 0}, rb, turn, roll, 1, true}, 0), 1e-9);
  }
}

/// Centre of the rack's rounding in the gear, straight from rolling: the gear turns by t, the rack runs along by rp·t.
Point rolled_tip_centre(const Rack& rack, double t) {
  const Point in_space{rack.pitch_radius() - rack.offset(), rack.pitch_radius() * t};
  return turned(in_space, -t);
}

TEST(Trochoid, IsTheEnvelopeOfTheRollingTip) {
  // Brute force: of all positions of the rounding, the nearest to a point of the fillet just touches it.
  for (const int teeth : {12, 30}) {
    const Rack rack{.module_mm = 3, .teeth = teeth};
    const Edge fillet = rack.fillet();
    for (const double u : {0.0, 0.2, 0.5, 0.8, 1.0}) {
      const Point p = at(fillet, u);
      double nearest = 1e9;
      for (int i = -20000; i <= 40000; ++i) {
        nearest = std::min(nearest, distance(p, rolled_tip_centre(rack, rack.last_roll() * i / 20000)));
      }
      EXPECT_NEAR(nearest, rack.tip_radius(), 1e-6) << teeth << " teeth at " << u;
    }
  }
}

TEST(Trochoid, TwelveTeethAreUndercut) {
  // The straight flank reaches 1.25 − 0.38·(1 − sin 20°) = 1.00 modules deep, so undercut ends at 2·1.00/sin² 20° = 17
  // teeth. With twelve the fillet comes from inside the base circle and cuts through the involute that starts there.
  const Rack rack{.module_mm = 3, .teeth = 12};
  const double rb = rack.base_radius(), a = rack.pressure_rad;
  EXPECT_LT(std::tan(a) - (rack.offset() / std::sin(a) + rack.tip_radius()) / rb, 0);
  // The rack's flank, tangent to the rounding, crosses the pitch line this far to the side of the tip centre; the
  // gear's flank crosses the pitch circle as far along the arc, and starts on the base circle inv α earlier.
  const double lateral = rack.offset() * std::tan(a) + rack.tip_radius() / std::cos(a);
  const double base_start = lateral / rack.pitch_radius() - (std::tan(a) - a);
  const Involute flank{{0, 0}, rb, base_start, 0, 0.6, true};
  // Along the fillet the angle against the involute at the same radius changes sign: it cuts the flank.
  bool before = false, beyond = false;
  const Edge fillet = Trochoid{{0, 0}, rack.pitch_radius(), rack.tip_radius(), rack.offset(), 0, 0, 0.6, true};
  EXPECT_LT(length(start(fillet)), rb);
  for (int i = 0; i <= 1000; ++i) {
    const Point p = at(fillet, i / 1000.0);
    const double r = length(p);
    if (r <= rb || r > rb * std::hypot(1, 0.6)) continue;
    const double t = std::sqrt(r * r / (rb * rb) - 1);
    const double gap = std::atan2(p.y, p.x) - (flank.start_rad + t - std::atan(t));
    (gap > 0 ? beyond : before) = true;
  }
  EXPECT_TRUE(before);
  EXPECT_TRUE(beyond);
}

TEST(Trochoid, ThirtyTeethMeetTheSameFlankThatTheRackPlaces) {
  // The lateral rule used above, checked where the curves only touch: angle of the meeting point on both.
  const Rack rack;
  const double rb = rack.base_radius(), a = rack.pressure_rad;
  const double lateral = rack.offset() * std::tan(a) + rack.tip_radius() / std::cos(a);
  const double base_start = lateral / rack.pitch_radius() - (std::tan(a) - a);
  const double roll = std::tan(a) - (rack.offset() / std::sin(a) + rack.tip_radius()) / rb;
  expect_point(finish(rack.fillet()), start(Involute{{0, 0}, rb, base_start, roll, 1, true}), 1e-9);
}

}  // namespace
}  // namespace visewright::geometry
