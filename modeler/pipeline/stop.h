// The wish to stop, as the person or the system sends it: Ctrl-C, a closed terminal, a shutdown.
#pragma once

namespace visewright::pipeline {

/// From now on SIGINT, SIGTERM and SIGHUP only raise a flag; what is under way looks at it, tidies up and ends. A write
/// to a closed pipe becomes an ordinary failure. To be called once, before any work.
void heed_stop_signals();

[[nodiscard]] bool stop_was_asked() noexcept;

}  // namespace visewright::pipeline
