// Does anything touch that should not? All pairs of parts over the whole travel, with the grip folded and out.
#pragma once

#include <span>
#include <vector>

#include "assembly/assembly.h"
#include "base/watcher.h"
#include "fitup/couple.h"
#include "fitup/mesh_turn.h"
#include "layout/plan.h"
#include "reasons/finding.h"
#include "solids/solid_set.h"

namespace visewright::fitup {

/// What is looked at beyond the general checks.
struct Asked {
  bool walls = true, removal = true;
};

struct Report {
  std::vector<reasons::Finding> findings;  // the maker's named gaps in their order, then the rest, worst first
  std::vector<Couple> couples;             // every pair that comes near, or has a fit of its own: what was proved of it
  std::vector<MeshTurn> meshes;            // gear 1 with 2, 2 with 3 …
  double range_mm = 0;                     // gaps larger than this are known only to be larger
  int pairs_met = 0;                       // pairs of parts that come within that range
  int poses_measured = 0;                  // poses asked of the kernel
};

/// The fast stage works on our own shapes: bodies as drums cut into slabs, turning bodies as what they pass through in a
/// full turn, and answers for every opening at once. What it cannot clear goes to the solids: common volume first.
/// The same findings on any number of cores.
[[nodiscard]] base::Result<Report> check(const layout::Plan&, const assembly::Assembly&, const solids::SolidSet&, base::Watcher&, Asked = {});

}  // namespace visewright::fitup
