// Triangles by the numbers of their points, and the checks that make them a closed skin.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "geometry/placement.h"

namespace visewright::outputs::facets {

/// Points in mm. Triangles run anticlockwise seen from outside. Equal points are one point.
struct Mesh {
  std::vector<geometry::Vector> points;
  std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// Edges that are not used exactly twice in opposite senses; 0 for a closed skin.
[[nodiscard]] std::size_t open_edges(const Mesh&);
/// By the divergence theorem; positive when the triangles look outwards.
[[nodiscard]] double volume_mm3(const Mesh&);

}  // namespace visewright::outputs::facets
