// Sizes of paper.
#pragma once

#include <array>

#include "outputs/facts.h"

namespace visewright::outputs::papers {

struct PaperSize {
  double width_mm, height_mm;  // upright
  [[nodiscard]] constexpr PaperSize on_its_side() const { return {height_mm, width_mm}; }
};

/// ISO 216 for A4 and A3; 8-1/2 in × 11 in for letter.
[[nodiscard]] constexpr PaperSize size_of(Paper paper) {
  constexpr std::array<PaperSize, 3> sizes{{{210, 297}, {297, 420}, {215.9, 279.4}}};
  return sizes[static_cast<std::size_t>(paper)];
}

/// What a printer that does not print to size must be given: the drawn length is the true one times this. A printer
/// whose 100 mm bar measures 98.5 mm across wants across = 100 / 98.5.
struct Correction {
  double across = 1, up = 1;
};

}  // namespace visewright::outputs::papers
