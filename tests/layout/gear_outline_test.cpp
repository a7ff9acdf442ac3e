// The outline of one gear: closed and simple, flanks of the right thickness, root as a rack would cut it.
#include "layout/gear_outline.h"

#include <gtest/gtest.h>

#include <cmath>

#include "formulas/spur_gear.h"
#include "geometry/measure.h"
#include "layout/rack_cut.h"
#include "units/quantity.h"

namespace visewright::layout {
namespace {

GearShape gear(int teeth, double shift = 0, double thinning_mm = 0.225) {
  GearShape g;
  g.teeth = teeth;
  g.module_mm = 3;
  g.pressure_angle_rad = 20 * units::pi / 180;
  g.shift = shift;
  g.thinning_mm = thinning_mm;
  return g;
}

class Outline : public testing::TestWithParam<GearShape> {
 protected:
  void SetUp() override {
    auto loop = gear_outline(GetParam());
    ASSERT_TRUE(loop) << loop.error().front().wrong;
    edges_.assign(loop->edges().begin(), loop->edges().end());
  }
  std::vector<geometry::Edge> edges_;
};
// Twelve teeth are undercut without shift (fewer than 17 at 20 degrees) and free of it with a shift of 0.4.
INSTANTIATE_TEST_SUITE_P(Gears, Outline,
                         testing::Values(gear(12), gear(12, 0.4), gear(30), gear(63), gear(63, -0.2), gear(30, 0, 0)),
                         [](const auto& which) {
                           const GearShape& g = which.param;
                           std::string name(1, 'z');
                           name += std::to_string(g.teeth) + "_x" + std::to_string(std::lround(10 * g.shift) + 10);
                           return name + "_j" + std::to_string(std::lround(1000 * g.thinning_mm));
                         });

// The checked way of building a loop refuses gaps and crossings; the outline itself is built unchecked.
TEST_P(Outline, IsClosedAndSimple) {
  const auto checked = geometry::Loop::of(edges_);
  ASSERT_TRUE(checked) << checked.error().front().wrong;
  EXPECT_EQ(edges_.size(), static_cast<std::size_t>(GetParam().teeth) * 6);
}

// Expected radii: ISO 21771, tip m(z/2 + 1 + x), root m(z/2 - 1.25 + x).
TEST_P(Outline, ReachesTipAndRoot) {
  const GearShape& g = GetParam();
  double least = 1e9, most = 0;
  for (const geometry::Edge& edge : edges_) {
    for (const double u : {0.0, 0.5, 1.0}) {
      const double r = geometry::length(geometry::at(edge, u));
      least = std::min(least, r);
      most = std::max(most, r);
    }
  }
  EXPECT_NEAR(most, g.module_mm * (g.teeth / 2.0 + 1 + g.shift), 1e-9);
  EXPECT_NEAR(least, g.module_mm * (g.teeth / 2.0 - 1.25 + g.shift), 1e-9);
}

// Expected: ISO 21771 tooth thickness on a circle, s_y = d_y (s/d + inv a - inv a_y), written out here. A point on the
// lower flank at radius r stands at minus half of that arc.
TEST_P(Outline, FlanksHaveTheThicknessOfAnInvolute) {
  const GearShape& g = GetParam();
  const auto inv = [](double a) { return std::tan(a) - a; };
  const double d = g.module_mm * g.teeth, base = d * std::cos(g.pressure_angle_rad);
  const double s = g.module_mm * (units::pi / 2 + 2 * g.shift * std::tan(g.pressure_angle_rad)) - g.thinning_mm;
  int flanks = 0;
  for (const geometry::Edge& edge : std::span(edges_).first(6)) {
    if (!std::holds_alternative<geometry::Involute>(edge)) continue;
    for (const double u : {0.1, 0.5, 0.9}) {
      const geometry::Point p = geometry::at(edge, u);
      const double dy = 2 * geometry::length(p);
      const double half = s / d + inv(g.pressure_angle_rad) - inv(std::acos(base / dy));
      EXPECT_NEAR(std::abs(std::atan2(p.y, p.x)) * dy / 2, half * dy / 2, 1e-9) << "at radius " << dy / 2;
    }
    ++flanks;
  }
  EXPECT_EQ(flanks, 2);
}

// Expected: no point of flank, fillet or root is left standing in the rack's way, and none is cut that the rack leaves:
// the rack laid on in thousands of rolled positions just touches it.
TEST_P(Outline, IsWhatTheRackLeaves) {
  int fillets = 0;
  for (const geometry::Edge& edge : std::span(edges_).first(2)) {
    const bool fillet = std::holds_alternative<geometry::Trochoid>(edge);
    for (const double u : {0.2, 0.5, 0.85}) {
      const geometry::Point p = geometry::at(edge, u);
      EXPECT_NEAR(distance_from_cut(GetParam(), p.x, p.y), 0, 1e-7) << (fillet ? "fillet" : "flank") << " at " << u;
    }
    fillets += fillet ? 1 : 0;
  }
  EXPECT_EQ(fillets, 1);
}

TEST(OutlineChecks, RackFindsAFilletThatIsTooHighOrTooLow) {
  const GearShape g = gear(30);
  const auto loop = gear_outline(g);
  const geometry::Point p = geometry::at(loop->edges().front(), 0.5);
  EXPECT_LT(distance_from_cut(g, p.x * 1.0003, p.y * 1.0003), -1e-3);
  EXPECT_GT(distance_from_cut(g, p.x * 0.9997, p.y * 0.9997), 1e-3);
}

// At 30 degrees half the rack's tip is π/4 - 1.25 tan 30 = 0.064 modules wide; a rounding of 0.38 needs 0.38 tan 30.
TEST(OutlineFaults, MeetingFillets) {
  GearShape g = gear(30);
  g.pressure_angle_rad = 30 * units::pi / 180;
  const auto meeting = gear_outline(g);
  ASSERT_FALSE(meeting);
  EXPECT_NE(meeting.error().front().wrong.find("fillets"), std::string::npos);
}

TEST(OutlineFaults, PointedTeeth) {
  const auto pointed = gear_outline(gear(10, 1.2));
  ASSERT_FALSE(pointed);
  EXPECT_NE(pointed.error().front().wrong.find("point"), std::string::npos);
}

}  // namespace
}  // namespace visewright::layout
