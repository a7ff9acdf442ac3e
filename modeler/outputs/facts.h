// What every output is written from: views of what the program found, and nothing that an output could change.
#pragma once

#include <span>
#include <string_view>

#include "analysis/figures.h"
#include "assembly/assembly.h"
#include "design/design.h"
#include "layout/plan.h"
#include "making/making.h"
#include "reasons/finding.h"
#include "units/text.h"

namespace visewright::solids {
class SolidSet;
}

namespace visewright::outputs {

/// Which application protocol STEP files follow.
enum class StepSchema : std::uint8_t { ap214, ap242 };

/// What full-size sheets are printed on.
enum class Paper : std::uint8_t { a4, a3, letter };

/// All views; whoever fills it keeps what they point at. `header_time` is the text that file headers carry in place of
/// a clock, so that the same design gives the same bytes. `show` is the unit of lengths that a person reads; keys of
/// the data files name their own. `solids` is null unless an output asked for them.
struct Facts {
  const design::Design& design;
  const layout::Plan& plan;
  const assembly::Assembly& assembly;
  const analysis::Figures& figures;
  const making::Work& work;
  std::span<const reasons::Finding> findings;
  std::string_view title, program_version, header_time;
  units::LengthUnit show = units::LengthUnit::millimetre;
  const solids::SolidSet* solids = nullptr;
  assembly::Pose pose{};  // at which pictures and the assembly file show the vise
  StepSchema step_schema = StepSchema::ap214;
  Paper paper = Paper::a4;
};

}  // namespace visewright::outputs
