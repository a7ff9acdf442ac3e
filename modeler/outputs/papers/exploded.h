// The vise taken apart along its screws, each part with its item number.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::papers {

/// "papers/drawings/exploded-view.pdf" and "-1.svg": a pictorial view from the person's right, above and before the
/// vise, parts drawn out of the bench in the order in which they lie along the screws, so that they come off in that
/// order. Visible edges by the kernel. Of equal parts one carries the balloon. REQUIRES: solids.
[[nodiscard]] base::Result<std::vector<File>> write_exploded(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::papers
