#include "making/lengths.h"

#include <algorithm>
#include <cmath>

#include "making/bar_patterns.h"

namespace visewright::making {
namespace {

/// Orders of this many pieces are searched through; larger ones are brought down to it first.
constexpr int searched_pieces = 12;
constexpr long node_limit = 400000;

std::int64_t micrometres(double mm) { return std::llround(mm * 1000); }

/// One kerf more in the bar and in each piece: the last piece needs none behind it when it ends where the bar does.
BarProblem problem_of(std::span<const LengthWanted> wanted, std::span<const LengthStock> stock, double kerf_mm,
                      double trim_mm) {
  BarProblem p;
  int all = 0;
  for (const LengthWanted& w : wanted) {
    p.size.push_back(micrometres(w.length_mm) + micrometres(kerf_mm));
    p.demand.push_back(w.count);
    all += w.count;
  }
  for (const LengthStock& s : stock) {
    p.room.push_back(micrometres(s.length_mm) - micrometres(trim_mm) + micrometres(kerf_mm));
    p.supply.push_back(s.count < 0 ? all : std::min(s.count, all));
    p.cost.push_back(micrometres(s.length_mm * s.weight));
  }
  return p;
}

class Planner {
 public:
  explicit Planner(const BarProblem& problem) : left_(problem) {}

  std::vector<BarPattern> run() {
    while (left_.pieces_wanted() > searched_pieces && dive()) {
    }
    BarSearch rest = search_bars(left_, node_limit);
    exhausted_ = whole_ && rest.exhausted;
    for (BarPattern& bar : rest.bars) plan_.push_back(std::move(bar));
    return std::move(plan_);
  }
  bool exhausted() const { return exhausted_; }

 private:
  /// Takes the whole part of every pattern; when there is none, one bar of the pattern nearest to whole.
  bool dive() {
    whole_ = false;
    Relaxation r = relax(left_);
    std::stable_sort(r.patterns.begin(), r.patterns.end(), [](const BarPattern& a, const BarPattern& b) {
      if (std::llround(a.times * 1e6) != std::llround(b.times * 1e6)) return a.times > b.times;
      return a.stock != b.stock ? a.stock < b.stock : a.pieces > b.pieces;
    });
    bool took = false;
    for (const BarPattern& pattern : r.patterns) {
      const int times = static_cast<int>(std::floor(pattern.times + 1e-6));
      for (int n = 0; n < times; ++n) took = take(pattern) || took;
    }
    if (took) return true;
    std::stable_sort(r.patterns.begin(), r.patterns.end(), [](const BarPattern& a, const BarPattern& b) {
      const double fa = a.times - std::floor(a.times), fb = b.times - std::floor(b.times);
      return std::llround(fa * 1e6) > std::llround(fb * 1e6);
    });
    return std::any_of(r.patterns.begin(), r.patterns.end(), [&](const BarPattern& pattern) { return take(pattern); });
  }

  /// One bar with what is still wanted of the pattern.
  bool take(const BarPattern& pattern) {
    if (left_.supply[pattern.stock] == 0) return false;
    BarPattern bar{pattern.stock, pattern.pieces, 1};
    int pieces = 0;
    for (std::size_t i = 0; i < bar.pieces.size(); ++i) {
      bar.pieces[i] = std::min(bar.pieces[i], left_.demand[i]);
      pieces += bar.pieces[i];
    }
    if (pieces == 0) return false;
    for (std::size_t i = 0; i < bar.pieces.size(); ++i) left_.demand[i] -= bar.pieces[i];
    --left_.supply[pattern.stock];
    plan_.push_back(std::move(bar));
    return true;
  }

  BarProblem left_;
  std::vector<BarPattern> plan_;
  bool whole_ = true, exhausted_ = false;
};

/// Equal bars together, in order of stock, the fullest patterns first.
std::vector<BarCut> collected(std::vector<BarPattern> bars) {
  std::stable_sort(bars.begin(), bars.end(), [](const BarPattern& a, const BarPattern& b) {
    return a.stock != b.stock ? a.stock < b.stock : a.pieces > b.pieces;
  });
  std::vector<BarCut> result;
  for (BarPattern& bar : bars) {
    if (!result.empty() && result.back().stock == bar.stock && result.back().pieces == bar.pieces) {
      ++result.back().times;
    } else {
      result.push_back({bar.stock, 1, std::move(bar.pieces)});
    }
  }
  return result;
}

}  // namespace

LengthPlan cut_lengths(std::span<const LengthWanted> wanted, std::span<const LengthStock> stock, double kerf_mm,
                       double trim_mm) {
  const BarProblem problem = problem_of(wanted, stock, kerf_mm, trim_mm);
  Planner planner(problem);
  LengthPlan plan;
  plan.bars = collected(planner.run());
  plan.left_over = problem.demand;
  std::int64_t cost = 0;
  for (const BarCut& bar : plan.bars) {
    cost += bar.times * problem.cost[bar.stock];
    for (std::size_t i = 0; i < bar.pieces.size(); ++i) plan.left_over[i] -= bar.times * bar.pieces[i];
  }
  const bool complete = std::all_of(plan.left_over.begin(), plan.left_over.end(), [](int n) { return n == 0; });
  plan.weight = static_cast<double>(cost) / 1000;
  const Relaxation relaxed = relax(problem);
  if (relaxed.settled && complete) {
    plan.bound = relaxed.cost / 1000;
    if (stock.size() == 1 && problem.cost[0] > 0) {
      plan.bars_bound = static_cast<int>(std::ceil(relaxed.cost / static_cast<double>(problem.cost[0]) - 1e-6));
      plan.bound = plan.bars_bound * static_cast<double>(problem.cost[0]) / 1000;
    } else if (!plan.bars.empty()) {
      plan.bars_bound = 1;
    }
  }
  plan.proved = planner.exhausted() ||
                (complete && plan.bound > 0 && std::llround(plan.weight * 1e3) <= std::llround(plan.bound * 1e3));
  return plan;
}

}  // namespace visewright::making
