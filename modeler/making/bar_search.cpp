// Every way of filling bars, the longest piece first.
#include <algorithm>
#include <limits>

#include "making/bar_patterns.h"

namespace visewright::making {
namespace {

class Search {
 public:
  Search(const BarProblem& problem, long node_limit)
      : p_(problem), limit_(node_limit), supply_(problem.supply), penalty_(problem.penalty()) {
    for (std::size_t i = 0; i < p_.size.size(); ++i)
      for (int n = 0; n < p_.demand[i]; ++n) items_.push_back(i);
    std::stable_sort(items_.begin(), items_.end(),
                     [&](std::size_t a, std::size_t b) { return p_.size[a] > p_.size[b]; });
    still_to_place_.assign(items_.size() + 1, 0);
    // A piece counts for no more than a whole bar: longer ones can only be left over, at more than a bar's cost.
    const std::int64_t longest = p_.room.empty() ? 0 : *std::max_element(p_.room.begin(), p_.room.end());
    for (std::size_t k = items_.size(); k-- > 0;)
      still_to_place_[k] = still_to_place_[k + 1] + std::min(p_.size[items_[k]], longest);
    for (std::size_t s = 0; s < p_.room.size(); ++s)
      if (p_.room[s] > 0)
        cheapest_ = std::min(cheapest_, static_cast<double>(p_.cost[s]) / static_cast<double>(p_.room[s]));
  }

  BarSearch run() {
    go(0, 0, 0);
    BarSearch result;
    result.exhausted = nodes_ <= limit_;
    for (const Bar& bar : best_) {
      BarPattern pattern{bar.stock, std::vector<int>(p_.size.size(), 0), 1};
      for (const std::size_t i : bar.items) ++pattern.pieces[i];
      result.bars.push_back(std::move(pattern));
    }
    return result;
  }

 private:
  struct Bar {
    std::size_t stock;
    std::int64_t room;
    std::vector<std::size_t> items;
  };

  /// What the pieces from k on cost at least, beyond what open bars still hold.
  double at_least(std::size_t k) const {
    std::int64_t open = 0;
    for (const Bar& bar : bars_) open += bar.room;
    const std::int64_t beyond = still_to_place_[k] - open;
    // A piece left over costs more than any bar, so bars are the cheaper way.
    return beyond > 0 && cheapest_ < 1e300 ? cheapest_ * static_cast<double>(beyond) : 0;
  }

  /// `from`: the first bar that this piece may go into; an equal piece before it went into that one.
  void go(std::size_t k, std::size_t from, std::int64_t cost) {
    if (++nodes_ > limit_) return;
    if (static_cast<double>(cost) + at_least(k) > static_cast<double>(best_cost_) - 0.5) return;
    if (k == items_.size()) {
      best_cost_ = cost;
      best_ = bars_;
      return;
    }
    const std::size_t i = items_[k];
    const std::int64_t size = p_.size[i];
    const bool same_next = k + 1 < items_.size() && items_[k + 1] == i;
    for (std::size_t b = from; b < bars_.size(); ++b) {
      if (bars_[b].room < size || alike_before(b, from)) continue;
      bars_[b].room -= size;
      bars_[b].items.push_back(i);
      go(k + 1, same_next ? b : 0, cost);
      bars_[b].items.pop_back();
      bars_[b].room += size;
    }
    for (std::size_t s = 0; s < p_.room.size(); ++s) {
      if (supply_[s] == 0 || p_.room[s] < size) continue;
      --supply_[s];
      bars_.push_back({s, p_.room[s] - size, {i}});
      go(k + 1, same_next ? bars_.size() - 1 : 0, cost + p_.cost[s]);
      bars_.pop_back();
      ++supply_[s];
    }
    go(k + 1, same_next ? bars_.size() : 0, cost + penalty_);
  }

  bool alike_before(std::size_t b, std::size_t from) const {
    for (std::size_t a = from; a < b; ++a)
      if (bars_[a].room == bars_[b].room) return true;
    return false;
  }

  const BarProblem& p_;
  long limit_, nodes_ = 0;
  std::vector<int> supply_;
  std::int64_t penalty_, best_cost_ = std::numeric_limits<std::int64_t>::max() / 2;
  double cheapest_ = 1e301;
  std::vector<std::size_t> items_;
  std::vector<std::int64_t> still_to_place_;
  std::vector<Bar> bars_, best_;
};

}  // namespace

BarSearch search_bars(const BarProblem& problem, long node_limit) { return Search(problem, node_limit).run(); }

}  // namespace visewright::making
