#include "cli/screen.h"

#include <spdlog/sinks/stdout_color_sinks.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "pipeline/stop.h"

namespace visewright::cli {
namespace {

using std::chrono::milliseconds;
using std::chrono::steady_clock;

bool set_and_filled(const char* name) {
  const char* value = std::getenv(name);
  return value != nullptr && *value != '\0';
}

bool is_plain_terminal() {
  const char* kind = std::getenv("TERM");
  return ::isatty(STDERR_FILENO) == 1 && kind != nullptr && std::string_view(kind) != "dumb";
}

}  // namespace

Screen::Screen() : began_(steady_clock::now()), terminal_(is_plain_terminal()) {
  const bool colour = terminal_ && !set_and_filled("NO_COLOR");
  auto sink = std::make_shared<spdlog::sinks::stderr_color_sink_st>(colour ? spdlog::color_mode::always
                                                                           : spdlog::color_mode::never);
  log_ = std::make_shared<spdlog::logger>("visewright", std::move(sink));
  log_->set_pattern("%^%v%$");
}

Screen::~Screen() { wipe(); }

void Screen::step(std::string_view what, double done_0_to_1) {
  const auto now = steady_clock::now();
  if (!terminal_ || now - began_ < milliseconds(1000) || now - drawn_ < milliseconds(100)) return;
  drawn_ = now;
  line_stands_ = true;
  const int percent = static_cast<int>(std::floor(100.0 * std::clamp(done_0_to_1, 0.0, 1.0)));
  const std::string_view shown = what.substr(0, 70);  // one line of the narrowest usual terminal
  std::fprintf(stderr, "\r\x1b[K%3d %%  %.*s", percent, static_cast<int>(shown.size()), shown.data());
  std::fflush(stderr);
}

void Screen::note(std::string_view sentence) {
  wipe();
  log_->info("{}", sentence);
}

bool Screen::wants_stop() const noexcept { return pipeline::stop_was_asked(); }

void Screen::complain(std::string_view lines) {
  wipe();
  while (lines.ends_with('\n')) lines.remove_suffix(1);
  log_->error("{}", lines);
}

void Screen::wipe() {
  if (line_stands_) std::fputs("\r\x1b[K", stderr);
  line_stands_ = false;
}

}  // namespace visewright::cli
