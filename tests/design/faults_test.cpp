// Bad files side by side with the nearest good ones.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "design/keys.h"
#include "design/reading_designs.h"

namespace visewright::design {
namespace {

using testing::HasSubstr;

/// One change makes a bad file good. The fault's line, key and words are worked out by hand from the text.
struct Pair {
  std::string bad;
  std::uint32_t line;
  std::string key, wrong, right;
  std::string good;
};

void check(const Pair& pair) {
  SCOPED_TRACE(pair.bad);
  const base::Faults faults = faults_of(pair.bad);
  ASSERT_EQ(faults.size(), 1U) << as_text(faults);
  ASSERT_TRUE(faults[0].place);
  EXPECT_EQ(faults[0].place->line, pair.line) << as_text(faults);
  EXPECT_EQ(faults[0].place->text, 0U);
  EXPECT_EQ(faults[0].key, pair.key);
  EXPECT_THAT(faults[0].wrong, HasSubstr(pair.wrong));
  EXPECT_THAT(faults[0].right, HasSubstr(pair.right));
  EXPECT_EQ(as_text(faults_of(pair.good)), "") << pair.good;
}

std::string train(const std::string& more) { return least_screw + "[train]\n" + more; }

TEST(Faults, KeysAndTablesThatAreNotKnown) {
  check({train("teeth = [30, 30, 30]\nmodul = 3\nmodule = 3"), 4, "train.modul", "there is no such key in [train]",
         "the nearest known is module", train("teeth = [30, 30, 30]\nmodule = 3")});
  check({least + "[frnt_jaw]\nbacking = 40\n", 3, "frnt_jaw", "no such key in the top level",
         "the nearest known is front_jaw", least + "[front_jaw]\nbacking = 40\n"});
  check({"backlash = 0.4\n" + least, 1, "backlash", "no such key", "backlash is a key of [train]", least});
  check({least + "[drive.weel]\nhub = 45\n", 3, "drive.weel", "no such key in [drive]", "the nearest known is wheel",
         least + "[drive.wheel]\nhub = 45\n"});
  check({least + "[[stock]]\nkind = \"board\"\nmaterial = \"oak\"\nprise = 3\n", 6, "stock.prise", "in [[stock]]",
         "price", least + "[[stock]]\nkind = \"board\"\nmaterial = \"oak\"\nprice = 3\n"});
  check({least + "\"\" = 1\n", 3, "", "no such key", "nearest", least});
}

TEST(Faults, TablesAndValuesTakenForEachOther) {
  check({least + "cover = 8\n", 3, "cover", "this is a number", "a table: [cover]",
         least + "cover = { thickness = 8 }\n"});
  check({least + "[opening]\nwide = 3\n", 3, "opening", "this is a table", "a length from 10 mm to 1500 mm",
         "opening = 30\n" + least});
  check({least + "[stock]\nkind = \"board\"\nmaterial = \"oak\"\n", 3, "stock", "this is a table", "[[stock]]",
         least + "[[stock]]\nkind = \"board\"\nmaterial = \"oak\"\n"});
  check({least + "[[cover]]\nthickness = 8\n", 3, "cover", "this is a list", "[cover]",
         least + "[cover]\nthickness = 8\n"});
  check({least + "stock = [3]\n", 3, "stock", "this is a number", "[[stock]]", least + "stock = []\n"});
  check({"train = 3\n" + least_screw, 1, "train", "this is a number", "[train]", least});
}

TEST(Faults, KeysThatMustBeGiven) {
  check({"[train]\nmodule = 3\n[screw]\nthread = \"M20\"\n", 1, "train.teeth", "missing in [train]",
         "teeth = [30, 30, 30]", "[train]\nmodule = 3\nteeth = [20, 20]\n[screw]\nthread = \"M20\"\n"});
  check({least_screw + "\n[train]\nteeth = [30, 30, 30]\n", 3, "train", "neither module nor diametral_pitch",
         "module = 3", train("teeth = [30, 30, 30]\ndiametral_pitch = 8\n")});
  check({least_train + "[screw]\nlength = 475\n", 2, "screw.thread", "missing in [screw]", "\"M20\"", least});
  check({least_train, 0, "screw.thread", "missing in [screw]", "\"M20\"", least});
  check({least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2, 3]\n", 3, "bench.obstacle.to",
         "missing in [[bench.obstacle]]", "a list of 3 lengths",
         least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2, 3]\nto = [2, 3, 4]\n"});
  // Nothing at all: three keys are wanted, each said once.
  EXPECT_EQ(faults_of("").size(), 3U) << as_text(faults_of(""));
}

TEST(Faults, NamesThatTheCatalogueLacks) {
  check({least_train + "screw = { thread = \"M21\" }\n", 2, "screw.thread", "\"M21\" is not known", "\"M20\"",
         least_train + "screw = { thread = \"m20\" }\n"});
  check({least_train + "screw = { thread = \"Tr 24x6\" }\n", 2, "screw.thread", "not known", "\"Tr 24x5\"",
         least_train + "screw = { thread = \"Tr24 x 5\" }\n"});
  check({least + "front_jaw = { wood = \"beach\" }\n", 3, "front_jaw.wood", "\"beach\" is not known", "\"beech\"",
         least + "front_jaw = { wood = \"Beech\" }\n"});
  check({least + "front_jaw = { wood = \"steel\" }\n", 3, "front_jaw.wood", "\"steel\" is a metal", "a wood or panel",
         least + "front_jaw = { wood = \"birch plywood\" }\n"});
  check({least + "collar = { washer = \"larg\" }\n", 3, "collar.washer", "not known", "\"normal\" or \"large\"",
         least + "collar = { washer = \"large\" }\n"});
  check({least + "collar = { nut = \"hexagon nut M19\" }\n", 3, "collar.nut", "not known", "\"hexagon nut M10\"",
         least + "collar = { nut = \"hexagon nut M20\" }\n"});
  check({least + "rear_jaw = { mounting = { screw = \"6 x 91\" } }\n", 3, "rear_jaw.mounting.screw", "not known",
         "wood screw 6 x 90", least + "rear_jaw = { mounting = { screw = \"6 x 90\" } }\n"});
}

TEST(Faults, WordsOutOfAList) {
  check({"units = \"cm\"\n" + least, 1, "units", "\"cm\" is none of the words", "\"mm\" or \"in\"",
         "units = \"in\"\n" + least});
  check({least + "drive = { at = \"center\" }\n", 3, "drive.at", "\"center\"", "the nearest is \"centre\"",
         least + "drive = { at = \"centre\" }\n"});
  check({least_train + "screw = { thread = \"M20\", strength_class = \"7.7\" }\n", 2, "screw.strength_class", "\"7.7\"",
         "MPa", least_train + "screw = { thread = \"M20\", strength_class = \"300 MPa\" }\n"});
  check({least_train + "screw = { thread = \"M20\", strength_class = \"30 MPa\" }\n", 2, "screw.strength_class",
         "less than 100", "MPa", least_train + "screw = { thread = \"M20\", strength_class = \"8.8\" }\n"});
  check({least_train + "screw = { thread = \"M20\", strength_class = 8.8 }\n", 2, "screw.strength_class",
         "this is a number", "\"8.8\"", least_train + "screw = { thread = \"M20\", strength_class = \"8.8\" }\n"});
  check({least_train + "screw = { thread = \"M20\", hand = \"rigt\" }\n", 2, "screw.hand", "\"rigt\"",
         "the nearest is \"right\"", least_train + "screw = { thread = \"M20\", hand = \"left\" }\n"});
  check({least + "front_jaw = { hand_grips = \"yes\" }\n", 3, "front_jaw.hand_grips", "this is a text", "true or false",
         least + "front_jaw = { hand_grips = true }\n"});
  check({"date = \"2023-02-29\"\n" + least, 1, "date", "no day of the calendar", "year-month-day",
         "date = \"2024-02-29\"\n" + least});
  check({"date = \"29.2.2024\"\n" + least, 1, "date", "no day of the calendar", "year-month-day",
         "date = 2024-02-29\n" + least});
  check({"title = \"a\\nb\"\n" + least, 1, "title", "line break", "on one line", "title = \"a b\"\n" + least});
  check({"title = \"" + std::string(201, 'x') + "\"\n" + least, 1, "title", "longer than 200", "a text",
         "title = \"" + std::string(200, 'x') + "\"\n" + least});
}

TEST(Faults, ListsOfTheWrongLength) {
  const std::string three = "teeth = [30, 30, 30]\nmodule = 3\n";
  check({train("teeth = [30]\nmodule = 3"), 3, "train.teeth", "holds 1 value", "2 to 63",
         train("teeth = [30, 30]\nmodule = 3")});
  check({train(three + "profile_shift = [0.1, 0.1]"), 5, "train.profile_shift",
         "2 values, but teeth in line 3 gives 3 gears", "3 values", train(three + "profile_shift = 0.1")});
  check({train(three + "centre_distances = [90, 90, 90]"), 5, "train.centre_distances",
         "but teeth in line 3 gives 3 gears", "2 values", train(three + "centre_distances = [90, 90.2]")});
  check({least_train + "screw = { thread = \"M20\", hand = [\"right\", \"right\", \"right\"] }\n", 2, "screw.hand",
         "holds 3 values", "a list of two",
         least_train + "screw = { thread = \"M20\", hand = [\"right\", \"right\"] }\n"});
  check({least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2]\nto = [2, 3, 4]\n", 5, "bench.obstacle.from",
         "holds 2 values", "a list of 3 lengths",
         least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2, 3]\nto = [2, 3, 4]\n"});
  check({least + "measured = { axle_centres = [[-90], [0]] }\n", 3, "measured.axle_centres",
         "teeth in line 1 gives 3 gears", "3 values",
         least + "measured = { axle_centres = [[-90], [0, 0.1], [90]] }\n"});
  check({least + "measured = { axle_centres = [[-90], [0, 1, 2], [90]] }\n", 3, "measured.axle_centres",
         "value 2: this list holds 3 values", "lists of one or two",
         least + "measured = { axle_centres = [[-90], [0, 1], [90]] }\n"});
}

TEST(Faults, WhatContradictsItself) {
  check({train("module = 3\nteeth = [30, 30]\ndiametral_pitch = 8"), 5, "train.diametral_pitch",
         "the pitch is given twice: module stands in line 3", "one of module",
         train("teeth = [30, 30]\ndiametral_pitch = 8")});
  check({train("teeth = [30, 20, 31]\nmodule = 3"), 3, "train.teeth", "first gear has 30 teeth and the last 31",
         "same number", train("teeth = [30, 20, 30]\nmodule = 3")});
  const std::string even = "train = { teeth = [30, 30], module = 3 }\n";
  check({even + "[screw]\nthread = \"M20\"\nhand = \"right\"\n", 4, "screw.hand",
         "teeth in line 1 gives 2 gears, so the screws turn opposite ways, but both threads are of the right hand",
         "[\"right\", \"left\"]", even + "[screw]\nthread = \"M20\"\nhand = [\"left\", \"right\"]\n"});
  check({least_train + "[screw]\nthread = \"M20\"\nhand = [\"right\", \"left\"]\n", 4, "screw.hand",
         "teeth in line 1 gives 3 gears, so the screws turn the same way", "of one hand",
         least_train + "[screw]\nthread = \"M20\"\nhand = [\"left\", \"left\"]\n"});
  check({even + least_screw + "drive = { at = \"centre\" }\n", 3, "drive.at", "teeth in line 1 gives 2 gears",
         "an odd count", least + "drive = { at = \"centre\" }\n"});
  check({least + "collar = { nut = \"hexagon nut M16\" }\n", 3, "collar.nut",
         "this nut is for M16, but thread in line 2 gives M20", "a nut for M20",
         least + "collar = { nut = \"hexagon nut M20-LH\" }\n"});
  check({least + "measured = { axle_centres = [[-90], [90], [0]] }\n", 3, "measured.axle_centres",
         "value 3 lies no further", "left to right", least + "measured = { axle_centres = [[-90], [0], [90]] }\n"});
  check({least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2, 3]\nto = [2, 2, 4]\n", 6, "bench.obstacle.to",
         "equal in their measure back: from stands in line 5", "opposite corners",
         least + "[[bench.obstacle]]\nname = \"leg\"\nfrom = [1, 2, 3]\nto = [2, 1, 4]\n"});
}

TEST(Faults, ANumberThatCannotBeReadIsNotAlsoSaidToBeMissing) {
  const base::Faults faults = faults_of(train("teeth = [30, 3, 30]\nmodule = -3"));
  ASSERT_EQ(faults.size(), 2U) << as_text(faults);
  EXPECT_EQ(faults[0].key, "train.teeth");
  EXPECT_EQ(faults[0].wrong, "value 2: this is 3, which is less than 8");
  EXPECT_EQ(faults[1].key, "train.module");
}

TEST(Faults, ComeInTheOrderOfTheLines) {
  // Contradictions and missing keys are found last, yet stand where they belong.
  const std::string text =
      "units = \"mm\"\n[train]\nteeth = [30, 30, 31]\nmodule = \"3 kg\"\n[drive]\nat = \"top\"\n[cover]\nthicknes = 8\n"
      "[screw]\nlength = 475\n";
  std::vector<std::uint32_t> lines;
  for (const base::Fault& fault : faults_of(text)) lines.push_back(fault.place->line);
  EXPECT_THAT(lines, testing::ElementsAre(3, 4, 6, 8, 9)) << as_text(faults_of(text));
}

std::string with_wrong_lines(int count) {
  std::string text = least + "[gaps]\n";
  for (int i = 0; i < count; ++i) text += "gap" + std::to_string(i) + " = 1\n";
  return text;
}

TEST(Faults, AreToldUpToTwentyAndThenCounted) {
  EXPECT_EQ(faults_of(with_wrong_lines(20)).size(), 20U);
  const base::Faults faults = faults_of(with_wrong_lines(27));
  ASSERT_EQ(faults.size(), 21U);
  // [gaps] stands on line 3, so the twentieth wrong line is line 23.
  EXPECT_EQ(faults[19].place->line, 23U);
  EXPECT_EQ(faults[20].wrong, "and 7 more");
  EXPECT_EQ(faults[20].key, "vise.toml");
  EXPECT_FALSE(faults[20].place);
}

TEST(Faults, OfTheTextItselfAreReadingsOwn) {
  const base::Faults faults = faults_of("[train\n");
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults[0].key, "vise.toml");
  EXPECT_EQ(faults[0].place->line, 1U);
}

TEST(Faults, SayLimitsInTheUnitOfTheFile) {
  const base::Faults faults = faults_of("units = \"in\"\nopening = 100\n" + least);
  ASSERT_EQ(faults.size(), 1U);
  // 1500 mm / 25.4 = 59.0551 in.
  EXPECT_EQ(faults[0].wrong, "this is 100 in, which is more than 59.0551 in");
}

}  // namespace
}  // namespace visewright::design
