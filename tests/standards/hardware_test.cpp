#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "standards/known_catalogue.h"

namespace visewright::standards {
namespace {

using units::in_inches;
using units::in_mm;

constexpr double exact = 1e-9;

struct NutFigures {
  std::string thread;
  double flats_max, flats_min, height_max, height_min;
};

/// ISO 4032, three published tables agree (sighted); M4 to M6 from memory.
TEST(Nuts, HexagonNutsOfIso4032) {
  const std::vector<NutFigures> published{
      {"M4", 7, 6.78, 3.2, 2.9},      {"M5", 8, 7.78, 4.7, 4.4},      {"M6", 10, 9.78, 5.2, 4.9},
      {"M8", 13, 12.73, 6.8, 6.44},   {"M10", 16, 15.73, 8.4, 8.04},  {"M12", 18, 17.73, 10.8, 10.37},
      {"M14", 21, 20.67, 12.8, 12.1}, {"M16", 24, 23.67, 14.8, 14.1}, {"M18", 27, 26.16, 15.8, 15.1},
      {"M20", 30, 29.16, 18.0, 16.9}, {"M22", 34, 33, 19.4, 18.1},    {"M24", 36, 35, 21.5, 20.2},
      {"M27", 41, 40, 23.8, 22.5},    {"M30", 46, 45, 25.6, 24.3},
  };
  for (const NutFigures& nut : published) {
    for (const bool left : {false, true}) {
      const NutRow* row = known().hexagon_nut(nut.thread, left);
      ASSERT_NE(row, nullptr) << nut.thread;
      EXPECT_EQ(row->left_hand, left);
      EXPECT_EQ(row->designation, "hexagon nut " + nut.thread + (left ? "-LH" : ""));
      EXPECT_NEAR(in_mm(row->across_flats_max), nut.flats_max, exact) << nut.thread;
      EXPECT_NEAR(in_mm(row->across_flats_min), nut.flats_min, exact) << nut.thread;
      EXPECT_NEAR(in_mm(row->height_max), nut.height_max, exact) << nut.thread;
      EXPECT_NEAR(in_mm(row->height_min), nut.height_min, exact) << nut.thread;
    }
  }
}

/// ASME B18.2.2 hex nuts (sighted), all figures in inches.
TEST(Nuts, HexNutsOfAsmeB1822) {
  const std::vector<NutFigures> published{
      {"3/8-16 UNC", 0.563, 0.551, 0.337, 0.320}, {"7/16-14 UNC", 0.688, 0.675, 0.385, 0.365},
      {"1/2-13 UNC", 0.750, 0.736, 0.448, 0.427}, {"9/16-12 UNC", 0.875, 0.861, 0.496, 0.473},
      {"5/8-11 UNC", 0.938, 0.922, 0.559, 0.535}, {"3/4-10 UNC", 1.125, 1.088, 0.665, 0.617},
      {"7/8-9 UNC", 1.312, 1.269, 0.776, 0.724},  {"1-8 UNC", 1.500, 1.450, 0.887, 0.831},
  };
  for (const NutFigures& nut : published) {
    const NutRow* row = known().hexagon_nut(nut.thread, false);
    ASSERT_NE(row, nullptr) << nut.thread;
    EXPECT_NEAR(in_inches(row->across_flats_max), nut.flats_max, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->across_flats_min), nut.flats_min, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->height_max), nut.height_max, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->height_min), nut.height_min, exact) << nut.thread;
  }
}

/// ASME B18.2.2 hex coupling nuts, three published tables agree (sighted), inches.
TEST(Nuts, CouplingNutsOfAsmeB1822) {
  const std::vector<NutFigures> published{
      {"3/8-16 UNC", 0.562, 0.551, 1.760, 1.690}, {"1/2-13 UNC", 0.688, 0.663, 1.760, 1.690},
      {"5/8-11 UNC", 0.813, 0.782, 2.135, 2.067}, {"3/4-10 UNC", 1.000, 0.963, 2.260, 2.190},
      {"7/8-9 UNC", 1.250, 1.212, 2.510, 2.440},  {"1-8 UNC", 1.375, 1.325, 2.760, 2.690},
  };
  for (const NutFigures& nut : published) {
    const NutRow* row = known().long_nut(nut.thread, false);
    ASSERT_NE(row, nullptr) << nut.thread;
    EXPECT_TRUE(row->long_nut);
    EXPECT_NEAR(in_inches(row->across_flats_max), nut.flats_max, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->across_flats_min), nut.flats_min, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->height_max), nut.height_max, exact) << nut.thread;
    EXPECT_NEAR(in_inches(row->height_min), nut.height_min, exact) << nut.thread;
  }
}

/// DIN 6334: length three diameters; widths across flats of the older series (from memory).
TEST(Nuts, LongNutsAreThreeDiametersLong) {
  for (const int d : {6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30}) {
    const NutRow* row = known().long_nut("M" + std::to_string(d), true);
    ASSERT_NE(row, nullptr) << d;
    EXPECT_NEAR(in_mm(row->height_max), 3 * d, exact);
  }
  EXPECT_NEAR(in_mm(known().long_nut("M10", false)->across_flats_max), 17, exact);
  EXPECT_NEAR(in_mm(known().long_nut("M20", false)->across_flats_max), 30, exact);
}

/// Stock of both widths exists for M10, M12, M14 and M22 (from memory): the second is found by its designation.
TEST(Nuts, OtherWidthsOfLongNuts) {
  ASSERT_NE(known().nut("long nut M12, ISO 272 flats"), nullptr);
  EXPECT_NEAR(in_mm(known().nut("long nut M12, ISO 272 flats")->across_flats_max), 18, exact);
  EXPECT_NEAR(in_mm(known().nut("long nut M12")->across_flats_max), 19, exact);
  EXPECT_TRUE(known().nut("long nut M12-LH, ISO 272 flats")->left_hand);
}

/// Bar: across flats at least 1.5 d but less than the stock size after next; height 0.8 d and at most a millimetre
/// more.
TEST(Nuts, BarFitsItsThread) {
  for (const NutRow& row : known().nuts()) {
    if (!row.bar) continue;
    SCOPED_TRACE(row.designation);
    const ThreadRow* thread = known().thread(row.thread);
    ASSERT_NE(thread, nullptr);
    const double d = in_mm(thread->major);
    EXPECT_GE(in_mm(row.across_flats_max), 1.5 * d - exact);
    EXPECT_LE(in_mm(row.across_flats_max), 1.5 * d + 4);
    EXPECT_GE(in_mm(row.height_min), 0.8 * d - exact);
    EXPECT_LT(in_mm(row.height_max), 0.8 * d + 1);
  }
  // Tr 24x5: 36 across flats, 20 high; 1-5 Acme: 1-1/2 in across flats, 0.8 in high (hand derivation of the rule).
  EXPECT_EQ(known().hexagon_bar("Tr 24x5", false)->designation, "hexagon bar 36 mm for Tr 24x5");
  EXPECT_NEAR(in_mm(known().hexagon_bar("Tr 24x5", false)->height_max), 20, exact);
  EXPECT_EQ(known().hexagon_bar("1-5 Acme", true)->designation, "hexagon bar 1-1/2 in for 1-5 Acme-LH");
  EXPECT_NEAR(in_inches(known().hexagon_bar("1-5 Acme", false)->height_max), 0.8, exact);
}

/// ISO 286 h11: 0 / -0.11, -0.13, -0.16, -0.19 mm over 10, 18, 30 and 50 mm (sighted).
TEST(Nuts, MetricBarHasTheToleranceH11) {
  EXPECT_NEAR(in_mm(known().hexagon_bar("Tr 12x3", false)->across_flats_min), 17.89, exact);
  EXPECT_NEAR(in_mm(known().hexagon_bar("Tr 20x4", false)->across_flats_min), 29.87, exact);
  EXPECT_NEAR(in_mm(known().hexagon_bar("Tr 24x5", false)->across_flats_min), 35.84, exact);
  EXPECT_NEAR(in_mm(known().hexagon_bar("Tr 36x6", false)->across_flats_min), 54.81, exact);
}

struct WasherFigures {
  std::string thread;
  bool large;
  double bore, outside, thickness;
};

/// ISO 7089 (sighted, three tables agree) to M24; ISO 7093-1 (from memory; M12 sighted once).
TEST(Washers, MetricSeries) {
  const std::vector<WasherFigures> published{
      {"M8", false, 8.4, 16, 1.6},
      {"M10", false, 10.5, 20, 2},
      {"M12", false, 13, 24, 2.5},
      {"M14", false, 15, 28, 2.5},
      {"M16", false, 17, 30, 3},
      {"M18", false, 19, 34, 3},
      {"M20", false, 21, 37, 3},
      {"M22", false, 23, 39, 3},
      {"M24", false, 25, 44, 4},
      {"M8", true, 8.4, 24, 2},
      {"M10", true, 10.5, 30, 2.5},
      {"M12", true, 13, 37, 3},
      {"M14", true, 15, 44, 3},
      {"M16", true, 17, 50, 3},
      {"M18", true, 19, 56, 4},
      {"M20", true, 21, 60, 4},
      {"M24", true, 25, 72, 5},
      // A trapezoidal thread takes the metric washer of its size or the next above.
      {"Tr 24x5", false, 25, 44, 4},
      {"Tr 24x5", true, 25, 72, 5},
      {"Tr 26x5", false, 28, 50, 4},
  };
  for (const WasherFigures& washer : published) {
    const WasherRow* row = known().washer(washer.thread, washer.large);
    ASSERT_NE(row, nullptr) << washer.thread;
    EXPECT_NEAR(in_mm(row->bore), washer.bore, exact) << row->designation;
    EXPECT_NEAR(in_mm(row->outside), washer.outside, exact) << row->designation;
    EXPECT_NEAR(in_mm(row->thickness), washer.thickness, exact) << row->designation;
  }
  EXPECT_EQ(known().washer("M20", false)->designation, "washer 20 (normal)");
}

/// ASME B18.21.1-2009 type A: narrow and wide to 3/4 (sighted), 7/8 and 1 wide (from memory); inches.
TEST(Washers, InchSeries) {
  const std::vector<WasherFigures> published{
      {"3/8-16 UNC", false, 0.406, 0.812, 0.065},  {"3/8-16 UNC", true, 0.438, 1.000, 0.083},
      {"7/16-14 UNC", false, 0.469, 0.922, 0.065}, {"7/16-14 UNC", true, 0.500, 1.250, 0.083},
      {"1/2-13 UNC", false, 0.531, 1.062, 0.095},  {"1/2-13 UNC", true, 0.562, 1.375, 0.109},
      {"9/16-12 UNC", false, 0.594, 1.156, 0.095}, {"9/16-12 UNC", true, 0.625, 1.469, 0.109},
      {"5/8-11 UNC", false, 0.656, 1.312, 0.095},  {"5/8-11 UNC", true, 0.688, 1.750, 0.134},
      {"3/4-10 UNC", false, 0.812, 1.469, 0.134},  {"3/4-10 UNC", true, 0.812, 2.000, 0.148},
      {"7/8-9 UNC", false, 0.938, 1.750, 0.134},   {"7/8-9 UNC", true, 0.938, 2.250, 0.165},
      {"1-8 UNC", false, 1.062, 2.000, 0.134},     {"1-8 UNC", true, 1.062, 2.500, 0.165},
      {"1-5 Acme", false, 1.062, 2.000, 0.134},    {"1-5 Acme", true, 1.062, 2.500, 0.165},
  };
  for (const WasherFigures& washer : published) {
    const WasherRow* row = known().washer(washer.thread, washer.large);
    ASSERT_NE(row, nullptr) << washer.thread;
    EXPECT_NEAR(in_inches(row->bore), washer.bore, exact) << row->designation;
    EXPECT_NEAR(in_inches(row->outside), washer.outside, exact) << row->designation;
    EXPECT_NEAR(in_inches(row->thickness), washer.thickness, exact) << row->designation;
  }
  EXPECT_EQ(known().washer("1-5 Acme", true)->designation, "washer 1 in (wide)");
}

struct ClearanceFigures {
  std::string thread;
  double fine, medium, coarse;
};

/// ISO 273: M8 to M16 sighted, the rest from memory.
TEST(Clearances, Iso273) {
  const std::vector<ClearanceFigures> published{
      {"M8", 8.4, 9, 10},      {"M10", 10.5, 11, 12}, {"M12", 13, 13.5, 14.5}, {"M14", 15, 15.5, 16.5},
      {"M16", 17, 17.5, 18.5}, {"M18", 19, 20, 21},   {"M20", 21, 22, 24},     {"M22", 23, 24, 26},
      {"M24", 25, 26, 28},     {"M27", 28, 30, 32},   {"M30", 31, 33, 35},
  };
  for (const ClearanceFigures& hole : published) {
    const ClearanceRow* row = known().clearance(hole.thread);
    ASSERT_NE(row, nullptr) << hole.thread;
    EXPECT_NEAR(in_mm(row->fine), hole.fine, exact) << hole.thread;
    EXPECT_NEAR(in_mm(row->medium), hole.medium, exact) << hole.thread;
    EXPECT_NEAR(in_mm(row->coarse), hole.coarse, exact) << hole.thread;
  }
}

/// ASME B18.2.8 normal fit in inches, printed to three decimals (from memory).
TEST(Clearances, AsmeB1828NormalFit) {
  const std::vector<std::pair<std::string, double>> published{{"3/8-16 UNC", 0.406}, {"1/2-13 UNC", 0.562},
                                                              {"5/8-11 UNC", 0.688}, {"3/4-10 UNC", 0.812},
                                                              {"7/8-9 UNC", 0.938},  {"1-8 UNC", 1.094}};
  for (const auto& [thread, medium] : published) {
    ASSERT_NE(known().clearance(thread), nullptr) << thread;
    EXPECT_NEAR(in_inches(known().clearance(thread)->medium), medium, 0.00051) << thread;
  }
}

bool stated_missing(const std::string& thread, const std::string& kind) {
  const auto said = known().no_standard_nuts();
  return std::any_of(said.begin(), said.end(),
                     [&](const NoStandardNut& row) { return row.thread == thread && row.kind == kind; });
}

/// No gap is an omission: a thread has each piece in both hands, or the tables say that no standard has it.
TEST(Hardware, EveryThreadHasItsHardware) {
  for (const ThreadRow& thread : known().threads()) {
    SCOPED_TRACE(thread.designation);
    for (const bool left : {false, true}) {
      EXPECT_NE(known().hexagon_nut(thread.designation, left) != nullptr,
                stated_missing(thread.designation, "hexagon nut"));
      EXPECT_NE(known().long_nut(thread.designation, left) != nullptr, stated_missing(thread.designation, "long nut"));
    }
    for (const bool large : {false, true}) {
      const WasherRow* washer = known().washer(thread.designation, large);
      ASSERT_NE(washer, nullptr);
      EXPECT_GT(washer->bore, thread.major);
    }
    const ClearanceRow* hole = known().clearance(thread.designation);
    ASSERT_NE(hole, nullptr);
    EXPECT_GT(hole->fine, thread.major);
    EXPECT_LT(hole->fine, hole->medium);
    EXPECT_LT(hole->medium, hole->coarse);
  }
}

TEST(Hardware, WhatStandsInForAMissingNutExists) {
  for (const NoStandardNut& row : known().no_standard_nuts()) {
    const bool bar = row.instead == "hexagon bar" && known().hexagon_bar(row.thread, true) != nullptr;
    const bool nut = row.instead == "hexagon nut" && known().hexagon_nut(row.thread, true) != nullptr;
    EXPECT_TRUE(bar || nut) << row.thread << " " << row.kind;
  }
}

TEST(Hardware, EveryRowNamesAKnownThreadAndHasSenseInItself) {
  for (const NutRow& row : known().nuts()) {
    EXPECT_NE(known().thread(row.thread), nullptr) << row.designation;
    EXPECT_LE(row.across_flats_min, row.across_flats_max) << row.designation;
    EXPECT_LE(row.height_min, row.height_max) << row.designation;
    EXPECT_GT(row.across_flats_min, known().thread(row.thread)->major) << row.designation;
  }
  for (const WasherRow& row : known().washers()) {
    EXPECT_NE(known().thread(row.thread), nullptr) << row.designation;
    EXPECT_LT(row.bore, row.outside) << row.designation;
    EXPECT_LT(row.thickness, row.bore) << row.designation;
  }
  for (const ClearanceRow& row : known().clearances()) EXPECT_NE(known().thread(row.thread), nullptr) << row.thread;
}

}  // namespace
}  // namespace visewright::standards
