// Bodies printed in layers as closed skins, from our own outlines.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/fault.h"
#include "geometry/loop.h"
#include "outputs/facets/mesh.h"
#include "outputs/facets/triangulate.h"

namespace visewright::outputs::facets {

/// How far chords of printed outlines may stray from the curves, mm.
inline constexpr double print_chord_error_mm = 0.004;

/// The outline as a polygon that strays at most `error_mm`; corners nearer than a micrometre are one.
[[nodiscard]] Polygon polygon(const geometry::Loop&, double error_mm = print_chord_error_mm);
/// Every side shifted to its right by `by_mm`, out of an anticlockwise polygon; corners stay corners. Exact for straight
/// sides. REQUIRES: no side turns back on the one before it.
[[nodiscard]] Polygon shifted_out(const Polygon&, double by_mm);
/// A hole drawn larger: `by_mm` on the diameter of a circle, on the width across flats of a polygon.
[[nodiscard]] Polygon enlarged_hole(const geometry::Loop&, double by_mm, double error_mm = print_chord_error_mm);

/// A slab of one profile. Hole number i of one slab stands over hole number i of the slab below it.
struct Slab {
  std::vector<Polygon> holes;
  double from_mm = 0, to_mm = 0;
};

/// The skin of slabs with one common outer outline, on z = 0. The first layer of a print spreads on the bed, so the edges
/// that lie there are broken at 45°, `chamfer_mm` wide; where the outline is too fine for that they stay sharp, and
/// `chamfer_mm` comes back 0. Faults: slabs that leave a gap, no slab, holes that cross each other or the outline.
struct Skin {
  Mesh mesh;
  double chamfer_mm = 0;
};
[[nodiscard]] base::Result<Skin> stacked(const Polygon& outer, std::span<const Slab>, double chamfer_mm,
                                         const std::string& label);

}  // namespace visewright::outputs::facets
