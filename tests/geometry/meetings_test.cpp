#include "geometry/meetings.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "geometry/loop.h"

namespace visewright::geometry {
namespace {

/// Meeting points with repeats removed.
std::vector<Point> places(const Edge& a, const Edge& b) {
  std::vector<Point> result;
  for (const Point p : meetings(a, b)) {
    const auto same = [p](Point q) { return distance(p, q) < 1e-6; };
    if (std::none_of(result.begin(), result.end(), same)) result.push_back(p);
  }
  return result;
}

TEST(Meetings, CountsByHand) {
  const Arc ring{{5, 0}, {5, 0}, {0, 0}, true}, upper{{5, 0}, {-5, 0}, {0, 0}, true};
  const auto count = [](const Edge& a, const Edge& b) {
    EXPECT_EQ(places(a, b).size(), places(b, a).size());
    return places(a, b).size();
  };
  EXPECT_EQ(count(Line{{0, 0}, {4, 4}}, Line{{0, 4}, {4, 0}}), 1U);
  EXPECT_EQ(count(Line{{0, 0}, {4, 0}}, Line{{0, 1}, {4, 1}}), 0U);
  EXPECT_EQ(count(Line{{0, 0}, {4, 0}}, Line{{2, 0}, {2, 3}}), 1U) << "an end on a side";
  EXPECT_EQ(count(Line{{0, 0}, {4, 0}}, Line{{3, 0}, {9, 0}}), 2U) << "ends of the shared stretch";
  EXPECT_EQ(count(Line{{0, 0}, {4, 0}}, Line{{5, 0}, {9, 0}}), 0U);
  EXPECT_EQ(count(Line{{-9, 3}, {9, 3}}, ring), 2U);
  EXPECT_EQ(count(Line{{-9, 5}, {9, 5}}, ring), 1U) << "touching";
  EXPECT_EQ(count(Line{{-9, 5.001}, {9, 5.001}}, ring), 0U);
  EXPECT_EQ(count(Line{{-9, -3}, {9, -3}}, upper), 0U) << "only the other half is crossed";
  EXPECT_EQ(count(Line{{0, 0}, {9, 3}}, ring), 1U);
  EXPECT_EQ(count(ring, Arc{{9, 0}, {9, 0}, {5, 0}, true}), 2U);
  EXPECT_EQ(count(ring, Arc{{8, 0}, {8, 0}, {7, 0}, true}), 0U);
  EXPECT_EQ(count(ring, Arc{{9, 0}, {9, 0}, {7, 0}, true}), 1U) << "touching from outside";
  EXPECT_EQ(count(ring, Arc{{1, 0}, {1, 0}, {3, 0}, true}), 1U) << "touching from inside";
  EXPECT_EQ(count(ring, Arc{{2, 0}, {2, 0}, {0, 0}, true}), 0U) << "about the same centre";
}

TEST(Meetings, PointsOfThreeFourFive) {
  // Circles of radius 5 whose centres are 8 apart cross 4 along and 3 to the side.
  const std::vector<Point> found = places(Arc{{5, 0}, {5, 0}, {0, 0}, true}, Arc{{3, 0}, {3, 0}, {8, 0}, false});
  ASSERT_EQ(found.size(), 2U);
  for (const Point p : found) {
    EXPECT_NEAR(p.x, 4, 1e-12);
    EXPECT_NEAR(std::abs(p.y), 3, 1e-12);
  }
}

TEST(Meetings, ParameterIsTheInverseOfAt) {
  for (const Edge& e : {Edge(Line{{1, 2}, {5, -3}}), Edge(Arc{{3, 1}, {1, 3}, {1, 1}, true}),
                        Edge(Arc{{3, 1}, {1, 3}, {1, 1}, false}), Edge(Arc{{3, 1}, {3, 1}, {1, 1}, false})}) {
    for (const double u : {0.01, 0.3, 0.6, 0.99}) EXPECT_NEAR(parameter(e, at(e, u)), u, 1e-12);
  }
}

}  // namespace
}  // namespace visewright::geometry
