#include "kernel/hidden_lines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace visewright {
namespace {

using geometry::Placement;
using kernel::PlacedSolid;
using kernel::Segment;

kernel::Solid block(double x, double y, double z) {
  return kernel::prism(geometry::region(geometry::rectangle({0, 0}, {x, y})), {}, 0, z, "block").value();
}

double visible_mm(const std::vector<Segment>& segments, std::size_t of) {
  double sum = 0;
  for (const Segment& s : segments)
    if (s.of == of) sum += geometry::distance(s.a, s.b);
  return sum;
}

// Seen along a body diagonal a cube shows nine of its twelve edges, each shortened to √(2/3).
TEST(HiddenLines, OfACubeAlongItsDiagonal) {
  const double h = std::sqrt(0.5), d = std::sqrt(1.0 / 3);
  const std::vector<PlacedSolid> cube{{block(10, 10, 10), {}, 7}};
  const auto seen = kernel::hidden_lines(cube, {{0, 0, 0}, {-h, h, 0}, {d, d, d}}, 0.1, "cube").value();
  EXPECT_NEAR(visible_mm(seen, 0), 9 * 10 * std::sqrt(2.0 / 3), 1e-3);
  for (const Segment& s : seen) EXPECT_EQ(s.colour_group, 7);
}

// From above, a small block under a large one is hidden, and one beside it shows its four edges in view coordinates.
TEST(HiddenLines, LeaveOutWhatIsCovered) {
  const std::vector<PlacedSolid> solids{{block(50, 50, 5), {{0, 0, 20}, {1, 0, 0}, {0, 0, 1}}, 0},
                                        {block(10, 10, 10), {{20, 20, 0}, {1, 0, 0}, {0, 0, 1}}, 1},
                                        {block(10, 10, 10), {{100, 0, 0}, {1, 0, 0}, {0, 0, 1}}, 2}};
  // The view's x is the world's y: what lies far along x appears at negative y.
  const auto seen = kernel::hidden_lines(solids, {{0, 0, 0}, {0, 1, 0}, {0, 0, 1}}, 0.1, "blocks").value();
  EXPECT_NEAR(visible_mm(seen, 0), 200, 1e-3);
  EXPECT_NEAR(visible_mm(seen, 1), 0, 1e-3);
  EXPECT_NEAR(visible_mm(seen, 2), 40, 1e-3);
  for (const Segment& s : seen) {
    if (s.of != 2) continue;
    EXPECT_GT(s.a.x, -1e-6);
    EXPECT_LT(s.a.x, 10 + 1e-6);
    EXPECT_LT(s.a.y, -100 + 1e-6);
  }
}

// A standing cylinder seen from the side: two rims of one diameter, and two outlines of its height.
TEST(HiddenLines, ShowTheOutlineOfRoundBodies) {
  const auto rod = kernel::prism(geometry::region(geometry::circle({0, 0}, 10)), {}, 0, 30, "rod").value();
  const std::vector<PlacedSolid> solids{{rod, {}, 0}};
  const auto seen = kernel::hidden_lines(solids, {{0, 0, 0}, {1, 0, 0}, {0, -1, 0}}, 0.05, "rod").value();
  double upright = 0;
  for (const Segment& s : seen)
    if (std::abs(s.a.x - s.b.x) < 1e-6) upright += geometry::distance(s.a, s.b);
  EXPECT_NEAR(upright, 60, 1e-3);
  EXPECT_TRUE(std::ranges::any_of(seen, &Segment::outline));
}

// Where the round face is closed on itself there is no edge to be seen.
TEST(HiddenLines, DoNotShowTheSeamOfRoundBodies) {
  const auto rod = kernel::prism(geometry::region(geometry::circle({0, 0}, 10)), {}, 0, 30, "rod").value();
  const std::vector<PlacedSolid> solids{{rod, {}, 0}};
  // The seam stands at the world's x, which this view sees a little left of its right rim.
  const auto seen = kernel::hidden_lines(solids, {{0, 0, 0}, {0.96, 0.28, 0}, {0.28, -0.96, 0}}, 0.05, "rod").value();
  for (const Segment& s : seen) EXPECT_FALSE(std::abs(s.a.x - s.b.x) < 1e-6 && std::abs(s.a.x) < 9.9);
}

TEST(HiddenLines, ComeInTheSameOrderEachTime) {
  const std::vector<PlacedSolid> solids{{block(50, 50, 5), {}, 0},
                                        {block(10, 10, 10), {{20, 20, 5}, {0.6, 0.8, 0}, {0, 0, 1}}, 1}};
  const Placement view{{0, 0, 0}, {0.8, 0.6, 0}, {0.36, -0.48, 0.8}};
  const auto once = kernel::hidden_lines(solids, view, 0.1, "").value(),
             again = kernel::hidden_lines(solids, view, 0.1, "").value();
  ASSERT_EQ(once.size(), again.size());
  for (std::size_t i = 0; i < once.size(); ++i) {
    EXPECT_EQ(once[i].a, again[i].a);
    EXPECT_EQ(once[i].b, again[i].b);
  }
}

}  // namespace
}  // namespace visewright
