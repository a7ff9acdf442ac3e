// Full-size templates: the master pattern and one for each worked face of each flat part, as SVG, DXF and PDF.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"
#include "outputs/papers/paper.h"

namespace visewright::outputs::papers {

/// What to print on, and what to correct of the printer.
struct Print {
  Paper paper = Paper::a4;
  Correction correction{};
};

/// Files "papers/templates/gear-layer-front.svg" and so on. With a kerf or a cutter in the plan a second DXF holds the
/// machine's path, and says so in its name and its words.
[[nodiscard]] base::Result<std::vector<File>> templates(const Facts&, const Print&, base::Watcher&);
[[nodiscard]] base::Result<std::vector<File>> write_templates(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::papers
