// Putting together, and the print and weld lists.
#include <cmath>
#include <set>

#include "making/working.h"

namespace visewright::making {
namespace {

using layout::five_gears;

TEST(Assembling, EveryTextNamesFiguresAndCautionsThatThereAre) {
  const Made made(five_gears);
  std::size_t figures = 0;
  for (const AssemblyText& text : assembly_texts()) {
    for (std::size_t at = text.text.find('{'); at != std::string_view::npos; at = text.text.find('{', at + 1)) {
      const std::string_view name = text.text.substr(at + 1, text.text.find('}', at) - at - 1);
      EXPECT_NE(figure(made.plan, name), "") << name;
      ++figures;
    }
    std::string_view names = text.cautions;
    while (!names.empty()) {
      const std::string_view name = names.substr(0, names.find(';'));
      EXPECT_NE(caution(name), nullptr) << name;
      names.remove_prefix(std::min(names.size(), name.size() + 1));
    }
    if (!text.only_if.empty()) {
      EXPECT_NE(figure(made.plan, text.only_if), "");
    }
  }
  EXPECT_GE(figures, 15U);
}

/// Every text is used by at least one of these designs: none names a part that there never is.
TEST(Assembling, EveryTextIsUsedSomewhere) {
  std::vector<bool> used(assembly_texts().size(), false);
  std::size_t most = 0;
  for (const std::string& design : {five_gears, layout::with(five_gears, "at = \"ends\"", "at = \"centre\"")}) {
    const Made made(design);
    for (const AssemblyStep& s : made.work.assembly) {
      EXPECT_EQ(s.text.find('{'), std::string::npos) << s.text;
      EXPECT_FALSE(s.parts.empty());
      for (std::size_t i = 0; i < used.size(); ++i) {
        const std::string_view text = assembly_texts()[i].text;
        if (s.text.starts_with(text.substr(0, text.find('{')))) used[i] = true;
      }
    }
    most = std::max(most, made.work.assembly.size());
  }
  for (std::size_t i = 0; i < used.size(); ++i) EXPECT_TRUE(used[i]) << assembly_texts()[i].text;
  EXPECT_GT(most, 25U);
}

TEST(Assembling, AStepFallsAwayWithItsPart) {
  const auto mentions = [](const Made& made, std::string_view word) {
    return std::count_if(made.work.assembly.begin(), made.work.assembly.end(),
                         [&](const AssemblyStep& s) { return s.text.find(word) != std::string::npos; });
  };
  const Made with_apron(five_gears), without(layout::preset_text("left-hand-wheel-bench"));
  ASSERT_TRUE(with_apron.plan.bench.has_apron && !without.plan.bench.has_apron);
  EXPECT_GT(mentions(with_apron, "Mark the screw line on the apron"), 0);
  EXPECT_EQ(mentions(without, "Mark the screw line on the apron"), 0);
  EXPECT_EQ(mentions(without, "doubler"), 0);
}

const AssemblyStep& assembling(const Made& made, std::string_view beginning) {
  const auto found = std::find_if(made.work.assembly.begin(), made.work.assembly.end(),
                                  [&](const AssemblyStep& s) { return s.text.starts_with(beginning); });
  if (found == made.work.assembly.end()) throw std::runtime_error("no step " + std::string(beginning));
  return *found;
}

// By hand: bench top 60 under a screw line at 110 leaves 50, the bar reaches 30 above the line: 20 between them. Collar
// flange at 43, shoulder at 69: 26. Lead 2.5 over 30 teeth: 0.083. Axle front 74.7 less joint 43: 31.7.
TEST(Assembling, NumbersComeFromThePlan) {
  const Made made(five_gears);
  EXPECT_EQ(figure(made.plan, "nut spacer"), "20 mm");
  EXPECT_EQ(figure(made.plan, "tooth step"), "0.083 mm");
  EXPECT_EQ(figure(made.plan, "setting step"), "0.083 mm") << "30 teeth and six corners have 30 positions";
  EXPECT_THAT(assembling(made, "Hold each bar").text, testing::HasSubstr("20 mm"));
  EXPECT_EQ(figure(made.plan, "shoulder to flange"), "26 mm");
  EXPECT_EQ(figure(made.plan, "axle stands out"), "31.7 mm");
  EXPECT_EQ(figure(made.plan, "wibble"), "");
}

// 32 teeth and six corners: 96 positions of 2.5 mm.
TEST(Assembling, TheSettingStepCountsToothAndCorner) {
  const Made made(layout::preset_text("left-hand-wheel-bench"));
  EXPECT_EQ(figure(made.plan, "setting step"), "0.026 mm");
}

TEST(Assembling, TheOrderIsThatInWhichPartsGoIn) {
  const Made made(five_gears);
  const auto at = [&](std::string_view beginning) { return &assembling(made, beginning) - made.work.assembly.data(); };
  EXPECT_LT(at("Hang the nut blocks loose"), at("Close the jaws until"));
  EXPECT_LT(at("Drill collar and screw together"), at("Grease the thrust washers"));
  EXPECT_LT(at("Close the jaws until"), at("With the jaws shut"));
  EXPECT_LT(at("With the jaws shut"), at("Lay the cover"));
  EXPECT_LT(at("Lay the cover"), at("Slide each hand wheel"));
}

TEST(Assembling, PartsAreThoseOfTheAssembly) {
  const Made made(five_gears);
  std::set<std::string> placed;
  for (const auto& p : made.assembly.placed) placed.insert(p.name);
  for (const AssemblyStep& s : made.work.assembly)
    for (const std::string& name : s.parts) EXPECT_TRUE(placed.contains(name)) << name;
  const auto& axles = assembling(made, "Press the axles").parts;
  EXPECT_TRUE(
      std::none_of(axles.begin(), axles.end(), [](const std::string& n) { return n.starts_with("axle screw"); }));
}

// Five gears in two kinds. A gear is lighter than its solid and heavier than its infill alone.
TEST(PrintList, CountsAndWeighsGears) {
  const Made made(five_gears);
  ASSERT_EQ(made.work.prints.size(), 2U);
  int gears = 0;
  for (const PrintItem& item : made.work.prints) {
    gears += item.count;
    const double solid = parts::mass_kg(*made.piece(item.part).part);
    EXPECT_LT(item.mass_kg, solid);
    EXPECT_GT(item.mass_kg, item.infill * solid);
    EXPECT_EQ(item.orientation, "rear face down");
    EXPECT_NEAR(item.size_mm[2], made.plan.train.face_width.mm(), 1e-9);
    EXPECT_DOUBLE_EQ(item.hole_allowance_mm, made.plan.accuracy.hole_allowance.mm());
  }
  EXPECT_EQ(gears, 5);
}

// A plain block 40 × 30 × 20, by hand: walls 6 × 0.45 = 2.7 along 140 mm of outline are 378 of 1200 mm²; floor and roof
// are 2.4 of 20 mm; of the other 822 mm² 0.12 + 0.88 × 0.4 = 0.472 is laid: 765.98 mm² × 20 mm × 1.27 g/cm³ = 19.456 g.
TEST(PrintList, MassByHand) {
  const Made made(five_gears);
  assembly::Assembly planted = made.assembly;
  const parts::Layer layer{geometry::region(geometry::rectangle({0, 0}, {40, 30})), 0, 20};
  const parts::Part block{
      "block",
      parts::Piece{parts::Printed{standards::known().material("PETG")}, {{"print", parts::Print{{layer}}, {}, {}}}},
      parts::Making::printed};
  planted.parts = {std::make_shared<const parts::Part>(block)};
  planted.placed = {{0, "block", {}, assembly::Group::fixed, 0, {}, {}}};
  const auto list = print_list(workpieces(planted, {}), made.plan);
  ASSERT_EQ(list.size(), 1U);
  EXPECT_NEAR(list[0].mass_kg, 0.019456, 1e-6);
  EXPECT_EQ(list[0].orientation, "as drawn");
}

// Collar: three flats with a groove of 3; nut block: three fillets; bracket: one. A flat is across flats / √3 long.
TEST(WeldList, HoldsEveryBead) {
  const Made made(five_gears);
  const auto of = [&](std::string_view part) {
    const auto found =
        std::find_if(made.work.welds.begin(), made.work.welds.end(), [&](const WeldItem& w) { return w.part == part; });
    EXPECT_NE(found, made.work.welds.end()) << part;
    return *found;
  };
  const WeldItem collar = of("thrust collar"), block = of("nut block"), bracket = of("bracket");
  EXPECT_EQ(collar.beads, 3);
  EXPECT_EQ(collar.parts, 2);
  EXPECT_NEAR(collar.leg_mm, 3, 1e-9);
  EXPECT_NEAR(collar.length_mm, 30 / std::sqrt(3.0), 1e-6);
  EXPECT_TRUE(collar.ground_flush);
  EXPECT_EQ(block.beads, 3);
  EXPECT_FALSE(block.ground_flush);
  EXPECT_NEAR(block.throat_mm, made.plan.rear_nut.bead.mm() / std::sqrt(2.0), 1e-9);
  EXPECT_EQ(bracket.beads, 1);
  EXPECT_NEAR(bracket.length_mm, made.plan.bracket.width.mm(), 1e-9);
}

}  // namespace
}  // namespace visewright::making
