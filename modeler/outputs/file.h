// What an output hands over: a file that nobody has written yet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace visewright::outputs {

/// One file of the folder. `path` is relative with '/' between folders, `what` says in one line what the file is for,
/// `part` is the index of the part that it shows, when it shows one.
struct File {
  std::string path, bytes, what;
  std::optional<std::uint32_t> part;
};

}  // namespace visewright::outputs
