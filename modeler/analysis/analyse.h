// What follows from a Plan, each consequence measured against its limit; no solids needed.
#pragma once

#include <vector>

#include "analysis/figures.h"
#include "assembly/assembly.h"
#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::analysis {

struct Analysis {
  Figures figures;
  std::vector<reasons::Finding> findings;  // worst first
};

/// How much to work out: `trials` builds for the chance of spacing errors; 0 leaves the chance out.
struct Depth {
  std::size_t trials = 100000;
};

[[nodiscard]] Analysis analyse(const layout::Plan&, const assembly::Assembly&, Depth = {});

/// Mass of all that moves with the jaw, turning parts included, kg.
[[nodiscard]] double moving_mass_kg(const assembly::Assembly&);

}  // namespace visewright::analysis
