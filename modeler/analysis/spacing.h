// How well the row of gears and the parts that share its holes bear the errors of marking and drilling.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "formulas/spacing_error.h"
#include "layout/plan.h"
#include "reasons/finding.h"

namespace visewright::analysis {

/// Builds counted, their share, and Wilson's interval for it at 95 %.
struct Chance {
  std::size_t builds = 0;
  double percent = 0, low_percent = 0, high_percent = 0;
};

struct MeshSpacing {
  formulas::MeshSpread spread;
  std::optional<double> backlash_at_worst_mm;  // all errors bring the axles nearer; absent within the base circles
};

struct PartSpacing {
  std::string part;
  formulas::PartSpread spread;
};

/// What one way of marking gives, the errors being those of the Plan.
struct SpacingOfWay {
  layout::Marking marking = layout::Marking::from_template;
  std::vector<MeshSpacing> meshes;
  std::vector<PartSpacing> parts;
  Chance bind, slack, line_up, any;
  std::optional<double> largest_factor;  // on all errors, at which 99 of 100 builds work; absent without errors
  std::optional<double> largest_factor_of_meshes;  // the same when only the meshes have to work
  std::vector<double> gives_first_percent;         // by gear: how often its hole gives first as errors grow
  std::size_t critical_gear = 0;                   // the greatest of them, the left one of equals
};

struct SpacingFigures {
  std::uint64_t seed = 0;
  std::size_t trials = 0;
  bool axles_measured = false;  // the holes of the axles are made; the errors are those of the parts that follow
  layout::Marking chosen = layout::Marking::from_template;
  std::array<SpacingOfWay, 3> ways;  // template, one datum, one from the next
  [[nodiscard]] const SpacingOfWay& of_chosen() const { return ways[static_cast<std::size_t>(chosen)]; }
};

/// What the formulas are given: the part with the axles is the backing, with rear jaw, cover and gear layer the parts
/// that follow it.
[[nodiscard]] formulas::SpacingInput spacing_input(const layout::Plan&, layout::Marking);

/// All three ways of marking, on the same draws.
[[nodiscard]] SpacingFigures spacing(const layout::Plan&, std::size_t trials = 100000, std::uint64_t seed = 1);

/// A mesh without room is a fail; one, or a bore, without room at an error that may happen is a caution that tells its
/// chance.
[[nodiscard]] std::vector<reasons::Finding> judge_spacing(const SpacingFigures&);

}  // namespace visewright::analysis
