// Figures of counting trials.
#include <string>

#include "formulas/statistics.h"
#include "published/figure.h"

namespace visewright::published {

std::vector<Figure> trial_figures() {
  std::vector<Figure> all;
  struct Count {
    std::size_t hits, misses;
    double low, high;
  };
  for (const Count& c : {Count{0, 1, 0.0, 0.7934567085}, Count{1, 0, 0.2065432915, 1.0},
                         Count{1, 1, 0.0945286548, 0.9054713452}, Count{1, 10, 0.0162317523, 0.3773646255},
                         Count{10, 90, 0.0552285416, 0.1743673044}, Count{25, 75, 0.1754509400, 0.3430464637},
                         Count{50, 50, 0.4038298286, 0.5961701714}, Count{100, 0, 0.9630051925, 1.0}}) {
    const formulas::Interval interval = formulas::wilson_interval(c.hits, c.hits + c.misses, 1.96);
    const std::string inputs = std::to_string(c.hits) + " hits, " + std::to_string(c.misses) + " misses, z 1.96";
    all.push_back(
        {"test cases of a puzzle on Wilson's score interval", inputs, "low", c.low, 10, Known::sighted, interval.low});
    all.push_back({"test cases of a puzzle on Wilson's score interval", inputs, "high", c.high, 10, Known::sighted,
                   interval.high});
  }
  struct Normal {
    double z, printed;
  };
  for (const Normal& n : {Normal{0.5, 0.6915}, Normal{1, 0.8413}, Normal{1.5, 0.9332}, Normal{1.96, 0.9750},
                          Normal{2, 0.9772}, Normal{2.58, 0.9951}, Normal{3, 0.9987}}) {
    all.push_back({"table of the standard normal distribution", "z " + std::to_string(n.z), "area", n.printed, 4,
                   Known::from_memory, formulas::normal_cdf(n.z)});
  }
  return all;
}

}  // namespace visewright::published
