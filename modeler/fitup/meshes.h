// All meshes of the train, turned through a pitch as they stand and at the worst error of their spacing.
#pragma once

#include <vector>

#include "fitup/mesh_turn.h"
#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::fitup {

struct MeshChecks {
  std::vector<MeshTurn> as_planned, at_worst;  // gear 1 with 2, 2 with 3 …
  std::vector<double> nearer_mm;               // the worst error of each distance
  std::vector<reasons::Finding> findings;
};

/// A mesh that bites as planned fails; one that bites only at the worst error is a caution.
[[nodiscard]] MeshChecks mesh_checks(const layout::Plan&);

}  // namespace visewright::fitup
