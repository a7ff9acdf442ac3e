#include <gtest/gtest.h>

#include <cmath>
#include <locale>
#include <nlohmann/json.hpp>
#include <set>

#include "outputs/all.h"
#include "analysis/analyse.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/plan_json.h"
#include "outputs/data/size_json.h"
#include "outputs/sample.h"

namespace visewright::outputs::data {
namespace {

using nlohmann::ordered_json;
using tests::Sample;

ordered_json parsed(const std::string& text) { return ordered_json::parse(text); }

const ordered_json& named(const ordered_json& list, const std::string& name) {
  for (const ordered_json& entry : list) {
    if (entry["name"] == name) return entry;
  }
  throw std::out_of_range(name);
}

TEST(PlanJson, GivesEveryNumberWithItsReason) {
  const Sample sample;
  const auto json = parsed(plan_json(sample.facts()));
  EXPECT_EQ(json["schema"], "visewright.plan/1");
  EXPECT_EQ(json["numbers"].size(), sample.plan.ledger.numbers().size());
  const auto& tip = named(json["numbers"], "train.gears.1.tip_diameter");
  EXPECT_EQ(tip["value_mm"], 96);
  EXPECT_EQ(tip["basis"], "derived");
  EXPECT_EQ(tip["rule"], "train.tip_diameter");
  EXPECT_EQ(tip["because"], "module 3 mm × (teeth 30 + 2) = 96 mm");
  EXPECT_EQ(tip["from"], parsed(R"(["train.module", "train.gears.1.teeth"])"));
  EXPECT_EQ(tip["place"], nullptr);
  EXPECT_EQ(named(json["numbers"], "train.module")["place"], parsed(R"({"text": "design", "line": 4, "column": 9})"));
  EXPECT_EQ(named(json["numbers"], "train.gears.1.teeth")["value"], 30);
  EXPECT_EQ(named(json["choices"], "screw.thread")["text"], "M20");
  EXPECT_EQ(named(named(json["patterns"], "screws")["holes"], "left")["x_mm"], -180);
}

TEST(PlanJson, SentencesFollowTheirNumbers) {
  Sample sample;
  sample.set_train(2);
  const auto json = parsed(plan_json(sample.facts()));
  EXPECT_EQ(named(json["numbers"], "train.gears.1.tip_diameter")["because"], "module 2 mm × (teeth 30 + 2) = 64 mm");
}

/// Every number stands under a key that ends in its unit, or under a key that has none by nature.
void expect_units(const ordered_json& json, const std::string& key, int& seen) {
  static const std::set<std::string> plain{"teeth",  "profile_shift", "contact_ratio", "value",          "line",
                                           "column", "measured",      "limit",         "thread_friction",
                                           "builds", "critical_gear", "efficiency",    "percent",        "seed",
                                           "turns",  "self_locking",  "span_teeth",    "tip_thickness_modules",
                                           "count",  "number",        "pieces",        "from_stock"};
  static const std::vector<std::string> ends{"_mm", "_deg", "_kg", "_n", "_mpa", "_percent", "_kelvin", "_nm", "_nm_per_kn"};
  if (json.is_number()) {
    ++seen;
    const bool with_unit =
        std::any_of(ends.begin(), ends.end(), [&](const std::string& end) { return key.ends_with(end); });
    EXPECT_TRUE(with_unit || plain.contains(key)) << key;
  }
  if (!json.is_structured()) return;  // a plain value would list itself
  for (const auto& [name, value] : json.items()) expect_units(value, json.is_array() ? key : name, seen);
}

TEST(DataFiles, KeysEndInTheirUnit) {
  const Sample sample;
  int seen = 0;
  const auto of = [&](const std::string& text) { return parsed(text); };
  const auto size = of(size_json(sample.facts())), plan = of(plan_json(sample.facts()));
  for (const auto* json : {&size, &plan}) {
    for (const auto& [name, value] : json->items()) expect_units(value, name, seen);
  }
  EXPECT_GT(seen, 150);
}

// 90 · cos 20° = 84.572335871 (cos 20° = 0.93969262079).
TEST(SizeJson, GivesTheTrain) {
  const Sample sample;
  const auto plan = parsed(size_json(sample.facts()))["plan"];
  ASSERT_EQ(plan["train"]["gears"].size(), 5U);
  const auto& gear = plan["train"]["gears"][0];
  EXPECT_EQ(gear["teeth"], 30);
  EXPECT_EQ(gear["pitch_diameter_mm"], 90);
  EXPECT_EQ(gear["tip_diameter_mm"], 96);
  EXPECT_EQ(gear["root_diameter_mm"], 82.5);
  EXPECT_NEAR(gear["base_diameter_mm"].get<double>(), 84.572335871, 2e-9);
  EXPECT_EQ(plan["train"]["meshes"].size(), 4U);
  EXPECT_EQ(plan["train"]["meshes"][0]["normal_backlash_mm"], 0.422861679);
  EXPECT_EQ(plan["spacing_mm"], 360);
  EXPECT_EQ(plan["parity"], "odd");
  EXPECT_EQ(plan["hands"], parsed(R"(["right", "left"])"));
  EXPECT_EQ(plan["closes"], parsed(R"(["clockwise", "anticlockwise"])"));
  EXPECT_EQ(plan["screw"]["lead_mm"], 2.5);
  EXPECT_EQ(plan["screw"]["mean_diameter_mm"], 18.376);
  EXPECT_EQ(plan["opening_max_mm"], 253);
  EXPECT_EQ(plan["free_depth_mm"], 344);
  EXPECT_EQ(plan["projection"]["shut_mm"], 131);
  const auto friction = named(plan["assumptions"], "thread_friction");
  EXPECT_EQ(friction["value"], 0.15);
  EXPECT_EQ(friction["basis"], "assumed");
}

// 30 teeth are 12° apart: 181° − 15 · 12° = 1°; 7° − 12° = −5°; half a tooth either way is the positive one.
TEST(SizeJson, PhaseIsThatOfTheNearestTooth) {
  layout::Gear gear;
  gear.teeth.value = 30;
  const std::vector<std::pair<double, double>> cases{{181, 1}, {7, -5},  {0, 0},   {6, 6},
                                                     {-6, 6},  {-1, -1}, {360, 0}, {-12, 0}};
  for (const auto& [given, wanted] : cases) {
    gear.phase.value = units::degrees(given);
    EXPECT_NEAR(nearest_tooth_deg(gear), wanted, 1e-9) << given;
  }
}

// The stack of this vise, drawn by hand: the bearing ends 4.3 in front of the gear layer's face at 75 and is 9 wide.
TEST(SizeJson, StackStandsInOrder) {
  const Sample sample;
  const auto layers = parsed(size_json(sample.facts()))["plan"]["stack"];
  const std::vector<std::tuple<std::string, double, double>> wanted{
      {"doubler", -131, -113}, {"apron", -113, -88},      {"rear nut", -78, -49},    {"nut bar", -49, -39},
      {"rear jaw", -39, -3},   {"rear lining", -3, 0},    {"front lining", 0, 3},    {"backing", 3, 43},
      {"gear layer", 43, 75},  {"thrust washer", 39, 43}, {"collar flange", 43, 46}, {"collar nut", 46, 64},
      {"gears", 44.5, 68.5},   {"keeper ring", 69, 70},   {"bearing", 70.3, 79.3},   {"cover", 75, 83},
      {"wheel hub", 86, 131},  {"wheel rim", 111, 131},   {"screw", -344, 131}};
  EXPECT_EQ(layers.size(), wanted.size());
  for (const auto& [name, from, to] : wanted) {
    EXPECT_EQ(named(layers, name)["from_out_mm"], from) << name;
    EXPECT_EQ(named(layers, name)["to_out_mm"], to) << name;
  }
  for (std::size_t i = 1; i < layers.size(); ++i) EXPECT_GE(layers[i]["from_out_mm"], layers[i - 1]["from_out_mm"]);
}

TEST(SizeJson, BenchWithoutApronHasNoSuchLayer) {
  Sample sample;
  sample.plan.bench.has_apron = false;
  EXPECT_EQ(size_json(sample.facts()).find("\"apron\""), std::string::npos);
}

// Front jaw 5.037408 kg; two gears of 9.0 × 8.0 × 2.4 cm³ at 1.27 g/cm³; two rods of 475 mm M20, whose mass lies
// between those of bars of its root and its outside diameter, 16.9 and 20 mm.
TEST(SizeJson, MovingMassIsThatOfWhatMoves) {
  const Sample sample;
  const double rods = analysis::moving_mass_kg(sample.assembly) - 5.037408 - 2 * 172.8 * 1.27e-3;
  const auto bar = [](double d) { return 2 * units::pi / 4 * d * d * 475 * 7.85e-6; };
  EXPECT_GT(rods, bar(16.9));
  EXPECT_LT(rods, bar(20));
}

TEST(FindingsJson, WorstFirstWithCounts) {
  const Sample sample;
  const auto json = parsed(findings_json(sample.facts()));
  EXPECT_EQ(json["counts"], parsed(R"({"fail": 1, "caution": 1, "pass": 1})"));
  ASSERT_EQ(json["findings"].size(), 3U);
  const auto& first = json["findings"][0];
  EXPECT_EQ(first["name"], "train.parity");
  EXPECT_EQ(first["verdict"], "fail");
  EXPECT_EQ(first["unit"], "count");
  EXPECT_EQ(first["better"], "larger");
  EXPECT_EQ(first["where"], parsed(R"({"opening_mm": 250, "grip": "out", "at_mm": [1, -2, 3]})"));
  EXPECT_EQ(first["parts"], parsed(R"(["drive gear", "lead screw"])"));
  EXPECT_EQ(json["findings"][1]["verdict"], "caution");
  EXPECT_EQ(json["findings"][2]["verdict"], "pass");
  EXPECT_EQ(json["findings"][2]["advice"], "");
  EXPECT_EQ(json["findings"][2]["certified"], true);
}

TEST(DataFiles, NumbersAreRoundedAndShortest) {
  Sample sample;
  sample.plan.use.free_depth.value = units::mm(0.1 + 0.2);
  sample.plan.use.clear_width.value = units::mm(-1e-12);
  const std::string text = size_json(sample.facts());
  EXPECT_NE(text.find("\"free_depth_mm\": 0.3,"), std::string::npos);
  EXPECT_NE(text.find("\"clear_width_mm\": 0,"), std::string::npos);
}

class Commas : public std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

/// The outputs that need solids are written and read back with a whole vise, in the pipeline's tests.
std::vector<Output> without_solids() {
  std::vector<Output> list;
  for (const Output& output : all())
    if (!output.needs_solids) list.push_back(output);
  return list;
}

TEST(DataFiles, BytesDoNotDependOnTheLocale) {
  const Sample sample;
  std::vector<std::string> plain, commas;
  for (const Output& output : without_solids()) {
    for (const File& file : tests::written(output, sample)) plain.push_back(file.bytes);
  }
  const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Commas));
  for (const Output& output : without_solids()) {
    for (const File& file : tests::written(output, sample)) commas.push_back(file.bytes);
  }
  std::locale::global(before);
  EXPECT_EQ(plain, commas);
  EXPECT_GE(plain.size(), without_solids().size());
}

TEST(Outputs, StandInTheirFoldersUnderDifferentPaths) {
  const Sample sample;
  std::set<std::string> paths;
  for (const Output& output : without_solids()) {
    for (const File& file : tests::written(output, sample)) {
      EXPECT_TRUE(file.path.starts_with(output.folder)) << file.path;
      EXPECT_TRUE(paths.insert(file.path).second) << file.path;
      EXPECT_FALSE(file.what.empty());
    }
  }
}

}  // namespace
}  // namespace visewright::outputs::data
