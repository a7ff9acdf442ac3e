// Laws that any legal design obeys, however extreme; what no vise can be built from is refused in words. Expected: the
// directions follow from the formulas' own monotony, mirror images from symmetry.
#include <cmath>

#include "analysis/analyse.h"
#include "assembly/assemble.h"
#include "layout/planning.h"

namespace visewright::analysis {
namespace {

using layout::good_plan;

std::string design(int gears, double module_mm, int teeth, const std::string& more = "") {
  std::string list;
  for (int i = 0; i < gears; ++i) list += (i ? ", " : "") + std::to_string(teeth);
  return "opening = 150\ntrain = { module = " + std::to_string(module_mm) + ", teeth = [" + list + "] }\nscrew = { thread = \"M16\" }\n" + more;
}

Analysis of(const std::string& text) {
  const layout::Plan plan = good_plan(text);
  return analyse(plan, assembly::assemble(plan), {0});
}

TEST(LawsSlow, ExtremesAreFiniteOrRefusedInWords) {
  int planned = 0, refused = 0;
  for (const int gears : {3, 4, 31, 63})
    for (const double module_mm : {1.0, 2.0, 8.0})
      for (const int teeth : {12, 17, 60, 120}) {
        const std::string text = design(gears, module_mm, teeth);
        const auto plan = layout::planning_of(text);
        if (!plan) {
          ++refused;
          for (const auto& fault : plan.error()) EXPECT_FALSE(fault.wrong.empty() || fault.right.empty()) << text;
          continue;
        }
        ++planned;
        const Analysis a = analyse(*plan, assembly::assemble(*plan), {1000});
        for (const auto& finding : a.findings) EXPECT_TRUE(std::isfinite(finding.measured)) << text << finding.rule->name;
        for (const auto& r : a.figures.strength) EXPECT_GT(r.gives_at_n, 0) << text << r.rule->name;
        EXPECT_GT(a.figures.drive.clamp_middle_n, 0);
      }
  RecordProperty("planned", planned);
  RecordProperty("refused", refused);
  EXPECT_GT(planned, 20);
}

TEST(Laws, MoreTeethLargerPitchCircleWiderGapLargerPocket) {
  double before = 0;
  for (const int teeth : {24, 33, 48, 80, 120}) {
    const auto plan = good_plan(design(3, 2, teeth, "drive = { at = \"right\", wheel = { diameter = 100 } }\n"));
    EXPECT_GT(plan.train.gears[0].pitch_diameter.mm(), before);
    before = plan.train.gears[0].pitch_diameter.mm();
  }
  const auto pocket = [](const std::string& gap) { return good_plan(design(3, 2, 40, "gaps = { gear_to_wood = " + gap + " }\n")).train.gears[0].pocket.mm(); };
  EXPECT_GT(pocket("4"), pocket("2"));
}

TEST(Laws, MirroredDriveGivesMirroredForces) {
  const auto left = of(design(5, 3, 30, "drive = { at = \"left\" }\n")).figures.drive;
  const auto right = of(design(5, 3, 30, "drive = { at = \"right\" }\n")).figures.drive;
  EXPECT_NEAR(left.clamp_left_n, right.clamp_right_n, 1e-9);
  EXPECT_NEAR(left.clamp_right_n, right.clamp_left_n, 1e-9);
  EXPECT_GT(left.clamp_left_n, left.clamp_right_n);
}

TEST(Laws, MirroredTeethGiveMirroredGears) {
  const std::string rest = "opening = 150\nscrew = { thread = \"M16\" }\ntrain = { module = 2, teeth = ";
  const auto a = good_plan(rest + "[30, 24, 40, 36, 30] }\n"), b = good_plan(rest + "[30, 36, 40, 24, 30] }\n");
  for (std::size_t i = 0; i < 5; ++i) EXPECT_NEAR(a.train.gears[i].centre_x.mm(), -b.train.gears[4 - i].centre_x.mm(), 1e-9);
}

TEST(Laws, MoreHandForceClampsHarderAndFrictionTakesIt) {
  const auto clamp = [](const std::string& more) { return of(design(3, 2, 40, more)).figures.drive.clamp_middle_n; };
  EXPECT_NEAR(clamp("drive = { hand_force = \"200 N\" }\n") / clamp("drive = { hand_force = \"100 N\" }\n"), 2, 1e-9);
  EXPECT_LT(clamp("assume = { thread_friction = 0.2 }\n"), clamp("assume = { thread_friction = 0.1 }\n"));
  EXPECT_LT(clamp("assume = { collar_friction = 0.2 }\n"), clamp("assume = { collar_friction = 0.1 }\n"));
}

// A wheel on a middle gear of two thirds of the teeth turns half as often again, and pushes that much harder.
TEST(Laws, SmallMiddleGearGivesForceForTurns) {
  const std::string rest = "opening = 150\nscrew = { thread = \"M16\" }\ndrive = { at = \"centre\", wheel = { diameter = 150 } }\ntrain = { module = 3, teeth = ";
  const auto even = of(rest + "[36, 36, 36] }\n").figures.drive, quick = of(rest + "[36, 24, 36] }\n").figures.drive;
  EXPECT_NEAR(quick.turns / even.turns, 1.5, 0.05);
  EXPECT_NEAR(quick.clamp_middle_n / even.clamp_middle_n, 1.5, 1e-9);
}

}  // namespace
}  // namespace visewright::analysis
