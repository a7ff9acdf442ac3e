// What good files mean, and that writing one loses nothing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "design/keys.h"
#include "design/reading_designs.h"
#include "design/strength.h"
#include "design/write.h"

namespace visewright::design {
namespace {

using units::in_mm;
using units::inches;
using units::mm;

TEST(Values, BareLengthsAreInTheUnitsOfTheFile) {
  EXPECT_EQ(good("opening = 250\n" + least).opening->value, mm(250));
  EXPECT_EQ(good("opening = 10\nunits = \"in\"\n" + least).opening->value, inches(10));  // units may stand below
  EXPECT_EQ(good("units = \"in\"\nopening = \"250 mm\"\n" + least).opening->value, mm(250));
  EXPECT_EQ(good("opening = \"9 3/4 in\"\n" + least).opening->value, inches(39, 4));
  EXPECT_EQ(good("opening = \"25 cm\"\n" + least).opening->value, mm(250));
}

TEST(Values, ABareLengthAndTheSameWithItsUnitAreOne) {
  // Each of these differs in its last bit when it is multiplied by 254 and divided by 10 with two roundings.
  for (const char* number : {"0.017", "0.021", "0.023", "0.034", "0.041"}) {
    const std::string in = "units = \"in\"\n";
    const std::string bare = in + "train = { teeth = [28, 28, 28], module = 3, backlash = " + number + " }\n";
    const std::string own = in + "train = { teeth = [28, 28, 28], module = 3, backlash = \"" + number + " in\" }\n";
    EXPECT_EQ(good(bare + least_screw).train.backlash->value, good(own + least_screw).train.backlash->value) << number;
  }
}

TEST(Values, TheModuleStaysInMillimetres) {
  EXPECT_EQ(good("units = \"in\"\n" + least).train.module->value, mm(3));
  EXPECT_FALSE(good(least).train.diametral_pitch);
}

TEST(Values, ForcesAndAnglesKeepTheirUnits) {
  const Design design = good(least + "drive = { hand_force = \"22 lbf\" }\n");
  EXPECT_NEAR(units::in_newtons(design.drive.hand_force->value), 22 * 4.4482216152605, 1e-12);
  const Design angled = good("train = { teeth = [30, 30, 30], module = 3, pressure_angle = 14.5 }\n" + least_screw);
  EXPECT_DOUBLE_EQ(units::in_radians(angled.train.pressure_angle->value), 14.5 * units::pi / 180);
}

TEST(Values, OneHandStandsForBothAndPlacesPointAtTheValue) {
  const Design design = good(least_train + "[screw]\nthread = \"M20\"\n  hand = \"left\"\n");
  EXPECT_THAT(design.screw.hand->value, testing::ElementsAre("left"));
  EXPECT_EQ(design.screw.hand->place.line, 4U);
  EXPECT_EQ(design.screw.hand->place.column, 10U);
  EXPECT_EQ(design.train.teeth.place.line, 1U);
}

TEST(Values, WhatIsLeftOutIsAbsent) {
  const Design design = good(least);
  for (const KeyRow& row : keys()) {
    if (table_row(row.table)->repeated()) continue;
    const bool given = std::visit([&](const auto& slot) { return slot.get(design, 0).has_value(); }, row.binding);
    const bool always = row.required || row.key == "module" || row.key == "units";
    EXPECT_EQ(given, always) << row.table << "." << row.key;
  }
}

TEST(Values, TablesThatRepeatKeepTheirOrder) {
  const Design design = good(least +
                             "[[bench.obstacle]]\nname = \"left leg\"\nfrom = [-400, 50, 60]\nto = [-320, 130, 800]\n"
                             "[[bench.obstacle]]\nname = \"drawer\"\nfrom = [0, 200, 60]\nto = [300, 500, 160]\n");
  ASSERT_EQ(design.bench.obstacles.size(), 2U);
  EXPECT_EQ(design.bench.obstacles[0].from.value[0], mm(-400));
  EXPECT_EQ(design.bench.obstacles[1].name.value, "drawer");
  EXPECT_EQ(design.bench.obstacles[1].to.value[2], mm(160));
}

TEST(Values, StrengthClassesSayTheirYieldStress) {
  // ISO 898-1 from memory: 4.6 yields at 0.6 of 400 MPa, 8.8 at 0.8 of 800, 10.9 at 0.9 of 1000, 12.9 at 0.9 of 1200.
  EXPECT_EQ(yield_stress("4.6"), units::megapascals(240));
  EXPECT_EQ(yield_stress("8.8"), units::megapascals(640));
  EXPECT_EQ(yield_stress("10.9"), units::megapascals(900));
  EXPECT_EQ(yield_stress("12.9"), units::megapascals(1080));
  EXPECT_EQ(yield_stress("300 MPa"), units::megapascals(300));
  EXPECT_EQ(yield_stress("287.5MPa"), units::megapascals(287.5));
  for (const char* none : {"", "MPa", "300", "7.7", "-300 MPa", "1e2 MPa", "300 mpa", "3.0.0 MPa", "nan MPa"}) {
    EXPECT_FALSE(yield_stress(none)) << none;
  }
}

/// A file that gives every key once by its example, and repeated tables twice.
std::string full_file(const std::string& units) {
  std::string text = "units = \"" + units + "\"\n";
  for (const TableRow& table : tables()) {
    for (int i = 0; i < (table.repeated() ? 2 : 1); ++i) {
      if (!table.name.empty() && !keys_of(table.name).empty()) text += heading(table.name) + "\n";
      for (const KeyRow& row : keys_of(table.name)) {
        if (row.key == "units" || row.key == "diametral_pitch") continue;
        text.append(row.key).append(" = ").append(row.example).append("\n");
      }
    }
  }
  return text;
}

TEST(Writing, OfAFullDesignReadsBackTheSame) {
  for (const char* unit : {"mm", "in"}) {
    const Design design = good(full_file(unit));
    const std::string written = write(design);
    const Design back = good(written);
    EXPECT_TRUE(same_values(design, back)) << written;
    EXPECT_EQ(write(back), written);
  }
}

TEST(Writing, MixesUnitsWithoutLoss) {
  const std::string inch =
      "units = \"in\"\nopening = 8\naxis_depth = \"4-1/2 in\"\n[train]\nteeth = [28, 28, 28, 28, 28]\ndiametral_pitch "
      "= 8\n"
      "backlash = 0.018\npressure_angle = 14.5\ncentre_distances = [3.5, \"3 33/64 in\", \"88.9 mm\", \"3.51 in\"]\n"
      "[screw]\nthread = \"1-5 Acme\"\nlength = \"451.3 mm\"\n[drive]\nhand_force = \"22 lbf\"\n"
      "[gaps]\ngear_to_wood = 0.0807\nweb = \"1/3 in\"\n";
  const Design design = good(inch);
  const std::string written = write(design);
  EXPECT_TRUE(same_values(design, good(written))) << written;
  EXPECT_THAT(written, testing::HasSubstr("opening = 8\n"));
  EXPECT_THAT(written, testing::HasSubstr("axis_depth = \"4-1/2 in\"\n"));
  EXPECT_THAT(written, testing::HasSubstr("backlash = 0.018\n"));
  EXPECT_THAT(written, testing::HasSubstr("pressure_angle = 14.5\n"));
  EXPECT_THAT(written, testing::HasSubstr("\"3-33/64 in\""));
  EXPECT_EQ(design.train.centre_distances->value[1], inches(225, 64));
}

TEST(Writing, EveryLengthReadsBackToTheLastBit) {
  // Lengths out of thousandths and 256ths of an inch and of thousandths and sevenths of a millimetre, in both files.
  for (const auto unit : {units::LengthUnit::millimetre, units::LengthUnit::inch}) {
    for (long i = 401; i < 2000; i += 7) {
      Design design = good(least);
      design.unit = unit;
      auto& list = design.shop.drills.emplace().value;
      list = {inches(i, 1000), inches(i, 256), mm(static_cast<double>(i) / 1000), mm(static_cast<double>(i) / 7)};
      const Design back = good(write(design));
      ASSERT_TRUE(same_values(design, back)) << write(design);
    }
  }
}

TEST(Writing, EveryForceAndAngleReadsBackToTheLastBit) {
  for (int i = 101; i < 1000; i += 3) {
    Design design = good(least);
    design.drive.hand_force = {units::newtons(i / 7.0), {}};
    design.train.pressure_angle = {units::degrees(10 + i / 43.0), {}};
    design.assume.thread_friction = {i / 1009.0, {}};
    ASSERT_TRUE(same_values(design, good(write(design)))) << write(design);
  }
}

TEST(Writing, QuotesTexts) {
  const std::string text = "title = 'The \"big\" vise, C:\\ ⌀20'\n" + least;
  const Design design = good(text);
  EXPECT_THAT(write(design), testing::HasSubstr("title = \"The \\\"big\\\" vise, C:\\\\ ⌀20\"\n"));
  EXPECT_TRUE(same_values(design, good(write(design))));
}

TEST(Writing, IsCanonical) {
  // Order of keys, spelling of lists and comments of the maker's file do not matter.
  const std::string one =
      "[screw]\nthread = \"M20\"\n[drive.wheel]\nhub = 45 # long\n[train]\nmodule = 3.0\nteeth=[30,30,30]\n";
  EXPECT_EQ(write(good(one)),
            "units = \"mm\"\n\n[train]\nteeth = [30, 30, 30]\nmodule = 3\n\n[screw]\nthread = "
            "\"M20\"\n\n[drive]\nwheel = { hub "
            "= 45 }\n");
}

TEST(SameValues, IgnorePlacesAndSeeEveryKey) {
  const Design design = good(least);
  EXPECT_TRUE(same_values(design, good("# a line more\n" + least)));
  const Design full = good(full_file("mm"));
  for (const KeyRow& row : keys()) {
    if (row.key == "units") continue;
    Design other = full;
    std::visit([&](const auto& slot) { slot.put(other, 0, {}); }, row.binding);
    if (row.key == "hand_grips") other.front_jaw.hand_grips.reset();
    if (row.key == "diametral_pitch") continue;
    EXPECT_FALSE(same_values(full, other)) << row.table << "." << row.key;
  }
  Design fewer = full;
  fewer.stock.pop_back();
  EXPECT_FALSE(same_values(full, fewer));
  EXPECT_FALSE(same_values(fewer, full));
}

}  // namespace
}  // namespace visewright::design
