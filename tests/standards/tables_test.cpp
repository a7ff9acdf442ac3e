// What happens to a table that is wrong. Expected values by hand from the texts given.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <string>

#include "standards/known_catalogue.h"

namespace visewright::standards {
namespace {

base::Faults faults_of(std::string_view text) {
  const std::array files{TextFile{"good.toml", ""}, TextFile{"holes.toml", text}};
  const auto read = Catalogue::read(files);
  return read ? base::Faults{} : read.error();
}

constexpr std::string_view good =
    "[[clearances]]\n"
    "standard = \"by hand\"\n"
    "known = \"computed\"\n"
    "unit = \"in\"\n"
    "columns = [\"thread\", \"fine\", \"medium\", \"coarse\"]\n"
    "rows = [\n"
    "  [\"M20\", 1, \"21 mm\", \"1-1/4 in\"],\n"
    "]\n";

std::string spoiled(std::string_view what, std::string_view with) {
  std::string text(good);
  return text.replace(text.find(what), what.size(), with);
}

TEST(Tables, BareNumbersTakeTheUnitOfTheTableAndTextsTheirOwn) {
  const std::array files{TextFile{"holes.toml", good}};
  const auto read = Catalogue::read(files);
  ASSERT_TRUE(read.has_value());
  const ClearanceRow& row = read->clearances().front();
  EXPECT_NEAR(units::in_mm(row.fine), 25.4, 1e-12);
  EXPECT_NEAR(units::in_mm(row.medium), 21, 1e-12);
  EXPECT_NEAR(units::in_mm(row.coarse), 31.75, 1e-12);
  EXPECT_EQ(row.source.standard, "by hand");
}

struct Spoiled {
  std::string text;
  std::uint32_t line;
  std::string wrong;
};

class SpoiledTable : public testing::TestWithParam<Spoiled> {};

TEST_P(SpoiledTable, IsOurOwnMistakeWithItsPlace) {
  const auto faults = faults_of(GetParam().text);
  ASSERT_FALSE(faults.empty());
  const base::Fault& fault = faults.front();
  EXPECT_EQ(fault.cause, base::Cause::own_mistake);
  EXPECT_EQ(fault.key, "holes.toml");
  ASSERT_TRUE(fault.place.has_value());
  EXPECT_EQ(fault.place->text, 3) << "the second file of the catalogue";
  EXPECT_EQ(fault.place->line, GetParam().line);
  EXPECT_THAT(fault.wrong, testing::HasSubstr(GetParam().wrong));
  EXPECT_FALSE(fault.right.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Standards, SpoiledTable,
    testing::Values(Spoiled{"[[clearances]\n", 1, "heading"}, Spoiled{spoiled("[[clearances]]", "[[nets]]"), 1, "nets"},
                    Spoiled{spoiled("[[clearances]]", "[clearances]"), 1, "no kind of table"},
                    Spoiled{"clearances = [1]\n", 1, "no table"}, Spoiled{spoiled("rows = ", "lines = "), 1, "both"},
                    Spoiled{spoiled(", 1,", ","), 7, "one figure a column"},
                    Spoiled{spoiled(", 1,", ", 0,"), 7, "fine"}, Spoiled{spoiled(", 1,", ", -1,"), 7, "fine"},
                    Spoiled{spoiled(", 1,", ", nan,"), 7, "fine"}, Spoiled{spoiled(", 1,", ", true,"), 7, "fine"},
                    Spoiled{spoiled("21 mm", "21 furlongs"), 7, "21 furlongs"},
                    Spoiled{spoiled("21 mm", "21"), 7, "medium"}, Spoiled{spoiled("\"M20\"", "20"), 7, "thread"},
                    Spoiled{spoiled("\"M20\"", "\"\""), 7, "thread"},
                    Spoiled{spoiled("\"coarse\"", "\"course\""), 7, "coarse: it is missing"},
                    Spoiled{spoiled("computed", "guessed"), 7, "guessed"},
                    Spoiled{spoiled("standard = \"by hand\"\n", ""), 6, "standard: it is missing"},
                    Spoiled{spoiled("\"in\"", "\"ft\""), 7, "ft"},
                    Spoiled{spoiled("unit", "colour = \"red\"\nunit"), 8, "colour: nothing reads this column"}));

TEST(Tables, AllFaultsAreToldInTheOrderOfTheText) {
  const auto faults = faults_of(spoiled(", 1,", ", 0,") + std::string(good) + spoiled("\"M20\"", "20"));
  ASSERT_EQ(faults.size(), 2U);
  EXPECT_EQ(faults[0].place->line, 7U);
  EXPECT_EQ(faults[1].place->line, 23U);
}

template <class Rows>
void expect_sources(const Rows& rows) {
  for (const auto& row : rows) {
    EXPECT_FALSE(row.source.standard.empty());
    EXPECT_THAT(row.source.known, testing::AnyOf("sighted", "computed", "from memory"));
  }
  EXPECT_FALSE(rows.empty());
}

/// Every row says where it is from and how sure that is.
TEST(Tables, EveryEmbeddedRowHasItsSource) {
  expect_sources(known().threads());
  expect_sources(known().nuts());
  expect_sources(known().no_standard_nuts());
  expect_sources(known().washers());
  expect_sources(known().clearances());
  expect_sources(known().bearings());
  expect_sources(known().materials());
  expect_sources(known().wood_screws());
}

}  // namespace
}  // namespace visewright::standards
