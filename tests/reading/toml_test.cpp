// Expected values in this file are derived by hand from TOML 1.0 and the texts given; no outside source is needed.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "reading/tree.h"

namespace visewright::reading {
namespace {

Table read(std::string_view text) {
  auto table = read_toml(text, "vise.toml", 3);
  EXPECT_TRUE(table.has_value()) << (table ? "" : table.error().front().wrong);
  return table.value_or(Table{});
}

template <class T>
const T& what(const Table& table, std::string_view key) {
  return std::get<T>(table.find(key)->value.what);
}

std::vector<std::string> keys(const Table& table) {
  std::vector<std::string> all;
  for (const Entry& entry : table.entries) all.push_back(entry.key);
  return all;
}

base::Place at(std::uint32_t line, std::uint32_t column) { return {3, line, column}; }

TEST(ReadToml, EveryKindOfValue) {
  const Table table = read(
      "text = \"19 mm\"\nwhole = -7\nnumber = 2.5\nyes = true\nday = 2024-02-29\nlist = [1, \"two\"]\n"
      "inner = { a = 1 }\n");
  EXPECT_EQ(what<std::string>(table, "text"), "19 mm");
  EXPECT_EQ(what<std::int64_t>(table, "whole"), -7);
  EXPECT_EQ(what<double>(table, "number"), 2.5);
  EXPECT_TRUE(what<bool>(table, "yes"));
  EXPECT_EQ(what<std::string>(table, "day"), "2024-02-29");
  EXPECT_EQ(std::get<std::string>(what<Array>(table, "list").at(1).what), "two");
  EXPECT_EQ(what<std::int64_t>(what<Table>(table, "inner"), "a"), 1);
}

TEST(ReadToml, NamesKindsInPlainWords) {
  const Table table = read("a = 1\nb = 1.5\nc = 'x'\nd = []\ne = {}\nf = false\n");
  EXPECT_EQ(kind_of(table.find("a")->value), "a number");
  EXPECT_EQ(kind_of(table.find("b")->value), "a number");
  EXPECT_EQ(kind_of(table.find("c")->value), "a text");
  EXPECT_EQ(kind_of(table.find("d")->value), "a list");
  EXPECT_EQ(kind_of(table.find("e")->value), "a table");
  EXPECT_EQ(kind_of(table.find("f")->value), "true or false");
}

TEST(ReadToml, EntriesKeepTheOrderOfTheText) {
  const Table table = read("zeta = 1\nalpha = 2\n[train]\nteeth = 1\nmodule = 2\n[bench]\n[apron]\n");
  EXPECT_THAT(keys(table), testing::ElementsAre("zeta", "alpha", "train", "bench", "apron"));
  EXPECT_THAT(keys(what<Table>(table, "train")), testing::ElementsAre("teeth", "module"));
}

TEST(ReadToml, DottedKeysStandWhereTheyFirstAppear) {
  const Table table = read("train.teeth = 1\nscrew.hand = 'left'\ntrain.module = 3\n");
  EXPECT_THAT(keys(table), testing::ElementsAre("train", "screw"));
  EXPECT_THAT(keys(what<Table>(table, "train")), testing::ElementsAre("teeth", "module"));
}

TEST(ReadToml, EverythingKnowsItsPlace) {
  const Table table = read("# first\ntitle = 'x'\n[[stock]]\nsize = [10,\n  20]\n[[stock]]\n");
  EXPECT_EQ(table.find("title")->place, at(2, 1));
  EXPECT_EQ(table.find("title")->value.place, at(2, 9));
  const auto& stock = what<Array>(table, "stock");
  ASSERT_EQ(stock.size(), 2U);
  EXPECT_EQ(stock[1].place, at(6, 1));
  const auto& size = what<Array>(std::get<Table>(stock[0].what), "size");
  EXPECT_EQ(size.at(1).place, at(5, 3));
}

TEST(ReadToml, ColumnsCountLettersNotBytes) {
  const Table table = read("a = { b = 'Eschenholz ß', c = 2 }\n");
  EXPECT_EQ(what<Table>(table, "a").find("c")->place, at(1, 27));
}

TEST(ReadToml, NotANumberAndInfinityPassThrough) {
  const Table table = read("a = nan\nb = -inf\n");
  EXPECT_TRUE(std::isnan(what<double>(table, "a")));
  EXPECT_EQ(what<double>(table, "b"), -std::numeric_limits<double>::infinity());
}

TEST(ReadToml, FindsNothingUnderAnUnknownKey) { EXPECT_EQ(read("a = 1\n").find("b"), nullptr); }

TEST(ReadToml, EmptyTextIsAnEmptyTable) { EXPECT_TRUE(read("").entries.empty()); }

TEST(ReadToml, TakesTheMarkThatSomeEditorsPutInFront) {
  EXPECT_EQ(read("\xEF\xBB\xBF"
                 "a = 1\n")
                .find("a")
                ->place,
            at(1, 1));
}

struct Bad {
  std::string text;
  std::uint32_t line, column;
  std::string wrong, right;  // what the message must contain
};

class BadText : public testing::TestWithParam<Bad> {};

TEST_P(BadText, IsOneFaultWithItsPlaceInPlainWords) {
  const Bad& bad = GetParam();
  const auto read = read_toml(bad.text, "vise.toml", 3);
  ASSERT_FALSE(read.has_value());
  ASSERT_EQ(read.error().size(), 1U);
  const base::Fault& fault = read.error().front();
  EXPECT_EQ(fault.cause, base::Cause::input);
  EXPECT_EQ(fault.key, "vise.toml");
  EXPECT_EQ(fault.place, at(bad.line, bad.column));
  EXPECT_THAT(fault.wrong, testing::HasSubstr(bad.wrong));
  EXPECT_THAT(fault.right, testing::HasSubstr(bad.right));
}

INSTANTIATE_TEST_SUITE_P(
    Toml, BadText,
    testing::Values(
        Bad{"a = ", 1, 5, "ends where a value", "key = value"}, Bad{"teeth", 1, 6, "ends where a value", "key = value"},
        Bad{"a = \nb = 1", 1, 5, "no value after the =", "a number"},
        Bad{"a b = 1", 1, 3, "no = after the key", "key = value"}, Bad{"a: 1", 1, 2, "no = after the key", ""},
        Bad{"= 1", 1, 1, "neither a key nor a heading", "letters"},
        Bad{"jaw.. = 1", 1, 5, "key cannot be read", "letters"},
        Bad{"size = 19 mm", 1, 11, "behind the value", "\"19 mm\""},
        Bad{"size = 1,5", 1, 9, "behind the value", "one value on a line"},
        Bad{"size = 3/4 in", 1, 9, "number cannot be read", "in quotes"},
        Bad{"a = 01", 1, 7, "number cannot be read", "digits"}, Bad{"a = .5", 1, 5, "number cannot be read", "digits"},
        Bad{"a = 1.", 1, 7, "number cannot be read", "digits"},
        Bad{"a = 99999999999999999999", 1, 25, "number cannot be read", "digits"},
        Bad{"a = beech", 1, 5, "value cannot be read", "a text in quotes"},
        Bad{"a = True", 1, 5, "value cannot be read", "true or false"},
        Bad{"a = 2024-13-01", 1, 12, "date cannot be read", "year-month-day"},
        Bad{"a = 25:00:00", 1, 7, "time cannot be read", "hours"},
        Bad{"a = \"open", 1, 10, "not closed", "quotes at both ends"},
        Bad{"a = \"two\nlines\"", 1, 9, "text cannot be read", "on one line"},
        Bad{"a = \"\\q\"", 1, 7, "backslash", "single quotes"},
        Bad{"a = \"\\u12\"", 1, 10, "\\u", "four hexadecimal digits"},
        Bad{"a = [1, 2", 1, 10, "list is not closed", "]"}, Bad{"a = [1 2]", 1, 8, "list cannot be read", "commas"},
        Bad{"a = {b = 1", 1, 11, "table in { } is not closed", "}"},
        Bad{"a = {b = 1,}", 1, 12, "table in { } cannot be read", "without a comma"},
        Bad{"a = 1\na = 2", 2, 5, "given before", "once"}, Bad{"[train]\n[train]", 2, 1, "given before", "once"},
        Bad{"a = 1\na.b = 2", 2, 1, "given before", "once"},
        Bad{"[train] teeth", 1, 9, "heading cannot be read", "[name]"},
        Bad{"[train\n", 1, 7, "heading cannot be read", "[name]"}, Bad{"[]", 1, 2, "heading cannot be read", "[name]"},
        Bad{"[[stock]", 1, 9, "heading is not closed", "[[name]]"}, Bad{"a = 1 # \x01", 1, 9, "comment", "printable"}));

INSTANTIATE_TEST_SUITE_P(
    // Malformed sequences after Unicode 15 table 3-7: a stray continuation, an overlong slash, half a surrogate pair,
    // beyond U+10FFFF, a letter cut short.
    Utf8, BadText,
    testing::Values(Bad{"a = 1\nb = '\x80'", 2, 6, "UTF-8", "save the file"},
                    Bad{"a = '\xC0\xAF'", 1, 6, "UTF-8", "save the file"},
                    Bad{"a = '\xED\xA0\x80'", 1, 6, "UTF-8", "save the file"},
                    Bad{"a = '\xF4\x90\x80\x80'", 1, 6, "UTF-8", "save the file"},
                    Bad{"a = 'ä\xE2\x82", 1, 7, "UTF-8", "save the file"}));

std::string repeated(std::string_view piece, int count) {
  std::string all;
  for (int i = 0; i < count; ++i) all += piece;
  return all;
}

TEST(ReadToml, RefusesMoreThanAMebibyte) {
  const std::string just = "# " + std::string(longest_text - 3, 'x') + "\n";
  ASSERT_EQ(just.size(), longest_text);
  EXPECT_TRUE(read_toml(just, "long.toml", 0).has_value());
  const auto longer = read_toml(just + "\n", "long.toml", 0);
  ASSERT_FALSE(longer.has_value());
  EXPECT_THAT(longer.error().front().wrong, testing::HasSubstr("1048577 bytes"));
}

TEST(ReadToml, RefusesEndlessNestingInsteadOfEndingTheStack) {
  for (const std::string& text :
       {"a = " + repeated("[", 200000), "a = " + repeated("{a = ", 100000), "a" + repeated(".a", 300000) + " = 1",
        "[a" + repeated(" . a", 100000) + "]", "a" + repeated(".\"a\"", 100000) + " = 1"}) {
    const auto deep = read_toml(text, "deep.toml", 0);
    ASSERT_FALSE(deep.has_value());
    EXPECT_THAT(deep.error().front().wrong, testing::HasSubstr("too deep"));
  }
}

TEST(ReadToml, DotsAndBracketsInTextsAndCommentsAreNoNesting) {
  EXPECT_TRUE(read_toml("a = '" + repeated(".", 100) + repeated("[", 100) + "' # " + repeated("[.", 100) +
                            "\nb = \"\"\"\n\\\"" + repeated("[.", 100) + "\"\"\"\nc = [" + repeated("1.5, ", 100) +
                            "]\n" + repeated("[[x]]\n", 100),
                        "text.toml", 0)
                  .has_value());
}

}  // namespace
}  // namespace visewright::reading
