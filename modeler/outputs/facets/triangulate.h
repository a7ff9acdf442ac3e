// A flat region between polygons, cut into triangles.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "geometry/point.h"

namespace visewright::outputs::facets {

using Polygon = std::vector<geometry::Point>;

/// Triangles that fill `outer` less `holes`, by cutting off ears; holes are first joined to the outline by a bridge.
/// All polygons are anticlockwise. Numbers count the points of `outer` first, then those of each hole in turn. Every
/// side of a polygon is the side of exactly one triangle, and no new points come in, so that skins join without gaps.
/// Empty when the polygons cross. REQUIRES: simple polygons, holes inside `outer`.
[[nodiscard]] std::vector<std::array<std::uint32_t, 3>> triangles(const Polygon& outer, std::span<const Polygon> holes);

/// Whether no two sides of a polygon cross or touch, save neighbours at their corner.
[[nodiscard]] bool simple(const Polygon&);
/// Whether the outlines of two polygons have a point in common.
[[nodiscard]] bool meet(const Polygon&, const Polygon&);
[[nodiscard]] bool inside(const Polygon&, geometry::Point);
/// Positive for anticlockwise.
[[nodiscard]] double area_mm2(const Polygon&);

}  // namespace visewright::outputs::facets
