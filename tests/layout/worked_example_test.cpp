// The five-gear design against its hand-worked table. Expected values: worked by hand from the sizes of the bought
// things (M20 rod and nut, washers 37/21/3 and 60/21/4, bearing 15 x 32 x 9) and the opening of 250, before the
// program.
#include "layout/planning.h"

namespace visewright::layout {
namespace {

class WorkedExample : public testing::Test {
 protected:
  const Plan p_ = good_plan(five_gears);
};

constexpr double exact = 1e-9;

TEST_F(WorkedExample, TrainAndSpacing) {
  ASSERT_EQ(p_.train.gears.size(), 5U);
  for (const Gear& g : p_.train.gears) {
    EXPECT_NEAR(g.tip.mm(), 96, exact);
    EXPECT_NEAR(g.root.mm(), 82.5, exact);
    EXPECT_NEAR(g.pocket.mm(), 100, exact);
  }
  for (const Mesh& m : p_.train.meshes) {
    EXPECT_NEAR(m.centre_distance.mm(), 90, exact);
    EXPECT_NEAR(m.contact_ratio.value, 1.65, 0.005);
  }
  EXPECT_NEAR(p_.train.spacing.mm(), 360, exact);
  EXPECT_NEAR(p_.train.backlash.mm(), 0.45, exact);
  EXPECT_NEAR(p_.train.face_width.mm(), 24, exact);
  EXPECT_NEAR(p_.train.relief.mm(), 12, exact);
  EXPECT_NEAR(p_.use.clear_width.mm(), 324, exact);
}

TEST_F(WorkedExample, FrontStack) {
  EXPECT_NEAR(p_.front_jaw.backing_rear_out.mm(), 3, exact);
  EXPECT_NEAR(p_.front_jaw.joint_out.mm(), 43, exact);
  EXPECT_NEAR(p_.front_jaw.thrust_recess.mm(), 65, exact);
  EXPECT_NEAR(p_.front_jaw.thrust_recess_depth.mm(), 4, exact);
  EXPECT_NEAR(p_.front_jaw.bush_length.mm(), 36, exact);
  EXPECT_NEAR(p_.train.rear_out.mm(), 44.5, exact);
  EXPECT_NEAR(p_.train.front_out.mm(), 68.5, exact);
  EXPECT_NEAR(p_.collar.flange_recess.mm(), 38, exact);
  EXPECT_NEAR(p_.collar.flange_recess_depth.mm(), 1.5, exact);
  EXPECT_NEAR(p_.collar.hexagon.mm(), 30.2, exact);
  EXPECT_NEAR(p_.collar.hexagon_depth.mm(), 18.5, exact);
  EXPECT_NEAR(p_.screw.collar_pin_out.mm(), 55, exact);
  EXPECT_NEAR(p_.screw.shoulder_out.mm(), 69, exact);
  EXPECT_NEAR(p_.screw.journal.mm(), 15, exact);
  EXPECT_NEAR(p_.keeper.rear_out.mm(), 69, exact);
  EXPECT_NEAR(p_.keeper.rear_out.mm() + p_.keeper.thickness.mm(), 70, exact);
  const double bearing_rear = p_.keeper.rear_out.mm() + p_.keeper.thickness.mm() + p_.gaps.end_float.mm();
  EXPECT_NEAR(bearing_rear, 70.3, exact);
  EXPECT_NEAR(bearing_rear + p_.bearing.width.mm(), 79.3, exact);
  EXPECT_NEAR(p_.front_jaw.front_out.mm(), 75, exact);
  EXPECT_NEAR(p_.cover.rear_out.mm() + p_.cover.thickness.mm(), 83, exact);
  EXPECT_NEAR(p_.cover.rear_out.mm() + p_.cover.seat_depth.mm(), 79.3, exact);
  EXPECT_NEAR(p_.cover.seat.mm(), 33, exact);
  EXPECT_NEAR(p_.cover.lip_bore.mm(), 24, exact);
}

TEST_F(WorkedExample, WheelAndScrew) {
  EXPECT_NEAR(p_.wheel.hub_rear_out.mm(), 86, exact);
  EXPECT_NEAR(p_.wheel.hub_front_out.mm(), 131, exact);
  EXPECT_NEAR(p_.wheel.rim_rear_out.mm(), 111, exact);
  EXPECT_NEAR(p_.screw.front_out.mm(), 131, exact);
  EXPECT_NEAR(p_.screw.length.mm(), 475, exact);
  EXPECT_NEAR(p_.screw.tail_out.mm(), -344, exact);
  EXPECT_NEAR(p_.use.opening_max.mm(), 253, exact);
  EXPECT_NEAR(p_.use.free_depth.mm(), 344, exact);
  EXPECT_NEAR(p_.screw.stop_length.mm(), 26, exact);
  // At the greatest opening the stop's pin touches the nut: pin radius 2.5 behind -78, 253 further in at shut.
  EXPECT_NEAR(p_.screw.stop_out.mm(), -78 - 253 - 2.5, exact);
}

TEST_F(WorkedExample, RearStackAndBench) {
  EXPECT_NEAR(p_.rear_jaw.thickness.mm(), 36, exact);
  EXPECT_NEAR(p_.rear_jaw.rear_out.mm(), -39, exact);
  EXPECT_NEAR(p_.rear_nut.bar_rear_out.mm(), -49, exact);
  EXPECT_NEAR(p_.rear_nut.rear_out.mm(), -78, exact);
  EXPECT_NEAR(p_.rear_nut.length.mm(), 29, exact);
  EXPECT_NEAR(p_.rear_nut.bar_length.mm(), 110, exact);
  EXPECT_NEAR(p_.rear_nut.bar_height.mm(), 60, exact);
  EXPECT_NEAR(p_.rear_nut.bar_thickness.mm(), 10, exact);
  EXPECT_NEAR(p_.rear_nut.bar_bore.mm(), 22, exact);
  EXPECT_NEAR(p_.rear_nut.bolt_offset.mm(), 40, exact);
  EXPECT_NEAR(p_.rear_nut.bolt_hole.mm(), 9, exact);
  EXPECT_NEAR(p_.bench.notch_depth.mm(), 39, exact);
  EXPECT_NEAR(p_.bench.notch_length.mm(), 526, exact);
  EXPECT_NEAR(p_.bench.apron_hole.mm(), 34, exact);
  EXPECT_NEAR(p_.bench.apron_front_out.mm(), -88, exact);
  EXPECT_NEAR(p_.bracket.top_leg.mm(), 45, exact);
  EXPECT_NEAR(p_.bracket.down_leg.mm(), 70, exact);
}

TEST_F(WorkedExample, FrontView) {
  EXPECT_NEAR(p_.bench.axis_depth.mm(), 110, exact);
  EXPECT_NEAR(p_.front_jaw.length.mm(), 520, exact);
  EXPECT_NEAR(p_.front_jaw.above.mm() + p_.front_jaw.below.mm(), 185, exact);
  EXPECT_NEAR(p_.front_jaw.bevel_height.mm(), 35, exact);
  EXPECT_NEAR(p_.front_jaw.bevel_depth.mm(), 45, exact);
  EXPECT_NEAR(p_.cover.top.mm(), 72, exact);
  EXPECT_NEAR(p_.cover.bottom.mm(), -72, exact);
  const std::vector<double> dogs{-135, -45, 45, 135};
  ASSERT_EQ(p_.dogs.holes.size(), dogs.size());
  for (std::size_t i = 0; i < dogs.size(); ++i) {
    EXPECT_NEAR(p_.dogs.holes[i].at.x, dogs[i], exact);
    EXPECT_NEAR(p_.dogs.holes[i].at.y, -20, exact) << "20 from the wood's clamping face, away from the bench";
  }
  // Cusp: height of the crossing of two circles of radius 50 at 90: sqrt(50² − 45²) = 21.79.
  EXPECT_NEAR(p_.cusps.hole("cusp 1 top").at.x, -135, exact);
  EXPECT_NEAR(p_.cusps.hole("cusp 1 top").at.y, std::sqrt(475.0), exact);
}

TEST_F(WorkedExample, Idlers) {
  EXPECT_NEAR(p_.axle.diameter.mm(), 12, exact);
  EXPECT_NEAR(p_.axle.bearing.outside.mm(), 28, exact);
  EXPECT_NEAR(p_.axle.bearing.width.mm(), 8, exact);
  EXPECT_NEAR(p_.axle.hole_depth.mm(), 30, exact);
  EXPECT_NEAR(p_.axle.spacer_rear.mm(), 9.5, exact);
  EXPECT_NEAR(p_.axle.spacer_front.mm(), 14.2, exact);
}

}  // namespace
}  // namespace visewright::layout
