// A pictorial view of the whole vise, hidden lines taken away.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::papers {

/// picture.svg, seen from the front, the person's right and above. REQUIRES: facts.solids.
[[nodiscard]] base::Result<std::vector<File>> write_picture(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::papers
