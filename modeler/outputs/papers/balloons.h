// Item numbers in circles with a line to what they number.
#pragma once

#include <string>
#include <vector>

#include "outputs/papers/region.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// `at` is a point of the thing, in the page's millimetres.
struct Balloon {
  geometry::Point at;
  std::string text;
};

/// Stands the balloons in rows above and below a box, each above or below its point as far as there is room, in order of
/// x so that no two lines cross within a row.
void add_balloons(Sheet&, std::size_t layer, const std::vector<Balloon>&, const geometry::Box& around);

/// A point well inside a region: amid its widest stretch of a hatching.
[[nodiscard]] geometry::Point point_inside(const Region&);

}  // namespace visewright::outputs::papers
