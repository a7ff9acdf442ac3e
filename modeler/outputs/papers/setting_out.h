// The setting-out rod: every centre along the jaw from one end, to mark on a lath and carry to every part.
#pragma once

#include <string>
#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::papers {

/// One mark on the rod. `rod_mm` counts from the rod's zero, the left end of the longer jaw, as the person sees it;
/// `middle_mm` from the middle line. Holes above each other share a mark.
struct RodMark {
  std::string name;
  double rod_mm = 0, middle_mm = 0;
  long sixty_fourths = 0;   // of an inch from zero, the nearest
  double rounding_mm = 0;   // what that reading is longer than the true one
};

/// In order along the rod. Law: |rounding| ≤ 1/128 in.
[[nodiscard]] std::vector<RodMark> rod_marks(const layout::Plan&);
/// "12-3/64"; whole inches without a fraction.
[[nodiscard]] std::string inch_reading(long sixty_fourths);

/// "papers/setting-out.md", and the rod drawn full size as "papers/setting-out.svg" and ".pdf".
[[nodiscard]] base::Result<std::vector<File>> write_setting_out(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::papers
