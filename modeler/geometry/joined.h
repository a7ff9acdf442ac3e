// Union of outlines that keeps arcs as arcs.
#pragma once

#include <span>

#include "geometry/loop.h"

namespace visewright::geometry {

/// The union of outlines of lines and arcs; curves of other kinds may take part only where nothing crosses them.
/// Touching and partly coinciding outlines are joined. Holes enclosed by the union are kept.
[[nodiscard]] base::Result<Profile> joined(std::span<const Loop>);

/// Area of the union, without building it. Law: equals area_mm2(joined(loops)) where both exist.
[[nodiscard]] double joined_area_mm2(std::span<const Loop>);

/// Area of `from` that none of `taken` covers. Law: area(from) + joined_area(taken) − joined_area(from and taken).
[[nodiscard]] double left_area_mm2(const Loop& from, std::span<const Loop> taken);

}  // namespace visewright::geometry
