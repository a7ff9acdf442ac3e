// Tolerances of holes. Figures: ISO 286-1 and ISO 2768-1, from memory.
#include <gtest/gtest.h>

#include "outputs/handoff/fits.h"
#include "outputs/handoff/pack.h"
#include "outputs/handoff/printing.h"

namespace visewright::outputs::handoff {
namespace {

// H7 of 25 is +0.021, of 6 +0.012, of 50 +0.025; H11 of 120 +0.220. Steps hold up to and with their end.
TEST(HandoffFits, TolerancesAreThoseOfTheTables) {
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it7, 25), 0.021);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it7, 6), 0.012);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it7, 6.1), 0.015);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it7, 50), 0.025);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it9, 35), 0.062);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::it11, 120), 0.220);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::general, 6), 0.1);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::general, 100), 0.3);
  EXPECT_DOUBLE_EQ(tolerance_mm(Grade::general, 2000), 0.8);
}

TEST(HandoffFits, FilesSortByItem) {
  EXPECT_EQ(file_stem("7", "cover"), "07_cover");
  EXPECT_EQ(file_stem("11.1.2", "gear layer"), "11.1.2_gear-layer");
  EXPECT_EQ(file_stem("3.1", "nut bar"), "03.1_nut-bar");
}

TEST(HandoffFits, FineTeethGetASmallBrokenEdge) {
  EXPECT_DOUBLE_EQ(first_layer_chamfer_mm(4), 0.3);
  EXPECT_DOUBLE_EQ(first_layer_chamfer_mm(1), 0.1);
}

}  // namespace
}  // namespace visewright::outputs::handoff
