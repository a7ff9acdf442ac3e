// The one place where exceptions of the geometry kernel become faults. Private to this folder.
#pragma once

#include <Standard_Failure.hxx>
#include <exception>
#include <string>
#include <string_view>

#include "base/fault.h"

namespace visewright::kernel {

/// A fault of the kernel's work: "the prism could not be made: …".
[[nodiscard]] tl::unexpected<base::Faults> failed(std::string_view what, std::string_view label, std::string_view why);

/// The kernel talks on standard output unless its messenger has no printers left. Done once.
void silence_the_kernel();

/// Runs a piece of kernel work that returns a Result.
template <class Work>
auto guarded(std::string_view what, std::string_view label, Work&& work) -> decltype(work()) {
  silence_the_kernel();
  // The kernel's failures are not standard exceptions in this version and come first.
  try {
    return work();
  } catch (const Standard_Failure& failure) {
    const char* message = failure.GetMessageString();
    return failed(what, label, message != nullptr && *message != '\0' ? message : failure.DynamicType()->Name());
  } catch (const std::exception& failure) {
    return failed(what, label, failure.what());
  } catch (...) {
    return failed(what, label, "it gave no reason");
  }
}

}  // namespace visewright::kernel
