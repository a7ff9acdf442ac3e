// Two placed parts over the whole travel: the gap they keep, proved stretch by stretch, or where they fail.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <utility>

#include "base/watcher.h"
#include "fitup/nearness.h"
#include "reasons/finding.h"
#include "solids/solid_set.h"

namespace visewright::fitup {

/// A stretch of the travel over which a gap is proved, mm.
struct Stretch {
  double from_mm = 0, to_mm = 0, least_mm = 0;
};

/// What is known of two placed parts, a before b.
struct Couple {
  std::uint32_t a = 0, b = 0;
  std::optional<assembly::Fit> fit;  // absent: the general rule
  double limit_mm = 0;               // the gap they must keep
  Motion motion = Motion::none;
  bool a_fixed = false;
  std::vector<std::pair<std::uint32_t, std::uint32_t>> near;  // indices of stands that come within range of each other

  double gap_mm = 0;      // least over the travel: never above the truth
  bool exact = false;     // the gap is the truth to a micrometre, not only a bound
  reasons::Where where;   // the tightest opening
  std::vector<Stretch> proved;
  bool certified = false;  // the proved stretches cover the whole travel
  double common_mm3 = 0;   // largest volume found that both fill
  std::optional<kernel::Solid> common;  // where, in the model
};

/// The proved stretches as a finding carries them, neighbours joined.
[[nodiscard]] std::vector<std::array<double, 2>> stretches(const Couple&);

/// Shortest stretch that is looked at: a failure is placed to this, mm.
inline constexpr double shortest_stretch_mm = 1e-3;
/// Less than this is contact, not overlap: kernel results for touching solids are exactly 0, a micrometre over a palm is 1.
inline constexpr double overlap_mm3 = 0.01;

/// The couples that come within `range_mm` of each other at some opening, or that must keep a gap or have a fit of their
/// own; with everything known before measuring. In the order of their parts.
[[nodiscard]] std::vector<Couple> couples(const assembly::Assembly&, const std::vector<Stand>&, double range_mm);

/// The least distance over a stretch of openings.
[[nodiscard]] Nearness over(const Couple&, const std::vector<Stand>&, Slide openings, double within_mm);

/// Proves the couple's gap on the stacks. False when they cannot clear it, and the solids must be asked.
[[nodiscard]] bool prove(Couple&, const std::vector<Stand>&, double travel_mm, double range_mm);

/// Asks the kernel: common volume first, distance only when that is zero. Bisects the travel; a gap found proves the
/// stretch around it. Returns how many poses were measured.
[[nodiscard]] base::Result<int> ask_solids(Couple&, const std::vector<Stand>&, const assembly::Assembly&, const solids::SolidSet&);

}  // namespace visewright::fitup
