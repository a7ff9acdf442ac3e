// Quantities with their unit in the type. Held in mm, kg, s and rad; entered and left only through named functions.
#pragma once

#include <compare>

namespace visewright::units {

/// A quantity of dimension length^L · mass^M · time^T · angle^A. Laws: only equal dimensions add or compare; the ratio
/// of two equal dimensions is a plain number.
template <int L, int M, int T, int A>
class Quantity {
 public:
  constexpr Quantity() = default;

  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
  friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.value_); }
  friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(k * a.value_); }
  friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.value_ / k); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
  friend constexpr auto operator<=>(Quantity, Quantity) = default;

 private:
  explicit constexpr Quantity(double value) : value_(value) {}
  friend struct Door;
  double value_ = 0;
};

using Length = Quantity<1, 0, 0, 0>;
using Angle = Quantity<0, 0, 0, 1>;
using Mass = Quantity<0, 1, 0, 0>;
/// Force is held in kg·mm/s², which is a thousandth of a newton.
using Force = Quantity<1, 1, -2, 0>;
/// Pressure and stress are held in kg/(mm·s²), which is a kilopascal.
using Pressure = Quantity<-1, 1, -2, 0>;

/// The private door between quantities and plain numbers; use the named functions below.
struct Door {
  template <class Q>
  static constexpr Q in(double value) {
    return Q(value);
  }
  template <class Q>
  static constexpr double out(Q quantity) {
    return quantity.value_;
  }
};

[[nodiscard]] constexpr Length mm(double x) { return Door::in<Length>(x); }
[[nodiscard]] constexpr double in_mm(Length x) { return Door::out(x); }
/// A fraction of an inch, converted with one division so that 3/8 in is exactly 9.525 mm.
[[nodiscard]] constexpr Length inches(long numerator, long denominator = 1) {
  return mm(static_cast<double>(numerator) * 254.0 / (static_cast<double>(denominator) * 10.0));
}
[[nodiscard]] constexpr double in_inches(Length x) { return in_mm(x) / 25.4; }

inline constexpr double pi = 3.14159265358979323846;
[[nodiscard]] constexpr Angle radians(double x) { return Door::in<Angle>(x); }
[[nodiscard]] constexpr double in_radians(Angle x) { return Door::out(x); }
[[nodiscard]] constexpr Angle degrees(double x) { return radians(x * pi / 180.0); }
[[nodiscard]] constexpr double in_degrees(Angle x) { return in_radians(x) * 180.0 / pi; }

[[nodiscard]] constexpr Force newtons(double x) { return Door::in<Force>(x * 1000.0); }
[[nodiscard]] constexpr double in_newtons(Force x) { return Door::out(x) / 1000.0; }
[[nodiscard]] constexpr Pressure megapascals(double x) { return Door::in<Pressure>(x * 1000.0); }
[[nodiscard]] constexpr double in_megapascals(Pressure x) { return Door::out(x) / 1000.0; }
[[nodiscard]] constexpr Mass kilograms(double x) { return Door::in<Mass>(x); }
[[nodiscard]] constexpr double in_kilograms(Mass x) { return Door::out(x); }

}  // namespace visewright::units
