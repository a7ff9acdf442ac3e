// The solids of a STEP file, checked and measured without a kernel.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "readers/step_file.h"

namespace visewright::readers {

struct Body {
  std::uint64_t id = 0;  // of its MANIFOLD_SOLID_BREP
  std::size_t faces = 0, edges = 0, vertices = 0, loops = 0;
  /// Corners − edges + faces − (loops − faces), and 2 less for each whole ring face, which is written without edges.
  long euler = 0;
  std::map<std::string, std::size_t> faces_of;  // by the name of the surface: "PLANE"
  /// Farthest that a corner lies from its edges' curves and its faces' surfaces, and an edge's inner points from the
  /// surfaces on both sides, mm.
  double worst_corner_mm = 0, worst_edge_mm = 0;
  /// By the divergence theorem over the rims of the faces. Nothing when a surface is not a plane, cylinder, cone or an
  /// extrusion along one common direction. Without extrusions it is taken along three directions, and `spread_mm3` is
  /// how far the three differ: a skin with a gap gives three volumes.
  std::optional<double> volume_mm3;
  double spread_mm3 = 0;
  /// Edges not used twice in opposite senses, loops that do not close, corners off by more than 1e-6 mm, faces turned
  /// against their rim, kinds that cannot be read, a make-up that no closed skin can have.
  std::vector<std::string> problems;

  /// Through holes, like the handle of a cup: Euler's number is 2 − 2·holes.
  [[nodiscard]] long holes() const { return 1 - euler / 2; }
};

[[nodiscard]] std::vector<Body> read_bodies(const StepFile&);

}  // namespace visewright::readers
