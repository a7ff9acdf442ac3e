// Drawings of all made parts and of the assembly, as PDF and SVG.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"
#include "outputs/papers/drawing_page.h"

namespace visewright::outputs::papers {

/// "papers/drawings/gear-layer.pdf" with all its pages, "gear-layer-1.svg" …, and the same for the section through a
/// drive screw.
[[nodiscard]] base::Result<std::vector<File>> drawings(const Facts&, Projection, base::Watcher&);
[[nodiscard]] base::Result<std::vector<File>> write_drawings(const Facts&, base::Watcher&);

/// Pages of a drawing as files: one PDF, an SVG a page.
[[nodiscard]] base::Result<std::vector<File>> as_files(const Facts&, const std::string& name, std::vector<Sheet> pages,
                                                       std::optional<std::uint32_t> part);

}  // namespace visewright::outputs::papers
