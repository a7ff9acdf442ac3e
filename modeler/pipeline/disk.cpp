#include "pipeline/disk.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "pipeline/sha256.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;
using base::Cause;

constexpr std::size_t chunk = 1U << 20U;

std::string why(int error) { return std::generic_category().message(error); }

auto stopped(const fs::path& path) {
  return base::fault(Cause::interrupted, path.string(), "stopped before it was finished", "run the command again");
}

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  [[nodiscard]] int number() const { return number_; }
  /// Closing can be the first to report a full disk, so a writer closes by hand.
  [[nodiscard]] bool close() {
    const int closing = number_;
    number_ = -1;
    return ::close(closing) == 0;
  }

 private:
  int number_;
};

base::Result<void> write_all(const fs::path& path, int file, std::string_view bytes, base::Watcher& watcher) {
  while (!bytes.empty()) {
    if (watcher.wants_stop()) return stopped(path);
    const ssize_t done = ::write(file, bytes.data(), std::min(bytes.size(), chunk));
    if (done < 0 && errno == EINTR) continue;
    if (done < 0)
      return base::fault(Cause::output, path.string(), "cannot be written: " + why(errno), "a disk with room");
    bytes.remove_prefix(static_cast<std::size_t>(done));
  }
  return {};
}

std::string missing_or(int error, std::string_view otherwise) {
  return error == ENOENT ? "there is no such file" : std::string(otherwise) + ": " + why(error);
}

}  // namespace

base::Result<std::string> read_text(const fs::path& path, std::size_t limit, base::Watcher& watcher) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.number() < 0) {
    const int error = errno;
    if (error == EINTR && watcher.wants_stop()) return stopped(path);
    return base::fault(Cause::input, path.string(), missing_or(error, "cannot be read"),
                       "give the path of a file that can be read");
  }
  struct stat what = {};
  if (::fstat(file.number(), &what) == 0 && S_ISDIR(what.st_mode)) {
    return base::fault(Cause::input, path.string(), "is a folder", "give the path of a file");
  }
  std::string text;
  std::string piece(std::min(chunk, limit + 1), '\0');
  for (;;) {
    const ssize_t got = ::read(file.number(), piece.data(), piece.size());
    if (got < 0 && errno == EINTR && !watcher.wants_stop()) continue;
    if (got < 0 && errno == EINTR) return stopped(path);
    if (got < 0)
      return base::fault(Cause::input, path.string(), "cannot be read: " + why(errno),
                         "give the path of a file that can be read");
    if (got == 0) return text;
    text.append(piece, 0, static_cast<std::size_t>(got));
    if (text.size() > limit) {
      return base::fault(Cause::input, path.string(), "is longer than " + std::to_string(limit) + " bytes",
                         "give a shorter file");
    }
  }
}

base::Result<void> write_new(const fs::path& path, std::string_view bytes, base::Watcher& watcher) {
  Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
  if (file.number() < 0) {
    const int error = errno;
    if (error == EEXIST)
      return base::fault(Cause::output, path.string(), "exists already", "name a file that does not exist");
    return base::fault(Cause::output, path.string(), "cannot be written: " + why(error),
                       "name a folder that exists and can be written to");
  }
  base::Result<void> written = write_all(path, file.number(), bytes, watcher);
  if (written && (::fsync(file.number()) != 0 || !file.close())) {
    written = base::fault(Cause::output, path.string(), "cannot be written: " + why(errno), "a disk with room");
  }
  if (!written) ::unlink(path.c_str());
  return written;
}

void settle_folder(const fs::path& path) noexcept {
  const Descriptor folder(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (folder.number() >= 0) ::fsync(folder.number());
}

base::Result<std::string> sha256_of_file(const fs::path& path) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW));
  const auto unreadable = [&] {
    return base::fault(Cause::output, path.string(), "cannot be read: " + why(errno), "a file that can be read");
  };
  if (file.number() < 0) return unreadable();
  Sha256 sum;
  std::string piece(chunk, '\0');
  for (;;) {
    const ssize_t got = ::read(file.number(), piece.data(), piece.size());
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return unreadable();
    if (got == 0) return sum.hex();
    sum.add(std::string_view(piece).substr(0, static_cast<std::size_t>(got)));
  }
}

base::Result<Listing> list_below(const fs::path& root) {
  Listing found;
  std::error_code error;
  for (auto entry = fs::recursive_directory_iterator(root, error);
       !error && entry != fs::recursive_directory_iterator(); entry.increment(error)) {
    const std::string path = entry->path().lexically_relative(root).generic_string();
    const fs::file_type type = entry->symlink_status(error).type();
    if (error) break;
    if (type == fs::file_type::directory)
      found.folders.push_back(path + "/");
    else if (type == fs::file_type::regular)
      found.files.push_back(path);
    else
      found.others.push_back(path);
  }
  if (error)
    return base::fault(Cause::output, root.string(), "cannot be read: " + error.message(), "a folder that can be read");
  for (std::vector<std::string>* list : {&found.files, &found.folders, &found.others})
    std::sort(list->begin(), list->end());
  return found;
}

}  // namespace visewright::pipeline
