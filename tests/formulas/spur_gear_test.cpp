#include "formulas/spur_gear.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "formulas/flanks.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double degree = pi / 180;

SpurGear gear(int teeth, double module_mm = 2, double shift = 0, double thinning_mm = 0, double angle_deg = 20) {
  SpurGear made;
  made.teeth = teeth;
  made.module_mm = module_mm;
  made.pressure_angle_rad = angle_deg * degree;
  made.shift = shift;
  made.thinning_mm = thinning_mm;
  return made;
}

// By hand, from the definitions: d = m z, da = d + 2m, df = d - 2.5m; a shift of 0.5 moves both by one module.
TEST(SpurGear, CirclesFollowTheDefinitions) {
  EXPECT_DOUBLE_EQ(pitch_diameter_mm(gear(30)), 60);
  EXPECT_DOUBLE_EQ(tip_diameter_mm(gear(30)), 64);
  EXPECT_DOUBLE_EQ(root_diameter_mm(gear(30)), 55);
  EXPECT_DOUBLE_EQ(tip_diameter_mm(gear(30, 2, 0.5)), 66);
  EXPECT_DOUBLE_EQ(root_diameter_mm(gear(30, 2, 0.5)), 57);
  EXPECT_DOUBLE_EQ(pitch_diameter_mm(gear(30, 2, 0.5)), 60);
  EXPECT_NEAR(base_diameter_mm(gear(30, 2, 0, 0, 60)), 30, 1e-12);  // cos 60° is a half
  EXPECT_DOUBLE_EQ(tooth_thickness_mm(gear(30)), pi);
}

TEST(SpurGear, MoreTeethMakeEveryCircleLarger) {
  for (int teeth = 8; teeth < 200; ++teeth) {
    EXPECT_LT(pitch_diameter_mm(gear(teeth)), pitch_diameter_mm(gear(teeth + 1)));
    EXPECT_LT(base_diameter_mm(gear(teeth)), base_diameter_mm(gear(teeth + 1)));
    EXPECT_LT(tip_diameter_mm(gear(teeth)), tip_diameter_mm(gear(teeth + 1)));
    EXPECT_LT(root_diameter_mm(gear(teeth)), root_diameter_mm(gear(teeth + 1)));
  }
}

TEST(SpurGear, ThinningTakesFromTheFlanksOnly) {
  const SpurGear full = gear(30, 2, 0.2);
  const SpurGear thin = gear(30, 2, 0.2, 0.12);
  EXPECT_NEAR(tooth_thickness_mm(full) - tooth_thickness_mm(thin), 0.12, 1e-12);
  EXPECT_EQ(tip_diameter_mm(full), tip_diameter_mm(thin));
  EXPECT_EQ(root_diameter_mm(full), root_diameter_mm(thin));
  // The flanks turn towards each other as a whole: what is lost elsewhere is in proportion to the diameter.
  EXPECT_NEAR(thickness_at_mm(full, 63) - thickness_at_mm(thin, 63), 0.12 * 63 / 60, 1e-12);
  // Jaws and pins touch along the normal: the span loses the thinning times the cosine.
  EXPECT_NEAR(span_over_teeth_mm(full, 4) - span_over_teeth_mm(thin, 4), 0.12 * std::cos(20 * degree), 1e-12);
  EXPECT_LT(over_pins_mm(thin, 3.5), over_pins_mm(full, 3.5));
}

TEST(SpurGear, TeethTaperFromTheBaseCircleToTheTip) {
  const SpurGear one = gear(24, 3, 0.1, 0.1);
  EXPECT_NEAR(thickness_at_mm(one, pitch_diameter_mm(one)), tooth_thickness_mm(one), 1e-12);
  // As an angle: the arc itself grows at first, because the circle does.
  double last = thickness_at_mm(one, base_diameter_mm(one)) / base_diameter_mm(one);
  for (int i = 1; i <= 100; ++i) {
    const double d = base_diameter_mm(one) + i / 100.0 * (tip_diameter_mm(one) - base_diameter_mm(one));
    EXPECT_LT(thickness_at_mm(one, d) / d, last);
    last = thickness_at_mm(one, d) / d;
  }
  EXPECT_EQ(tip_thickness_mm(one), thickness_at_mm(one, tip_diameter_mm(one)));
  // Radial inside the base circle: the same angle, and no jump.
  const double base_angle = thickness_at_mm(one, base_diameter_mm(one)) / base_diameter_mm(one);
  EXPECT_NEAR(thickness_at_mm(one, root_diameter_mm(one)) / root_diameter_mm(one), base_angle, 1e-12);
}

TEST(SpurGear, TipGetsSharpWithShiftAndFewTeeth) {
  EXPECT_GT(tip_thickness_mm(gear(12, 2, 0.0)), tip_thickness_mm(gear(12, 2, 0.4)));
  EXPECT_LT(tip_thickness_mm(gear(8, 2, 0.9)), 0);
}

// ISO 53:1998 profile D reaches 1.4 m deep, where the full round is 0.39394 m (computed; the standard prints 0.39).
// At 25° profile A's 0.38 does not fit any more: (π/4 - 1.25 tan 25°)/tan 32.5° = 0.31788, by hand.
TEST(SpurGear, RackTipRadiusIsCappedByTheFullRound) {
  EXPECT_DOUBLE_EQ(rack_tip_radius_mm(gear(30)), 0.76);
  SpurGear deep = gear(30, 1);
  deep.dedendum_factor = 1.4;
  deep.tip_radius_factor = 0.39;
  EXPECT_DOUBLE_EQ(rack_tip_radius_mm(deep), 0.39);
  deep.tip_radius_factor = 0.5;
  EXPECT_NEAR(rack_tip_radius_mm(deep), 0.39394, 5e-6);
  EXPECT_NEAR(rack_tip_radius_mm(gear(30, 1, 0, 0, 25)), 0.31788, 5e-6);
}

TEST(SpurGear, UndercutBeginsBelowTheLeastShiftAndTheLeastTeeth) {
  const double limit = least_shift_without_undercut(gear(12));
  EXPECT_FALSE(undercut(gear(12, 2, limit)));
  EXPECT_TRUE(undercut(gear(12, 2, limit - 1e-6)));
  EXPECT_NEAR(least_teeth_without_undercut(gear(12, 2, limit)), 12, 1e-9);
  EXPECT_TRUE(undercut(gear(17)));
  EXPECT_FALSE(undercut(gear(18)));
  // A rack with sharp corners is straight to its very tip and digs deeper.
  SpurGear sharp = gear(12);
  sharp.tip_radius_factor = 0;
  EXPECT_NEAR(least_shift_without_undercut(sharp) - limit, 0.38 * (1 - std::sin(20 * degree)), 1e-12);
}

TEST(SpurGear, OneMoreToothInTheSpanIsOneBasePitch) {
  const SpurGear one = gear(30, 2, 0.3, 0.1);
  EXPECT_NEAR(span_over_teeth_mm(one, 5) - span_over_teeth_mm(one, 4), 2 * pi * std::cos(20 * degree), 1e-12);
}

// 18 and 36 teeth at 20° come out at exactly 2.5 and 4.5: 0.5 + z tan a/π - z (tan a - a)/π is 0.5 + z/9.
TEST(SpurGear, TeethToSpanRoundsToTheNearestAndTiesDown) {
  EXPECT_NEAR(teeth_to_span_exactly(gear(18)), 2.5, 1e-12);
  EXPECT_EQ(teeth_to_span(gear(18)), 2);
  EXPECT_EQ(teeth_to_span(gear(19)), 3);
  EXPECT_EQ(teeth_to_span(gear(36)), 4);
  EXPECT_EQ(teeth_to_span(gear(37)), 5);
  EXPECT_EQ(teeth_to_span(gear(6)), 2);
}

/// Where a pin in a tooth space rests: the pin touches a flank when the least distance from its centre to the sampled
/// flank is its radius. Searched for by halving, without the formula.
double resting_radius_mm(const SpurGear& one, double pin_mm) {
  const auto gap = [&](double centre_mm) {
    double least = 1e9;
    constexpr int samples = 10000;
    for (int i = 0; i < samples; ++i) {
      const double share = static_cast<double>(i) / samples;
      const double r = std::lerp(base_diameter_mm(one), tip_diameter_mm(one), share) / 2;
      const double angle = pi / one.teeth - half_tooth_rad(one, r);  // flank from the middle of the space
      least = std::min(least, std::hypot(r * std::cos(angle) - centre_mm, r * std::sin(angle)));
    }
    return least - pin_mm / 2;
  };
  double low = base_diameter_mm(one) / 2;
  double high = tip_diameter_mm(one) / 2 + pin_mm;
  for (int i = 0; i < 40; ++i) (gap((low + high) / 2) < 0 ? low : high) = (low + high) / 2;
  return (low + high) / 2;
}

TEST(SpurGear, SizeOverPinsIsWherePinsRestOnTheFlanks) {
  for (const SpurGear& one : {gear(20, 2), gear(30, 2, 0.2, 0.1), gear(24, 3, -0.1)}) {
    EXPECT_NEAR(over_pins_mm(one, 1.75 * one.module_mm),
                2 * resting_radius_mm(one, 1.75 * one.module_mm) + 1.75 * one.module_mm, 1e-4);
  }
  // Odd: the two pins nearest to opposite stand half a pitch off, 90°/z from each side.
  const SpurGear odd = gear(21, 2, 0.1);
  EXPECT_NEAR(over_pins_mm(odd, 3.5), 2 * resting_radius_mm(odd, 3.5) * std::cos(pi / 42) + 3.5, 1e-4);
  EXPECT_TRUE(std::isnan(over_pins_mm(gear(20), 0.1)));
}

Mesh tight(SpurGear a, SpurGear b, double farther_mm = 0) {
  return {a, b, tight_centre_distance_mm(a, b) + farther_mm};
}

TEST(Mesh, StandardDistanceIsExactAndThinningDoesNotCount) {
  EXPECT_EQ(tight_centre_distance_mm(gear(30), gear(31)), 61);
  EXPECT_EQ(tight_centre_distance_mm(gear(30, 2, 0.3), gear(31, 2, -0.3)), 61);
  EXPECT_EQ(tight_centre_distance_mm(gear(30, 2, 0, 0.2), gear(31)), 61);
  EXPECT_GT(tight_centre_distance_mm(gear(30, 2, 0.3), gear(31)), 61);
  EXPECT_LT(tight_centre_distance_mm(gear(30, 2, 0.3), gear(31)), 61 + 2 * 0.3);
  EXPECT_LT(tight_centre_distance_mm(gear(30, 2, -0.3), gear(31)), 61);
  EXPECT_TRUE(std::isnan(tight_centre_distance_mm(gear(20, 2, -0.5), gear(20, 2, -0.5))));
  for (int teeth = 12; teeth < 80; ++teeth) EXPECT_EQ(tight_centre_distance_mm(gear(teeth), gear(31)), teeth + 31);
}

TEST(Mesh, NoBacklashAtTheTightDistanceWithoutThinning) {
  for (const double shift : {-0.2, 0.0, 0.1, 0.6}) {
    EXPECT_NEAR(backlash_mm(tight(gear(24, 3, shift), gear(35, 3, 0.1))), 0, 1e-12) << shift;
  }
  EXPECT_NEAR(operating_pressure_angle_rad(tight(gear(24), gear(35))), 20 * degree, 1e-12);
}

TEST(Mesh, BacklashAtTheTightDistanceIsTheThinning) {
  EXPECT_NEAR(backlash_mm(tight(gear(24, 3, 0.4, 0.1), gear(35, 3, 0.1, 0.25))), 0.35, 1e-12);
  EXPECT_NEAR(normal_backlash_mm(tight(gear(24, 3, 0.4, 0.1), gear(35, 3, 0.1, 0.25))), 0.35 * std::cos(20 * degree),
              1e-12);
}

TEST(Mesh, FartherApartHasMorePlayAndLessContact) {
  double play = -1;
  double ratio = 9;
  for (int tenths = -2; tenths < 20; ++tenths) {
    const Mesh mesh = tight(gear(24), gear(30), tenths / 10.0);
    EXPECT_GT(backlash_mm(mesh), play);
    EXPECT_LT(contact_ratio(mesh), ratio);
    play = backlash_mm(mesh);
    ratio = contact_ratio(mesh);
  }
  EXPECT_LT(backlash_mm(tight(gear(24), gear(30), -0.1)), 0);
}

TEST(Mesh, DoesNotCareWhichGearIsFirst) {
  const SpurGear a = gear(19, 2.5, 0.3, 0.1);
  const SpurGear b = gear(46, 2.5, -0.1, 0.2);
  const Mesh one = tight(a, b, 0.15);
  const Mesh other = tight(b, a, 0.15);
  EXPECT_DOUBLE_EQ(one.centre_distance_mm, other.centre_distance_mm);
  EXPECT_DOUBLE_EQ(operating_pressure_angle_rad(one), operating_pressure_angle_rad(other));
  EXPECT_DOUBLE_EQ(backlash_mm(one), backlash_mm(other));
  EXPECT_DOUBLE_EQ(contact_ratio(one), contact_ratio(other));
  EXPECT_DOUBLE_EQ(tip_clearance_mm(one), tip_clearance_mm(other));
  EXPECT_EQ(free_of_interference(one), free_of_interference(other));
}

// Another road to the play: on the operating pitch circles one pitch holds a tooth of each and the play.
TEST(Mesh, BacklashIsWhatTwoTeethLeaveOfThePitch) {
  const Mesh mesh = tight(gear(19, 2.5, 0.3, 0.1), gear(46, 2.5, -0.1, 0.2), 0.3);
  const double first_mm = 2 * mesh.centre_distance_mm * 19 / (19 + 46);
  const double second_mm = 2 * mesh.centre_distance_mm * 46 / (19 + 46);
  const double play =
      pi * first_mm / 19 - thickness_at_mm(mesh.first, first_mm) - thickness_at_mm(mesh.second, second_mm);
  EXPECT_NEAR(normal_backlash_mm(mesh), play * std::cos(operating_pressure_angle_rad(mesh)), 1e-12);
}

// And a third: turn one gear between the flanks of the other. Play along the line of action is base radius × angle.
TEST(Mesh, BacklashIsHowFarAGearCanBeTurned) {
  const Mesh mesh = tight(gear(24, 2, 0.2, 0.1), gear(37, 2, 0, 0.1), 0.2);
  const Standing fixed{mesh.first, {0, 0}, 0};
  const Standing moved{mesh.second, {mesh.centre_distance_mm, 0}, pi + pi / 37};
  const double turn = free_turn_rad(fixed, moved, 1) + free_turn_rad(fixed, moved, -1);
  EXPECT_NEAR(turn * base_diameter_mm(mesh.second) / 2, normal_backlash_mm(mesh), 1e-4);
}

// By hand: at the standard distance a tip stands 0.25 m off the mate's root; spreading adds the spread.
TEST(Mesh, TipClearance) {
  EXPECT_NEAR(tip_clearance_mm(tight(gear(24), gear(30))), 0.5, 1e-12);
  EXPECT_NEAR(tip_clearance_mm(tight(gear(24), gear(30), 0.3)), 0.8, 1e-12);
  // The longer tip of one is what counts, whichever gear has it.
  SpurGear longer = gear(30);
  longer.addendum_factor = 1.1;
  EXPECT_NEAR(tip_clearance_mm(tight(gear(24), longer)), 0.3, 1e-12);
  EXPECT_NEAR(tip_clearance_mm(tight(longer, gear(24))), 0.3, 1e-12);
  // Tip and root move together with the shift, so only what the sum of the shifts falls short of is lost, on both
  // sides.
  const Mesh shifted = tight(gear(24, 2, 0.5), gear(30));
  EXPECT_NEAR(tip_clearance_mm(shifted), shifted.centre_distance_mm - 54 - 2 * 0.5 + 0.5, 1e-12);
}

// The rack-like large gear is the one that digs into the foot of the small one, in either order.
TEST(Mesh, LongTipsInterfereInEitherOrder) {
  EXPECT_TRUE(free_of_interference(tight(gear(13), gear(16))));
  EXPECT_FALSE(free_of_interference(tight(gear(13), gear(40))));
  EXPECT_FALSE(free_of_interference(tight(gear(40), gear(13))));
  EXPECT_TRUE(free_of_interference(tight(gear(40), gear(40))));
}

TEST(Mesh, CloserThanTheBaseCirclesNoInvolutesMeet) {
  EXPECT_TRUE(involutes_meet(tight(gear(24), gear(30))));
  const Mesh closer{gear(24), gear(30), 50};
  EXPECT_FALSE(involutes_meet(closer));
  EXPECT_TRUE(std::isnan(operating_pressure_angle_rad(closer)));
  EXPECT_TRUE(std::isnan(backlash_mm(closer)));
}

}  // namespace
}  // namespace visewright::formulas
