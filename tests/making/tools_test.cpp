// Which tool each operation takes, with and without lists of what is owned.
#include <cmath>

#include "making/rules.h"
#include "making/working.h"

namespace visewright::making {
namespace {

using layout::five_gears;
using standards::ToolKind;

const Step& hole(const Made& made, std::string_view part, std::string_view operation) {
  return step(made.steps(part), operation);
}

// The hand-worked design: 26 mm bush bore, 65 mm thrust recess, 100 mm pockets, 12 mm axles, M5 in the axle's end.
TEST(Tools, WithoutListsEverySizeIsAtHand) {
  const Made made(five_gears);
  for (const PartSteps& part : made.work.order)
    for (const Step& s : part.steps)
      if (s.kind == Step::Kind::operation) {
        EXPECT_TRUE(s.tool.at_hand) << part.part << ": " << s.text;
      }
  EXPECT_EQ(hole(made, "gear layer", "pocket for gear 1").tool.kind, ToolKind::hole_saw);
  EXPECT_EQ(hole(made, "front jaw backing", "thrust recess").tool.kind, ToolKind::flat_bit)
      << "a hole saw leaves no floor";
  EXPECT_EQ(hole(made, "front jaw backing", "hole for axle 2").tool.kind, ToolKind::drill);
  EXPECT_EQ(hole(made, "front bush", "bore").tool.kind, ToolKind::lathe_tool) << "20.15 mm in steel is no drill's size";
  EXPECT_EQ(hole(made, "lead screw", "turn the journal").tool.kind, ToolKind::lathe_tool);
  EXPECT_EQ(hole(made, "bevelled jaw", "saw the bevel").tool.kind, ToolKind::saw);
  EXPECT_EQ(hole(made, "drive gear", "print").tool.kind, ToolKind::printer);
  EXPECT_EQ(hole(made, "axle", "thread").tool.kind, ToolKind::tap);
}

// ISO 2306 gives 4.2 mm for M5; the part is modelled at 5 mm.
TEST(Tools, AThreadedHoleIsDrilledToTheTappingSize) {
  const Made made(five_gears);
  const Step& s = hole(made, "axle", "hole for the cover's screw");
  EXPECT_DOUBLE_EQ(s.tool.wanted_mm, 4.2);
  EXPECT_DOUBLE_EQ(s.size_mm, 4.2);
}

std::string owning(const std::string& shop) { return five_gears + "[shop]\n" + shop; }

TEST(Tools, AClearanceHoleMayBeDrilledLargerAndAPocketToo) {
  // 102 is 2 mm more than the pocket's 100, the most that clearance allows; the pocket that follows the list is 102.
  const Made made(owning("hole_saws = [102]\n"));
  const Step& s = hole(made, "gear layer", "pocket for gear 1");
  EXPECT_TRUE(s.tool.at_hand);
  EXPECT_DOUBLE_EQ(s.tool.size_mm, 102);
}

struct Owned {
  double drill_mm;
  bool will_do;
};

// By the rule: a screw hole of 6.5 in the rear jaw may be up to 0.65 larger, and a tenth smaller than wanted is 0.1.
TEST(Tools, HowMuchLargerAClearanceHoleMayBe) {
  const Made made(five_gears);
  const ToolNeed need =
      tool_for(*hole(made, "rear jaw", "screw hole, mount 1").operation, made.piece("rear jaw"), standards::known());
  for (const Owned& owned : {Owned{6.5, true}, Owned{7.0, true}, Owned{7.15, true}, Owned{7.2, false}, Owned{6.4, true},
                             Owned{6.3, false}}) {
    OwnedTools tools;
    tools.drills = {owned.drill_mm};
    tools.flat_bits = std::vector<double>{};
    EXPECT_EQ(choose_tool(need, tools, standards::known()).at_hand, owned.will_do) << owned.drill_mm;
  }
}

ToolChoice chosen(const ToolNeed& need, OwnedTools tools) { return choose_tool(need, tools, standards::known()); }

TEST(Tools, AGuidedHoleMustBeOfItsSize) {
  const Made made(five_gears);
  const ToolNeed need = tool_for(*hole(made, "front jaw backing", "bore for the bush, left").operation,
                                 made.piece("front jaw backing"), standards::known());
  OwnedTools tools;
  tools.drills = tools.hole_saws = tools.cutters = std::vector<double>{};
  tools.flat_bits = {25.0, 26.0, 28.0};
  EXPECT_EQ(chosen(need, tools).size_mm, 26);
  tools.flat_bits = {25.0, 28.0};
  const ToolChoice missing = chosen(need, tools);
  EXPECT_FALSE(missing.at_hand);
  EXPECT_EQ(missing.nearest_mm, 25);
}

TEST(Tools, ARecessWithoutItsBitIsRouted) {
  const Made made(five_gears);
  const ToolNeed need = tool_for(*hole(made, "front jaw backing", "thrust recess, left").operation,
                                 made.piece("front jaw backing"), standards::known());
  OwnedTools tools;
  tools.flat_bits = {35.0};
  tools.cutters = {6.0, 12.0, 80.0};
  EXPECT_EQ(chosen(need, tools).kind, ToolKind::cutter);
  EXPECT_EQ(chosen(need, tools).size_mm, 12) << "80 is wider than the recess";
  tools.cutters = std::vector<double>{};
  EXPECT_FALSE(chosen(need, tools).at_hand);
}

// The finding names the part, the operation, the size wanted and the nearest owned.
TEST(Tools, AMissingToolIsACautionThatNamesEverything) {
  const Made made(owning("drills = [3, 4, 4.2, 5, 5.5, 6, 6.5, 7, 9, 11]\nflat_bits = [15, 19, 26, 65]\n"));
  const auto missing = findings(made.work, "making.tool");
  const auto axle = std::find_if(missing.begin(), missing.end(), [](const auto* f) {
    return f->parts == std::vector<std::string>{"front jaw backing"};
  });
  ASSERT_NE(axle, missing.end());
  EXPECT_EQ((*axle)->verdict, reasons::Verdict::caution);
  EXPECT_EQ((*axle)->measured, 11);
  EXPECT_EQ((*axle)->limit, 12);
  EXPECT_THAT((*axle)->advice, testing::AllOf(testing::HasSubstr("hole for axle 2 and 2 more"),
                                              testing::HasSubstr("12 mm"), testing::HasSubstr("11 mm")));
  const auto owned = findings(made.work, "making.tools_owned");
  ASSERT_EQ(owned.size(), 1U);
  EXPECT_LT(owned[0]->measured, owned[0]->limit);
}

// 38 mm in the apron: of a flat bit of 35 and a hole saw of 51 the bit is nearer. A bush is bored in a lathe, and no
// drill stands in for it.
TEST(Tools, WhatIsMissingIsToldByTheNearest) {
  const Made made(five_gears);
  OwnedTools tools;
  tools.drills = {13.0};
  tools.flat_bits = {35.0};
  tools.hole_saws = {51.0};
  tools.cutters = std::vector<double>{};
  tools.machines = std::vector<std::string>{};
  const ToolChoice apron = chosen({{ToolKind::hole_saw, ToolKind::flat_bit, ToolKind::drill}, 38, 37.9, 40, {}}, tools);
  EXPECT_EQ(apron.kind, ToolKind::flat_bit);
  EXPECT_EQ(apron.nearest_mm, 35);
  const ToolChoice bush = chosen(
      tool_for(*hole(made, "front bush", "bore").operation, made.piece("front bush"), standards::known()), tools);
  EXPECT_EQ(bush.kind, ToolKind::lathe_tool);
  EXPECT_FALSE(bush.at_hand);
  EXPECT_EQ(bush.nearest_mm, std::nullopt);
}

TEST(Tools, EveryShopIsKnownAndTheBetterOneLacksLess) {
  double before = -1;
  for (const char* shop : {"hand tools", "small", "well equipped"}) {
    const Made made(owning("preset = \"" + std::string(shop) + "\"\n"));
    EXPECT_EQ(findings(made.work, "making.shop").at(0)->verdict, reasons::Verdict::pass);
    const auto* owned = findings(made.work, "making.tools_owned").at(0);
    EXPECT_GT(owned->measured / owned->limit, before) << shop;
    before = owned->measured / owned->limit;
  }
  const Made hand(owning("preset = \"hand tools\"\n"));
  const auto machines = findings(hand.work, "making.machine");
  const auto wants = [&](const char* machine) {
    return std::any_of(machines.begin(), machines.end(),
                       [&](const auto* f) { return f->advice.find(machine) != std::string::npos; });
  };
  EXPECT_TRUE(wants("lathe"));
  EXPECT_TRUE(wants("printer"));
  EXPECT_TRUE(wants("welder"));
}

TEST(Tools, AListOfTheDesignGoesBeforeTheShops) {
  const Made made(owning("preset = \"hand tools\"\nhole_saws = [100]\n"));
  EXPECT_EQ(made.work.tools.hole_saws, OwnedTools::Sizes{std::vector<double>{100}});
  EXPECT_EQ(made.work.tools.cutters, OwnedTools::Sizes{std::vector<double>{}}) << "the shop has none";
}

// n = 1000 v / (π d) with the catalogue's 18 to 30 m a minute for a drill in steel: 572.9 and 954.9 at 10 mm.
TEST(Speeds, FollowTheFormula) {
  const auto& steel = *standards::known().material("steel");
  const auto range = speed_for(ToolKind::drill, 10, steel, standards::known());
  ASSERT_TRUE(range.has_value());
  EXPECT_EQ(range->low, 570);
  EXPECT_EQ(range->high, 950);
}

TEST(Speeds, LargerToolsTurnSlowerAndNoneBeyondWhatItStands) {
  const auto& beech = *standards::known().material("beech");
  for (const ToolKind kind : {ToolKind::drill, ToolKind::flat_bit, ToolKind::hole_saw, ToolKind::cutter}) {
    double before = 1e9;
    for (const double d : {1.0, 3.0, 8.0, 20.0, 65.0}) {
      const auto range = speed_for(kind, d, beech, standards::known());
      ASSERT_TRUE(range.has_value());
      EXPECT_LE(range->low, range->high);
      EXPECT_LE(range->high, range->row->most_per_minute);
      EXPECT_LE(range->high, before);
      before = range->high;
    }
  }
}

// A harder metal is drilled slower; the row of the material goes before that of its kind.
TEST(Speeds, FollowTheMaterial) {
  const auto& known = standards::known();
  const auto high = [&](const char* material) {
    return speed_for(ToolKind::drill, 10, *known.material(material), known)->high;
  };
  EXPECT_LT(high("stainless steel"), high("steel"));
  EXPECT_LT(high("steel"), high("aluminium"));
  EXPECT_LT(high("acrylic"), high("polycarbonate"));
  EXPECT_FALSE(speed_for(ToolKind::saw, 10, *known.material("beech"), known).has_value());
}

}  // namespace
}  // namespace visewright::making
