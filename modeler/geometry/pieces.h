// Outlines cut where they meet, and the pieces of them that bound their union.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/loop.h"

namespace visewright::geometry {

/// A stretch of one outline between two neighbouring cuts. Pieces that meet share the number of the vertex and, to the
/// last digit, its coordinates.
struct Piece {
  Edge edge;
  std::size_t loop = 0;
  std::size_t from = 0, to = 0;
};

/// What happens to an involute or trochoid that another outline may cross.
enum class CrossedCurves : std::uint8_t { refuse, as_chords };

/// The pieces that bound the union of the outlines, in the order of the outlines and along each of them. Fails only for
/// `refuse`. A piece is kept when no other outline covers it; of pieces that coincide the first is
/// kept when they run the same way, and none when two run opposite ways. Chords replace crossed curves within 1e-6 mm.
[[nodiscard]] base::Result<std::vector<Piece>> boundary_of_union(std::span<const Loop>, CrossedCurves);

}  // namespace visewright::geometry
