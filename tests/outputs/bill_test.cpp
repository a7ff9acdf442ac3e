#include "outputs/data/bill.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <numeric>

#include "outputs/data/bill_files.h"
#include "outputs/data/price.h"
#include "outputs/sample.h"

namespace visewright::outputs::data {
namespace {

using tests::Sample;

const BillLine& line(const std::vector<BillLine>& lines, const std::string& item) {
  const auto found = std::find_if(lines.begin(), lines.end(), [&](const BillLine& l) { return l.item == item; });
  if (found == lines.end()) throw std::out_of_range(item);
  return *found;
}

std::vector<std::string> rows(const std::string& text) {
  std::vector<std::string> found;
  std::istringstream stream(text);
  for (std::string row; std::getline(stream, row);) found.push_back(row);
  return found;
}

// By hand from the sample: the bench exists, its doubler is made; the spare board is placed nowhere.
TEST(Bill, NumbersPartsMembersAndBeadsInOrder) {
  const Sample sample;
  std::vector<std::string> seen;
  for (const BillLine& l : bill(sample.facts())) seen.push_back(l.item + " " + l.name);
  EXPECT_THAT(seen,
              testing::ElementsAre("1 doubler", "2 front jaw", "2.1 glued blank", "2.1.1 backing", "2.1.2 gear layer",
                                   "2.2 landing block", "3 nut block, left", "3.1 rear nut, left", "3.2 nut bar",
                                   "3.3 weld bead", "4 nut block, right", "4.1 rear nut, right", "4.2 nut bar",
                                   "4.3 weld bead", "5 lead screw", "6 drive gear", "7 mounting screw"));
}

TEST(Bill, NeverListsWhatStandsAlready) {
  const Sample sample;
  for (const std::string& text : {bill_csv(sample.facts()), bill_markdown(sample.facts()), bill_json(sample.facts())}) {
    EXPECT_EQ(text.find("bench top"), std::string::npos);
    EXPECT_NE(text.find("doubler"), std::string::npos);
  }
}

TEST(Bill, CountsWhatTheViseHolds) {
  const Sample sample;
  const auto lines = bill(sample.facts());
  EXPECT_EQ(line(lines, "5").count, 2);
  EXPECT_EQ(line(lines, "7").count, 8);
  EXPECT_EQ(line(lines, "2.2").count, 2) << "the same block twice is one line";
  EXPECT_EQ(line(lines, "2.1.1").count, 1);
}

// Two halves lie in two different nut blocks, and one long nut gives both.
TEST(Bill, TwoHalvesAreOneBoughtPiece) {
  const Sample sample;
  const auto lines = bill(sample.facts());
  EXPECT_EQ(line(lines, "3.1").buy, 1);
  EXPECT_EQ(line(lines, "4.1").buy, 0);
  EXPECT_EQ(line(lines, "7").buy, 8);
  EXPECT_FALSE(line(lines, "5").buy) << "rod is cut from stock";
}

TEST(Bill, ThreeHalvesAreTwoBoughtPieces) {
  Sample sample;
  assembly::Placed third = sample.assembly.placed[2];
  sample.assembly.placed.push_back(third);
  const auto lines = bill(sample.facts());
  EXPECT_EQ(line(lines, "3.1").buy.value() + line(lines, "4.1").buy.value(), 2);
}

// Boxes times density: 52.0 × 18.5 × 4.0 cm³ × 0.72 g/cm³ = 2770.56 g; the gear layer 2216.448 g; two landing blocks of
// 5.0 × 3.5 × 2.0 cm³ are 25.2 g each.
TEST(Bill, MassesAreThoseOfTheBodies) {
  const Sample sample;
  const auto lines = bill(sample.facts());
  EXPECT_NEAR(line(lines, "2.1.1").mass_each_kg, 2.77056, 1e-9);
  EXPECT_NEAR(line(lines, "2.1").mass_each_kg, 2.77056 + 2.216448, 1e-9);
  EXPECT_NEAR(line(lines, "2").mass_each_kg, 2.77056 + 2.216448 + 2 * 0.0252, 1e-9);
  EXPECT_NEAR(line(lines, "2.2").mass_kg(), 2 * 0.0252, 1e-9);
  EXPECT_NEAR(line(lines, "7").mass_kg(), 8 * 0.05, 1e-9);
}

TEST(Bill, SubItemsAddUpToTheirWhole) {
  const Sample sample;
  const auto lines = bill(sample.facts());
  for (const char* whole : {"3", "4"}) {
    double total = 0;
    for (const char* sub : {".1", ".2", ".3"}) total += line(lines, std::string(whole) + sub).mass_kg();
    EXPECT_NEAR(total, line(lines, whole).mass_kg(), 1e-12);
    EXPECT_GT(line(lines, std::string(whole) + ".2").mass_kg(), 0.5) << "11 × 6 × 1 cm³ of steel";
  }
  double top = 0;
  for (const BillLine& l : lines) top += l.level == 0 ? l.mass_kg() : 0;
  EXPECT_DOUBLE_EQ(sum(lines).mass_kg, top);
}

// 40 × 54.0·19.5·4.5 / (110·20·5) = 17.2309…; 40 × 54.0·19.5·3.6 / 11000 = 13.7847…; doubler 40 × 600/11000 = 2.18…;
// rod 12 × 475/1000 = 5.70 each; one long nut 3.50; eight screws at 0.20.
TEST(Bill, PricesComeFromTheStockTable) {
  const Sample sample;
  const auto lines = bill(sample.facts());
  EXPECT_DOUBLE_EQ(line(lines, "2.1.1").price.value(), 17.23);
  EXPECT_DOUBLE_EQ(line(lines, "2.1.2").price.value(), 13.78);
  EXPECT_DOUBLE_EQ(line(lines, "2").price.value(), 31.01);
  EXPECT_DOUBLE_EQ(line(lines, "5").price_each.value(), 5.7);
  EXPECT_DOUBLE_EQ(line(lines, "5").price.value(), 11.4);
  EXPECT_DOUBLE_EQ(line(lines, "3.1").price.value(), 3.5);
  EXPECT_DOUBLE_EQ(line(lines, "4.1").price.value(), 0);
  EXPECT_DOUBLE_EQ(line(lines, "7").price.value(), 1.6);
  EXPECT_FALSE(line(lines, "3.2").price);
  EXPECT_FALSE(line(lines, "2.2").price) << "an offcut costs nothing more";
  const BillSum total = sum(lines);
  EXPECT_DOUBLE_EQ(total.price.value(), 2.18 + 31.01 + 3.5 + 11.4 + 1.6);
  EXPECT_EQ(total.unpriced, 3) << "two bars and the printed gear";
}

TEST(Bill, StockThatIsTooSmallGivesNoPrice) {
  Sample sample;
  const parts::Part fits = tests::board("a", sample.beech, {1000, 190, 45}, {1100, 200, 50});
  const parts::Part too_thick = tests::board("b", sample.beech, {1000, 190, 45}, {1100, 200, 50.1});
  EXPECT_DOUBLE_EQ(price_of_one(std::get<parts::Piece>(fits.made).stock, sample.design.stock).value(), 40);
  EXPECT_FALSE(price_of_one(std::get<parts::Piece>(too_thick.made).stock, sample.design.stock));
  const parts::Part steel = tests::board("c", sample.steel, {10, 10, 10}, {10, 10, 10});
  EXPECT_FALSE(price_of_one(std::get<parts::Piece>(steel.made).stock, sample.design.stock)) << "another material";
}

// The numbers on bodies are what the products of the solid model carry.
TEST(Bill, EveryBodyKnowsItsItem) {
  const Sample sample;
  EXPECT_THAT(body_items(sample.assembly, 0), testing::ElementsAre("", "1"));
  EXPECT_THAT(body_items(sample.assembly, 1), testing::ElementsAre("2.1.1", "2.1.2", "2.2", "2.2"));
  EXPECT_THAT(body_items(sample.assembly, 3), testing::ElementsAre("4.1", "4.2", "4.3"));
  EXPECT_EQ(part_item(sample.assembly, 1), "2");
  EXPECT_EQ(part_item(sample.assembly, 0), "");
  EXPECT_EQ(part_item(sample.assembly, 6), "");
}

// RFC 4180 section 2, rules 5 to 7.
TEST(BillCsv, QuotesWhatNeedsIt) {
  EXPECT_EQ(csv_field("plain ⌀20"), "plain ⌀20");
  EXPECT_EQ(csv_field("a,b"), "\"a,b\"");
  EXPECT_EQ(csv_field("1\" bar"), "\"1\"\" bar\"");
  EXPECT_EQ(csv_field("two\nlines"), "\"two\nlines\"");
  EXPECT_EQ(csv_field(""), "");
}

TEST(BillCsv, HoldsALineAnItem) {
  const Sample sample;
  const auto lines = rows(bill_csv(sample.facts()));
  EXPECT_EQ(lines[0],
            "item,name,count,buy,making,material,size_mm,rough_mm,designation,standard,mass_each_kg,mass_kg,"
            "price_each,price");
  EXPECT_EQ(lines[4], "2.1.1,backing,1,,made,beech,520 × 185 × 40,540 × 195 × 45,,,2.771,2.771,17.23,17.23");
  EXPECT_EQ(lines[17],
            "7,mounting screw,8,8,bought,steel,,,\"wood screw 6 x 90, \"\"brass\"\"\",its standard,0.05,0.4,"
            "0.20,1.60");
  EXPECT_EQ(lines[18], "note,Not ready to build: 1 check fails: train.parity,,,,,,,,,,,,");
  EXPECT_EQ(lines.size(), 19U);
}

TEST(BillCsv, SaysNothingOfFailureWhenNothingFails) {
  Sample sample;
  sample.findings.pop_back();
  EXPECT_EQ(bill_csv(sample.facts()).find("note"), std::string::npos);
  EXPECT_EQ(bill_markdown(sample.facts()).find("Not ready"), std::string::npos);
}

// 3/4 in is 19.05 mm and 1-1/4 in is 31.75 mm exactly; inches show as fractions.
TEST(BillCsv, ShowsInchesAsFractions) {
  Sample sample;
  sample.show = units::LengthUnit::inch;
  sample.assembly.parts[6] =
      tests::shared(tests::board("strip", sample.beech, {508, 31.75, 19.05}, {533.4, 38.1, 25.4}));
  assembly::Placed placed;
  placed.part = 6;
  sample.assembly.placed.push_back(placed);
  const std::string text = bill_csv(sample.facts());
  EXPECT_NE(text.find("size_in,rough_in"), std::string::npos);
  EXPECT_NE(text.find("strip,1,,made,beech,20 × 1-1/4 × 3/4,21 × 1-1/2 × 1,"), std::string::npos) << text;
}

TEST(BillMarkdown, IsOneTableWithEvenRows) {
  const Sample sample;
  int in_table = 0;
  for (const std::string& row : rows(bill_markdown(sample.facts()))) {
    if (!row.starts_with("|")) continue;
    ++in_table;
    int bars = 0;
    for (std::size_t i = 0; i < row.size(); ++i) bars += row[i] == '|' && (i == 0 || row[i - 1] != '\\') ? 1 : 0;
    EXPECT_EQ(bars, 15) << row;
  }
  EXPECT_EQ(in_table, 2 + 17);
  const std::string text = bill_markdown(sample.facts());
  EXPECT_NE(text.find("# Bill of materials: Bench \\| one"), std::string::npos);
  EXPECT_NE(text.find("**Not ready to build: 1 check fails: train.parity**"), std::string::npos);
  EXPECT_NE(text.find("price of the lines that have one 49.69, without a price 3"), std::string::npos);
}

TEST(BillJson, HoldsTheSameFacts) {
  const Sample sample;
  const auto json = nlohmann::json::parse(bill_json(sample.facts()));
  EXPECT_EQ(json["schema"], "visewright.bill/1");
  EXPECT_EQ(json["lines"].size(), 17U);
  EXPECT_EQ(json["lines"][3]["size_mm"], nlohmann::json::parse("[520, 185, 40]"));
  EXPECT_EQ(json["lines"][3]["buy"], nullptr);
  EXPECT_EQ(json["lines"][7]["buy"], 1);
  EXPECT_EQ(json["total"]["price"], 49.69);
  EXPECT_EQ(json["notice"], "Not ready to build: 1 check fails: train.parity");
}

}  // namespace
}  // namespace visewright::outputs::data
