// The skin of a solid as triangles.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "base/fault.h"
#include "kernel/solid.h"

namespace visewright::kernel {

/// The most that neighbouring facets of a round face turn against each other, radians.
inline constexpr double facet_turn_rad = 0.2;

/// Triangles by the numbers of their points, mm; anticlockwise seen from outside. Law: every edge of a triangle is met
/// by exactly one other triangle that runs it the other way.
struct Facets {
  std::vector<std::array<float, 3>> points;
  std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// Facets within about `deflection_mm` of the solid: on doubly curved faces the kernel strays up to twice that. The
/// solid itself stays as it is. Law: the same solid gives the same facets.
[[nodiscard]] base::Result<Facets> facets(const Solid&, double deflection_mm, std::string_view label);

}  // namespace visewright::kernel
