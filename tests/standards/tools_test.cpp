// Tools, speeds, tapping drills and shops. Expected figures by relations between rows, or as noted.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "standards/known_catalogue.h"

namespace visewright::standards {
namespace {

using units::in_mm;

TEST(ToolTables, EveryKindHasOneRow) {
  std::set<ToolKind> kinds;
  for (const ToolRow& row : known().tools()) {
    EXPECT_TRUE(kinds.insert(row.kind).second) << row.name;
    EXPECT_LE(row.smallest, row.largest) << row.name;
    EXPECT_FALSE(row.source.standard.empty());
    EXPECT_EQ(known().tool(row.kind), &row);
  }
  EXPECT_EQ(kinds.size(), static_cast<std::size_t>(ToolKind::brush) + 1) << "the last kind is the brush";
}

TEST(ToolTables, KindsHaveNamesOfTheirOwn) {
  std::set<std::string_view> names;
  for (const ToolRow& row : known().tools()) EXPECT_TRUE(names.insert(name_of(row.kind)).second);
}

TEST(ToolTables, SpeedsNameMaterialsThatThereAre) {
  const std::set<std::string> kinds{"wood", "panel", "plastic", "metal"};
  for (const SpeedRow& row : known().speeds()) {
    EXPECT_LE(row.low_m_min, row.high_m_min);
    EXPECT_FALSE(row.source.standard.empty());
    EXPECT_TRUE(kinds.contains(row.material) || known().material(row.material) != nullptr) << row.material;
  }
  // A material of any kind can be drilled.
  for (const MaterialRow& material : known().materials())
    EXPECT_NE(known().speed(ToolKind::drill, material), nullptr) << material.name;
}

TEST(ToolTables, TheMaterialsOwnSpeedGoesBeforeThatOfItsKind) {
  EXPECT_EQ(known().speed(ToolKind::drill, *known().material("acrylic"))->material, "acrylic");
  EXPECT_EQ(known().speed(ToolKind::drill, *known().material("nylon"))->material, "plastic");
  EXPECT_EQ(known().speed(ToolKind::saw, *known().material("beech")), nullptr);
}

// ISO 2306: for coarse threads the drill is the major diameter less the pitch, to a tenth or two.
TEST(ToolTables, TappingDrillsAreMajorLessPitch) {
  ASSERT_FALSE(known().taps().empty());
  for (const TapRow& row : known().taps()) {
    const ThreadRow* thread = known().thread(row.thread);
    ASSERT_NE(thread, nullptr) << row.thread;
    EXPECT_NEAR(in_mm(row.drill), in_mm(thread->major) - in_mm(thread->pitch), 0.06) << row.thread;
    EXPECT_EQ(known().tap(row.thread), &row);
  }
  EXPECT_EQ(known().tap("Tr 24x5"), nullptr);
}

TEST(Shops, AreAtLeastThreeAndNamedOnce) {
  std::set<std::string> names;
  const std::set<std::string> machines{"drill press", "router", "grinder",   "welder", "printer",
                                       "lathe",       "laser",  "table saw", "planer"};
  for (const ShopRow& shop : known().shops()) {
    EXPECT_TRUE(names.insert(shop.name).second);
    EXPECT_FALSE(shop.title.empty());
    EXPECT_EQ(known().shop(shop.name), &shop);
    for (const std::string& machine : shop.machines) EXPECT_TRUE(machines.contains(machine)) << machine;
    for (const std::string& tap : shop.taps) EXPECT_NE(known().tap(tap), nullptr) << tap;
    for (const auto* list : {&shop.drills, &shop.flat_bits, &shop.hole_saws, &shop.cutters})
      EXPECT_TRUE(std::is_sorted(list->begin(), list->end())) << shop.name << ": sizes are listed from the smallest up";
  }
  EXPECT_GE(names.size(), 3U);
  EXPECT_EQ(known().shop("wibble"), nullptr);
  EXPECT_NE(known().shop("Hand Tools"), nullptr);
}

// What the machines of the tools are called, the shops must call them too.
TEST(Shops, TheBestOneHasEveryMachineThatAToolNeeds) {
  const ShopRow* best = known().shop("well equipped");
  ASSERT_NE(best, nullptr);
  for (const ToolRow& tool : known().tools())
    if (!tool.machine.empty()) {
      EXPECT_THAT(best->machines, testing::Contains(tool.machine));
    }
}

struct Spoiled {
  const char* text;
  const char* wrong;
};

class SpoiledShop : public testing::TestWithParam<Spoiled> {};

TEST_P(SpoiledShop, IsOurOwnMistake) {
  const std::array files{TextFile{"shop.toml", GetParam().text}};
  const auto read = Catalogue::read(files);
  ASSERT_FALSE(read.has_value());
  EXPECT_EQ(read.error().front().cause, base::Cause::own_mistake);
  EXPECT_THAT(read.error().front().wrong, testing::HasSubstr(GetParam().wrong));
}

constexpr const char* tail =
    "machines = []\ntaps = []\nflat_bits = []\nhole_saws = []\ncutters = []\nprint_bed = []\nlaser_bed = []\n";
const std::string negative =
    std::string("[[shops]]\nname = \"a\"\ntitle = \"a\"\nunit = \"mm\"\ndrills = [3, -1]\n") + tail;
const std::string word =
    std::string("[[shops]]\nname = \"a\"\ntitle = \"a\"\nunit = \"mm\"\ndrills = [\"wide\"]\n") + tail;
const std::string missing = std::string("[[shops]]\nname = \"a\"\ntitle = \"a\"\nunit = \"mm\"\n") + tail;

INSTANTIATE_TEST_SUITE_P(Standards, SpoiledShop,
                         testing::Values(Spoiled{negative.c_str(), "drills"}, Spoiled{word.c_str(), "drills"},
                                         Spoiled{missing.c_str(), "drills"}));

// Lists take their own units, as single figures do: 1/4 in is 6.35 mm.
TEST(Shops, ListsCarryTheirUnits) {
  const std::string text =
      std::string("[[shops]]\nname = \"a\"\ntitle = \"a\"\nunit = \"in\"\ndrills = [\"3 mm\", \"1/4 in\", 1]\n") + tail;
  const std::array files{TextFile{"shop.toml", text}};
  const auto read = Catalogue::read(files);
  ASSERT_TRUE(read.has_value());
  const auto& drills = read->shops().front().drills;
  ASSERT_EQ(drills.size(), 3U);
  EXPECT_NEAR(in_mm(drills[0]), 3, 1e-12);
  EXPECT_NEAR(in_mm(drills[1]), 6.35, 1e-12);
  EXPECT_NEAR(in_mm(drills[2]), 25.4, 1e-12);
}

}  // namespace
}  // namespace visewright::standards
