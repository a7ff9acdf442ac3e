// A sheet as SVG, one unit a millimetre, y turned over; a layer is a group, words stay words.
#pragma once

#include <string>

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Lines, arcs and circles as they are; involutes and trochoids as chords within this of them.
inline constexpr double chord_error_mm = 0.005;

/// `page` is what the picture shows, in the sheet's coordinates; a point (x, y) of the sheet stands at (x, −y).
[[nodiscard]] std::string svg(const Sheet&, const geometry::Box& page);

}  // namespace visewright::outputs::papers
