#include "units/quantity.h"

#include <gtest/gtest.h>

#include <concepts>
#include <type_traits>

namespace visewright::units {
namespace {

template <class A, class B>
concept Adds = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Compares = requires(A a, B b) {
  a < b;
};

// Dimensions that do not match must not compile; these are the checks that would.
static_assert(Adds<Length, Length> && !Adds<Length, Angle> && !Adds<Length, double> && !Adds<Force, Mass>);
static_assert(Compares<Length, Length> && !Compares<Length, Mass> && !Compares<Length, double>);
static_assert(!std::is_convertible_v<double, Length> && !std::is_constructible_v<Length, double>);
static_assert(!std::is_convertible_v<Length, double>);
static_assert(std::is_same_v<decltype(mm(1) / mm(2)), double>);

TEST(Quantity, FractionsOfAnInchAreExact) {
  // 1 in = 25.4 mm exactly (international inch, 1959); each value by hand.
  EXPECT_EQ(in_mm(inches(1)), 25.4);
  EXPECT_EQ(in_mm(inches(3, 8)), 9.525);
  EXPECT_EQ(in_mm(inches(5, 16)), 7.9375);
  EXPECT_EQ(in_mm(inches(1, 64)), 0.396875);
  EXPECT_EQ(in_mm(inches(7, 10)), 17.78);
}

TEST(Quantity, ArithmeticKeepsTheDimension) {
  EXPECT_EQ(mm(3) + mm(4), mm(7));
  EXPECT_EQ(mm(3) - mm(4), -mm(1));
  EXPECT_EQ(2 * mm(3), mm(6));
  EXPECT_EQ(mm(3) / 2, mm(1.5));
  EXPECT_EQ(mm(3) / mm(1.5), 2);
  EXPECT_LT(mm(25), inches(1));
}

TEST(Quantity, NamedDoorsAreInverse) {
  EXPECT_DOUBLE_EQ(in_radians(degrees(180)), pi);
  EXPECT_DOUBLE_EQ(in_degrees(degrees(20)), 20);
  EXPECT_DOUBLE_EQ(in_newtons(newtons(98)), 98);
  EXPECT_DOUBLE_EQ(in_megapascals(megapascals(11)), 11);
  EXPECT_DOUBLE_EQ(in_kilograms(kilograms(1.5)), 1.5);
  // 1 MPa is 1 N/mm²: one newton and one megapascal are the same number in held units per mm².
  EXPECT_EQ(Door::out(newtons(1)), Door::out(megapascals(1)));
}

}  // namespace
}  // namespace visewright::units
