// What is cut from what, on whole designs. Sizes are the fixtures' own or worked out by hand beside them.
#include <cmath>
#include <map>
#include <numeric>

#include "making/working.h"

namespace visewright::making {
namespace {

using layout::five_gears;

std::string with_stock(const std::string& stock) { return five_gears + stock; }

/// Every needed piece stands once on a piece of stock, on stock that suits it, none over another, all inside.
void expect_sound(const Made& made) {
  const Cutting& cutting = made.work.cutting;
  std::vector<int> seen(cutting.pieces.size(), 0);
  for (const CutStock& stock : cutting.stock) {
    double used = 0;
    for (std::size_t i = 0; i < stock.pieces.size(); ++i) {
      const CutPiece& p = stock.pieces[i];
      const NeededPiece& need = cutting.pieces.at(p.piece);
      ++seen[p.piece];
      EXPECT_EQ(p.part, need.part);
      if (stock.on_hand) {
        EXPECT_TRUE(suits(made.plan.workshop.stock[*stock.on_hand], need)) << need.part;
      }
      if (need.grain) {
        EXPECT_FALSE(p.turned);
      }
      EXPECT_LE(p.at_mm[0] + p.size_mm[0], stock.size_mm[0] + 1e-6) << need.part;
      for (std::size_t j = 0; j < i; ++j) {
        const CutPiece& q = stock.pieces[j];
        const bool apart = p.at_mm[0] >= q.at_mm[0] + q.size_mm[0] + 1 || q.at_mm[0] >= p.at_mm[0] + p.size_mm[0] + 1 ||
                           p.at_mm[1] >= q.at_mm[1] + q.size_mm[1] + 1 || q.at_mm[1] >= p.at_mm[1] + p.size_mm[1] + 1;
        EXPECT_TRUE(apart) << p.part << " and " << q.part;
      }
      used += p.size_mm[0];
    }
    EXPECT_GT(stock.used_share, 0);
    EXPECT_LE(stock.used_share, 1 + 1e-9);
    if (stock.kind == "rod" || stock.kind == "bar" || stock.kind == "hexagon bar") {
      // Pieces, cuts and rest are the bar; what is too short to use again is not listed.
      const double kerfs = metal_cuts.kerf_mm * static_cast<double>(stock.pieces.size());
      const double rest = stock.left_mm.empty() ? 0 : stock.left_mm[0][0];
      EXPECT_LE(used + rest, stock.size_mm[0] + 1e-6);
      if (!stock.left_mm.empty()) {
        EXPECT_NEAR(used + kerfs + rest, stock.size_mm[0], 1e-6);
      }
    }
  }
  for (std::size_t i = 0; i < seen.size(); ++i) EXPECT_EQ(seen[i], 1) << cutting.pieces[i].part;
}

TEST(Cutting, IsSoundForEveryPreset) {
  for (const char* preset : layout::preset_names) {
    SCOPED_TRACE(preset);
    const Made made(layout::preset_text(preset));
    EXPECT_GT(made.work.cutting.pieces.size(), 20U);
    expect_sound(made);
    for (const CutBound& bound : made.work.cutting.bounds)
      EXPECT_GE(bound.opened, bound.least - 1e-6) << bound.kind << " of " << bound.material;
  }
}

int bought(const Made& made, std::string_view kind, std::string_view material) {
  int count = 0;
  for (const Purchase& p : made.work.cutting.to_buy)
    if (p.kind == kind && p.material == material) count += p.count;
  return count;
}

// Two screws of 475, each 2 longer to be faced, and one cut: 955.5 of a metre.
TEST(Cutting, TwoScrewsComeFromOneMetreOfRod) {
  const Made made(five_gears);
  ASSERT_NEAR(made.plan.screw.length.mm(), 475, 1e-9);
  EXPECT_EQ(bought(made, "rod", "M20"), 1);
  const std::string exactly = "[[stock]]\nkind = \"rod\"\nmaterial = \"M20\"\nsize = [955.5]\n",
                    close = "[[stock]]\nkind = \"rod\"\nmaterial = \"M20\"\nsize = [955.4]\n";
  EXPECT_EQ(bought(Made(with_stock(exactly)), "rod", "M20"), 0);
  const Made one_short(with_stock(close));
  EXPECT_EQ(bought(one_short, "rod", "M20"), 1) << "a tenth too short for the second";
  const auto* finding = findings(one_short.work, "making.stock").at(0);
  EXPECT_EQ(finding->measured, 0) << "a metre must be bought anyhow and holds both: the short rod stays whole";
  EXPECT_EQ(finding->limit, 2);
  EXPECT_EQ(finding->verdict, reasons::Verdict::caution);
}

TEST(Cutting, LeftHandRodIsNotRightHandRod) {
  const std::string even = layout::preset_text("left-hand-wheel-bench"),
                    rod = "\n[[stock]]\nkind = \"rod\"\nmaterial = \"M20\"\nsize = [1000]\n";
  const Made made(even + rod);
  EXPECT_EQ(bought(made, "rod", "M20"), 0);
  EXPECT_EQ(bought(made, "rod", "M20 left-hand"), 1);
}

// Backing 540 × 191 × 44 rough; ends of the board lose 20.
TEST(Cutting, ABoardMustHoldTheRoughSizeAlongItsGrain) {
  const auto missing = [](const std::string& size) {
    const Made made(with_stock("[[stock]]\nkind = \"board\"\nmaterial = \"beech\"\nsize = " + size + "\n"));
    expect_sound(made);
    const auto found = findings(made.work, "making.stock");
    const auto beech = std::find_if(found.begin(), found.end(), [](const auto* f) {
      return f->advice.empty() || f->advice.find("beech") != std::string::npos;
    });
    return (*beech)->limit - (*beech)->measured;
  };
  const double all = missing("[4000, 200, 60]"), one_less = missing("[560, 200, 60]");
  EXPECT_EQ(all, 0);
  EXPECT_GE(one_less, 1);
  EXPECT_EQ(missing("[559, 200, 60]"), missing("[100, 40, 10]"))
      << "a millimetre too short for the jaw's pieces: as good as none";
  EXPECT_LT(one_less, missing("[559, 200, 60]"));
}

TEST(Cutting, AShortBoardSaysByHowMuch) {
  const Made made(with_stock("[[stock]]\nkind = \"board\"\nmaterial = \"beech\"\nsize = [557, 200, 60]\n"));
  const auto* finding = findings(made.work, "making.stock").at(0);
  EXPECT_THAT(finding->advice, testing::HasSubstr("mm short"));
}

TEST(Cutting, AThickPanelIsGluedFromSheetsOnTheRack) {
  const Made one(five_gears),
      two(with_stock("[[stock]]\nkind = \"sheet\"\nmaterial = \"birch plywood\"\nsize = [1220, 600, 18]\n"));
  const auto layers = [](const Made& made) {
    return std::count_if(made.work.cutting.pieces.begin(), made.work.cutting.pieces.end(),
                         [](const NeededPiece& p) { return p.part == "rear jaw core"; });
  };
  ASSERT_NEAR(one.plan.rear_jaw.thickness.mm(), 36, 1e-9);
  EXPECT_EQ(layers(one), 1);
  EXPECT_EQ(layers(two), 2) << "36 is twice 18";
  expect_sound(two);
  EXPECT_EQ(bought(two, "sheet", "birch plywood"), 0);
}

// Four wheels' worth of bearing rings are two bearings; halves of a long nut are one nut.
TEST(Cutting, HardwareOnHandIsNotBoughtAgain) {
  const Made none(five_gears),
      some(with_stock("[[stock]]\nkind = \"6002\"\nmaterial = \"steel\"\nsize = []\ncount = 1\n"));
  EXPECT_EQ(bought(none, "bought", "6002"), 2);
  EXPECT_EQ(bought(some, "bought", "6002"), 1);
  EXPECT_EQ(bought(none, "bought", "long nut M20"), 1);
}

// The same design gives the same plan.
TEST(Cutting, IsRepeatable) {
  const Made a(five_gears), b(five_gears);
  ASSERT_EQ(a.work.cutting.stock.size(), b.work.cutting.stock.size());
  for (std::size_t i = 0; i < a.work.cutting.stock.size(); ++i) {
    EXPECT_EQ(a.work.cutting.stock[i].size_mm, b.work.cutting.stock[i].size_mm);
    EXPECT_EQ(a.work.cutting.stock[i].left_mm, b.work.cutting.stock[i].left_mm);
  }
}

}  // namespace
}  // namespace visewright::making
