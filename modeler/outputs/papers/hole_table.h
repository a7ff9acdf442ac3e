// The holes of a job in a table: number, place from the datum, size, depth, tool, face.
#pragma once

#include <string>
#include <vector>

#include "outputs/facts.h"
#include "outputs/papers/jobs.h"

namespace visewright::outputs::papers {

/// One feature; holes about one centre share a number.
struct HoleRow {
  int number = 0;
  geometry::Point at;  // in the face's own coordinates, from its datum
  std::string name, size, tool, face;
};

/// Of one face, numbered from `first` on, in order of x and then of y.
[[nodiscard]] std::vector<HoleRow> hole_rows(const Facts&, const FaceJob&, int first);

/// Rows of words for a table: number, x, y, what, size, tool.
[[nodiscard]] std::vector<std::vector<std::string>> as_words(const std::vector<HoleRow>&, units::LengthUnit);

}  // namespace visewright::outputs::papers
