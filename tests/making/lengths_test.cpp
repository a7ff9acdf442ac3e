// Lengths from lengths, against exhaustive search, a published case, and laws.
#include "making/lengths.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>
#include <random>

namespace visewright::making {
namespace {

int bars_of(const LengthPlan& plan) {
  return std::accumulate(plan.bars.begin(), plan.bars.end(), 0, [](int n, const BarCut& bar) { return n + bar.times; });
}

/// Every bar holds its pieces with their kerfs, no more bars are opened than there are, and every piece is in one bar
/// or left over.
void expect_sound(const LengthPlan& plan, const std::vector<LengthWanted>& wanted,
                  const std::vector<LengthStock>& stock, double kerf, double trim) {
  std::vector<int> made(wanted.size(), 0), opened(stock.size(), 0);
  for (const BarCut& bar : plan.bars) {
    double used = 0;
    int pieces = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      used += bar.pieces[i] * wanted[i].length_mm;
      pieces += bar.pieces[i];
      made[i] += bar.times * bar.pieces[i];
    }
    EXPECT_GT(pieces, 0) << "an opened bar without a piece";
    EXPECT_LE(used + (pieces - 1) * kerf + trim, stock[bar.stock].length_mm + 1e-6);
    opened[bar.stock] += bar.times;
  }
  for (std::size_t s = 0; s < stock.size(); ++s)
    if (stock[s].count >= 0) {
      EXPECT_LE(opened[s], stock[s].count);
    }
  for (std::size_t i = 0; i < wanted.size(); ++i) EXPECT_EQ(made[i] + plan.left_over[i], wanted[i].count);
}

// The well-known roll of 5600 mm with 13 widths and 219 pieces, from memory: no plan needs fewer than 73 rolls, taking
// the longest first needs 82.
TEST(Lengths, TheRollOf5600NeedsAtMostOneMoreThanItsBound) {
  const std::vector<LengthWanted> wanted{{1380, 22}, {1520, 25}, {1560, 12}, {1710, 14}, {1820, 18},
                                         {1880, 18}, {1930, 20}, {2000, 10}, {2050, 12}, {2100, 14},
                                         {2140, 16}, {2150, 18}, {2200, 20}};
  const std::vector<LengthStock> stock{{5600, -1, 1}};
  const LengthPlan plan = cut_lengths(wanted, stock, 0, 0);
  expect_sound(plan, wanted, stock, 0, 0);
  EXPECT_EQ(plan.bars_bound, 73);
  EXPECT_LE(bars_of(plan), 74);
  EXPECT_TRUE(std::all_of(plan.left_over.begin(), plan.left_over.end(), [](int n) { return n == 0; }));
}

// Two pieces of 500 and the cut between them.
TEST(Lengths, ABarOneKerfTooShortHoldsOnlyOne) {
  const std::vector<LengthWanted> wanted{{500, 2}};
  const LengthPlan just = cut_lengths(wanted, std::vector<LengthStock>{{1003, 1, 1}}, 3, 0);
  EXPECT_EQ(just.left_over, std::vector<int>{0});
  const LengthPlan close = cut_lengths(wanted, std::vector<LengthStock>{{1002.9, 1, 1}}, 3, 0);
  EXPECT_EQ(close.left_over, std::vector<int>{1});
  const LengthPlan trimmed = cut_lengths(wanted, std::vector<LengthStock>{{1003, 1, 1}}, 3, 0.1);
  EXPECT_EQ(trimmed.left_over, std::vector<int>{1});
}

/// The least weight by trying every bar for every piece, with no thought of order or symmetry; a piece left over costs
/// more than all bars.
double exhaustive(const std::vector<LengthWanted>& wanted, const std::vector<LengthStock>& stock, double kerf,
                  double penalty) {
  struct Bar {
    double room;
    bool open;
    double cost;
  };
  std::vector<Bar> bars;
  std::vector<double> items;
  for (const LengthWanted& w : wanted) items.insert(items.end(), static_cast<std::size_t>(w.count), w.length_mm);
  for (const LengthStock& s : stock)
    for (int n = 0; n < s.count; ++n) bars.push_back({s.length_mm + kerf, false, s.length_mm * s.weight});
  double best = std::numeric_limits<double>::max();
  const std::function<void(std::size_t, double)> go = [&](std::size_t k, double cost) {
    if (k == items.size()) {
      best = std::min(best, cost);
      return;
    }
    for (Bar& bar : bars) {
      if (bar.room + 1e-9 < items[k] + kerf) continue;
      const bool was = bar.open;
      bar.room -= items[k] + kerf;
      bar.open = true;
      go(k + 1, cost + (was ? 0 : bar.cost));
      bar.open = was;
      bar.room += items[k] + kerf;
    }
    go(k + 1, cost + penalty);
  };
  go(0, 0);
  return best;
}

TEST(Lengths, SmallOrdersEqualExhaustiveSearch) {
  std::mt19937 random(20261125);
  const auto draw = [&](int from, int to) {
    return from + static_cast<int>(random() % static_cast<unsigned>(to - from + 1));
  };
  int with_left_over = 0, several_bars = 0;
  for (int trial = 0; trial < 120; ++trial) {
    std::vector<LengthWanted> wanted;
    int pieces = 0;
    for (int i = draw(1, 3); i > 0; --i) {
      wanted.push_back({static_cast<double>(draw(80, 600)), draw(1, 2)});
      pieces += wanted.back().count;
    }
    std::vector<LengthStock> stock;
    for (int i = draw(1, 3); i > 0; --i)
      stock.push_back({static_cast<double>(draw(300, 1000)), draw(1, 2), trial % 3 == 0 ? 1.5 : 1});
    const double kerf = draw(0, 4), penalty = 10000;
    const LengthPlan plan = cut_lengths(wanted, stock, kerf, 0);
    expect_sound(plan, wanted, stock, kerf, 0);
    const int left = std::accumulate(plan.left_over.begin(), plan.left_over.end(), 0);
    EXPECT_NEAR(plan.weight + left * penalty, exhaustive(wanted, stock, kerf, penalty), 1e-6) << "trial " << trial;
    EXPECT_TRUE(plan.proved);
    with_left_over += left > 0;
    several_bars += bars_of(plan) > 1;
  }
  EXPECT_GT(with_left_over, 10);
  EXPECT_GT(several_bars, 10);
}

// Laws on orders too large to search: the bound holds, all is cut, and the plan stays within one bar of it.
TEST(Lengths, LargeOrdersStayNearTheirBound) {
  std::mt19937 random(7);
  for (int trial = 0; trial < 20; ++trial) {
    std::vector<LengthWanted> wanted;
    double total = 0;
    for (int i = 0; i < 8; ++i) {
      wanted.push_back({100.0 + static_cast<double>(random() % 700), 3 + static_cast<int>(random() % 9)});
      total += wanted.back().length_mm * wanted.back().count;
    }
    const std::vector<LengthStock> stock{{2000, -1, 1}};
    const LengthPlan plan = cut_lengths(wanted, stock, 2, 10);
    expect_sound(plan, wanted, stock, 2, 10);
    EXPECT_GE(plan.bars_bound, static_cast<int>(std::ceil(total / 2000)));
    EXPECT_GE(bars_of(plan), plan.bars_bound);
    EXPECT_LE(bars_of(plan), plan.bars_bound + 1) << "trial " << trial;
  }
}

TEST(Lengths, WhatIsOnTheRackGoesBeforeWhatMustBeBought) {
  const std::vector<LengthWanted> wanted{{480, 3}};
  const std::vector<LengthStock> stock{{1000, 1, 1}, {1000, -1, 1000}};
  const LengthPlan plan = cut_lengths(wanted, stock, 1.5, 0);
  ASSERT_EQ(plan.bars.size(), 2U);
  EXPECT_EQ(plan.bars[0].stock, 0U);
  EXPECT_EQ(plan.bars[0].pieces, std::vector<int>{2}) << "by hand: 480 + 1.5 + 480 goes on a metre";
  EXPECT_EQ(plan.bars[1].pieces, std::vector<int>{1});
}

TEST(Lengths, NothingWantedOpensNothing) {
  const LengthPlan plan = cut_lengths({}, std::vector<LengthStock>{{1000, -1, 1}}, 1, 0);
  EXPECT_TRUE(plan.bars.empty());
  EXPECT_EQ(plan.weight, 0);
}

}  // namespace
}  // namespace visewright::making
