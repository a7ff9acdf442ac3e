// Pages as PDF, exactly full size.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "outputs/papers/paper.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// What shows of a sheet through a window, `window` in the sheet's coordinates, with the window's low corner at `at` on
/// the page (mm from its lower left corner). Nothing is drawn outside the window.
struct Pane {
  std::shared_ptr<const Sheet> sheet;
  geometry::Box window;
  geometry::Point at;
};
struct Page {
  PaperSize size;
  std::vector<Pane> panes;
};

/// `time` as in "2000-01-01T00:00:00", in place of a clock.
struct PdfHead {
  std::string title, time, author;
};

/// Lengths are multiplied by the correction, the pen widths and letters are not; the low corner of a pane stays where
/// it is. Words are words, in the font of `font_file`, which goes into the file. Law: the same pages give the same bytes.
[[nodiscard]] base::Result<std::string> pdf(const std::vector<Page>&, const PdfHead&, const Correction& = {});

}  // namespace visewright::outputs::papers
