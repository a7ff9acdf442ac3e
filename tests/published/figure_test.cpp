#include "published/figure.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace visewright::published {
namespace {

std::vector<Figure> every_figure() {
  std::vector<Figure> all;
  for (const auto& some : {gear_figures(), mesh_figures(), train_figures(), thread_figures(), screw_figures(),
                           strength_figures(), beam_figures(), wood_figures(), trial_figures()}) {
    all.insert(all.end(), some.begin(), some.end());
  }
  return all;
}

/// Compares the figures known in one of these ways; says how many there were.
int compare(std::initializer_list<Known> ways) {
  int compared = 0;
  for (const Figure& f : every_figure()) {
    if (std::find(ways.begin(), ways.end(), f.known) == ways.end()) continue;
    ++compared;
    const double half_digit = 0.5 * std::pow(10.0, -f.decimals);
    // A hair for figures that end in a five, such as 0.5625 halved.
    EXPECT_NEAR(f.computed, f.printed, std::max(f.allowed, half_digit * (1 + 1e-6)))
        << f.source << " | " << f.inputs << " | " << f.what;
  }
  return compared;
}

TEST(PublishedFigures, SightedOnesHoldToTheDigitsPrinted) { EXPECT_GT(compare({Known::sighted}), 160); }

TEST(PublishedFigures, RememberedOnesHoldToTheDigitsPrinted) { EXPECT_GT(compare({Known::from_memory}), 130); }

// Not published: the same formulas worked out in a separate script.
TEST(FormulaAgainstFormula, AgreesToTheDigitsOfTheScript) { EXPECT_GT(compare({Known::computed}), 320); }

TEST(PublishedFigures, NoRowStandsTwice) {
  std::set<std::tuple<std::string, std::string, std::string>> seen;
  for (const Figure& f : every_figure()) {
    EXPECT_TRUE(seen.emplace(f.source, f.inputs, f.what).second) << f.source << " | " << f.inputs << " | " << f.what;
  }
}

}  // namespace
}  // namespace visewright::published
