// The order of work, on the real parts and on planted ones.
#include <array>
#include <set>

#include "making/working.h"

namespace visewright::making {
namespace {

using parts::CutThread;
using parts::Drill;
using parts::Face;
using parts::Operation;

const Face front{"front", {{0, 0, 40}, {1, 0, 0}, {0, 0, 1}}};
const Face back{"back", {{0, 0, 0}, {-1, 0, 0}, {0, 0, -1}}};

Operation hole(std::string name, const Face& face, geometry::Point at, double d, parts::Depth depth = {}) {
  return {std::move(name), Drill{face, at, d, depth, false}, {}, {}};
}

/// A board of 200 × 100 × 40 with these operations, and the order they come out in.
std::vector<std::string> ordered(std::vector<Operation> operations) {
  const auto* beech = standards::known().material("beech");
  const parts::Part part{"planted", parts::Piece{parts::Board{beech, {-100, -50, 0}, {200, 100, 40}, {220, 106, 44}},
                                                 std::move(operations)}};
  assembly::Assembly assembly;
  assembly.parts = {std::make_shared<const parts::Part>(part)};
  assembly.placed = {{0, "planted", {}, assembly::Group::fixed, 0, {}, {}}};
  const auto pieces = workpieces(assembly, {});
  std::vector<std::string> names;
  for (const std::size_t i : work_order(pieces.at(0))) names.push_back(pieces[0].operations[i].name);
  return names;
}

using Names = std::vector<std::string>;

// A through bore leaves no centre for the cutter of a recess round it, from either side; the recess leaves its floor.
TEST(WorkOrder, TheRecessComesBeforeTheBoreThatTakesItsCentre) {
  const Operation bore = hole("bore", front, {0, 0}, 26), recess = hole("recess", front, {0, 0}, 65, 4.0),
                  behind = hole("behind", back, {0, 0}, 65, 4.0);
  EXPECT_EQ(ordered({bore, recess}), (Names{"recess", "bore"}));
  EXPECT_EQ(ordered({recess, bore}), (Names{"recess", "bore"}));
  EXPECT_EQ(ordered({bore, behind}), (Names{"behind", "bore"}));
}

TEST(WorkOrder, TheLargerOfTwoCoaxialThroughHolesComesAfter) {
  EXPECT_EQ(ordered({hole("large", front, {0, 0}, 60), hole("pilot", front, {0, 0}, 6)}), (Names{"pilot", "large"}));
}

// The cusp stands on the pocket's rim; a hole that is clear of it may come in any order, so the part's stays.
TEST(WorkOrder, AHoleOnTheRimComesBeforeThePocket) {
  const Operation pocket{"pocket", parts::CutOut{front, geometry::region(geometry::circle({0, 0}, 30))}, {}, {}};
  EXPECT_EQ(ordered({pocket, hole("cusp", front, {30, 0}, 12)}), (Names{"cusp", "pocket"}));
  EXPECT_EQ(ordered({pocket, hole("clear", front, {45, 0}, 12)}), (Names{"pocket", "clear"}));
}

TEST(WorkOrder, ThreadsEasingAndFinishComeLate) {
  const Operation thread{"thread", CutThread{front, {0, 0}, "M6", 20}, {}, {}}, oil{"oil", parts::Treat{"oil"}, {}, {}},
      ease{"ease", parts::Ease{front, geometry::circle({0, 0}, 20), 2, true}, {}, {}};
  EXPECT_EQ(ordered({oil, ease, thread, hole("drill", front, {0, 0}, 6, 20.0)}),
            (Names{"drill", "thread", "ease", "oil"}));
}

TEST(WorkOrder, HoldsInEveryPartOfEveryPreset) {
  std::size_t pairs = 0;
  for (const char* preset : layout::preset_names) {
    const Made made(layout::preset_text(preset));
    for (const Workpiece& work : made.work.pieces) {
      const auto order = work_order(work);
      ASSERT_EQ(std::set<std::size_t>(order.begin(), order.end()).size(), work.operations.size())
          << "each operation once";
      for (std::size_t a = 0; a < order.size(); ++a) {
        for (std::size_t b = a + 1; b < order.size(); ++b) {
          const Operation &first = work.operations[order[a]], &later = work.operations[order[b]];
          pairs += takes_centre(later, first, work);
          EXPECT_FALSE(takes_centre(first, later, work) && !takes_centre(later, first, work))
              << preset << ", " << work.part->name << ": " << first.name << " takes the centre of " << later.name;
        }
      }
    }
  }
  EXPECT_GT(pairs, 20U) << "there must be something to get wrong";
}

TEST(WorkOrder, RemovingAnOperationRemovesItsLine) {
  const Made made(layout::five_gears);
  const PartSteps& before = made.steps("cover");
  assembly::Assembly changed = made.assembly;
  for (auto& part : changed.parts) {
    if (part->name != "cover") continue;
    parts::Part copy = *part;
    auto& operations = std::get<parts::Piece>(copy.made).operations;
    std::erase_if(operations, [](const Operation& o) { return o.name == "bearing seat, left"; });
    part = std::make_shared<const parts::Part>(std::move(copy));
  }
  const Work after = work(made.plan, changed, standards::known());
  const auto cover =
      std::find_if(after.order.begin(), after.order.end(), [](const PartSteps& s) { return s.part == "cover"; });
  EXPECT_EQ(cover->steps.size() + 1, before.steps.size());
  EXPECT_TRUE(std::none_of(cover->steps.begin(), cover->steps.end(),
                           [](const Step& s) { return s.text == "bearing seat, left"; }));
  EXPECT_NO_THROW((void)step(*cover, "bearing seat, right"));
}

// From the hand-worked design: recess ⌀65 × 4 at x −180 on the front of the backing, bush bore ⌀26 through 40.
TEST(Steps, CarryPlaceSizeAndDepth) {
  const Made made(layout::five_gears);
  const Step &recess = step(made.steps("front jaw backing"), "thrust recess, left"),
             &bore = step(made.steps("front jaw backing"), "bore for the bush, left");
  EXPECT_EQ(recess.face, "front");
  EXPECT_NEAR(recess.at_mm->x, -180, 1e-9);
  EXPECT_NEAR(recess.size_mm, 65, 1e-9);
  EXPECT_NEAR(*recess.depth_mm, 4, 1e-9);
  EXPECT_TRUE(recess.flat_floor);
  EXPECT_FALSE(bore.depth_mm.has_value());
  EXPECT_NEAR(bore.through_mm, 40, 1e-9);
  // The pin goes through the nut, 30 across its flats, and not through the flange below it, which is wider.
  EXPECT_NEAR(step(made.steps("thrust collar"), "hole for the collar pin").through_mm, 30, 1e-6);
  const Step& journal = step(made.steps("lead screw"), "turn the journal");
  ASSERT_TRUE(journal.along_mm.has_value());
  EXPECT_NEAR(journal.size_mm, 15, 1e-9);
  EXPECT_NEAR((*journal.along_mm)[1] - (*journal.along_mm)[0], 62, 1e-9) << "journal 62 long";
}

// A hole only at the person's left shows up at the right on the back face.
TEST(Steps, TheBackFaceIsMirrored) {
  const Made made(layout::five_gears);
  const PartSteps& cover = made.steps("cover");
  EXPECT_NEAR(step(cover, "bearing seat, left").at_mm->x, 180, 1e-9);
  EXPECT_EQ(step(cover, "bearing seat, left").face, "back");
  EXPECT_NEAR(step(cover, "screw slot, axle 2").at_mm->x, -90, 1e-9);
}

TEST(Steps, CautionsGoWithTheWork) {
  const Made made(layout::five_gears + "[cover]\nmaterial = \"acrylic\"\n");
  const auto has = [](const Step& s, std::string_view name) {
    return std::find(s.cautions.begin(), s.cautions.end(), caution(name)) != s.cautions.end();
  };
  EXPECT_TRUE(has(step(made.steps("nut block"), "weld"), "plated steel"));
  EXPECT_TRUE(has(step(made.steps("gear layer"), "pocket for gear 1"), "hole saw"));
  EXPECT_TRUE(has(step(made.steps("bevelled jaw"), "glue"), "glue"));
  EXPECT_TRUE(has(step(made.steps("collar nut"), "grind"), "grinding"));
  EXPECT_TRUE(has(step(made.steps("cover"), "screw hole"), "acrylic drilling"));
  EXPECT_TRUE(has(step(made.steps("bench top"), "notch"), "bench work"));
  for (const PartSteps& part : made.work.order)
    for (const Step& s : part.steps)
      for (const Caution* c : s.cautions) EXPECT_NE(c, nullptr) << part.part << ": " << s.text;
}

TEST(Steps, FinishedPartsNeedNoWorkAndNoStock) {
  const std::string made_line = "[measured]\nmade = [\"front jaw\", \"cover\"]\n";
  const Made before(layout::five_gears), after(layout::five_gears + made_line);
  EXPECT_NO_THROW((void)before.steps("gear layer"));
  EXPECT_THROW((void)after.steps("gear layer"), std::runtime_error) << "a finished whole has finished members";
  EXPECT_THROW((void)after.steps("cover"), std::runtime_error);
  const auto& pieces = after.work.cutting.pieces;
  EXPECT_TRUE(std::none_of(pieces.begin(), pieces.end(),
                           [](const NeededPiece& p) { return p.part == "cover" || p.part == "gear layer"; }));
}

TEST(Steps, MembersComeBeforeTheirWhole) {
  const Made made(layout::five_gears);
  const auto at = [&](std::string_view name) { return &made.steps(name) - made.work.order.data(); };
  EXPECT_LT(at("gear layer"), at("bevelled jaw"));
  EXPECT_LT(at("bevelled jaw"), at("front jaw"));
  EXPECT_LT(at("nut bar"), at("nut block"));
}

}  // namespace
}  // namespace visewright::making
