// One design, worked through as far as a command needs: read, planned, put together, judged, built, fitted.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "analysis/figures.h"
#include "assembly/assembly.h"
#include "base/watcher.h"
#include "design/design.h"
#include "layout/plan.h"
#include "making/making.h"
#include "outputs/facts.h"
#include "reasons/finding.h"
#include "reasons/rule.h"
#include "solids/solid_set.h"
#include "standards/catalogue.h"

namespace visewright::pipeline {

/// Rows of the catalogue are pointed at by everything below it, so a study never moves: it lives behind a pointer.
struct Study {
  standards::Catalogue catalogue;
  design::Design design;
  layout::Plan plan;
  assembly::Assembly assembly;
  analysis::Figures figures;
  making::Work work;
  std::vector<reasons::Finding> findings;
  std::optional<solids::SolidSet> solids;
};
using StudyResult = base::Result<std::unique_ptr<Study>>;

/// Reads and plans a design file and judges it without solids.
[[nodiscard]] StudyResult sized(const std::string& design_file, base::Watcher&);
/// As sized, and builds the solids and fits them together.
[[nodiscard]] StudyResult fitted(const std::string& design_file, base::Watcher&);

/// Views for the outputs. `show` absent: the design's own unit.
[[nodiscard]] outputs::Facts facts(const Study&, std::optional<units::LengthUnit> show);

/// 1 when a finding fails, else 0.
[[nodiscard]] int exit_of(const Study&);

/// Every rule of layout, analysis, making and fit-up.
[[nodiscard]] std::vector<const reasons::Rule*> all_rules();

}  // namespace visewright::pipeline
