// A sheet as DXF of release 2000 (AC1015), in millimetres, for machines.
#pragma once

#include <string>

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Model space holds, in the sheet's coordinates, circles as CIRCLE, closed curves as closed LWPOLYLINE with bulges,
/// open ones as LINE, ARC and LWPOLYLINE, words as TEXT. Involutes and trochoids become chords within `chord_error_mm`.
/// Law: the same sheet gives the same bytes; nothing is drawn twice: of curves that coincide on one layer the first.
[[nodiscard]] std::string dxf(const Sheet&);

}  // namespace visewright::outputs::papers
