#include "pipeline/last_door.h"

#include <unistd.h>

#include <exception>
#include <string>
#include <string_view>

namespace visewright::pipeline {
namespace {

constexpr std::string_view last_words = "this is a mistake in visewright itself; please report it with the design\n";

[[noreturn]] void give_up() noexcept {
  [[maybe_unused]] const ssize_t said = ::write(STDERR_FILENO, last_words.data(), last_words.size());
  ::_exit(base::exit_status(base::Cause::own_mistake));
}

}  // namespace

int behind_last_door(const std::function<int()>& job, const std::function<void(const base::Faults&)>& report) noexcept {
  const auto mistake = [&](const std::string& what) {
    report({{base::Cause::own_mistake, std::nullopt, "", "this is a mistake in visewright itself (" + what + ")",
             "please report it with the design"}});
    return base::exit_status(base::Cause::own_mistake);
  };
  try {
    return job();
  } catch (const std::exception& error) {
    return mistake(error.what());
  } catch (...) {
    return mistake("unknown exception");
  }
}

void end_on_own_mistake() { std::set_terminate(give_up); }

}  // namespace visewright::pipeline
