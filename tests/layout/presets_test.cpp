// The designs that come with the program.
#include <algorithm>
#include <set>

#include "layout/planning.h"
#include "layout/rules.h"

namespace visewright::layout {
namespace {

class Preset : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(All, Preset, testing::ValuesIn(preset_names), [](const auto& which) {
  std::string name = which.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST_P(Preset, ReadsAndPlansWithoutFaults) {
  for (const base::Fault& fault : faults_of(preset_text(GetParam())))
    ADD_FAILURE() << fault.key << ": " << fault.wrong << "; " << fault.right;
}

TEST_P(Preset, FirstLineSaysInOneSentenceWhatItIs) {
  const std::string text = preset_text(GetParam());
  const std::string first = text.substr(0, text.find('\n'));
  EXPECT_TRUE(first.starts_with("# A ")) << first;
  EXPECT_TRUE(first.ends_with(".")) << first;
}

TEST_P(Preset, EveryRuleIsListedByName) {
  const Plan p = good_plan(preset_text(GetParam()));
  const auto rules = rules_of_layout();
  const std::set<const reasons::Rule*> listed(rules.begin(), rules.end());
  for (const reasons::Number& n : p.ledger.numbers()) EXPECT_TRUE(listed.contains(n.rule)) << n.name;
  for (const reasons::Choice& c : p.ledger.choices()) EXPECT_TRUE(listed.contains(c.rule)) << c.name;
}

TEST_P(Preset, NamesAreUniqueAndReasonsComeBefore) {
  const Plan p = good_plan(preset_text(GetParam()));
  std::set<std::string> names;
  for (std::size_t i = 0; i < p.ledger.numbers().size(); ++i) {
    const reasons::Number& n = p.ledger.numbers()[i];
    EXPECT_TRUE(names.insert(n.name).second) << n.name << " stands twice";
    for (const reasons::NumberId from : n.from) EXPECT_LT(from, i) << n.name;
  }
}

TEST_P(Preset, NoDerivedSentenceHasAnEmptyPlace) {
  const Plan p = good_plan(preset_text(GetParam()));
  for (const reasons::Number& n : p.ledger.numbers()) {
    if (n.basis != reasons::Basis::derived && n.basis != reasons::Basis::catalogue) continue;
    const std::string sentence = reasons::say(p.ledger, n, p.unit);
    EXPECT_EQ(sentence.find('?'), std::string::npos) << n.name << ": " << sentence;
  }
}

// Hand arithmetic of the four starting designs: screw spacing, pocket, gear layer, screw length and room behind the
// edge.
TEST(Presets, AgreeWithTheirHandArithmetic) {
  struct Row {
    const char* name;
    double spacing, pocket, gear_layer, seat_depth, screw, opening;
  };
  for (const Row& row :
       {Row{"small-instrument-bench", 160, 89, 29, 2.3, 315, 123}, Row{"joinery-bench", 504, 95, 37, 4.3, 555, 303},
        Row{"left-hand-wheel-bench", 288, 106, 32, 4.3, 400, 180},
        Row{"inch-cabinet-bench", 14 * 25.4, 4 * 25.4, 1.375 * 25.4, 4.9, 17.75 * 25.4, 203.7}}) {
    const Plan p = good_plan(preset_text(row.name));
    SCOPED_TRACE(row.name);
    EXPECT_NEAR(p.train.spacing.mm(), row.spacing, 1e-9);
    EXPECT_NEAR(p.train.gears.front().pocket.mm(), row.pocket, 1e-9);
    EXPECT_NEAR(p.front_jaw.gear_layer.mm(), row.gear_layer, 1e-9);
    EXPECT_NEAR(p.cover.seat_depth.mm(), row.seat_depth, 0.05);
    EXPECT_NEAR(p.screw.length.mm(), row.screw, 1e-9);
    EXPECT_NEAR(p.use.opening_max.mm(), row.opening, 0.05);
  }
}

TEST(Presets, DifferInWhatTheyShow) {
  std::set<std::size_t> counts;
  std::set<std::string> threads, places, covers;
  bool with_doubler = false, without_apron = false, with_obstacles = false, inches = false;
  for (const char* name : preset_names) {
    const Plan p = good_plan(preset_text(name));
    counts.insert(p.train.gears.size());
    threads.insert(p.screw.thread->designation);
    std::string place;
    for (const int screw : p.wheel.on_screw) place += std::to_string(screw);
    places.insert(place);
    covers.insert(p.cover.material->name + std::to_string(p.cover.thickness.mm()));
    with_doubler = with_doubler || (p.bench.has_apron && p.bench.has_doubler);
    without_apron = without_apron || !p.bench.has_apron;
    with_obstacles = with_obstacles || !p.bench.obstacles.empty();
    inches = inches || p.unit == units::LengthUnit::inch;
  }
  EXPECT_EQ(counts.size(), 4U);
  EXPECT_EQ(threads.size(), 4U);
  EXPECT_EQ(places.size(), 3U) << "both ends, left, right";
  EXPECT_EQ(covers.size(), 4U);
  EXPECT_TRUE(with_doubler && without_apron && with_obstacles && inches);
}

TEST(Presets, EvenCountTakesOneThreadOfEachHand) {
  const Plan p = good_plan(preset_text("left-hand-wheel-bench"));
  EXPECT_FALSE(p.screw.left_hand[0]);
  EXPECT_TRUE(p.screw.left_hand[1]);
  EXPECT_TRUE(p.collar.nut[1]->left_hand);
  EXPECT_TRUE(p.rear_nut.nut[1]->left_hand);
  EXPECT_EQ(p.wheel.on_screw, std::vector<int>{0});
  EXPECT_TRUE(p.screw.closes_clockwise[0]) << "the wheel sits where it closes clockwise";
  EXPECT_EQ(p.train.gears.front().sense, -p.train.gears.back().sense);
}

}  // namespace
}  // namespace visewright::layout
