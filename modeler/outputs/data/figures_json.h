// The figures of the analysis as JSON: members of "plan" in visewright.size/1.
#pragma once

#include "outputs/data/json.h"
#include "outputs/facts.h"

namespace visewright::outputs::data {

/// "gears" gain how a finished gear is measured; index as in the train.
void add_gear_measures(Json& gear, const analysis::GearMeasures&);

[[nodiscard]] Json drive_json(const analysis::DriveFigures&);
[[nodiscard]] Json screws_json(const std::array<analysis::ScrewFigures, 2>&);
[[nodiscard]] Json droop_json(const analysis::DroopFigures&);
[[nodiscard]] Json jaws_json(const analysis::JawFigures&);
[[nodiscard]] Json movement_json(const analysis::MovementFigures&);
[[nodiscard]] Json strength_json(std::span<const analysis::StrengthRow>);
[[nodiscard]] Json left_out_json(std::span<const analysis::LeftOut>);
[[nodiscard]] Json spacing_json(const analysis::SpacingFigures&);
/// Every coefficient that may be set under [assume], and what else was assumed, each with value, unit and source.
[[nodiscard]] Json assumptions_json(const reasons::Ledger&);

}  // namespace visewright::outputs::data
