// Printed bodies: the skins that a printer gets, and what was changed in them against the design.
#pragma once

#include <string>
#include <vector>

#include "base/fault.h"
#include "layout/plan.h"
#include "outputs/facets/stacked.h"
#include "parts/operation.h"

namespace visewright::outputs::handoff {

/// A hole as designed and as drawn: diameter, or width across flats where it is not round.
struct PrintedHole {
  bool round = true;
  double designed_mm = 0, drawn_mm = 0;
  double from_mm = 0, to_mm = 0;
};

struct PrintedBody {
  facets::Skin skin;
  std::vector<PrintedHole> holes;
};

/// Width of the broken edge on the bed: 0.3 mm is usual against the spread of the first layer, and a tenth of the module
/// leaves enough of small teeth. Common practice, no source.
[[nodiscard]] double first_layer_chamfer_mm(double module_mm);

/// The layers of a print with their holes enlarged by the printer's allowance, standing on z = 0 as they are printed. Its
/// facets stray at most `error_mm`.
[[nodiscard]] base::Result<PrintedBody> printed_body(const parts::Print&, double allowance_mm, double chamfer_mm,
                                                     const std::string& label,
                                                     double error_mm = facets::print_chord_error_mm);

/// A small test piece with what must fit later: the round hole and the hexagon of the gears, and a pair of teeth of the
/// first gear on its edge. `holes`: as in the gears. Drawn by the same rules.
[[nodiscard]] base::Result<PrintedBody> test_piece(const layout::Plan&, double chamfer_mm);

}  // namespace visewright::outputs::handoff
