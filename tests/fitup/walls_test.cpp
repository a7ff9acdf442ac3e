// Walls of parts, read from their operations.
#include "fitup/walls.h"

#include <algorithm>
#include <cmath>

#include "fitup/rules.h"
#include "fitup/stood.h"

namespace visewright::fitup {
namespace {

const std::string preset = "joinery-bench";
using layout::good_plan;

const layout::Plan& plan() {
  static const layout::Plan known = good_plan(text_of(preset));
  return known;
}

const Wall* least(const std::vector<Wall>& walls, const reasons::Rule& rule, const std::string& name = "") {
  for (const Wall& w : walls)
    if (w.rule == &rule && (name.empty() || w.first == name || w.second == name)) return &w;
  return nullptr;
}

/// The front jaw with the first dog hole moved along the jaw, bored deeper and moved out, in its list of operations alone.
parts::Part with_dog_hole(double along_mm, double deeper_mm, double out_mm = 0) {
  parts::Part jaw = parts::front_jaw(plan());
  for (parts::Operation& operation : std::get<parts::BuiltUp>(jaw.made).after) {
    if (operation.name != "hole for dog 1") continue;
    auto& drill = std::get<parts::Drill>(operation.work);
    drill.at.x += along_mm;
    drill.at.y -= out_mm;  // the top face's y runs into the bench
    *drill.depth += deeper_mm;
  }
  return jaw;
}

// Expected: by hand. From the dog hole's floor down to the top of the pocket below, both on one upright: the pocket of a
// gear tops out half its diameter above the screw line. The flat floor's corner, at the radius of the hole, is nearest.
double expected_to_pocket(double along_mm, double deeper_mm) {
  const auto& jaw = plan().front_jaw;
  const double x = plan().dogs.holes[0].at.x + along_mm, floor = jaw.above.mm() - jaw.dog_depth.mm() - deeper_mm, r = jaw.dog_diameter.mm() / 2;
  double nearest = 1e300;
  for (const auto& gear : plan().train.gears) {
    const double aside = std::max(0.0, std::abs(gear.centre_x.mm() - x) - r);
    nearest = std::min(nearest, std::hypot(aside, floor) - gear.pocket.mm() / 2);
  }
  return nearest;
}

/// Whether the dog hole's middle stands before the gear layer, so that the full width of its floor faces the pocket.
bool before_the_pockets() { return plan().front_jaw.dog_out.mm() >= plan().front_jaw.joint_out.mm(); }

// A dog hole moved in the list of operations alone changes the wall that is reported.
TEST(Walls, DogHoleMovedInTheListOfOperations) {
  const double web = plan().gaps.web.mm();
  const auto one = walls(with_dog_hole(0, 0), plan(), 8 * web), two = walls(with_dog_hole(15, 0), plan(), 8 * web), deep = walls(with_dog_hole(0, 12), plan(), 8 * web);
  const Wall *before = least(one, rules::wall_dog, "hole for dog 1"), *aside = least(two, rules::wall_dog, "hole for dog 1"), *deeper = least(deep, rules::wall_dog, "hole for dog 1");
  ASSERT_TRUE(before && aside && deeper);
  EXPECT_GT(std::abs(aside->left_mm - before->left_mm), 0.1);
  EXPECT_LT(deeper->left_mm, before->left_mm - 3);
  EXPECT_GE(before->left_mm, expected_to_pocket(0, 0) - 1e-3);
  if (before_the_pockets()) {
    EXPECT_NEAR(before->left_mm, expected_to_pocket(0, 0), 1e-3);
  }
}

// Expected: by hand. A dog hole deep enough to stand behind a pocket keeps from it what it keeps from the joint of the two
// layers: half of what its diameter leaves of the backing, less how far it is moved out; 1.5 mm into the pocket is no wall
// at all, and fails.
TEST(Walls, DogHoleBoredIntoAPocket) {
  const double beside = plan().front_jaw.joint_out.mm() - plan().front_jaw.dog_out.mm() - plan().front_jaw.dog_diameter.mm() / 2;
  const auto left_mm = [&](double wall_mm) {
    for (const Wall& w : walls(with_dog_hole(0, 40, beside - wall_mm), plan(), 40))
      if (w.rule == &rules::wall_dog && (w.first.starts_with("pocket") || w.second.starts_with("pocket"))) return w.left_mm;
    return 1e300;
  };
  EXPECT_NEAR(left_mm(10.5), 10.5, 1e-3);
  EXPECT_NEAR(left_mm(0.2), 0.2, 1e-3);
  EXPECT_EQ(left_mm(-1.5), 0);
  assembly::Assembly a = assembly::assemble(plan());
  swap_part(a, "front jaw", with_dog_hole(0, 40, beside + 1.5));
  bool caught = false;
  for (const auto& f : wall_findings(plan(), a)) {
    const bool pocket = std::any_of(f.parts.begin(), f.parts.end(), [](const std::string& name) { return name.starts_with("pocket"); });
    if (f.rule != &rules::wall_dog || !pocket || f.measured > 0) continue;
    caught = f.verdict == reasons::Verdict::fail && std::find(f.parts.begin(), f.parts.end(), "hole for dog 1") != f.parts.end();
  }
  EXPECT_TRUE(caught);
}

// Expected: by hand from the numbers of the Plan: below the pockets, beside the last, square to the plane of the bevel,
// which meets the front face `bevel_height` below the top and falls away with `bevel_depth` along it.
TEST(Walls, PocketsToTheFaces) {
  const auto all = walls(parts::front_jaw(plan()), plan(), 200);
  const auto& jaw = plan().front_jaw;
  const auto to = [&](const std::string& face) {
    double nearest = 1e300;
    for (const Wall& w : all)
      if (w.rule == &rules::wall_pocket && w.second == face) nearest = std::min(nearest, w.left_mm);
    return nearest;
  };
  double pocket = 0;
  for (const auto& gear : plan().train.gears) pocket = std::max(pocket, gear.pocket.mm() / 2);
  EXPECT_NEAR(to("bottom"), jaw.below.mm() - pocket, 1e-3);
  EXPECT_NEAR(to("left"), jaw.length.mm() / 2 + plan().train.gears.front().centre_x.mm() - plan().train.gears.front().pocket.mm() / 2, 1e-3);
  EXPECT_NEAR(to("right"), jaw.length.mm() / 2 - plan().train.gears.back().centre_x.mm() - plan().train.gears.back().pocket.mm() / 2, 1e-3);
  const double height = jaw.bevel_height.mm(), depth = jaw.bevel_depth.mm();
  EXPECT_NEAR(to("bevel"), (jaw.above.mm() - height - pocket) * depth / std::hypot(height, depth), 1e-3);
}

}  // namespace
}  // namespace visewright::fitup
