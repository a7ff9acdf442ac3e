#include "fitup/boxes.h"

#include <algorithm>
#include <cmath>

namespace visewright::fitup {

kernel::Box3 placed_box(const kernel::Box3& own, const geometry::Placement& at) {
  kernel::Box3 box{{1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}};
  for (unsigned corner = 0; corner < 8; ++corner) {
    geometry::Vector inside{};
    for (std::size_t i = 0; i < 3; ++i) inside[i] = (corner >> i & 1U) != 0 ? own.high[i] : own.low[i];
    const geometry::Vector p = geometry::to_outside(at, inside);
    for (std::size_t i = 0; i < 3; ++i) {
      box.low[i] = std::min(box.low[i], p[i]);
      box.high[i] = std::max(box.high[i], p[i]);
    }
  }
  return box;
}

double gap_mm(const kernel::Box3& a, const kernel::Box3& b) {
  double squared = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const double apart = std::max({0.0, a.low[i] - b.high[i], b.low[i] - a.high[i]});
    squared += apart * apart;
  }
  return std::sqrt(squared);
}

}  // namespace visewright::fitup
