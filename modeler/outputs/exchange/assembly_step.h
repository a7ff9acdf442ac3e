// The whole vise as one STEP file: a product tree of fixed, moving and, inside it, turning parts.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::exchange {

/// assembly.step. Item numbers of the bill are product ids, readable names the names; every repeated part is one shared
/// product placed several times; colours go by material. REQUIRES: facts.solids.
[[nodiscard]] base::Result<std::vector<File>> write_assembly(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::exchange
