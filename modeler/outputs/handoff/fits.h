// What goes into a hole, by which fit, and how far the hole may be off for it.
#pragma once

#include <string>
#include <string_view>

#include "outputs/facts.h"

namespace visewright::outputs::handoff {

/// Grades of ISO 286-1 and the medium grade of ISO 2768-1 for sizes that nothing fits into.
enum class Grade : std::uint8_t { it7, it9, it11, general };

/// Width of the tolerance at a size, mm; for `general` half of it, since it lies on both sides. Sizes up to 500 mm, and
/// up to 1000 mm for `general`; larger ones take the last step. Source: ISO 286-1:2010 table 1 and ISO 2768-1:1989
/// table 1, from memory.
[[nodiscard]] double tolerance_mm(Grade, double size_mm);

struct HoleFit {
  std::string with;  // name of the part that goes into it; empty when there is none
  std::string fit;   // "press", "sliding" …
  double low_mm = 0, high_mm = 0;  // how far the diameter may be off
};

/// The part whose outside is nearest to the hole's diameter among those that stand in it, on its axis, and have a
/// declared fit with the part. Press fits get H7, running fits H9, what has half a millimetre of play or more H11, and so
/// does everything else that goes in; a hole without a partner the general tolerance. `axis`: in the frame of part `of`,
/// z out of the hole, its origin where the hole begins.
[[nodiscard]] HoleFit hole_fit(const Facts&, std::uint32_t of, const geometry::Placement& axis, double diameter_mm,
                               double depth_mm);

}  // namespace visewright::outputs::handoff
