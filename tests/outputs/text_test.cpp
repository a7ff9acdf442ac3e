#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "outputs/data/explain.h"
#include "outputs/data/lines.h"
#include "outputs/data/size_text.h"
#include "outputs/sample.h"

namespace visewright::outputs::data {
namespace {

using tests::Sample;

TEST(Lines, FoldAtSpacesAndIndent) {
  const std::string text = folded(std::string(60, 'a') + " " + std::string(39, 'b') + " " + "c", 4);
  EXPECT_EQ(text, std::string(60, 'a') + " " + std::string(39, 'b') + "\n    c\n");
  EXPECT_EQ(folded("", 2), "\n");
  EXPECT_EQ(folded("  two before", 2), "  two before\n");
}

TEST(Lines, CountPlacesNotBytes) {
  EXPECT_EQ(places("⌀20 × 3"), 7U);
  EXPECT_EQ(table({{"a", "tip ⌀"}, {"bb", "96"}}), "a   tip ⌀\nbb     96\n");
}

TEST(SizeText, KeepsToTheWidth) {
  Sample sample;
  sample.findings[2].advice = std::string("change it ") + std::string(70, 'x') + " and " + std::string(70, 'y');
  for (const auto unit : {units::LengthUnit::millimetre, units::LengthUnit::inch}) {
    sample.show = unit;
    std::istringstream lines(size_text(sample.facts()));
    int count = 0;
    for (std::string line; std::getline(lines, line); ++count) EXPECT_LE(places(line), line_width) << line;
    EXPECT_GT(count, 50);
  }
}

TEST(SizeText, HoldsTheTables) {
  const Sample sample;
  const std::string text = size_text(sample.facts());
  for (const char* wanted :
       {"Train: 5 gears, module 3 mm", "screws 360 mm apart", "both screws turn the same way",
        "left screw: right-hand thread, closes clockwise", "right screw: left-hand thread, closes anticlockwise",
        "opening, greatest", "253 mm", "free depth behind the bench edge", "344 mm", "moving with the jaw"}) {
    EXPECT_NE(text.find(wanted), std::string::npos) << wanted << "\n" << text;
  }
}

TEST(SizeText, EvenTrainsNeedTheOtherHand) {
  Sample sample;
  sample.plan.train.gears.pop_back();
  EXPECT_NE(size_text(sample.facts()).find("an even count"), std::string::npos);
}

TEST(CheckText, WorstFirstAndCounted) {
  const Sample sample;
  const std::string text = check_text(sample.facts());
  EXPECT_NE(text.find("1 fail, 1 caution\n"), std::string::npos) << text;
  EXPECT_LT(text.find("fail  train.parity"), text.find("caution  use.turns"));
  EXPECT_LT(text.find("caution  use.turns"), text.find("1 pass, 0 of them proved over the whole travel"));
  EXPECT_EQ(text.find("pass  front_jaw.backing"), std::string::npos);
  EXPECT_NE(text.find("Not ready to build: 1 check fails: train.parity"), std::string::npos);
  EXPECT_NE(text.find("Local codes"), std::string::npos);
}

constexpr const reasons::Rule* known[] = {&tests::module_rule, &tests::tip_rule, &tests::backing_rule,
                                          &tests::parity_finding};
constexpr auto mm = units::LengthUnit::millimetre;

std::string explained(std::string_view name, const layout::Plan* plan, std::span<const reasons::Finding> findings) {
  return explain_text(explain(name, known, plan, findings, mm).value());
}

TEST(Explain, RuleAloneGivesMeaningFormulaSourceAndRemedy) {
  const std::string text = explained("train.tip_diameter", nullptr, {});
  EXPECT_EQ(text,
            "train.tip_diameter\n"
            "  meaning: outside of a gear\n"
            "  formula: module × (teeth + 2) = …\n"
            "  source: ISO 21771\n"
            "  to change it: follows the module\n");
}

TEST(Explain, DesignPutsItsNumbersIn) {
  Sample sample;
  EXPECT_NE(explained("train.gears.2.tip_diameter", &sample.plan, {}).find("module 3 mm × (teeth 30 + 2) = 96 mm"),
            std::string::npos);
  sample.set_train(2);
  const std::string text = explained("train.gears.2.tip_diameter", &sample.plan, {});
  EXPECT_NE(text.find("module 2 mm × (teeth 30 + 2) = 64 mm"), std::string::npos) << text;
  EXPECT_NE(text.find("from train.module = 2 mm"), std::string::npos);
  EXPECT_EQ(text.find("train.gears.3"), std::string::npos) << "one number was asked for";
  EXPECT_NE(explained("train.module", &sample.plan, {}).find("given in line 4 of the design"), std::string::npos);
}

TEST(Explain, RulesNameGivesAllNumbersThatFollowIt) {
  const Sample sample;
  const auto explanation = explain("train.tip_diameter", known, &sample.plan, {}, mm).value();
  ASSERT_EQ(explanation.topics.size(), 1U);
  EXPECT_EQ(explanation.topics[0].numbers.size(), 5U);
}

TEST(Explain, ANumberAndAFindingMayShareAName) {
  const Sample sample;
  const std::string text = explained("front_jaw.backing", &sample.plan, sample.findings);
  EXPECT_NE(text.find("thickness of the backing"), std::string::npos);
  EXPECT_NE(text.find("greater of 40 mm and 1.5 × 96 mm"), std::string::npos) << text;
  EXPECT_NE(text.find("wood behind the thrust washer"), std::string::npos);
  EXPECT_NE(text.find("least wood 40 mm against 10 mm"), std::string::npos) << text;
}

TEST(Explain, FindingTellsWhatWasMeasured) {
  const Sample sample;
  EXPECT_NE(explained("train.parity", nullptr, sample.findings).find("gears 4, wanted 5"), std::string::npos);
}

TEST(Explain, ChoicesAreExplainedToo) {
  const Sample sample;
  EXPECT_NE(explained("screw.thread", &sample.plan, {}).find("screw.thread = M20 (given)"), std::string::npos);
}

TEST(Explain, UnknownNameSuggestsTheNearest) {
  const Sample sample;
  const auto answer = explain("train.modul", known, &sample.plan, sample.findings, mm);
  ASSERT_FALSE(answer);
  EXPECT_EQ(answer.error()[0].cause, base::Cause::input);
  EXPECT_EQ(answer.error()[0].right, "perhaps \"train.module\"");
  EXPECT_FALSE(explain("x", {}, nullptr, {}, mm));
}

TEST(Explain, JsonHoldsTheSame) {
  const Sample sample;
  const auto explanation = explain("front_jaw.backing", known, &sample.plan, sample.findings, mm).value();
  const auto json = nlohmann::json::parse(explain_json(explanation));
  EXPECT_EQ(json["schema"], "visewright.explain/1");
  ASSERT_EQ(json["topics"].size(), 2U);
  EXPECT_EQ(json["topics"][0]["numbers"][0]["value_mm"], 40);
  EXPECT_EQ(json["topics"][1]["findings"][0]["because"], "least wood 40 mm against 10 mm");
}

}  // namespace
}  // namespace visewright::outputs::data
