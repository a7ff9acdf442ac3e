// The faces of parts by name. Plates and turned parts lie in the front frame: x to the right, y up, z out of the bench.
#pragma once

#include "parts/operation.h"

namespace visewright::parts {

/// The face at height `z` that the person sees.
[[nodiscard]] inline Face front(double z_mm) { return {"front", {{0, 0, z_mm}, {1, 0, 0}, {0, 0, 1}}}; }
/// The face towards the bench; its x runs to the left, as who stands behind sees it.
[[nodiscard]] inline Face back(double z_mm = 0) { return {"back", {{0, 0, z_mm}, {-1, 0, 0}, {0, 0, -1}}}; }
/// The face on top; its y runs into the bench.
[[nodiscard]] inline Face top(double y_mm) { return {"top", {{0, y_mm, 0}, {1, 0, 0}, {0, 1, 0}}}; }
/// The face below; its y runs out of the bench.
[[nodiscard]] inline Face bottom(double y_mm) { return {"bottom", {{0, y_mm, 0}, {1, 0, 0}, {0, -1, 0}}}; }
/// The face at the person's right; its y runs up, its x into the bench.
[[nodiscard]] inline Face right(double x_mm) { return {"right", {{x_mm, 0, 0}, {0, 0, -1}, {1, 0, 0}}}; }
/// The face at the person's left; its y runs up, its x out of the bench.
[[nodiscard]] inline Face left(double x_mm) { return {"left", {{x_mm, 0, 0}, {0, 0, 1}, {-1, 0, 0}}}; }

/// Faces of the bench, whose frame is the model's: x to the right, y into the bench, z up.
[[nodiscard]] inline Face bench_top(double z_mm) { return {"top", {{0, 0, z_mm}, {1, 0, 0}, {0, 0, 1}}}; }
[[nodiscard]] inline Face bench_underside(double z_mm) { return {"underside", {{0, 0, z_mm}, {1, 0, 0}, {0, 0, -1}}}; }
/// A face that looks at the person; its y runs up, so points of the front frame keep their coordinates.
[[nodiscard]] inline Face bench_front(double y_mm) { return {"front", {{0, y_mm, 0}, {1, 0, 0}, {0, -1, 0}}}; }

/// A point of the part's frame in the coordinates of a face.
[[nodiscard]] inline geometry::Point on(const Face& face, const geometry::Vector& point_mm) {
  const geometry::Vector inside = geometry::to_inside(face.datum, point_mm);
  return {inside[0], inside[1]};
}
/// A point of the front frame in the coordinates of a front or back face.
[[nodiscard]] inline geometry::Point on(const Face& face, geometry::Point seen_from_front) {
  return on(face, geometry::Vector{seen_from_front.x, seen_from_front.y, 0});
}

}  // namespace visewright::parts
