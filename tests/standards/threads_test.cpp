#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <string>

#include "standards/known_catalogue.h"
#include "units/text.h"

namespace visewright::standards {
namespace {

using units::in_mm;

constexpr double inch = 25.4;
/// Half of the last printed digit: three decimals of a millimetre, four of an inch.
constexpr double half_digit_mm = 0.0005 + 1e-9;
constexpr double half_digit_inch_mm = 0.00005 * inch + 1e-9;

/// Basic sizes that the profile gives, mm and mm².
struct Basic {
  double mean, nut_minor, root, stress_area;
};

double circle(double diameter) { return units::pi / 4 * diameter * diameter; }

/// ISO 68-1 basic profile: H = √3/2 P; d2 = d - 2 · 3/8 H; D1 = d - 2 · 5/8 H; root d3 = D1 - 2 · H/12, that is
/// d - 17/12 H; stress area on the mean of d2 and d3 (ISO 898-1).
Basic metric(double d, double pitch) {
  const double h = std::sqrt(3.0) / 2 * pitch;
  const double mean = d - 0.75 * h;
  const double root = d - 17.0 / 12 * h;
  return {mean, d - 1.25 * h, root, circle((mean + root) / 2)};
}

/// ASME B1.1: the same profile, but the stress area on d - 9/8 H = d - 0.9743 P.
Basic unified(double d, double pitch) {
  Basic basic = metric(d, pitch);
  basic.stress_area = circle(d - 9.0 / 8 * std::sqrt(3.0) / 2 * pitch);
  return basic;
}

/// ISO 2901: d2 = d - P/2; D1 = d - P; d3 = D1 - 2 ac with crest clearance ac 0.25 up to P 5 and 0.5 up to P 12.
Basic trapezoidal(double d, double pitch) {
  const double clearance = pitch <= 5 ? 0.25 : 0.5;
  const double mean = d - pitch / 2;
  const double root = d - pitch - 2 * clearance;
  return {mean, d - pitch, root, circle((mean + root) / 2)};
}

/// ASME B1.5: E = D - p/2; K = D - p; screw minor K - 0.020 in at 10 threads an inch and coarser; area of basic sizes.
Basic acme(double d, double pitch) {
  const double mean = d - pitch / 2;
  const double minor = d - pitch;
  return {mean, minor, minor - 0.020 * inch, circle((mean + minor) / 2)};
}

Basic basic(const ThreadRow& row) {
  const double d = in_mm(row.major);
  const double pitch = in_mm(row.pitch);
  switch (row.family) {
    case ThreadFamily::metric: return metric(d, pitch);
    case ThreadFamily::unified: return unified(d, pitch);
    case ThreadFamily::trapezoidal: return trapezoidal(d, pitch);
    case ThreadFamily::acme: return acme(d, pitch);
  }
  return {};
}

TEST(Threads, EveryRowFollowsItsBasicProfile) {
  for (const ThreadRow& row : known().threads()) {
    SCOPED_TRACE(row.designation);
    const bool in_inches = row.family == ThreadFamily::unified || row.family == ThreadFamily::acme;
    const double half_digit = in_inches ? half_digit_inch_mm : half_digit_mm;
    const Basic expected = basic(row);
    EXPECT_NEAR(in_mm(row.mean), expected.mean, half_digit);
    EXPECT_NEAR(in_mm(row.nut_minor), expected.nut_minor, half_digit);
    EXPECT_NEAR(in_mm(row.root), expected.root, half_digit);
    // Metric areas stand with two decimals, the others with one.
    EXPECT_NEAR(row.stress_area_mm2, expected.stress_area, row.family == ThreadFamily::metric ? 0.0051 : 0.051);
  }
}

/// The designation says the size and the pitch: it must agree with the figures beside it.
TEST(Threads, DesignationsSaySizeAndPitch) {
  for (const ThreadRow& row : known().threads()) {
    SCOPED_TRACE(row.designation);
    const std::string major =
        units::write_length(row.major, row.designation.find('-') == std::string::npos ? units::LengthUnit::millimetre
                                                                                      : units::LengthUnit::inch);
    const std::string size = major.substr(0, major.find(' '));
    switch (row.family) {
      case ThreadFamily::metric: EXPECT_EQ(row.designation, "M" + size); break;
      case ThreadFamily::trapezoidal:
        EXPECT_EQ(row.designation, "Tr " + size + "x" + units::write_number(in_mm(row.pitch), 3));
        break;
      case ThreadFamily::unified:
        EXPECT_EQ(row.designation, size + "-" + units::write_number(inch / in_mm(row.pitch), 3) + " UNC");
        break;
      case ThreadFamily::acme:
        EXPECT_EQ(row.designation, size + "-" + units::write_number(inch / in_mm(row.pitch), 3) + " Acme");
        break;
    }
    EXPECT_EQ(row.lead, row.pitch) << "all listed threads have one start";
  }
}

/// ISO 261 coarse pitches, computed lists agree (from memory and sighted).
TEST(Threads, CoarsePitches) {
  const std::map<std::string, double> pitches{{"M8", 1.25}, {"M10", 1.5}, {"M12", 1.75}, {"M14", 2}, {"M16", 2},
                                              {"M18", 2.5}, {"M20", 2.5}, {"M22", 2.5},  {"M24", 3}, {"M27", 3},
                                              {"M30", 3.5}, {"M4", 0.7},  {"M5", 0.8},   {"M6", 1}};
  for (const auto& [designation, pitch] : pitches) {
    ASSERT_NE(known().thread(designation), nullptr) << designation;
    EXPECT_EQ(in_mm(known().thread(designation)->pitch), pitch) << designation;
  }
}

/// Published rows, not recomputed: ISO 724 d2 and D1 and ISO 898-1 stress area of M20 (sighted); ISO 2904 Tr 12x3 and
/// Tr 14x3 (sighted); ASME B1.1 3/4-10 (sighted); ASME B1.5 1-5 and 1/2-10 limits 2G, minor max (sighted).
TEST(Threads, PublishedRows) {
  const ThreadRow& m20 = *known().thread("M20");
  EXPECT_NEAR(in_mm(m20.mean), 18.376, 1e-9);
  EXPECT_NEAR(in_mm(m20.nut_minor), 17.294, 1e-9);
  EXPECT_NEAR(in_mm(m20.root), 16.933, 1e-9);
  EXPECT_NEAR(m20.stress_area_mm2, 245, 0.5);
  EXPECT_NEAR(units::in_degrees(m20.half_flank), 30, 1e-12);

  const ThreadRow& tr12 = *known().thread("Tr 12x3");
  EXPECT_NEAR(in_mm(tr12.mean), 10.5, 1e-9);
  EXPECT_NEAR(in_mm(tr12.root), 8.5, 1e-9);
  EXPECT_NEAR(in_mm(known().thread("Tr 14x3")->root), 10.5, 1e-9);
  EXPECT_NEAR(units::in_degrees(tr12.half_flank), 15, 1e-12);

  const ThreadRow& unc = *known().thread("3/4-10 UNC");
  EXPECT_NEAR(units::in_inches(unc.mean), 0.6850, 1e-9);
  EXPECT_NEAR(units::in_inches(unc.nut_minor), 0.6417, 1e-9);
  EXPECT_NEAR(units::in_inches(unc.root), 0.6273, 1e-9);
  EXPECT_NEAR(unc.stress_area_mm2, 0.334 * inch * inch, 0.5 * 0.001 * inch * inch);

  const ThreadRow& one = *known().thread("1-5 Acme");
  EXPECT_NEAR(units::in_inches(one.root), 0.7800, 1e-9);
  EXPECT_NEAR(units::in_inches(known().thread("1/2-10 Acme")->root), 0.3800, 1e-9);
  EXPECT_NEAR(units::in_degrees(one.half_flank), 14.5, 1e-12);
}

/// Rows that a maker may name, out of the trade: coarse metric 8 to 30, trapezoidal 12 to 36, UNC 3/8 to 1, Acme 1/2 to
/// 1-1/4.
TEST(Threads, TheWholeRangeIsThere) {
  std::map<ThreadFamily, int> count;
  for (const ThreadRow& row : known().threads()) ++count[row.family];
  EXPECT_EQ(count[ThreadFamily::metric], 14);
  EXPECT_EQ(count[ThreadFamily::trapezoidal], 13);
  EXPECT_EQ(count[ThreadFamily::unified], 8);
  EXPECT_EQ(count[ThreadFamily::acme], 7);
}

}  // namespace
}  // namespace visewright::standards
