#include "formulas/gear_measure.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "formulas/flanks.h"
#include "formulas/involute.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

SpurGear gear(int teeth, double shift = 0, double thinning_mm = 0) {
  SpurGear made;
  made.teeth = teeth;
  made.module_mm = 3;
  made.pressure_angle_rad = 20 * pi / 180;
  made.shift = shift;
  made.thinning_mm = thinning_mm;
  return made;
}

TEST(SpanMeasure, TouchesFlanksForEveryCountAndShift) {
  for (int teeth = 8; teeth <= 80; ++teeth) {
    for (const double shift : {-0.2, 0.0, 0.3, 0.5}) {
      const SpurGear one = gear(teeth, shift, 0.2);
      if (undercut(one) || tip_thickness_mm(one) < 0.2) continue;
      const SpanMeasure measure = span_measure(one);
      EXPECT_TRUE(measure.on_flanks) << teeth << " " << shift;
      EXPECT_EQ(measure.span_mm, span_over_teeth_mm(one, measure.teeth));
      EXPECT_GE(measure.teeth, 2);
    }
  }
}

// Flat jaws touch where the flank is square to them: the point's distance from the base circle's touching point, half
// of the span, and the base radius make a right angle.
TEST(SpanMeasure, ContactLiesHalfASpanFromTheBaseCircle) {
  const SpurGear one = gear(24, 0.4);
  const SpanMeasure measure = span_measure(one, 4);
  const double radius = measure.contact_diameter_mm / 2;
  EXPECT_NEAR(base_diameter_mm(one) / 2 * std::tan(std::acos(base_diameter_mm(one) / 2 / radius)), measure.span_mm / 2,
              1e-9);
  EXPECT_FALSE(span_measure(one, 10).on_flanks);
}

/// Distance of the centre of a pin in a tooth space from the flank, by search: the flank as plain polar geometry.
double gap_to_flank_mm(const SpurGear& one, double centre_mm) {
  double least = 1e9;
  const double low = base_diameter_mm(one) / 2;
  const double high = tip_diameter_mm(one) / 2;
  constexpr int steps = 20000;
  for (int i = 0; i <= steps; ++i) {
    const double radius = low + (high - low) * i / steps;
    const double angle = pi / one.teeth - half_tooth_rad(one, radius);
    least = std::min(least, std::hypot(radius * std::cos(angle) - centre_mm, radius * std::sin(angle)));
  }
  return least;
}

// A pin lies against both flanks of its space: its centre is half a pin away from the nearest flank point.
TEST(PinMeasure, PinsLieAgainstTheFlanks) {
  for (const SpurGear& one : {gear(20), gear(21), gear(12, 0.4), gear(31, -0.1, 0.3), gear(40, 0.2)}) {
    const PinMeasure measure = pin_measure(one);
    EXPECT_TRUE(measure.on_flanks) << one.teeth;
    EXPECT_TRUE(measure.stands_proud) << one.teeth;
    const double opposite = one.teeth % 2 == 0 ? 1 : std::cos(pi / (2 * one.teeth));
    const double centre = (measure.size_mm - measure.pin_mm) / opposite / 2;
    EXPECT_NEAR(gap_to_flank_mm(one, centre), measure.pin_mm / 2, 1e-4) << one.teeth;
  }
}

TEST(PinMeasure, IdealPinTouchesAtTheShiftedReferenceCircle) {
  for (const SpurGear& one : {gear(20), gear(21, 0.3), gear(40, -0.2, 0.4)}) {
    const PinMeasure measure = pin_measure(one, ideal_pin_mm(one));
    EXPECT_NEAR(measure.contact_diameter_mm, 3 * (one.teeth + 2 * one.shift), 1e-9);
  }
}

TEST(PinMeasure, ChoosesTheNextSizeThatDrillsComeIn) {
  for (int teeth = 12; teeth <= 60; ++teeth) {
    const SpurGear one = gear(teeth, teeth < 18 ? 0.4 : 0);
    const PinMeasure measure = pin_measure(one);
    EXPECT_EQ(measure.pin_mm * 2, std::round(measure.pin_mm * 2));
    EXPECT_GE(measure.pin_mm, ideal_pin_mm(one) - 1e-6);
    EXPECT_LT(measure.pin_mm, ideal_pin_mm(one) + 0.5);
    EXPECT_TRUE(measure.on_flanks);
    EXPECT_TRUE(measure.stands_proud);
  }
}

// A thin pin drops to the foot, a thick one rides on the tips.
TEST(PinMeasure, SaysWhenThePinIsWrong) {
  EXPECT_FALSE(pin_measure(gear(20), 3.2).on_flanks);
  EXPECT_FALSE(pin_measure(gear(20), 12).on_flanks);
  EXPECT_TRUE(std::isnan(pin_measure(gear(20), 1).size_mm));
  EXPECT_TRUE(std::isnan(pin_measure(gear(20), 1).contact_diameter_mm));
  EXPECT_FALSE(pin_measure(gear(20), 1).on_flanks);
  EXPECT_FALSE(pin_measure(gear(20), 3.9).stands_proud);
}

// The chord and its height are the corners of the tooth on the reference circle.
TEST(ChordalMeasure, IsAStraightLineBetweenTheFlanks) {
  const SpurGear one = gear(12, 0.3, 0.2);
  const double r = pitch_diameter_mm(one) / 2;
  const double half = half_tooth_rad(one, r);
  const ChordalMeasure measure = chordal_measure(one);
  EXPECT_NEAR(measure.thickness_mm, 2 * r * std::sin(half), 1e-12);
  EXPECT_NEAR(measure.height_mm, tip_diameter_mm(one) / 2 - r * std::cos(half), 1e-12);
  EXPECT_LT(measure.thickness_mm, tooth_thickness_mm(one));
  EXPECT_NEAR(tip_thickness_modules(one) * 3, tip_thickness_mm(one), 1e-12);
}

/// Whether a rack with rounded tips, rolled past the gear, takes material away inside the involute at this diameter.
/// The rack's outline is sampled as points.
bool rack_cuts_inside(const SpurGear& one, double diameter_mm) {
  const double m = one.module_mm;
  const double r = pitch_diameter_mm(one) / 2;
  const double slope = std::tan(one.pressure_angle_rad);
  const double rho = rack_tip_radius_mm(one);
  const double centre_depth = one.dedendum_factor * m - rho;  // all depths from the rack's reference line
  const double centre_aside =
      m * pi / 4 + one.thinning_mm / 2 - centre_depth * slope - rho / std::cos(one.pressure_angle_rad);
  const double flank = pi / one.teeth - half_tooth_rad(one, diameter_mm / 2);
  constexpr int outline = 120;
  constexpr int rolls = 4000;
  for (int i = 0; i <= outline; ++i) {
    // From straight down round to the direction square to the flank.
    const double turn = (pi / 2 - one.pressure_angle_rad) * i / outline;
    const double aside = centre_aside + rho * std::sin(turn);
    const double depth = centre_depth + rho * std::cos(turn) - one.shift * m;
    for (int k = -rolls; k <= rolls; ++k) {
      const double roll = 0.7 * k / rolls;
      const double x = r - depth;
      const double y = aside - r * roll;
      if (std::abs(2 * std::hypot(x, y) - diameter_mm) > 0.004) continue;
      if (roll + std::atan2(y, x) > flank + 2e-5) return true;
    }
  }
  return false;
}

// Against a rack rolled past as plain geometry: just outside the form diameter the flank is whole, just inside an
// undercut tooth is cut.
TEST(FormDiameter, IsWhereTheRackLeavesTheFlankWhole) {
  for (const SpurGear& one : {gear(10), gear(12), gear(14), gear(12, -0.2), gear(10, 0, 0.3)}) {
    ASSERT_TRUE(undercut(one));
    const double form = form_diameter_mm(one);
    EXPECT_GT(form, base_diameter_mm(one));
    EXPECT_LT(form, pitch_diameter_mm(one));
    EXPECT_FALSE(rack_cuts_inside(one, form + 0.05)) << one.teeth;
    EXPECT_TRUE(rack_cuts_inside(one, form - 0.05)) << one.teeth;
  }
  for (const SpurGear& one : {gear(20), gear(40), gear(12, 0.5)}) {
    ASSERT_FALSE(undercut(one));
    EXPECT_FALSE(rack_cuts_inside(one, form_diameter_mm(one) + 0.02));
  }
}

TEST(FormDiameter, IsTheBaseCircleAtTheLimitAndJoinsUpThere) {
  SpurGear one = gear(12);
  const double limit = least_shift_without_undercut(one);
  one.shift = limit;
  EXPECT_NEAR(form_diameter_mm(one), base_diameter_mm(one), 1e-6);
  one.shift = limit + 0.01;
  const double above = form_diameter_mm(one);
  one.shift = limit - 0.01;
  const double below = form_diameter_mm(one);
  EXPECT_NEAR(above, base_diameter_mm(one), 0.05);
  EXPECT_NEAR(below, base_diameter_mm(one), 0.05);
}

TEST(FormDiameter, LiesBetweenBaseAndTip) {
  for (int teeth = 8; teeth <= 100; ++teeth) {
    for (const double shift : {-0.4, -0.1, 0.0, 0.3, 0.6}) {
      const double form = form_diameter_mm(gear(teeth, shift));
      EXPECT_GE(form, base_diameter_mm(gear(teeth, shift)));
      EXPECT_LT(form, tip_diameter_mm(gear(teeth, shift))) << teeth << " " << shift;
    }
  }
}

Mesh pair(const SpurGear& first, const SpurGear& second) {
  return {first, second, tight_centre_distance_mm(first, second)};
}

// The tip of the mate and the start on this flank are the same point of the line of action.
TEST(ActiveProfile, StartIsWhereTheMatesTipMeets) {
  const Mesh mesh = pair(gear(20), gear(40));
  const double aw = operating_pressure_angle_rad(mesh);
  // Both circles cut the line of action, which leaves the pitch point at the operating angle.
  const double tip = tip_diameter_mm(mesh.second) / 2;
  const double pitch = mesh.centre_distance_mm * 40 / 60;
  const double along = std::sqrt(tip * tip - std::pow(pitch * std::cos(aw), 2)) - pitch * std::sin(aw);
  const double other = mesh.centre_distance_mm - pitch;
  const double start = std::hypot(other - along * std::sin(aw), along * std::cos(aw));
  EXPECT_NEAR(active_profile_start_mm(mesh), 2 * start, 1e-9);
}

// Standard racks reach deeper than the mate's tip, so gears free of undercut have room; room shrinks as the mate grows.
TEST(FlankRoom, IsPositiveForStandardPairsAndNegativeForUndercutOnes) {
  EXPECT_GT(flank_room_mm(pair(gear(30), gear(30))), 0);
  EXPECT_GT(flank_room_mm(pair(gear(20), gear(20))), flank_room_mm(pair(gear(20), gear(60))));
  EXPECT_LT(flank_room_mm(pair(gear(10), gear(40))), 0);
  EXPECT_NEAR(flank_room_mm(pair(gear(20), gear(60))), flank_room_mm(pair(gear(60), gear(20))), 1e-12);
}

// Law: without room for the tip at all the involutes cannot fit either.
TEST(FlankRoom, NeverPassesAPairThatInterferes) {
  for (int first = 10; first <= 30; ++first) {
    for (int second = first; second <= 120; second += 5) {
      const Mesh mesh = pair(gear(first), gear(second));
      if (free_of_interference(mesh)) continue;
      EXPECT_LT(flank_room_mm(mesh), 0) << first << "/" << second;
    }
  }
}

// By hand: module 3, 0.30 + 0.15; distance 80 and module 2, ⅔ (0.06 + 0.04 + 0.06).
TEST(Backlash, Recommended) {
  EXPECT_NEAR(printed_backlash_mm(3), 0.45, 1e-12);
  EXPECT_NEAR(machined_backlash_mm(2, 80), 0.32 / 3, 1e-12);
}

}  // namespace
}  // namespace visewright::formulas
