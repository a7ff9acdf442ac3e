// Work spread over the cores; the result does not depend on their number.
#pragma once

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace visewright::fitup {

/// Calls work(i) for every i below count, each once, in any order, on all cores. The calls must not touch each other's
/// data.
template <class Work>
void spread(std::size_t count, const Work& work) {
  std::atomic<std::size_t> next{0};
  const auto run = [&] {
    for (std::size_t i = next++; i < count; i = next++) work(i);
  };
  std::vector<std::jthread> others;
  const std::size_t hands = std::min<std::size_t>(count, std::max(1U, std::thread::hardware_concurrency()));
  for (std::size_t i = 1; i < hands; ++i) others.emplace_back(run);
  run();
}

}  // namespace visewright::fitup
