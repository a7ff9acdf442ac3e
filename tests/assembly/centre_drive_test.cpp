// A wheel in the middle: what is placed and how it turns. Expected values: a mesh turns its two gears opposite ways, so
// the middle of three turns against the screws and the middle of five with them; rates are as the teeth.
#include <algorithm>

#include "assembly/assemble.h"
#include "layout/planning.h"

namespace visewright::assembly {
namespace {

Assembly vise(const std::string& teeth) {
  return assemble(layout::good_plan("train = { module = 3, teeth = " + teeth + " }\nscrew = { thread = \"M20\" }\ndrive = { at = \"centre\" }\n"));
}

const Placed& named(const Assembly& a, const std::string& name) {
  const auto found = std::find_if(a.placed.begin(), a.placed.end(), [&](const Placed& p) { return p.name == name; });
  if (found == a.placed.end()) throw std::runtime_error("no " + name);
  return *found;
}

std::size_t count_of(const Assembly& a, const std::string& beginning) {
  return static_cast<std::size_t>(
      std::count_if(a.placed.begin(), a.placed.end(), [&](const Placed& p) { return p.name.starts_with(beginning); }));
}

TEST(CentreDrive, WheelTurnsWithTheMiddleGear) {
  const Assembly three = vise("[36, 24, 36]"), five = vise("[30, 30, 30, 30, 30]");
  const double screw = named(three, "lead screw, left").turn_rad_per_mm;
  EXPECT_NEAR(named(three, "hand wheel, centre").turn_rad_per_mm, -screw * 36 / 24, 1e-12);
  EXPECT_NEAR(named(three, "centre shaft").turn_rad_per_mm, -screw * 36 / 24, 1e-12);
  EXPECT_NEAR(named(five, "hand wheel, centre").turn_rad_per_mm, named(five, "lead screw, left").turn_rad_per_mm, 1e-12);
}

TEST(CentreDrive, OneWheelThreeCollarsFourMoreBearings) {
  const Assembly five = vise("[30, 30, 30, 30, 30]");
  EXPECT_EQ(count_of(five, "hand wheel"), 1U);
  EXPECT_EQ(count_of(five, "thrust collar"), 3U);
  EXPECT_EQ(count_of(five, "wheel bearing, inner ring"), 3U);
  EXPECT_EQ(count_of(five, "shaft bearing"), 2U);
  EXPECT_EQ(count_of(five, "axle "), 2U + 2U);  // two axles and their screws
  EXPECT_EQ(named(five, "shaft bearing, outer ring, centre").group, Group::moving);
}

}  // namespace
}  // namespace visewright::assembly
