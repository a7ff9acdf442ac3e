// Words beside what they speak of, where they cover nothing.
#pragma once

#include <string>
#include <vector>

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Lines of words about the point `at`. They may stand close to it, or beyond `clear_mm` from it.
struct Label {
  geometry::Point at;
  double clear_mm = 0;
  std::vector<std::string> lines;
};

/// Places the labels one after the other: never over other words of the sheet, over as few of its lines as can be, as
/// near as can be. A label that does not touch its point gets a thin line to it. Labels stay inside `room` where they
/// can. Law: no two boxes of words overlap as long as there is room within 80 mm.
void place(Sheet&, std::size_t layer, const std::vector<Label>&, double height_mm, const geometry::Box& room);

}  // namespace visewright::outputs::papers
