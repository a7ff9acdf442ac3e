#include "kernel/facets.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "kernel/flanks.h"
#include "units/quantity.h"

namespace visewright {
namespace {

using kernel::Facets;
using units::pi;

void expect_watertight(const Facets& skin) {
  std::map<std::pair<std::uint32_t, std::uint32_t>, int> runs;
  for (const auto& t : skin.triangles)
    for (std::size_t i = 0; i < 3; ++i) ++runs[{t[i], t[(i + 1) % 3]}];
  ASSERT_FALSE(runs.empty());
  for (const auto& [edge, count] : runs) {
    EXPECT_EQ(count, 1);
    EXPECT_TRUE(runs.contains({edge.second, edge.first}));
  }
}

/// Sum of the signed tetrahedra under the triangles.
double volume(const Facets& skin) {
  double sum = 0;
  for (const auto& t : skin.triangles) {
    std::array<std::array<double, 3>, 3> p;
    for (std::size_t i = 0; i < 3; ++i)
      for (std::size_t k = 0; k < 3; ++k) p[i][k] = static_cast<double>(skin.points[t[i]][k]);
    sum += p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1]) + p[0][1] * (p[1][2] * p[2][0] - p[1][0] * p[2][2]) +
           p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
  }
  return sum / 6;
}

TEST(Facets, OfABoxAreExact) {
  const auto box = kernel::prism(geometry::region(geometry::rectangle({0, 0}, {2, 3})), {}, 0, 4, "box").value();
  const Facets skin = kernel::facets(box, 0.1, "box").value();
  EXPECT_EQ(skin.points.size(), 8u);
  EXPECT_EQ(skin.triangles.size(), 12u);
  expect_watertight(skin);
  EXPECT_NEAR(volume(skin), 24, 1e-5);
}

// Round bodies of every kind of face: the loss of volume is bounded by twice the deflection times the surface.
TEST(Facets, AreWatertightOnRoundBodies) {
  const std::vector<geometry::Point> cone{{0, 0}, {6, 0}, {0, 10}};
  const std::vector<geometry::Loop> sections{
      geometry::rectangle({4, 0}, {9, 12}), geometry::polygon(cone), geometry::circle({20, 1}, 3),
      geometry::trusted({geometry::Arc{{0, -5}, {0, 5}, {0, 0}, true}, geometry::Line{{0, 5}, {0, -5}}})};
  const std::vector<double> volumes{pi * (81 - 16) * 12, pi * 36 * 10 / 3, 2 * pi * pi * 20 * 9, 4 * pi * 125 / 3};
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const auto body =
        kernel::revolution(geometry::region(sections[i]), {{1, 2, 3}, {0, 0.6, 0.8}, {1, 0, 0}}, "body").value();
    const Facets skin = kernel::facets(body, 0.02, "body").value();
    expect_watertight(skin);
    EXPECT_NEAR(volume(skin), volumes[i], 2 * 0.02 * kernel::measures(body, "body")->area_mm2);
  }
}

TEST(Facets, OfAToothWithABoreAreWatertightAndFiner) {
  const auto tooth = kernel::prism(geometry::region(kernel_tests::tooth().outline(), {geometry::circle({60, 0}, 2)}),
                                   {}, 0, 20, "tooth")
                         .value();
  const Facets coarse = kernel::facets(tooth, 0.2, "tooth").value(),
               fine = kernel::facets(tooth, 0.002, "tooth").value();
  expect_watertight(coarse);
  expect_watertight(fine);
  EXPECT_GT(fine.triangles.size(), coarse.triangles.size());
  EXPECT_EQ(kernel::facets(tooth, 0.2, "tooth").value().triangles, coarse.triangles);
}

// A body of several moved pieces keeps them apart and outside out.
TEST(Facets, FollowAMovedSolid) {
  const auto box = kernel::prism(geometry::region(geometry::rectangle({0, 0}, {2, 3})), {}, 0, 4, "box").value();
  const Facets skin = kernel::facets(kernel::moved(box, {{10, 20, 30}, {0, 1, 0}, {1, 0, 0}}), 0.1, "box").value();
  EXPECT_NEAR(volume(skin), 24, 1e-3);
  float least = 1000;
  for (const auto& p : skin.points) least = std::min(least, p[0]);
  EXPECT_EQ(least, 10.0F);
}

TEST(Facets, RefuseNoDeflection) {
  const auto box = kernel::prism(geometry::region(geometry::rectangle({0, 0}, {2, 3})), {}, 0, 4, "box").value();
  EXPECT_FALSE(kernel::facets(box, 0, "box").has_value());
}

}  // namespace
}  // namespace visewright
