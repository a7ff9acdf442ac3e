#include "units/text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <clocale>
#include <cmath>
#include <locale>
#include <random>

namespace visewright::units {
namespace {

/// Built up in place: this compiler warns falsely of sums of long strings.
std::string nines(std::size_t count, std::string_view unit) {
  std::string text(count, '9');
  text.append(unit);
  return text;
}


using testing::HasSubstr;

constexpr base::Place here{1, 12, 7};

struct Good {
  std::string_view text;
  double mm;
};
struct Bad {
  std::string_view text;
  std::string_view wrong;
};

// Expected values by hand from 1 in = 25.4 mm exactly (international inch, 1959).
constexpr Good good_lengths[] = {{"19 mm", 19},          {"19mm", 19},
                                 {"19.05 mm", 19.05},    {".5 mm", 0.5},
                                 {"5. mm", 5},           {"2.5 cm", 25},
                                 {"3/4 in", 19.05},      {"3/8 in", 9.525},
                                 {"1-1/4 in", 31.75},    {"1 1/4 in", 31.75},
                                 {"1 1/4\"", 31.75},     {"1-1/4\"", 31.75},
                                 {"0.75 in", 19.05},     {"0.375 in", 9.525},
                                 {"12 in", 304.8},       {"5/4 in", 31.75},
                                 {"-3 mm", -3},          {"-1-1/4 in", -31.75},
                                 {"  7 mm\t", 7},        {"0 mm", 0},
                                 {"0.1 in", 2.54},       {"33/64 in", 13.096875},
                                 {"007 mm", 7},          {"1/2 mm", 0.5},
                                 {"-0 mm", 0},           {"25.400000 mm", 25.4},
                                 {"2   3/8 in", 60.325}, {"0.30000000000000000001 mm", 0.3}};

constexpr Bad bad_lengths[] = {{"", "empty"},
                               {"   ", "empty"},
                               {"mm", "begin with a number"},
                               {"nan mm", "begin with a number"},
                               {"inf", "begin with a number"},
                               {". mm", "begin with a number"},
                               {"+3 mm", "begin with a number"},
                               {"--3 mm", "begin with a number"},
                               {"3/4", "has no unit"},
                               {"19", "has no unit"},
                               {"19 furlongs", "'furlongs'"},
                               {"19 MM", "'MM'"},
                               {"19 mm long", "'mm long'"},
                               {"19 mm 3", "'mm 3'"},
                               {"0x10 mm", "'x10 mm'"},
                               {"1e3 mm", "'e3 mm'"},
                               {"1.2.3 mm", "'.3 mm'"},
                               {"1,5 mm", "',5 mm'"},
                               {"1 2 mm", "'2 mm'"},
                               {"19 ''", "''''"},
                               {"3/0 in", "fraction"},
                               {"3/ in", "fraction"},
                               {"1-5/4 in", "fraction"},
                               {"1 4/4 in", "fraction"},
                               {"1.5/2 in", "'/2 in'"},
                               {"1/2/3 in", "'/3 in'"},
                               {"1/-2 in", "fraction"}};

TEST(ReadLength, GoodTextsGiveExactlyTheirLength) {
  for (const Good& good : good_lengths) {
    const auto read = read_length(good.text, std::nullopt, "jaw.width", here);
    ASSERT_TRUE(read.has_value()) << good.text << ": " << read.error().front().wrong;
    EXPECT_EQ(in_mm(*read), good.mm) << good.text;
    EXPECT_FALSE(std::signbit(in_mm(*read)) && in_mm(*read) == 0) << good.text;
  }
}

TEST(ReadLength, BadTextsAreFaultsThatSayWhereAndWhatWouldBeRight) {
  for (const Bad& bad : bad_lengths) {
    const auto read = read_length(bad.text, std::nullopt, "jaw.width", here);
    ASSERT_FALSE(read.has_value()) << bad.text;
    ASSERT_EQ(read.error().size(), 1U);
    const base::Fault& fault = read.error().front();
    EXPECT_EQ(fault.cause, base::Cause::input);
    EXPECT_EQ(fault.place, here);
    EXPECT_EQ(fault.key, "jaw.width");
    EXPECT_THAT(fault.wrong, HasSubstr(std::string(bad.wrong))) << bad.text;
    EXPECT_FALSE(fault.right.empty());
    EXPECT_NE(fault.wrong.back(), '.');
  }
  EXPECT_THAT(read_length("3 ft", std::nullopt, "k", here).error().front().right, HasSubstr("mm, cm, in or \""));
}

TEST(ReadLength, DigitsWithoutEndAreAFaultAndNotInfinity) {
  EXPECT_FALSE(read_length(nines(400, " mm"), std::nullopt, "k", here).has_value());
  EXPECT_FALSE(read_length(nines(308, " cm"), std::nullopt, "k", here).has_value());
  EXPECT_FALSE(read_length("1/" + nines(400, " in"), std::nullopt, "k", here).has_value());
}

TEST(ReadLength, BareNumbersTakeTheUnitOfTheDesignAndWrittenUnitsWin) {
  EXPECT_EQ(in_mm(read_length("3/4", LengthUnit::inch, "k", here).value()), 19.05);
  EXPECT_EQ(in_mm(read_length("3.5", LengthUnit::millimetre, "k", here).value()), 3.5);
  EXPECT_EQ(in_mm(read_length("3 mm", LengthUnit::inch, "k", here).value()), 3);
  EXPECT_EQ(in_mm(length_in(0.375, LengthUnit::inch)), 9.525);
  EXPECT_EQ(in_mm(length_in(9.525, LengthUnit::millimetre)), 9.525);
}

TEST(ReadForce, UnitsByDefinition) {
  EXPECT_DOUBLE_EQ(in_newtons(read_force("100 N", "k", here).value()), 100);
  EXPECT_DOUBLE_EQ(in_newtons(read_force("1.2 kN", "k", here).value()), 1200);
  EXPECT_DOUBLE_EQ(in_newtons(read_force("1 lbf", "k", here).value()), 4.4482216152605);
  EXPECT_DOUBLE_EQ(in_newtons(read_force("22 lbf", "k", here).value()), 97.860875535731);
  for (const std::string_view bad : {"100", "100 n", "100 kgf", "100 N m", "N", ""}) {
    EXPECT_FALSE(read_force(bad, "k", here).has_value()) << bad;
  }
  EXPECT_THAT(read_force("1 kgf", "k", here).error().front().right, HasSubstr("N, kN or lbf"));
}

TEST(WriteNumber, ShortestWithinThePlaces) {
  // Rounding by hand; 0.125 is a tie in binary too and goes to even.
  EXPECT_EQ(write_number(19, 3), "19");
  EXPECT_EQ(write_number(0.1, 20), "0.1");
  EXPECT_EQ(write_number(19.0504, 3), "19.05");
  EXPECT_EQ(write_number(2.0 / 3, 3), "0.667");
  EXPECT_EQ(write_number(0.125, 2), "0.12");
  EXPECT_EQ(write_number(-0.0, 3), "0");
  EXPECT_EQ(write_number(-0.0001, 3), "0");
  EXPECT_EQ(write_number(-1.5, 0), "-2");
  EXPECT_EQ(write_number(1200, 0), "1200");
  EXPECT_EQ(write_number(1e21, 3), "1000000000000000000000");
  EXPECT_EQ(write_number(1e-9, 3), "0");
}

TEST(WriteLength, BothUnits) {
  EXPECT_EQ(write_length(mm(19), LengthUnit::millimetre), "19 mm");
  EXPECT_EQ(write_length(mm(19.05), LengthUnit::inch), "3/4 in");
  EXPECT_EQ(write_length(mm(31.75), LengthUnit::inch), "1-1/4 in");
  EXPECT_EQ(write_length(mm(-31.75), LengthUnit::inch), "-1-1/4 in");
  EXPECT_EQ(write_length(mm(50.8), LengthUnit::inch), "2 in");
  EXPECT_EQ(write_length(mm(0), LengthUnit::inch), "0 in");
  EXPECT_EQ(write_length(mm(19), LengthUnit::inch), "0.748 in");
  EXPECT_EQ(write_length(mm(1.0 / 3), LengthUnit::millimetre), "0.333 mm");
}

TEST(WriteLength, EverySixtyFourthComesBackToTheLastDigit) {
  for (long n = -640; n <= 6400; ++n) {
    const Length x = inches(n, 64);
    EXPECT_EQ(read_length(write_length(x, LengthUnit::inch), std::nullopt, "k", here).value(), x) << n;
  }
}

TEST(WriteLength, AnythingElseComesBackToWhatWasPrinted) {
  std::mt19937 engine(9);
  for (int i = 0; i < 5000; ++i) {
    const double x = (static_cast<double>(engine()) / 4294967296.0 - 0.5) * 2000;
    const auto back_mm = read_length(write_length(mm(x), LengthUnit::millimetre), std::nullopt, "k", here).value();
    EXPECT_NEAR(in_mm(back_mm), x, 0.0005 + 1e-9);
    const auto back_in = read_length(write_length(mm(x), LengthUnit::inch), std::nullopt, "k", here).value();
    EXPECT_NEAR(in_mm(back_in), x, 0.00005 * 25.4 + 1e-9);
    // A second round changes nothing, though "9.25 in" may come out as "9-1/4 in".
    EXPECT_EQ(write_length(back_mm, LengthUnit::millimetre), write_length(mm(x), LengthUnit::millimetre));
    EXPECT_EQ(read_length(write_length(back_in, LengthUnit::inch), std::nullopt, "k", here).value(), back_in);
  }
}

/// Writes a comma for the point and groups digits, as many places of the world do.
struct Commas : std::numpunct<char> {
  [[nodiscard]] char do_decimal_point() const override { return ','; }
  [[nodiscard]] char do_thousands_sep() const override { return '.'; }
  [[nodiscard]] std::string do_grouping() const override { return "\3"; }
};

TEST(Text, TheLocaleOfTheMachineChangesNothing) {
  const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Commas));
  // Where such a locale is installed, the C library is told too.
  const char* const c_before = std::setlocale(LC_NUMERIC, nullptr);
  const std::string restore = c_before != nullptr ? c_before : "C";
  (void)std::setlocale(LC_NUMERIC, "de_DE.UTF-8");
  EXPECT_EQ(write_number(1234.5, 3), "1234.5");
  EXPECT_EQ(write_length(mm(1234.5), LengthUnit::millimetre), "1234.5 mm");
  EXPECT_EQ(in_mm(read_length("1234.5 mm", std::nullopt, "k", here).value()), 1234.5);
  EXPECT_FALSE(read_length("1,5 mm", std::nullopt, "k", here).has_value());
  (void)std::setlocale(LC_NUMERIC, restore.c_str());
  std::locale::global(before);
}

}  // namespace
}  // namespace visewright::units
