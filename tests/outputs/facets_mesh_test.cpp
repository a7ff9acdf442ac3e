// Skins of printed bodies, and the bytes they are written as.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstring>

#include "geometry/loop.h"
#include "outputs/facets/stacked.h"
#include "outputs/facets/stl.h"
#include "outputs/facets/three_mf.h"
#include "outputs/facets/zip.h"
#include "units/quantity.h"

namespace visewright::outputs::facets {
namespace {

using geometry::Point;
using units::pi;

Polygon square(double low, double high) { return {{low, low}, {high, low}, {high, high}, {low, high}}; }

double filled_mm2(const Polygon& outer, const std::vector<Polygon>& holes) {
  std::vector<Point> points = outer;
  for (const Polygon& hole : holes) points.insert(points.end(), hole.begin(), hole.end());
  double area = 0;
  for (const auto& t : triangles(outer, holes)) {
    const double twice = geometry::cross(points[t[1]] - points[t[0]], points[t[2]] - points[t[0]]);
    EXPECT_GT(twice, 0);
    area += twice / 2;
  }
  return area;
}

TEST(FacetsMesh, TrianglesFillWhatIsBetweenPolygons) {
  EXPECT_NEAR(filled_mm2(square(0, 10), {}), 100, 1e-9);
  EXPECT_NEAR(filled_mm2(square(0, 10), {square(2, 3), square(5, 9)}), 100 - 1 - 16, 1e-9);
  // A comb: an area of 10 × 6 less four gaps of 1 × 4.
  const Polygon comb{{0, 0}, {10, 0}, {10, 6}, {9, 6}, {9, 2}, {8, 2}, {8, 6}, {7, 6}, {7, 2}, {6, 2}, {6, 6}, {5, 6}, {5, 2}, {4, 2}, {4, 6}, {3, 6}, {3, 2}, {2, 2}, {2, 6}, {0, 6}};
  EXPECT_NEAR(filled_mm2(comb, {}), 60 - 16, 1e-9);
  EXPECT_NEAR(filled_mm2(comb, {{{1, 0.5}, {9, 0.5}, {9, 1.5}, {1, 1.5}}}), 60 - 16 - 8, 1e-9);
  // n points and h holes make n + 2h − 2 triangles (Euler).
  EXPECT_EQ(triangles(square(0, 10), std::vector{square(2, 3), square(5, 9)}).size(), 12u + 4 - 2);
}

TEST(FacetsMesh, PolygonsThatCrossAreFound) {
  EXPECT_TRUE(simple(square(0, 1)));
  EXPECT_FALSE(simple({{0, 0}, {1, 1}, {1, 0}, {0, 1}}));
  EXPECT_TRUE(meet(square(0, 2), square(1, 3)));
  EXPECT_FALSE(meet(square(0, 3), square(1, 2)));
  EXPECT_TRUE(inside(square(0, 3), {1, 1}));
  EXPECT_FALSE(inside(square(0, 3), {4, 1}));
}

// A block 20 × 20 × 10 with a square well of 8 down to 4 and one of 4 below it; the edges on the bed broken by 1: the
// foot is a frustum between squares of 18 and 20, the hole one between 6 and 4. Frustum: h/3·(A + B + √AB).
TEST(FacetsMesh, AStackHasItsVolumeAndIsClosed) {
  const std::vector<Slab> slabs{{{square(8, 12)}, 0, 4}, {{square(6, 14)}, 4, 10}};
  const Skin sharp = stacked(square(0, 20), slabs, 0, "block").value();
  EXPECT_EQ(open_edges(sharp.mesh), 0u);
  EXPECT_NEAR(volume_mm3(sharp.mesh), 400 * 10 - 16 * 4 - 64 * 6, 1e-9);
  const Skin broken = stacked(square(0, 20), slabs, 1, "block").value();
  EXPECT_EQ(open_edges(broken.mesh), 0u);
  EXPECT_EQ(broken.chamfer_mm, 1);
  const double foot = (324 + 400 + 360) / 3.0, hole = (36 + 16 + 24) / 3.0;
  EXPECT_NEAR(volume_mm3(broken.mesh), foot + 400 * 9 - hole - 16 * 3 - 64 * 6, 1e-9);
}

TEST(FacetsMesh, AnUpperHoleMayBeTheSmallerOneOrTheSame) {
  const std::vector<Slab> slabs{{{square(6, 14)}, 5, 9}, {{square(8, 12)}, 9, 12}, {{square(8, 12)}, 12, 15}};
  const Skin skin = stacked(square(0, 20), slabs, 0.5, "block").value();
  EXPECT_EQ(open_edges(skin.mesh), 0u);
  double low = 1e9;
  for (const auto& p : skin.mesh.points) low = std::min(low, p[2]);
  EXPECT_EQ(low, 0);  // on the bed, wherever the part's own frame is
}

TEST(FacetsMesh, WhatIsTooFineForABrokenEdgeStaysSharp) {
  const std::vector<Slab> slabs{{{}, 0, 4}};
  const Polygon thin{{0, 0}, {10, 0}, {10, 1}, {0, 1}};
  EXPECT_EQ(stacked(thin, slabs, 0.6, "strip").value().chamfer_mm, 0);
  EXPECT_EQ(stacked(thin, slabs, 0.4, "strip").value().chamfer_mm, 0.4);
}

TEST(FacetsMesh, CrossingHolesAndGapsAreRefused) {
  EXPECT_FALSE(stacked(square(0, 20), std::vector<Slab>{{{square(8, 12)}, 0, 4}, {{square(10, 14)}, 4, 10}}, 0, "x"));
  EXPECT_FALSE(stacked(square(0, 20), std::vector<Slab>{{{square(8, 12)}, 0, 4}, {{square(8, 12)}, 5, 10}}, 0, "x"));
  EXPECT_FALSE(stacked(square(0, 20), std::vector<Slab>{{{square(8, 22)}, 0, 4}}, 0, "x"));
  EXPECT_FALSE(stacked(square(0, 20), {}, 0, "x"));
}

TEST(FacetsMesh, DefectsOfASkinAreCounted) {
  const Mesh sound = stacked(square(0, 20), std::vector<Slab>{{{square(8, 12)}, 0, 4}}, 0, "x").value().mesh;
  Mesh holed = sound, turned = sound;
  holed.triangles.pop_back();
  EXPECT_EQ(open_edges(holed), 3u);
  std::swap(turned.triangles[0][0], turned.triangles[0][1]);
  EXPECT_EQ(open_edges(turned), 3u);
}

TEST(FacetsMesh, HolesGrowByTheAllowance) {
  const Polygon round = enlarged_hole(geometry::circle({5, 5}, 11), 0.2);
  for (const Point p : round) EXPECT_NEAR(geometry::distance(p, {5, 5}), 11.1, 1e-12);
  EXPECT_NEAR(area_mm2(round), pi * 11.1 * 11.1, 2 * pi * 11.1 * print_chord_error_mm);
  // A hexagon stays one: corners at the width across flats over √3.
  const Polygon hexagon = enlarged_hole(geometry::hexagon({0, 0}, 30, 0), 0.2);
  ASSERT_EQ(hexagon.size(), 6u);
  for (const Point p : hexagon) EXPECT_NEAR(geometry::length(p), 30.2 / std::sqrt(3.0), 1e-9);
}

TEST(FacetsMesh, StlIsAHeadACountAndFiftyBytesATriangle) {
  const Mesh mesh = stacked(square(0, 20), std::vector<Slab>{{{}, 0, 4}}, 0, "x").value().mesh;
  const std::string bytes = stl(mesh, "block");
  ASSERT_EQ(bytes.size(), 84 + 50 * mesh.triangles.size());
  EXPECT_FALSE(bytes.starts_with("solid"));
  EXPECT_THAT(bytes.substr(0, 80), testing::AllOf(testing::HasSubstr("millimetres"), testing::HasSubstr("block")));
  EXPECT_EQ(static_cast<unsigned char>(bytes[80]), mesh.triangles.size());
  float normal[3];
  std::memcpy(normal, bytes.data() + 84, sizeof normal);
  EXPECT_EQ(normal[2], -1.0F);  // the first triangle lies on the bed and looks down
}

// The check value of this sum, over the digits 1 to 9, is part of its usual description.
TEST(FacetsMesh, ZipSumsAndRepeats) {
  EXPECT_EQ(crc32("123456789"), 0xCBF43926U);
  const Mesh mesh = stacked(square(0, 20), std::vector<Slab>{{{}, 0, 4}}, 0, "x").value().mesh;
  const ThreeMf about{"a & b", "7", "PETG", 0.1, 0.5, 1, "enlarged", "program"};
  const std::string bytes = three_mf(mesh, about);
  EXPECT_EQ(bytes, three_mf(mesh, about));
  EXPECT_THAT(bytes, testing::AllOf(testing::StartsWith("PK\x03\x04"), testing::HasSubstr("unit=\"millimeter\""), testing::HasSubstr("name=\"a &amp; b\""), testing::HasSubstr("#1A80FF")));
}

}  // namespace
}  // namespace visewright::outputs::facets
