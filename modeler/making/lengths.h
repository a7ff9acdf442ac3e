// Lengths cut from lengths: how few bars, and how little to buy, when every saw cut takes its kerf.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace visewright::making {

struct LengthWanted {
  double length_mm = 0;
  int count = 0;
};
/// A kind of bar. `weight` is what a millimetre of an opened bar costs the plan: what must be bought weighs more than
/// what lies on the rack.
struct LengthStock {
  double length_mm = 0;
  int count = 0;  // unlimited when negative
  double weight = 1;
};
/// Bars that are cut alike: `pieces[i]` of the i-th length wanted from each.
struct BarCut {
  std::size_t stock = 0;
  int times = 0;
  std::vector<int> pieces;
};
struct LengthPlan {
  std::vector<BarCut> bars;
  std::vector<int> left_over;  // of each length wanted: how many no bar was left for
  double weight = 0;           // of all opened bars
  double bound = 0;            // no plan that cuts as many pieces weighs less
  int bars_bound = 0;          // no fewer bars than this, for one kind of bar; else 1 when anything is cut
  bool proved = false;         // the plan meets the bound, or the search was exhaustive
};

/// Cuts everything that fits, at the least weight it finds. Bars are trimmed at the ends by `trim_mm` altogether;
/// between two pieces, and between the last one and the rest, the saw takes `kerf_mm`, unless the piece ends where the
/// bar does. Small orders are searched through to the end, with a limit on nodes and never on time; large ones are
/// filled from the linear relaxation's patterns, made one by one as they pay. All decisions are taken on whole
/// micrometres.
/// Source: P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations
/// Research 9 (1961), from memory.
[[nodiscard]] LengthPlan cut_lengths(std::span<const LengthWanted>, std::span<const LengthStock>, double kerf_mm,
                                     double trim_mm);

}  // namespace visewright::making
