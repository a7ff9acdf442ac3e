#include "base/nearest.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <vector>

namespace visewright::base {

std::size_t edits_between(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t above_left = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replaced = above_left + (a[i - 1] == b[j - 1] ? 0U : 1U);
      above_left = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, replaced});
    }
  }
  return row.back();
}

std::string_view nearest_name(std::string_view mistyped, std::span<const std::string_view> known) {
  std::string_view best;
  std::size_t fewest = std::numeric_limits<std::size_t>::max();
  for (const std::string_view name : known) {
    const std::size_t edits = edits_between(mistyped, name);
    if (edits < fewest) {
      fewest = edits;
      best = name;
    }
  }
  return best;
}

}  // namespace visewright::base
