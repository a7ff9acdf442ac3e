#include "making/bar_patterns.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace visewright::making {
namespace {

constexpr double tiny = 1e-9;
constexpr long knapsack_nodes = 200000;
constexpr int most_pivots = 5000;

/// The pieces of most price that fit one bar.
class Knapsack {
 public:
  Knapsack(const BarProblem& problem, const std::vector<double>& price) : p_(problem), price_(price) {
    for (std::size_t i = 0; i < price.size(); ++i)
      if (price[i] > tiny) order_.push_back(i);
    std::stable_sort(order_.begin(), order_.end(),
                     [&](std::size_t a, std::size_t b) { return density(a) > density(b); });
  }
  /// `best` gets the pieces, the price of them is returned.
  double fill(std::int64_t room, std::vector<int>& best) {
    now_.assign(price_.size(), 0);
    best_.assign(price_.size(), 0);
    best_price_ = 0;
    nodes_ = 0;
    go(0, room, 0);
    best = best_;
    return best_price_;
  }

 private:
  double density(std::size_t i) const { return price_[i] / static_cast<double>(p_.size[i]); }

  void go(std::size_t k, std::int64_t room, double price) {
    if (price > best_price_ + tiny) {
      best_price_ = price;
      best_ = now_;
    }
    if (k == order_.size() || ++nodes_ > knapsack_nodes) return;
    const std::size_t i = order_[k];
    if (price + density(i) * static_cast<double>(room) <= best_price_ + tiny) return;
    const int most = static_cast<int>(std::min<std::int64_t>(p_.demand[i], room / p_.size[i]));
    for (int n = most; n >= 0; --n) {
      now_[i] = n;
      go(k + 1, room - n * p_.size[i], price + n * price_[i]);
    }
    now_[i] = 0;
  }

  const BarProblem& p_;
  const std::vector<double>& price_;
  std::vector<std::size_t> order_;
  std::vector<int> now_, best_;
  double best_price_ = 0;
  long nodes_ = 0;
};

/// One column of the basis: a pattern, or a slack (`pattern.stock` unused) of a row.
struct Column {
  enum class Kind : std::uint8_t { pattern, left_over, surplus, unused_supply } kind{};
  BarPattern pattern;
  std::size_t row = 0;
  double cost = 0;
};

/// Rows: a demand for each size (at least), then a supply for each stock (at most). The basis starts with every piece
/// left over and no bar opened.
class Simplex {
 public:
  explicit Simplex(const BarProblem& problem)
      : p_(problem),
        sizes_(problem.size.size()),
        rows_(sizes_ + problem.room.size()),
        inverse_(rows_, std::vector<double>(rows_, 0)) {
    scale_ = 1;
    for (const std::int64_t cost : p_.cost) scale_ = std::max(scale_, static_cast<double>(cost));
    for (std::size_t r = 0; r < rows_; ++r) {
      inverse_[r][r] = 1;
      const bool demand = r < sizes_;
      basis_.push_back({demand ? Column::Kind::left_over : Column::Kind::unused_supply,
                        {},
                        r,
                        demand ? static_cast<double>(p_.penalty()) / scale_ : 0});
      value_.push_back(demand ? p_.demand[r] : p_.supply[r - sizes_]);
    }
  }

  Relaxation run() {
    Relaxation result;
    for (int pivot = 0; pivot < most_pivots; ++pivot) {
      Column entering;
      if (!price_out(entering)) {
        result.settled = true;
        break;
      }
      enter(std::move(entering));
    }
    for (std::size_t r = 0; r < rows_; ++r) {
      result.cost += basis_[r].cost * scale_ * value_[r];
      if (basis_[r].kind != Column::Kind::pattern || value_[r] < 1e-7) continue;
      result.patterns.push_back(basis_[r].pattern);
      result.patterns.back().times = value_[r];
    }
    return result;
  }

 private:
  std::vector<double> duals() const {
    std::vector<double> y(rows_, 0);
    for (std::size_t r = 0; r < rows_; ++r)
      for (std::size_t c = 0; c < rows_; ++c) y[c] += basis_[r].cost * inverse_[r][c];
    return y;
  }

  /// The column that lowers the cost most for one unit of it.
  bool price_out(Column& best) const {
    const std::vector<double> y = duals();
    double least = -1e-7;
    const auto consider = [&](Column column, double reduced) {
      if (reduced >= least - tiny) return;
      least = reduced;
      best = std::move(column);
    };
    const std::vector<double> price(y.begin(), y.begin() + static_cast<std::ptrdiff_t>(sizes_));
    Knapsack knapsack(p_, price);
    for (std::size_t s = 0; s < p_.room.size(); ++s) {
      if (p_.supply[s] == 0) continue;
      std::vector<int> pieces;
      const double gain = knapsack.fill(p_.room[s], pieces), cost = static_cast<double>(p_.cost[s]) / scale_;
      consider({Column::Kind::pattern, {s, std::move(pieces), 0}, 0, cost}, cost - gain - y[sizes_ + s]);
    }
    for (std::size_t r = 0; r < rows_; ++r) {
      if (r < sizes_) consider({Column::Kind::surplus, {}, r, 0}, y[r]);
      if (r >= sizes_) consider({Column::Kind::unused_supply, {}, r, 0}, -y[r]);
    }
    return least < -1e-7;
  }

  std::vector<double> coefficients(const Column& column) const {
    std::vector<double> a(rows_, 0);
    if (column.kind != Column::Kind::pattern) {
      a[column.row] = column.kind == Column::Kind::surplus ? -1 : 1;
      return a;
    }
    for (std::size_t i = 0; i < sizes_; ++i) a[i] = column.pattern.pieces[i];
    a[sizes_ + column.pattern.stock] = 1;
    return a;
  }

  void enter(Column column) {
    const std::vector<double> a = coefficients(column);
    std::vector<double> change(rows_, 0);
    for (std::size_t r = 0; r < rows_; ++r)
      for (std::size_t c = 0; c < rows_; ++c) change[r] += inverse_[r][c] * a[c];
    std::size_t leaving = rows_;
    double step = 0;
    for (std::size_t r = 0; r < rows_; ++r) {
      if (change[r] <= 1e-8) continue;
      const double ratio = value_[r] / change[r];
      if (leaving == rows_ || ratio < step - 1e-12) {
        leaving = r;
        step = ratio;
      }
    }
    if (leaving == rows_) return;  // cannot happen: costs are above zero, so the least cost is finite
    for (std::size_t r = 0; r < rows_; ++r) value_[r] = std::max(0.0, value_[r] - step * change[r]);
    value_[leaving] = step;
    for (double& x : inverse_[leaving]) x /= change[leaving];
    for (std::size_t r = 0; r < rows_; ++r) {
      if (r == leaving || change[r] == 0) continue;
      for (std::size_t c = 0; c < rows_; ++c) inverse_[r][c] -= change[r] * inverse_[leaving][c];
    }
    basis_[leaving] = std::move(column);
  }

  const BarProblem& p_;
  std::size_t sizes_, rows_;
  double scale_ = 1;
  std::vector<std::vector<double>> inverse_;
  std::vector<Column> basis_;
  std::vector<double> value_;
};

}  // namespace

int BarProblem::pieces_wanted() const { return std::accumulate(demand.begin(), demand.end(), 0); }

std::int64_t BarProblem::penalty() const {
  std::int64_t most = 1;
  for (const std::int64_t c : cost) most = std::max(most, c);
  return (pieces_wanted() + 1) * most;
}

Relaxation relax(const BarProblem& problem) { return Simplex(problem).run(); }

}  // namespace visewright::making
