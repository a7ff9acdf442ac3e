// Does anything touch that should not? All pairs, at three openings, grip folded and out.
#pragma once

#include <span>
#include <vector>

#include "assembly/assembly.h"
#include "base/watcher.h"
#include "layout/plan.h"
#include "reasons/finding.h"
#include "solids/solid_set.h"

namespace visewright::fitup {

struct Report {
  std::vector<reasons::Finding> findings;  // worst first
  int pairs_met = 0;      // pairs of bodies whose boxes come near each other, at some pose
  int poses_measured = 0; // distinct relative poses asked of the kernel
};

/// Overlap over all pairs at opening 0, half and full, grip folded and out; gaps between moving and fixed parts against
/// the general gap, or the pair's own; meshing gears by their outlines. Boxes first; the common volume is the judge of
/// overlap, the distance is asked only of pairs that share none. Sampled at those poses, not certified between them.
[[nodiscard]] base::Result<Report> check(const layout::Plan&, const assembly::Assembly&, const solids::SolidSet&, base::Watcher&);

}  // namespace visewright::fitup
