// One number changes, and all that follows from it changes too.
#include <set>

#include "layout/planning.h"

namespace visewright::layout {
namespace {

/// The numbers that were worked out from `root`, directly or through others, by the ledger's own account.
std::set<std::string> followers(const Plan& p, std::string_view root) {
  std::set<std::string> names{std::string(root)};
  for (const reasons::Number& n : p.ledger.numbers()) {
    for (const reasons::NumberId from : n.from)
      if (names.contains(p.ledger.number(from).name)) names.insert(n.name);
  }
  return names;
}

class ModuleChanged : public testing::Test {
 protected:
  const Plan before_ = good_plan(five_gears);
  const Plan after_ = good_plan(with(five_gears, "module = 3", "module = 2.5"));
};

// A value or a sentence that moves while its account does not lead back to the module would be a reason that lies.
TEST_F(ModuleChanged, OnlyWhatFollowsFromItChanges) {
  ASSERT_EQ(before_.ledger.numbers().size(), after_.ledger.numbers().size());
  const std::set<std::string> follow = followers(before_, "train.module");
  for (std::size_t i = 0; i < before_.ledger.numbers().size(); ++i) {
    const reasons::Number &a = before_.ledger.numbers()[i], &b = after_.ledger.numbers()[i];
    ASSERT_EQ(a.name, b.name);
    if (follow.contains(a.name)) continue;
    EXPECT_NEAR(a.value, b.value, 1e-9) << a.name;
    EXPECT_EQ(reasons::say(before_.ledger, a, before_.unit), reasons::say(after_.ledger, b, after_.unit)) << a.name;
  }
}

// A sentence names what the number came from; so where one of those moved, the sentence reads differently.
TEST_F(ModuleChanged, EverySentenceFollowsItsNumbers) {
  int changed = 0;
  for (std::size_t i = 0; i < before_.ledger.numbers().size(); ++i) {
    const reasons::Number &a = before_.ledger.numbers()[i], &b = after_.ledger.numbers()[i];
    bool moved = false;
    for (std::size_t k = 0; k < a.from.size(); ++k) {
      const std::string slot{'{', static_cast<char>('0' + k), '}'};
      const bool named = a.rule->formula.find(slot) != std::string_view::npos;
      moved = moved || (named && reasons::show(before_.ledger.number(a.from[k]), before_.unit) !=
                                     reasons::show(after_.ledger.number(b.from[k]), after_.unit));
    }
    const bool reads_differently =
        reasons::say(before_.ledger, a, before_.unit) != reasons::say(after_.ledger, b, after_.unit);
    EXPECT_EQ(moved, reads_differently) << a.name;
    changed += reads_differently ? 1 : 0;
  }
  EXPECT_GT(changed, 60) << "the module reaches most of the train, the jaw and the bench";
}

// Expected sizes: the rules' arithmetic by hand for module 2.5: tip 2.5·32 = 80, pocket 80 + 4, spacing 4·75.
TEST_F(ModuleChanged, SizesOfTheSmallerTrain) {
  EXPECT_NEAR(number(after_, "train.gears 1 tip_diameter").value, 80, 1e-9);
  EXPECT_NEAR(number(after_, "train.gears 1 pocket").value, 84, 1e-9);
  EXPECT_NEAR(number(after_, "train.spacing").value, 300, 1e-9);
  EXPECT_NEAR(number(after_, "train.backlash").value, 0.40, 1e-9);
  EXPECT_NEAR(number(after_, "front_jaw.length").value, 300 + 2 * (42 + 30), 1e-9);
  EXPECT_NEAR(number(after_, "front_jaw.below_axis").value, 67, 1e-9);
  const std::string pocket = reasons::say(after_.ledger, number(after_, "train.gears 1 pocket"), after_.unit);
  EXPECT_NE(pocket.find("80 mm"), std::string::npos) << pocket;
  EXPECT_EQ(pocket.find("96 mm"), std::string::npos) << pocket;
  EXPECT_NEAR(number(after_, "bush.outside").value, number(before_, "bush.outside").value, 0);
}

TEST(Chain, WasherReachesTheScrewsLength) {
  const Plan normal = good_plan(five_gears);
  const Plan large = good_plan(five_gears + "collar = { washer = \"large\" }\n");
  // The large washer of M20 is 60 x 4 against 37 x 3: the gear stays 24 wide or grows, the nut moves out by 1.
  EXPECT_NEAR(large.screw.collar_pin_out.mm() - normal.screw.collar_pin_out.mm(), 1, 1e-9);
}

TEST(Chain, MeasuredBackingMovesEverythingInFront) {
  const Plan normal = good_plan(five_gears);
  const Plan measured = good_plan(five_gears + "measured = { backing = 39.6 }\n");
  EXPECT_EQ(number(measured, "front_jaw.backing").basis, reasons::Basis::measured);
  for (const char* name :
       {"front_jaw.joint_out", "train.gear_rear", "screw.shoulder_out", "wheel.hub_rear_out", "screw.front_out"})
    EXPECT_NEAR(number(measured, name).value, number(normal, name).value - 0.4, 1e-9) << name;
  EXPECT_NEAR(number(measured, "rear_nut.rear_out").value, number(normal, "rear_nut.rear_out").value, 0);
}

}  // namespace
}  // namespace visewright::layout
