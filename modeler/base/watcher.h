// The only door through which a long job reports progress, talks, and is asked to stop.
#pragma once

#include <string_view>

namespace visewright::base {

class Watcher {
 public:
  Watcher() = default;
  Watcher(const Watcher&) = delete;
  Watcher& operator=(const Watcher&) = delete;
  virtual ~Watcher() = default;

  /// What is being done now and how much of the whole job is behind it, 0 to 1.
  virtual void step(std::string_view what, double done_0_to_1) = 0;
  /// One sentence for the person.
  virtual void note(std::string_view sentence) = 0;
  /// True once the person has asked to stop; the job then ends with Cause::interrupted and leaves nothing behind.
  [[nodiscard]] virtual bool wants_stop() const noexcept = 0;
};

/// A watcher that says nothing and never stops.
class Silence final : public Watcher {
 public:
  void step(std::string_view, double) override {}
  void note(std::string_view) override {}
  [[nodiscard]] bool wants_stop() const noexcept override { return false; }
};

}  // namespace visewright::base
