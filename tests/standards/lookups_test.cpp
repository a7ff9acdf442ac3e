#include <gtest/gtest.h>

#include <set>
#include <string>
#include <utility>

#include "standards/designation.h"
#include "standards/known_catalogue.h"

namespace visewright::standards {
namespace {

// Expected values: the spellings that the rule names, by hand.

std::string thread(std::string_view designation) {
  const ThreadRow* row = known().thread(designation);
  return row == nullptr ? "none" : row->designation;
}

TEST(Lookups, ForgiveHowAThreadIsWritten) {
  for (const char* spelling : {"M20", "m20", " M 20 ", "M20x2.5", "m20 \u00D7 2.5"}) EXPECT_EQ(thread(spelling), "M20");
  for (const char* spelling : {"Tr 24x5", "Tr24x5", "tr 24 X 5", "TR24\u00D75"}) {
    EXPECT_EQ(thread(spelling), "Tr 24x5");
  }
  for (const char* spelling : {"1-5 Acme", "1-5 acme", "1\"-5 ACME", "1 - 5 acme"}) {
    EXPECT_EQ(thread(spelling), "1-5 Acme");
  }
  for (const char* spelling : {"1-1/4-5 Acme", "1 1/4-5 acme", "1 1/4\"-5 Acme"}) {
    EXPECT_EQ(thread(spelling), "1-1/4-5 Acme");
  }
  EXPECT_EQ(thread("3/4-10unc"), "3/4-10 UNC");
}

TEST(Lookups, GuessNothing) {
  for (const char* unknown : {"", "M", "M21", "M20x1.5", "20", "Tr 24", "3/4-10", "11/4-5 Acme", "M20-LH"}) {
    EXPECT_EQ(thread(unknown), "none") << unknown;
  }
  EXPECT_EQ(known().hexagon_nut("M21", false), nullptr);
  EXPECT_EQ(known().hexagon_nut("Tr 24x5", false), nullptr);
  EXPECT_EQ(known().long_nut("1-5 Acme", true), nullptr);
  EXPECT_EQ(known().washer("M21", false), nullptr);
  EXPECT_EQ(known().bearing("6007"), nullptr);
  EXPECT_EQ(known().material("wood"), nullptr);
  EXPECT_EQ(known().wood_screw("6 x 91"), nullptr);
}

TEST(Lookups, PiecesForgiveTheSpellingOfTheirThread) {
  EXPECT_EQ(known().hexagon_nut("m20x2.5", true), known().hexagon_nut("M20", true));
  EXPECT_NE(known().hexagon_nut("M20", true), known().hexagon_nut("M20", false));
  EXPECT_EQ(known().hexagon_bar("tr24x5", false)->thread, "Tr 24x5");
  EXPECT_EQ(known().washer("1-5acme", true)->thread, "1-5 Acme");
  EXPECT_EQ(known().clearance("m 20")->thread, "M20");
}

TEST(Lookups, MaterialsTakeTheirWordsInAnyOrder) {
  ASSERT_NE(known().material("birch plywood"), nullptr);
  EXPECT_EQ(known().material("Plywood, birch"), known().material("birch plywood"));
  EXPECT_EQ(known().material("petg")->name, "PETG");
  EXPECT_EQ(known().material("BEECH")->name, "beech");
}

TEST(Lookups, WoodScrewsByFullOrShortName) {
  ASSERT_NE(known().wood_screw("wood screw 6 x 90"), nullptr);
  EXPECT_EQ(known().wood_screw("6x90"), known().wood_screw("wood screw 6 x 90"));
  EXPECT_EQ(known().wood_screw("6 \u00D7 90"), known().wood_screw("6x90"));
  EXPECT_EQ(known().wood_screw("#10 x 1 1/2 in"), known().wood_screw("wood screw #10 x 1-1/2 in"));
}

TEST(Lookups, KeysAreTheirOwnKeys) {
  for (const char* text : {"1 1/4-5 Acme", "Tr 24 \u00D7 5", "#10 x 1 1/2 in", "long nut M12, ISO 272 flats"}) {
    const std::string key = designation_key(text);
    EXPECT_EQ(designation_key(key), key);
  }
  EXPECT_EQ(name_key(name_key("plywood,  Birch")), "birch plywood");
}

template <class Rows>
void expect_distinct(const Rows& rows) {
  std::set<std::string> seen;
  for (const auto& row : rows) EXPECT_TRUE(seen.insert(designation_key(row.designation)).second) << row.designation;
}

/// Two rows under one key would hide one of them.
TEST(Lookups, NoTwoRowsShareAKey) {
  expect_distinct(known().threads());
  expect_distinct(known().nuts());
  expect_distinct(known().bearings());
  expect_distinct(known().wood_screws());
  std::set<std::string> seen;
  for (const MaterialRow& row : known().materials()) EXPECT_TRUE(seen.insert(name_key(row.name)).second) << row.name;
  std::set<std::pair<std::string, bool>> washers;
  for (const WasherRow& row : known().washers()) {
    EXPECT_TRUE(washers.emplace(row.thread, row.large).second) << row.designation << " for " << row.thread;
  }
}

TEST(Lookups, RowsStayWhereTheyAreWhenTheCatalogueIsMoved) {
  Catalogue first = Catalogue::embedded().value();
  const ThreadRow* before = first.thread("M20");
  const Catalogue second = std::move(first);
  EXPECT_EQ(second.thread("M20"), before);
}

}  // namespace
}  // namespace visewright::standards
