// Title, remarks and the meaning of the layers as words below a sheet: for media that have no page round them.
#pragma once

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// The sheet with its legend on the layer READ-ONLY, under everything that is drawn.
[[nodiscard]] Sheet with_legend(Sheet);
/// What a picture of the sheet must show: curves and words, with a margin.
[[nodiscard]] geometry::Box whole(const Sheet&, double margin_mm);

}  // namespace visewright::outputs::papers
