// Writes a checked StepDocument through the kernel. Private to this folder.
#pragma once

#include "kernel/step_document.h"

namespace visewright::kernel {

[[nodiscard]] base::Result<std::string> written(const StepDocument&, Schema);

}  // namespace visewright::kernel
