// Reading and writing single files, each failure as a fault that names the file and says why.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "base/watcher.h"

namespace visewright::pipeline {

/// The whole text of a file of at most `limit` bytes. Missing, a folder, unreadable or longer: Cause::input with the
/// path as key. A wish to stop while a pipe keeps silent: Cause::interrupted.
[[nodiscard]] base::Result<std::string> read_text(const std::filesystem::path&, std::size_t limit, base::Watcher&);

/// Writes a file that must not exist yet and forces it to the disk; a file that could not be finished is taken away
/// again. Cause::output with the path as key, or Cause::interrupted.
[[nodiscard]] base::Result<void> write_new(const std::filesystem::path&, std::string_view bytes, base::Watcher&);

/// Forces a folder's entries to the disk. A file system that cannot is passed over: the files themselves are safe.
void settle_folder(const std::filesystem::path&) noexcept;

/// SHA-256 of a file of any length; Cause::output with the path as key when it cannot be read.
[[nodiscard]] base::Result<std::string> sha256_of_file(const std::filesystem::path&);

/// Everything below a folder in byte order of the path, '/' between folders, relative to it. Folders end in '/'; links
/// are listed, not followed.
struct Listing {
  std::vector<std::string> files, folders, others;  // others: links, pipes, sockets, devices
};
[[nodiscard]] base::Result<Listing> list_below(const std::filesystem::path&);

}  // namespace visewright::pipeline
