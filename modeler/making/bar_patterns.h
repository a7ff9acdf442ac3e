// Cutting lengths as whole numbers, its linear relaxation and its exhaustive search.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace visewright::making {

/// Sizes and room in micrometres, both with one kerf added, so that pieces simply add up. Costs are whole numbers;
/// supply is never negative.
struct BarProblem {
  std::vector<std::int64_t> size;
  std::vector<int> demand;
  std::vector<std::int64_t> room;
  std::vector<int> supply;
  std::vector<std::int64_t> cost;  // of opening a bar

  [[nodiscard]] int pieces_wanted() const;
  /// What a piece that is not cut costs the plan: more than all bars together.
  [[nodiscard]] std::int64_t penalty() const;
};

struct BarPattern {
  std::size_t stock = 0;
  std::vector<int> pieces;
  double times = 0;
};
/// The least cost when bars may be cut in fractions, and the patterns of one such plan. `settled`: no further pattern
/// pays, so the cost is a lower bound.
struct Relaxation {
  double cost = 0;
  std::vector<BarPattern> patterns;
  bool settled = false;
};
/// The simplex method with patterns made as they pay, each by a knapsack over the prices of the pieces.
/// Source: Gilmore and Gomory 1961, from memory.
[[nodiscard]] Relaxation relax(const BarProblem&);

/// The best whole plan: bars in order of opening, and whether every plan was looked at. Pieces not in any bar are left
/// over. REQUIRES: few pieces; beyond the limit on nodes the best found so far comes back.
struct BarSearch {
  std::vector<BarPattern> bars;  // each once
  bool exhausted = true;
};
[[nodiscard]] BarSearch search_bars(const BarProblem&, long node_limit);

}  // namespace visewright::making
