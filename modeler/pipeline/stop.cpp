#include "pipeline/stop.h"

#include <atomic>
#include <csignal>

namespace visewright::pipeline {
namespace {

std::atomic<bool> asked{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may only touch what needs no lock");

extern "C" void raise_flag(int) { asked.store(true, std::memory_order_relaxed); }

}  // namespace

void heed_stop_signals() {
  struct sigaction action = {};
  action.sa_handler = raise_flag;
  sigemptyset(&action.sa_mask);
  action.sa_flags = 0;  // no restart: a read that waits for ever must end too
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) sigaction(signal, &action, nullptr);
  std::signal(SIGPIPE, SIG_IGN);
}

bool stop_was_asked() noexcept { return asked.load(std::memory_order_relaxed); }

}  // namespace visewright::pipeline
