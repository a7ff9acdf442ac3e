// A full-size sheet on as many sheets of paper as it takes.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "outputs/papers/pdf.h"

namespace visewright::outputs::papers {

/// Neighbouring tiles share a band this wide, with match marks in it.
inline constexpr double overlap_mm = 15;

/// Which part of a sheet each sheet of paper shows. Columns count from the left as A, B …, rows from the top as 1, 2 ….
struct Tiling {
  PaperSize page;
  int columns = 1, rows = 1;
  geometry::Box first;  // the window of tile A1, in the sheet's coordinates
  [[nodiscard]] geometry::Box window(int column, int row) const;
  [[nodiscard]] static std::string name(int column, int row);
};

/// Upright or on its side, whichever takes fewer sheets of paper; upright when both take the same.
[[nodiscard]] Tiling tiling(const geometry::Box& content, Paper, const Correction&);

/// Where the window of a tile stands on its page, mm from the page's low corner.
inline constexpr geometry::Point window_on_page{24, 34};

/// What stands on every page beside the drawing.
struct PageWords {
  std::string title;   // "gear layer, front"
  std::string notice;  // of failing checks; empty for none
  std::string foot;    // design, program
};

/// First a page with the title, the remarks, the legend and a map of the tiles, then a page a tile. Every page has a
/// bar of 100 mm and one of 4 in both ways; when measured they tell whether the paper is true to size. Match marks are
/// drawn in the sheet's own coordinates, so that they are the same lines on both tiles.
[[nodiscard]] std::vector<Page> full_size_pages(const Sheet&, const PageWords&, Paper, const Correction& = {});

}  // namespace visewright::outputs::papers
