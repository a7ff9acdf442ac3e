// The weakest link: everything that gives way as the clamp force grows, ranked.
#pragma once

#include "analysis/figures.h"

namespace visewright::analysis {

/// A row before its clamp forces are worked out.
struct Stressed {
  const reasons::Rule& rule;
  std::string_view when;
  double stress, allowed, strength;
  double clamp_n;  // at which that stress stands
  std::vector<std::string> parts;
  std::vector<reasons::Term> with;
  reasons::Unit unit = reasons::Unit::mpa;
};

/// In proportion: what is allowed at the clamp force where the stress meets what is allowed, what gives where it meets
/// the strength.
[[nodiscard]] StrengthRow row_of(Stressed);

using Rows = std::vector<StrengthRow>;
void add_train_rows(const layout::Plan&, const DriveFigures&, Rows&);  // teeth, hexagon, pins, axle
void add_screw_rows(const layout::Plan&, const DriveFigures&, Rows&);
void add_jaw_rows(const layout::Plan&, const DriveFigures&, const JawFigures&, Rows&);
void add_mounting_rows(const layout::Plan&, const DriveFigures&, Rows&);

/// All of them, the one that gives at the least clamp force first.
[[nodiscard]] Rows strength_rows(const layout::Plan&, const DriveFigures&, const JawFigures&);
/// What gives way by another load, each with why it is no row.
[[nodiscard]] std::vector<LeftOut> left_out_of_strength();

/// One finding a row: over what is allowed is a caution, over the strength a fail.
[[nodiscard]] reasons::Finding finding_of(const StrengthRow&);

}  // namespace visewright::analysis
