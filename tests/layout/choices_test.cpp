// What the design names is what the Plan takes. Sizes from ISO 7089 and ISO 7093-1 as the catalogue's own tests hold
// them; the hub's front is worked by hand.
#include "layout/planning.h"

namespace visewright::layout {
namespace {

TEST(Choices, AWasherGivenByNameReplacesTheSeries) {
  const std::string text = five_gears + "[collar]\nwasher = \"washer 22 (normal)\"\nthrust_washer = \"washer 24 (large)\"\n";
  const Plan given = good_plan(text), usual = good_plan(five_gears);
  EXPECT_DOUBLE_EQ(usual.collar.flange_outside.mm(), 37);
  EXPECT_DOUBLE_EQ(given.collar.flange_outside.mm(), 39);
  EXPECT_DOUBLE_EQ(usual.collar.thrust_outside.mm(), 60);
  EXPECT_DOUBLE_EQ(given.collar.thrust_outside.mm(), 72);
  EXPECT_GT(given.front_jaw.thrust_recess.mm(), usual.front_jaw.thrust_recess.mm());
}

TEST(Choices, ALongerHubCarriesTheRimOut) {
  const std::string text = with(five_gears, "wheel = { diameter = 180 }", "wheel = { diameter = 180, hub = 60 }");
  const Plan given = good_plan(text), usual = good_plan(five_gears);
  EXPECT_DOUBLE_EQ(given.wheel.hub_front_out.mm() - usual.wheel.hub_front_out.mm(), 60 - 45);
  EXPECT_DOUBLE_EQ(given.wheel.rim_rear_out.mm() - usual.wheel.rim_rear_out.mm(), 60 - 45);
  EXPECT_DOUBLE_EQ(given.wheel.hub_diameter.mm(), usual.wheel.hub_diameter.mm());
}

}  // namespace
}  // namespace visewright::layout
