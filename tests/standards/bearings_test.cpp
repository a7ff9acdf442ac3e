#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "standards/known_catalogue.h"

namespace visewright::standards {
namespace {

using units::in_inches;
using units::in_mm;

struct Size {
  std::string designation;
  double bore, outside, width;
};

/// ISO 15 dimension series 10 and 02 (6000, 6200: sighted); 18, 19 and the small ones from memory.
TEST(Bearings, MetricSizes) {
  const std::vector<Size> published{
      {"608", 8, 22, 7},    {"625", 5, 16, 5},    {"626", 6, 19, 6},    {"6000", 10, 26, 8},  {"6001", 12, 28, 8},
      {"6002", 15, 32, 9},  {"6003", 17, 35, 10}, {"6004", 20, 42, 12}, {"6005", 25, 47, 12}, {"6006", 30, 55, 13},
      {"6200", 10, 30, 9},  {"6201", 12, 32, 10}, {"6202", 15, 35, 11}, {"6203", 17, 40, 12}, {"6204", 20, 47, 14},
      {"6205", 25, 52, 15}, {"6206", 30, 62, 16}, {"6800", 10, 19, 5},  {"6801", 12, 21, 5},  {"6802", 15, 24, 5},
      {"6803", 17, 26, 5},  {"6804", 20, 32, 7},  {"6805", 25, 37, 7},  {"6806", 30, 42, 7},  {"6900", 10, 22, 6},
      {"6901", 12, 24, 6},  {"6902", 15, 28, 7},  {"6903", 17, 30, 7},  {"6904", 20, 37, 9},  {"6905", 25, 42, 9},
      {"6906", 30, 47, 9},
  };
  for (const Size& size : published) {
    const BearingRow* row = known().bearing(size.designation);
    ASSERT_NE(row, nullptr) << size.designation;
    EXPECT_EQ(in_mm(row->bore), size.bore) << size.designation;
    EXPECT_EQ(in_mm(row->outside), size.outside) << size.designation;
    EXPECT_EQ(in_mm(row->width_open), size.width) << size.designation;
    EXPECT_EQ(row->width_shielded, row->width_open) << size.designation;
  }
}

/// Inch series R (from memory), converted by hand: R6 9.525 × 22.225 × 7.144, R12 19.050 × 41.275 × 11.113 shielded.
TEST(Bearings, InchSizesAreWiderWithShields) {
  const BearingRow& r6 = *known().bearing("R6");
  EXPECT_NEAR(in_mm(r6.bore), 9.525, 1e-9);
  EXPECT_NEAR(in_mm(r6.outside), 22.225, 1e-9);
  EXPECT_NEAR(in_mm(r6.width_shielded), 7.144, 0.0005);
  EXPECT_NEAR(in_inches(r6.width_open), 7.0 / 32, 1e-9);
  const BearingRow& r12 = *known().bearing("r12");
  EXPECT_NEAR(in_mm(r12.bore), 19.05, 1e-9);
  EXPECT_NEAR(in_mm(r12.outside), 41.275, 1e-9);
  EXPECT_NEAR(in_mm(r12.width_shielded), 11.113, 0.0005);
  for (const char* designation : {"R6", "R8", "R10", "R12"}) {
    EXPECT_GT(known().bearing(designation)->width_shielded, known().bearing(designation)->width_open);
  }
}

/// Hand derivation from the rows: bore 15 has outsides 24, 28, 32 and 35.
TEST(Bearings, TheSmallestThatIsLargeEnough) {
  const auto designation = [](double bore, double outside) {
    const BearingRow* row = known().bearing_for_bore(units::mm(bore), units::mm(outside));
    return row == nullptr ? std::string("none") : row->designation;
  };
  EXPECT_EQ(designation(15, 0), "6802");
  EXPECT_EQ(designation(15, 24.5), "6902");
  EXPECT_EQ(designation(15, 32), "6002");
  EXPECT_EQ(designation(15, 32.1), "6202");
  EXPECT_EQ(designation(15, 36), "none");
  EXPECT_EQ(designation(16, 0), "none");
  EXPECT_EQ(designation(17, 31), "6003");
  EXPECT_EQ(known().bearing_for_bore(units::inches(3, 4), units::mm(30))->designation, "R12");
}

TEST(Bearings, MassIsThatOfSteelRingsWithRoomForBalls) {
  // A solid steel ring of the same size bounds the mass from above; a third of it from below (hand estimate).
  for (const BearingRow& row : known().bearings()) {
    if (row.mass == units::Mass()) continue;
    const double d = in_mm(row.bore);
    const double outside = in_mm(row.outside);
    const double ring_kg = units::pi / 4 * (outside * outside - d * d) * in_mm(row.width_open) * 7.85e-6;
    EXPECT_LT(units::in_kilograms(row.mass), ring_kg) << row.designation;
    EXPECT_GT(units::in_kilograms(row.mass), ring_kg / 3) << row.designation;
  }
}

}  // namespace
}  // namespace visewright::standards
