// Every key with a number, against everything that is no number for it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "design/keys.h"
#include "design/reading_designs.h"
#include "units/text.h"

namespace visewright::design {
namespace {

// Decided by hand from what the keys mean: a position or an offset has a sign; a gap, an error or a board that may be
// left away can be nothing; everything else is a real size.
const std::set<std::string> signed_keys{"train.profile_shift", "front_jaw.top_offset", "front_jaw.dog_holes.positions",
                                        "bench.obstacle.from", "bench.obstacle.to",    "measured.axle_centres"};
const std::set<std::string> zero_keys{"train.backlash",
                                      "front_jaw.toe_in",
                                      "front_jaw.bevel.height",
                                      "front_jaw.bevel.depth",

                                      "bench.apron.setback",
                                      "bench.apron.doubler",
                                      "gaps.gear_to_wood",
                                      "gaps.gear_axial",
                                      "gaps.moving_to_fixed",
                                      "gaps.rim_to_cover",
                                      "gaps.rim_to_rim",
                                      "gaps.web",
                                      "gaps.end_float",
                                      "accuracy.mark_error",
                                      "accuracy.drill_wander",
                                      "accuracy.template_error",
                                      "accuracy.template_scale",
                                      "accuracy.hole_allowance",
                                      "accuracy.kerf",
                                      "accuracy.moisture_swing",
                                      "accuracy.temperature_swing",
                                      "assume.gear_run_out",
                                      "stock.price"};

enum class Sort { length, force, plain, none };

Sort sort_of(KeyType type) {
  switch (type) {
    case KeyType::length:
    case KeyType::millimetres:
    case KeyType::lengths:
    case KeyType::points: return Sort::length;
    case KeyType::force: return Sort::force;
    case KeyType::count:
    case KeyType::counts:
    case KeyType::number:
    case KeyType::numbers:
    case KeyType::percent:
    case KeyType::angle: return Sort::plain;
    default: return Sort::none;
  }
}

std::string name_of(const KeyRow& row) { return dotted(row.table, row.key); }

/// As many values as the list needs, the one under test first.
std::string wrapped(const KeyRow& row, const std::string& value) {
  const std::size_t gears = row.key == "centre_distances" ? 2 : 3;
  std::string list;
  const bool one_each_gear = row.type == KeyType::numbers || row.type == KeyType::counts || row.table == "train";
  const std::size_t count =
      one_each_gear || row.type == KeyType::points ? gears : std::max<std::size_t>(row.items.least, 1);
  for (std::size_t i = 0; i < count; ++i) {
    list += (i > 0 ? ", " : "") + (row.type == KeyType::points ? "[" + value + "]" : value);
  }
  switch (row.type) {
    case KeyType::counts:
    case KeyType::numbers:
    case KeyType::lengths:
    case KeyType::points: return "[" + list + "]";
    default: return value;
  }
}

/// A file that is good but for the value; the value stands on line 2.
std::string file_with(const KeyRow& row, const std::string& value) {
  std::string text = row.table.empty() ? "# the value is next\n" : heading(row.table) + "\n";
  text.append(row.key).append(" = ").append(value).append("\n");
  for (const KeyRow& sibling : keys_of(row.table)) {
    const bool module = row.table == "train" && sibling.key == "module" && row.key != "diametral_pitch";
    if (&sibling == &row || (!sibling.required && !module)) continue;
    text.append(sibling.key).append(" = ").append(sibling.example).append("\n");
  }
  if (row.table != "train") text += "[train]\nteeth = [30, 30, 30]\nmodule = 3\n";
  if (row.table != "screw") text += "[screw]\nthread = \"M20\"\n";
  return text;
}

std::vector<const KeyRow*> numeric_rows() {
  std::vector<const KeyRow*> rows;
  for (const KeyRow& row : keys()) {
    if (sort_of(row.type) != Sort::none) rows.push_back(&row);
  }
  return rows;
}

/// Reads the value and expects faults of this key on line 2 and no others, the first with these words.
void refused(const KeyRow& row, const std::string& value, const std::string& words) {
  const std::string text = file_with(row, wrapped(row, value));
  const base::Faults faults = faults_of(text);
  ASSERT_FALSE(faults.empty()) << text;
  EXPECT_THAT(faults.front().wrong, testing::HasSubstr(words)) << text;
  for (const base::Fault& fault : faults) {
    EXPECT_EQ(fault.key, name_of(row)) << as_text(faults) << text;
    ASSERT_TRUE(fault.place);
    EXPECT_EQ(fault.place->line, 2U) << as_text(faults) << text;
    EXPECT_GT(fault.place->column, 1U);
    EXPECT_EQ(fault.cause, base::Cause::input);
    EXPECT_THAT(fault.right, testing::HasSubstr(std::string(row.example))) << "no example of what is right";
  }
}

/// A plain number with the unit that its key asks for.
std::string valued(const KeyRow& row, const std::string& number) {
  return sort_of(row.type) == Sort::force ? "\"" + number + " N\"" : number;
}

TEST(Numbers, AreAsManyAsCounted) {
  // By hand: top level 2, train 8, screw 1, collar 1, bar 3, drive 1, wheel 4, front jaw 6, bevel 2, dog holes 3, rear
  // jaw 3, mounting 1, cover, lining and axle 1 each, bracket 4, top 3, apron 4, obstacle 2, gaps 7, accuracy 9, assume
  // 19, shop 6, stock 3, measured 6. A key that silently lost its number would escape the tests below.
  EXPECT_EQ(numeric_rows().size(), 101U);
}

TEST(Numbers, GoodOnesPass) {
  for (const KeyRow* row : numeric_rows()) {
    EXPECT_EQ(as_text(faults_of(file_with(*row, std::string(row->example)))), "") << name_of(*row);
  }
}

TEST(Numbers, NegativeIsRefusedUnlessItHasAMeaning) {
  for (const KeyRow* row : numeric_rows()) {
    if (signed_keys.contains(name_of(*row))) {
      const std::string text = file_with(*row, wrapped(*row, "-0.5"));
      for (const base::Fault& fault : faults_of(text)) {
        EXPECT_THAT(fault.wrong, testing::Not(testing::HasSubstr("less than"))) << text;
      }
      continue;
    }
    refused(*row, valued(*row, "-1"), "this is -1");
    if (sort_of(row->type) == Sort::length) refused(*row, "\"-1 mm\"", "this is -1 mm, which is less than");
  }
}

TEST(Numbers, ZeroIsRefusedUnlessItHasAMeaning) {
  for (const KeyRow* row : numeric_rows()) {
    const std::string name = name_of(*row);
    if (zero_keys.contains(name)) {
      EXPECT_EQ(as_text(faults_of(file_with(*row, wrapped(*row, "0")))), "") << name;
    } else if (!signed_keys.contains(name)) {
      refused(*row, valued(*row, "0"), "this is 0");
    }
  }
}

TEST(Numbers, HugeIsRefused) {
  for (const KeyRow* row : numeric_rows()) {
    refused(*row, valued(*row, "99999999999"), "which is more than");
    if (sort_of(row->type) == Sort::force) continue;
    refused(*row, "1e300", "this is 1e+300");
    refused(*row, "9223372036854775807", "which is more than");
  }
}

TEST(Numbers, WhatIsNoNumberIsRefused) {
  for (const KeyRow* row : numeric_rows()) {
    refused(*row, "nan", "this is nan");
    refused(*row, "inf", "this is infinite");
    refused(*row, "-inf", "this is infinite");
    refused(*row, "true", "this is true or false");
    refused(*row, "{ a = 1 }", "this is a table");
  }
}

TEST(Numbers, TextsAndUnitsOfSomethingElseAreRefused) {
  for (const KeyRow* row : numeric_rows()) {
    switch (sort_of(row->type)) {
      case Sort::length:
        refused(*row, "\"wide\"", "'wide' does not begin with a number");
        refused(*row, "\"5 kg\"", "'kg'");
        refused(*row, "\"5 N\"", "'N'");
        refused(*row, "\"5\"", "'5' has no unit");
        refused(*row, "\"\"", "it is empty");
        break;
      case Sort::force:
        refused(*row, "\"hard\"", "'hard' does not begin with a number");
        refused(*row, "\"5 mm\"", "'mm'");
        refused(*row, "\"5\"", "'5' has no unit");
        refused(*row, "5", "this is 5 without a unit");
        break;
      default: refused(*row, "\"5\"", "this is a text"); refused(*row, "\"5 mm\"", "this is a text");
    }
  }
}

TEST(Numbers, ListsAndSingleValuesAreNotTakenForEachOther) {
  for (const KeyRow* row : numeric_rows()) {
    const bool list = wrapped(*row, "1") != "1";
    const std::string text = file_with(*row, list ? "5" : "[5]");
    const base::Faults faults = faults_of(text);
    if (row->key == "profile_shift") continue;  // one value stands for all gears
    ASSERT_EQ(faults.size(), 1U) << text;
    EXPECT_EQ(faults.front().key, name_of(*row));
    if (sort_of(row->type) != Sort::force) {
      EXPECT_EQ(faults.front().wrong, list ? "this is a number" : "this is a list") << text;
    }
  }
}

TEST(Numbers, LimitsThemselvesAreGoodAndALittleMoreIsNot) {
  for (const KeyRow* row : numeric_rows()) {
    if (row->type == KeyType::points || name_of(*row).starts_with("bench.obstacle")) continue;  // equal values collide
    const bool whole = row->type == KeyType::count || row->type == KeyType::counts;
    const double step = whole ? 1 : 0.001;
    const auto text = [&](double value) {
      return file_with(*row, wrapped(*row, valued(*row, units::write_number(value, 6))));
    };
    EXPECT_EQ(as_text(faults_of(text(row->range.least))), "");
    EXPECT_EQ(as_text(faults_of(text(row->range.most))), "");
    EXPECT_NE(as_text(faults_of(text(row->range.least - step))), "");
    EXPECT_NE(as_text(faults_of(text(row->range.most + step))), "");
  }
}

TEST(Numbers, CountsAreWhole) {
  refused(*key_row("rear_jaw.mounting", "count"), "8.5", "this is 8.5, not a whole number");
  refused(*key_row("train", "teeth"), "30.5", "this is 30.5, not a whole number");
  EXPECT_EQ(good(least + "rear_jaw = { mounting = { count = 8.0 } }\n").rear_jaw.mounting.count->value, 8);
}

}  // namespace
}  // namespace visewright::design
