#include "making/sheets.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <limits>
#include <numeric>
#include <tuple>

namespace visewright::making {
namespace {

using Length = std::int64_t;  // micrometres

constexpr long nodes_an_order = 60000;

Length micrometres(double mm) { return std::llround(mm * 1000); }
double millimetres(Length um) { return static_cast<double>(um) / 1000; }

/// Sizes here carry one kerf each, as do the panels, so that they simply add up.
struct Rest {
  Length x, y, along, across;
  [[nodiscard]] double area() const { return static_cast<double>(along) * static_cast<double>(across); }
};
struct Laid {
  std::size_t wanted;
  Length x, y, along, across;
  bool turned;
};
struct Panel {
  std::size_t stock;
  std::vector<Rest> rests;
  std::vector<Laid> laid;
};
struct Plan {
  std::vector<Panel> panels;
  std::vector<std::size_t> left_over;
  std::int64_t left_area = 0;  // of the pieces left over
  std::int64_t weight = 0;
  double largest_rest = 0;

  [[nodiscard]] auto cost() const { return std::make_tuple(left_over.size(), left_area, weight); }
};

/// Fewest left over, then the smallest, then least weight, then the largest rest.
bool better(const Plan& a, const Plan& b) {
  if (a.cost() != b.cost()) return a.cost() < b.cost();
  return a.largest_rest > b.largest_rest * (1 + 1e-12);
}

class Cutter {
 public:
  Cutter(std::span<const PanelWanted> wanted, std::span<const PanelStock> stock, double kerf_mm, double trim_mm)
      : wanted_(wanted), stock_(stock), kerf_(micrometres(kerf_mm)), trim_(micrometres(trim_mm)) {
    for (const PanelStock& s : stock) {
      cost_.push_back(std::llround(s.along_mm * s.across_mm * s.weight));
      supply_.push_back(s.count < 0 ? static_cast<int>(wanted.size()) : s.count);
    }
  }

  PanelPlan run() {
    best_.left_over.resize(wanted_.size() + 1);
    for (const auto& key : orders()) {
      order_.resize(wanted_.size());
      std::iota(order_.begin(), order_.end(), std::size_t{0});
      std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
        return micrometres(key(wanted_[a])) > micrometres(key(wanted_[b]));
      });
      nodes_ = 0;
      now_ = {};
      place(0);
      exhausted_ = exhausted_ && nodes_ <= nodes_an_order;
    }
    return written();
  }

 private:
  static std::array<std::function<double(const PanelWanted&)>, 4> orders() {
    return {[](const PanelWanted& w) { return w.along_mm * w.across_mm / 1000; },
            [](const PanelWanted& w) { return w.along_mm; }, [](const PanelWanted& w) { return w.across_mm; },
            [](const PanelWanted& w) { return std::max(w.along_mm, w.across_mm); }};
  }

  bool may_come_from(std::size_t piece, std::size_t stock) const {
    const auto& from = wanted_[piece].from;
    return from.empty() || std::find(from.begin(), from.end(), stock) != from.end();
  }

  Rest whole(std::size_t stock) const {
    return {trim_, 0, micrometres(stock_[stock].along_mm) - 2 * trim_ + kerf_,
            micrometres(stock_[stock].across_mm) + kerf_};
  }

  void place(std::size_t k) {
    if (++nodes_ > nodes_an_order) return;
    if (now_.cost() > best_.cost()) return;
    if (k == order_.size()) return keep();
    const std::size_t piece = order_[k];
    for (std::size_t p = 0; p < now_.panels.size(); ++p) {
      if (!may_come_from(piece, now_.panels[p].stock)) continue;
      for (std::size_t r : by_fit(now_.panels[p].rests, piece)) lay_both_ways(k, p, r);
    }
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      if (supply_[s] == 0 || !may_come_from(piece, s)) continue;
      --supply_[s];
      now_.weight += cost_[s];
      now_.panels.push_back({s, {whole(s)}, {}});
      lay_both_ways(k, now_.panels.size() - 1, 0);
      now_.panels.pop_back();
      now_.weight -= cost_[s];
      ++supply_[s];
    }
    const std::int64_t area = std::llround(wanted_[piece].along_mm * wanted_[piece].across_mm);
    now_.left_over.push_back(piece);
    now_.left_area += area;
    place(k + 1);
    now_.left_area -= area;
    now_.left_over.pop_back();
  }

  /// Rests in which the piece leaves the narrowest strip come first; of equal ones only the first.
  std::vector<std::size_t> by_fit(const std::vector<Rest>& rests, std::size_t piece) const {
    const Length along = micrometres(wanted_[piece].along_mm) + kerf_,
                 across = micrometres(wanted_[piece].across_mm) + kerf_;
    const auto strip = [&](const Rest& r) { return std::min(std::abs(r.along - along), std::abs(r.across - across)); };
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < rests.size(); ++i) {
      const bool seen = std::any_of(rests.begin(), rests.begin() + static_cast<std::ptrdiff_t>(i), [&](const Rest& r) {
        return r.along == rests[i].along && r.across == rests[i].across;
      });
      if (!seen) order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return strip(rests[a]) < strip(rests[b]); });
    return order;
  }

  void lay_both_ways(std::size_t k, std::size_t panel, std::size_t rest) {
    const PanelWanted& w = wanted_[order_[k]];
    const Length along = micrometres(w.along_mm) + kerf_, across = micrometres(w.across_mm) + kerf_;
    lay(k, panel, rest, along, across, false);
    if (!w.locked && along != across) lay(k, panel, rest, across, along, true);
  }

  void lay(std::size_t k, std::size_t panel, std::size_t rest, Length along, Length across, bool turned) {
    const Rest r = now_.panels[panel].rests[rest];
    if (along > r.along || across > r.across) return;
    const Rest beside_short{r.x + along, r.y, r.along - along, across},
        above_long{r.x, r.y + across, r.along, r.across - across};
    const Rest beside_long{r.x + along, r.y, r.along - along, r.across},
        above_short{r.x, r.y + across, along, r.across - across};
    cut(k, panel, rest, {order_[k], r.x, r.y, along, across, turned}, {above_long, beside_short});
    if (along < r.along && across < r.across)
      cut(k, panel, rest, {order_[k], r.x, r.y, along, across, turned}, {beside_long, above_short});
  }

  void cut(std::size_t k, std::size_t panel, std::size_t rest, const Laid& laid, const std::array<Rest, 2>& parts) {
    const std::vector<Rest> before = now_.panels[panel].rests;
    auto& rests = now_.panels[panel].rests;
    rests.erase(rests.begin() + static_cast<std::ptrdiff_t>(rest));
    for (const Rest& part : parts)
      if (part.along > kerf_ && part.across > kerf_) rests.push_back(part);
    now_.panels[panel].laid.push_back(laid);
    place(k + 1);
    now_.panels[panel].laid.pop_back();
    now_.panels[panel].rests = before;
  }

  void keep() {
    now_.largest_rest = 0;
    for (const Panel& panel : now_.panels)
      for (const Rest& r : panel.rests) now_.largest_rest = std::max(now_.largest_rest, r.area());
    if (better(now_, best_)) best_ = now_;
  }

  PanelPlan written() const {
    PanelPlan plan;
    plan.weight = static_cast<double>(best_.weight);
    plan.left_over = best_.left_over;
    std::sort(plan.left_over.begin(), plan.left_over.end());
    for (const Panel& panel : best_.panels) {
      PanelCut cut{panel.stock, {}, {}};
      for (const Laid& l : panel.laid)
        cut.pieces.push_back({l.wanted,
                              {millimetres(l.x), millimetres(l.y)},
                              {millimetres(l.along - kerf_), millimetres(l.across - kerf_)},
                              l.turned});
      std::vector<Rest> rests = panel.rests;
      std::stable_sort(rests.begin(), rests.end(), [](const Rest& a, const Rest& b) { return a.area() > b.area(); });
      for (const Rest& r : rests)
        cut.left_mm.push_back(
            {millimetres(r.x), millimetres(r.y), millimetres(r.along - kerf_), millimetres(r.across - kerf_)});
      plan.panels.push_back(std::move(cut));
    }
    plan.bound = bound();
    plan.proved = exhausted_ || (plan.left_over.empty() && plan.weight <= plan.bound);
    return plan;
  }

  /// The area of all pieces at the least weight, and at least one panel when there is anything to cut.
  double bound() const {
    if (wanted_.empty() || stock_.empty() || !best_.left_over.empty()) return 0;
    double area = 0, least = std::numeric_limits<double>::max();
    for (const PanelWanted& w : wanted_) area += w.along_mm * w.across_mm;
    for (const PanelStock& s : stock_) least = std::min(least, s.weight);
    const double cheapest = static_cast<double>(*std::min_element(cost_.begin(), cost_.end()));
    if (stock_.size() > 1) return std::max(cheapest, least * area);
    return cheapest * std::ceil(area / (stock_[0].along_mm * stock_[0].across_mm) - 1e-9);
  }

  std::span<const PanelWanted> wanted_;
  std::span<const PanelStock> stock_;
  Length kerf_, trim_;
  std::vector<std::int64_t> cost_;
  std::vector<int> supply_;
  std::vector<std::size_t> order_;
  Plan now_, best_;
  long nodes_ = 0;
  bool exhausted_ = true;
};

}  // namespace

PanelPlan cut_panels(std::span<const PanelWanted> wanted, std::span<const PanelStock> stock, double kerf_mm,
                     double trim_mm) {
  return Cutter(wanted, stock, kerf_mm, trim_mm).run();
}

}  // namespace visewright::making
