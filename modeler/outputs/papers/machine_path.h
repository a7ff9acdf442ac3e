// The path that a machine's beam or cutter runs beside the lines of a sheet.
#pragma once

#include "outputs/papers/sheet.h"
#include "units/text.h"

namespace visewright::outputs::papers {

/// A beam that burns away `kerf_mm`: what it cuts right through is drawn half the kerf on the side of the waste.
/// Recesses and blind holes are not a beam's work: they go to READ-ONLY.
[[nodiscard]] Sheet kerf_path(const Sheet&, double kerf_mm, units::LengthUnit show);
/// A round cutter: the path of its middle, half its diameter on the side of the waste. What it is too wide for stays as
/// it is on the layer READ-ONLY, and a remark names it.
[[nodiscard]] Sheet cutter_path(const Sheet&, double cutter_mm, units::LengthUnit show);

}  // namespace visewright::outputs::papers
