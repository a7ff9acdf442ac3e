#include "kernel/solid.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "geometry/joined.h"
#include "geometry/measure.h"
#include "kernel/flanks.h"
#include "units/quantity.h"

namespace visewright {
namespace {

using geometry::Placement;
using kernel::Solid;
using units::pi;

constexpr Placement world{};
/// A frame that is turned and shifted, with a hand that a mirror image would show.
constexpr Placement aslant{{3, -5, 7}, {0, 0.6, 0.8}, {1, 0, 0}};

geometry::Profile square(double side) { return geometry::region(geometry::rectangle({0, 0}, {side, side})); }

Solid block(double x, double y, double z, const Placement& at = world) {
  return kernel::prism(geometry::region(geometry::rectangle({0, 0}, {x, y})), at, 0, z, "block").value();
}

void expect_sound(const Solid& solid, double volume_mm3, int pieces = 1) {
  const kernel::Measures m = kernel::measures(solid, "test").value();
  EXPECT_NEAR(m.volume_mm3, volume_mm3, 1e-6 * std::abs(volume_mm3));
  EXPECT_EQ(m.solids, pieces);
  EXPECT_TRUE(m.valid);
  EXPECT_TRUE(m.closed);
  EXPECT_LT(m.worst_tolerance_mm, 1e-5);
}

template <class T>
void expect_fault(const base::Result<T>& result, const char* key) {
  ASSERT_FALSE(result.has_value()) << key;
  ASSERT_EQ(result.error().size(), 1u);
  EXPECT_EQ(result.error().front().cause, base::Cause::geometry);
  EXPECT_EQ(result.error().front().key, key);
  EXPECT_FALSE(result.error().front().wrong.empty());
  EXPECT_FALSE(result.error().front().right.empty());
}

// Area times height; area of plate 80 × 50 less a circle of 10 and a slot 8 wide over 20: by hand.
TEST(Prism, HasTheVolumeOfItsProfile) {
  const geometry::Profile plate = geometry::region(
      geometry::rectangle({0, 0}, {80, 50}), {geometry::circle({20, 20}, 10), geometry::slot({45, 25}, {65, 25}, 8)});
  const double area = 80 * 50 - pi * 100 - (20 * 8 + pi * 16);
  for (const Placement& frame : {world, aslant})
    expect_sound(kernel::prism(plate, frame, -3, 9, "plate").value(), area * 12);
}

// Surface of a cylinder, 2πr(r + h).
TEST(Prism, OfACircleIsACylinder) {
  const Solid rod = kernel::prism(geometry::region(geometry::circle({1, 2}, 10)), aslant, 0, 30, "rod").value();
  expect_sound(rod, pi * 100 * 30);
  EXPECT_NEAR(kernel::measures(rod, "rod")->area_mm2, 2 * pi * 10 * 40, 1e-6);
}

TEST(Prism, StandsWhereItsFrameSays) {
  const Solid bar = kernel::prism(geometry::region(geometry::rectangle({1, 2}, {3, 7})), aslant, 10, 20, "bar").value();
  // x of the frame is (0, 0.6, 0.8), z is (1, 0, 0), so y = z × x is (0, −0.8, 0.6).
  const kernel::Box3 box = kernel::box(bar, "bar").value();
  const double expected_low[3] = {3 + 10, -5 + 0.6 * 1 - 0.8 * 7, 7 + 0.8 * 1 + 0.6 * 2};
  const double expected_high[3] = {3 + 20, -5 + 0.6 * 3 - 0.8 * 2, 7 + 0.8 * 3 + 0.6 * 7};
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(box.low[i], expected_low[i], 1e-6);
    EXPECT_NEAR(box.high[i], expected_high[i], 1e-6);
  }
}

TEST(Prism, OfSeveralOutlinesHasAsManyPieces) {
  geometry::Profile two{{geometry::rectangle({0, 0}, {10, 10}), geometry::rectangle({20, 0}, {40, 20})},
                        {geometry::circle({30, 10}, 5)}};
  expect_sound(kernel::prism(two, world, 0, 2, "two").value(), 2 * (100 + 400 - pi * 25), 2);
}

TEST(Prism, RefusesWhatHasNoBody) {
  expect_fault(kernel::prism(square(10), world, 5, 5, "flat"), "flat");
  expect_fault(kernel::prism(square(10), world, 5, 4, "inside out"), "inside out");
  expect_fault(kernel::prism({}, world, 0, 5, "nothing"), "nothing");
  expect_fault(kernel::prism(square(std::numeric_limits<double>::quiet_NaN()), world, 0, 5, "no number"), "no number");
  expect_fault(kernel::prism(square(10), world, 0, std::numeric_limits<double>::infinity(), "endless"), "endless");
  expect_fault(kernel::prism(geometry::region(geometry::rectangle({0, 0}, {5, 5}), {geometry::circle({20, 0}, 1)}),
                             world, 0, 5, "hole outside"),
               "hole outside");
  // A frame whose axes are parallel makes the kernel itself give up.
  expect_fault(kernel::prism(square(10), Placement{{0, 0, 0}, {0, 0, 1}, {0, 0, 1}}, 0, 5, "no frame"), "no frame");
}

// Loops allow 1e-7 mm between an edge and the next; a tenth less is taken, a hundred times more is not.
TEST(Prism, TakesTheGapsThatALoopAllows) {
  const auto half_disc = [](double gap) {
    return geometry::region(
        geometry::trusted({geometry::Arc{{5, 0}, {-5, 0}, {0, 0}, true}, geometry::Line{{-5 - gap, 0}, {5, 0}}}));
  };
  expect_sound(kernel::prism(half_disc(0.9e-7), world, 0, 10, "half disc").value(), pi * 25 / 2 * 10);
  expect_fault(kernel::prism(half_disc(1e-5), world, 0, 10, "half disc"), "half disc");
}

// Two discs of radius 10 at a distance of 10: 2·πr² less the lens 2r²·acos(d/2r) − d/2·√(4r² − d²).
TEST(Prism, TakesAJoinedOutline) {
  const std::vector<geometry::Loop> discs{geometry::circle({0, 0}, 10), geometry::circle({6, 8}, 10)};
  const double lens = 200 * std::acos(0.5) - 5 * std::sqrt(300.0);
  expect_sound(kernel::prism(geometry::joined(discs).value(), aslant, 0, 3, "pocket").value(), 3 * (200 * pi - lens));
}

// Green's theorem on the true curves gives the area without the kernel; the splines may add or lose at most their
// straying times the flanks' length.
TEST(Prism, OfAToothKeepsItsArea) {
  const geometry::Loop outline = kernel_tests::tooth().outline();
  const Solid tooth = kernel::prism(geometry::region(outline), aslant, 0, 20, "tooth").value();
  const double area = geometry::area_mm2(outline);
  const kernel::Measures m = kernel::measures(tooth, "tooth").value();
  EXPECT_TRUE(m.valid && m.closed);
  EXPECT_NEAR(m.volume_mm3 / 20, area, 2 * 10 * 2e-4);
}

// The tip of the tooth's flank that starts on its base circle, where an involute stands still.
TEST(Prism, TakesAnInvoluteFromItsBaseCircle) {
  kernel_tests::Tooth tooth = kernel_tests::tooth();
  tooth.foot_roll_rad = 0;
  const Solid solid = kernel::prism(geometry::region(tooth.outline()), world, 0, 20, "tooth").value();
  EXPECT_TRUE(kernel::measures(solid, "tooth")->valid);
  EXPECT_NEAR(kernel::measures(solid, "tooth")->volume_mm3 / 20, geometry::area_mm2(tooth.outline()), 2 * 10 * 2e-4);
}

// Tube: π(R² − r²)h. Cone: πr²h/3. Ball: 4πr³/3. Ring: 2π²Rr² (Pappus). School formulas.
TEST(Revolution, HasTheVolumeOfPappus) {
  for (const Placement& axis : {world, aslant}) {
    const auto turned = [&](geometry::Loop section) {
      return kernel::revolution(geometry::region(std::move(section)), axis, "turned").value();
    };
    expect_sound(turned(geometry::rectangle({4, 0}, {9, 12})), pi * (81 - 16) * 12);
    expect_sound(turned(geometry::rectangle({0, 0}, {9, 12})), pi * 81 * 12);
    const std::vector<geometry::Point> cone{{0, 0}, {6, 0}, {0, 10}};
    expect_sound(turned(geometry::polygon(cone)), pi * 36 * 10 / 3);
    expect_sound(turned(geometry::circle({20, 1}, 3)), 2 * pi * pi * 20 * 9);
    expect_sound(
        turned(geometry::trusted({geometry::Arc{{0, -5}, {0, 5}, {0, 0}, true}, geometry::Line{{0, 5}, {0, -5}}})),
        4 * pi * 125 / 3);
  }
}

TEST(Revolution, TurnsAboutItsAxis) {
  const Solid disc = kernel::revolution(geometry::region(geometry::rectangle({0, 2}, {9, 12})), aslant, "disc").value();
  const kernel::Box3 box = kernel::box(disc, "disc").value();
  EXPECT_NEAR(box.low[0], 3 + 2, 1e-6);
  EXPECT_NEAR(box.high[0], 3 + 12, 1e-6);
  EXPECT_NEAR(box.low[1], -5 - 9, 1e-5);
  EXPECT_NEAR(box.high[2], 7 + 9, 1e-5);
}

TEST(Revolution, RefusesASectionAcrossTheAxis) {
  expect_fault(kernel::revolution(geometry::region(geometry::rectangle({-1, 0}, {9, 12})), world, "disc"), "disc");
}

// Three drilled holes, one countersunk recess and a corner sawn off, counted by hand.
TEST(Cut, TakesAllToolsAtOnce) {
  std::vector<Solid> tools;
  for (const double x : {20.0, 50.0, 80.0})
    tools.push_back(kernel::prism(geometry::region(geometry::circle({x, 25}, 5)), world, -1, 21, "drill").value());
  tools.push_back(
      kernel::prism(geometry::region(geometry::rectangle({0, 40}, {100, 60})), world, 12, 25, "rebate").value());
  const Solid plate = block(100, 50, 20);
  const Solid cut = kernel::cut(plate, tools, "plate").value();
  expect_sound(cut, 100 * 50 * 20 - 3 * pi * 25 * 20 - 100 * 10 * 8);
  expect_sound(plate, 100 * 50 * 20);
  expect_sound(tools.front(), pi * 25 * 22);
}

TEST(Cut, WithAHalfSpaceKeepsWhatIsBeforeThePlane) {
  // The plane x + z = 5 through the 10 mm cube, facing +x +z: what stays is the prism under it, 5·5/2·10.
  const double h = std::sqrt(0.5);
  const Solid tool = kernel::behind({{5, 0, 0}, {0, 1, 0}, {h, 0, h}}, 100, "saw").value();
  expect_sound(kernel::cut(block(10, 10, 10), std::vector{tool}, "wedge").value(), 125);
}

TEST(Cut, ReportsPiecesAndRefusesNothing) {
  const Solid saw = block(2, 20, 20, {{4, -5, -5}, {1, 0, 0}, {0, 0, 1}});
  expect_sound(kernel::cut(block(10, 10, 10), std::vector{saw}, "halves").value(), 800, 2);
  expect_fault(
      kernel::cut(block(2, 2, 2), std::vector{block(3, 3, 3, {{-0.5, -0.5, -0.5}, {1, 0, 0}, {0, 0, 1}})}, "all gone"),
      "all gone");
  expect_sound(kernel::cut(block(2, 2, 2), {}, "untouched").value(), 8);
}

TEST(Fused, CountsTheOverlapOnce) {
  const std::vector<Solid> pieces{block(10, 10, 10), block(10, 10, 10, {{5, 0, 0}, {1, 0, 0}, {0, 0, 1}}),
                                  block(1, 1, 1, {{0, 0, 10}, {1, 0, 0}, {0, 0, 1}})};
  expect_sound(kernel::fused(pieces, "heap").value(), 1501);
  const std::vector<Solid> apart{block(1, 1, 1), block(1, 1, 1, {{5, 0, 0}, {1, 0, 0}, {0, 0, 1}})};
  expect_sound(kernel::fused(apart, "apart").value(), 2, 2);
  expect_fault(kernel::fused({}, "none"), "none");
}

TEST(Common, JudgesOverlap) {
  const Solid a = block(10, 10, 10);
  const auto shared = [&](const Placement& at) {
    return kernel::common_volume_mm3(a, block(10, 10, 10, at), "").value();
  };
  EXPECT_NEAR(shared({{9, 8, 7}, {1, 0, 0}, {0, 0, 1}}), 1 * 2 * 3, 1e-9);
  EXPECT_EQ(shared({{10, 0, 0}, {1, 0, 0}, {0, 0, 1}}), 0);
  EXPECT_EQ(shared({{50, 0, 0}, {1, 0, 0}, {0, 0, 1}}), 0);
  // One wholly inside the other, which a comparison of surfaces misses.
  const Solid inner = block(2, 2, 2, {{4, 4, 4}, {1, 0, 0}, {0, 0, 1}});
  EXPECT_NEAR(kernel::common_volume_mm3(a, inner, "").value(), 8, 1e-9);
  expect_sound(kernel::common(a, inner, "").value().value(), 8);
  EXPECT_FALSE(kernel::common(a, block(1, 1, 1, {{50, 0, 0}, {1, 0, 0}, {0, 0, 1}}), "").value().has_value());
}

TEST(Distance, IsTheGap) {
  const Solid rod = kernel::prism(geometry::region(geometry::circle({0, 0}, 10)), world, 0, 40, "rod").value();
  const Solid other =
      kernel::prism(geometry::region(geometry::circle({3 * 12, 4 * 12}, 20)), world, 0, 40, "other").value();
  EXPECT_NEAR(kernel::distance_mm(rod, other, "").value(), 60 - 10 - 20, 1e-6);
}

TEST(Moved, CarriesTheSolidIntoAPlacement) {
  const Solid carried = kernel::moved(block(1, 2, 4), aslant);
  const kernel::Box3 moved = kernel::box(carried, "").value(), built = kernel::box(block(1, 2, 4, aslant), "").value();
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(moved.low[i], built.low[i], 1e-9);
    EXPECT_NEAR(moved.high[i], built.high[i], 1e-9);
  }
  expect_sound(carried, 8);
  expect_sound(kernel::cut(carried, std::vector{block(1, 2, 1, aslant)}, "").value(), 6);
}

// A tilted rod: the box of a cylinder reaches h·|cos| + 2r·|sin| along each axis.
TEST(Box, IsTightOnRoundBodies) {
  const double s = std::sqrt(0.5);
  const Solid rod =
      kernel::prism(geometry::region(geometry::circle({0, 0}, 10)), {{0, 0, 0}, {0, 1, 0}, {s, 0, s}}, 0, 40, "rod")
          .value();
  const kernel::Box3 box = kernel::box(rod, "rod").value();
  EXPECT_NEAR(box.low[0], -10 * s, 1e-6);
  EXPECT_NEAR(box.high[0], (40 + 10) * s, 1e-6);
  EXPECT_NEAR(box.low[1], -10, 1e-6);
  EXPECT_NEAR(box.high[1], 10, 1e-6);
}

}  // namespace
}  // namespace visewright
