// The last door before the process ends: whatever slips past every result is our own mistake, and is said as one.
#pragma once

#include <functional>

#include "base/fault.h"

namespace visewright::pipeline {

/// Runs `job` and gives its exit status. An exception that gets out is handed to `report` as a Cause::own_mistake and
/// gives 70.
[[nodiscard]] int behind_last_door(const std::function<int()>& job,
                                   const std::function<void(const base::Faults&)>& report) noexcept;

/// What the language would abort on (an exception out of a noexcept function) ends the process with status 70 too.
void end_on_own_mistake();

}  // namespace visewright::pipeline
