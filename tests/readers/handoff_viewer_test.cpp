// The model to look at, read by a reader of our own: its make-up, and whether it moves as thread and teeth say.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "readers/handoff_made.h"

namespace visewright::tests {
namespace {

using nlohmann::json;

constexpr const char* name = "viewer/assembly.glb";

// M16 has a lead of 2 (ISO 261): 40 teeth each.
TEST(HandoffViewerSlow, TurnsAsTheThreadSays) {
  const json found = small_bench().read("glb", name, "2 40,40,40");
  EXPECT_LT(found["largest_degrees"], 120);
  EXPECT_GE(found["travel"], 120);
  EXPECT_NEAR(found["travel"].get<double>(), small_bench().vise().opening_max_mm, 1e-3);
  EXPECT_GE(found["compared"], 3 * 240);  // 60 turns, four keys a turn
  for (const char* part : {"bench", "front jaw", "lead screw, left", "gear 2", "hand wheel, right"})
    EXPECT_THAT(found["nodes"].get<std::vector<std::string>>(), testing::Contains(testing::StartsWith(part)));
  EXPECT_EQ(found["materials"]["steel"], 1);
  EXPECT_EQ(found["materials"]["beech"], 0);
}

// The coarse pitch of M20 is 2.5; gears of 28, 22, 30, 24 and 28 teeth.
TEST(HandoffViewerSlow, UnequalGearsKeepTheirTeeth) {
  const Handoff uneven(uneven_design);
  EXPECT_GE(uneven.read("glb", name, "2.5 28,22,30,24,28")["compared"], 5);
  EXPECT_ANY_THROW((void)uneven.read("glb", name, "2.5 28,22,30,25,28"));
  EXPECT_ANY_THROW((void)uneven.read("glb", name, "3 28,22,30,24,28"));
}

// One gear turning the wrong way must not pass.
TEST(HandoffViewerSlow, AWrongHandIsFound) {
  outputs::Facts facts = small_bench().facts();
  assembly::Assembly wrong = small_bench().vise();
  for (assembly::Placed& placed : wrong.placed)
    if (placed.turn_about_mm[0] > 1) placed.turn_rad_per_mm = -placed.turn_rad_per_mm;
  const outputs::Facts bad{facts.design, facts.plan, wrong, facts.figures, facts.work, facts.findings, facts.title, facts.program_version, facts.header_time, facts.show, facts.solids};
  base::Silence silence;
  small_bench().put("viewer/wrong.glb", outputs::handoff::viewer_pack(bad, silence).value().files.at(0).bytes);
  EXPECT_ANY_THROW((void)small_bench().read("glb", "viewer/wrong.glb", "2 40,40,40"));
}

}  // namespace
}  // namespace visewright::tests
