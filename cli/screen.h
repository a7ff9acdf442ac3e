// Standard error as the person sees it: progress, notes and faults. Results never pass here.
#pragma once

#include <spdlog/logger.h>

#include <chrono>
#include <memory>
#include <string_view>

#include "base/watcher.h"

namespace visewright::cli {

/// Progress shows after one second, on a terminal only, in one line that is wiped again. Colour only on a terminal and
/// without NO_COLOR.
class Screen final : public base::Watcher {
 public:
  Screen();
  ~Screen() override;
  Screen(const Screen&) = delete;
  Screen& operator=(const Screen&) = delete;

  void step(std::string_view what, double done_0_to_1) override;
  void note(std::string_view sentence) override;
  [[nodiscard]] bool wants_stop() const noexcept override;

  /// Lines that say why the job ended; printed as they are.
  void complain(std::string_view lines);

 private:
  void wipe();

  std::shared_ptr<spdlog::logger> log_;
  std::chrono::steady_clock::time_point began_, drawn_;
  bool terminal_, line_stands_ = false;
};

}  // namespace visewright::cli
