#include "pipeline/publish.h"

#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <optional>
#include <set>
#include <string>
#include <system_error>
#include <utility>

#include "pipeline/disk.h"
#include "pipeline/exchange.h"
#include "pipeline/manifest.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;
using base::Cause;
using base::Result;

constexpr std::string_view wanted = "name a new folder, an empty one, or one that holds nothing but earlier outputs";

tl::unexpected<base::Faults> refused(const fs::path& where, std::string wrong,
                                     std::string right = std::string(wanted)) {
  return base::fault(Cause::output, where.string(), std::move(wrong), std::move(right));
}

tl::unexpected<base::Faults> stopped() {
  return base::fault(Cause::interrupted, "", "stopped; nothing was written", "run the command again");
}

Result<void> paths_are_sound(std::span<const outputs::File> files) {
  const auto mistake = [](const std::string& path, std::string wrong) {
    return base::fault(Cause::own_mistake, path, std::move(wrong), "a path of its own inside the folder");
  };
  std::set<std::string, std::less<>> seen;
  for (const outputs::File& file : files) {
    if (!stays_inside(file.path)) return mistake(file.path, "is not a path for an output");
    if (!seen.insert(file.path).second) return mistake(file.path, "is the path of two outputs");
  }
  for (const std::string& path : seen) {
    for (std::size_t at = path.find('/'); at != std::string::npos; at = path.find('/', at + 1)) {
      if (seen.contains(path.substr(0, at))) return mistake(path, "lies below another output");
    }
  }
  return {};
}

/// The folder as the disk knows it, so that a link to a folder is followed once and for all.
Result<fs::path> resolved(const fs::path& folder) {
  if (folder.empty()) return refused(folder, "no folder is named");
  std::error_code error;
  const fs::path whole = fs::weakly_canonical(fs::absolute(folder), error);
  if (error) return refused(folder, "cannot be reached: " + error.message());
  const fs::path place = whole.has_filename() ? whole : whole.parent_path();
  if (fs::is_symlink(fs::symlink_status(place, error))) return refused(folder, "is a link that leads nowhere");
  if (place == place.parent_path()) return refused(folder, "is the root of the file system");
  if (!fs::is_directory(place.parent_path(), error)) {
    return refused(folder, "the folder above it does not exist", "make " + place.parent_path().string() + " first");
  }
  const fs::path here = fs::current_path(error);
  const fs::path way = here.lexically_relative(place);
  if (!error && !way.empty() && *way.begin() != "..") {
    return refused(folder, "is the folder that this command was started in", "start it from another folder");
  }
  return place;
}

/// Nothing in `place` that replacing it would lose. `shown` is what the person calls it.
Result<void> holds_nothing_foreign(const fs::path& place, const fs::path& shown, base::Watcher& watcher) {
  std::error_code error;
  const fs::file_type type = fs::symlink_status(place, error).type();
  if (type == fs::file_type::not_found) return {};
  if (type == fs::file_type::none) return refused(shown, "cannot be looked at: " + error.message());
  if (type != fs::file_type::directory) return refused(shown, "is not a folder");
  const Result<Listing> listing = list_below(place);
  if (!listing) return base::passed_on(listing.error());
  if (listing->files.empty() && listing->folders.empty() && listing->others.empty()) return {};
  const Result<Manifest> manifest = manifest_in(place, watcher);
  if (!manifest && watcher.wants_stop()) return stopped();
  // Without a manifest of ours everything is foreign, the file of that name too.
  std::vector<std::string> strange = foreign(manifest.value_or(Manifest{}), *listing);
  if (!manifest && strange.empty()) strange.emplace_back(manifest_name);
  if (strange.empty()) return {};
  const std::string_view why = manifest ? "is not among the files that the folder's manifest lists"
                                        : "lies in a folder that has no manifest of earlier outputs";
  return refused(shown / strange.front(), std::string(why));
}

/// The folder beside the place, taken away again unless it was moved.
class Unfinished {
 public:
  static Result<Unfinished> beside(const fs::path& place, const fs::path& shown) {
    // The process's number keeps two runs apart; a number that a dead run left behind is passed over.
    for (int attempt = 0;; ++attempt) {
      const fs::path path =
          place.parent_path() / fmt::format(".{}.unfinished-{}-{}", place.filename().string(), ::getpid(), attempt);
      if (::mkdir(path.c_str(), 0777) == 0) return Unfinished(path);
      if (errno != EEXIST || attempt == 1000) {
        return refused(shown, "no folder can be made beside it: " + std::generic_category().message(errno),
                       "name a place that can be written to");
      }
    }
  }
  Unfinished(Unfinished&& other) noexcept : path_(std::exchange(other.path_, fs::path())) {}
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;
  Unfinished& operator=(Unfinished&&) = delete;
  ~Unfinished() {
    std::error_code ignored;
    if (!path_.empty()) fs::remove_all(path_, ignored);
  }
  [[nodiscard]] const fs::path& path() const { return path_; }
  void keep() { path_.clear(); }

 private:
  explicit Unfinished(fs::path path) : path_(std::move(path)) {}
  fs::path path_;
};

Result<void> fill(const fs::path& folder, std::span<const outputs::File> files, base::Watcher& watcher) {
  std::set<fs::path> folders{folder};
  std::error_code error;
  const double all = static_cast<double>(files.size()) + 1;
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (watcher.wants_stop()) return stopped();
    watcher.step("writing " + files[i].path, static_cast<double>(i) / all);
    const fs::path path = folder / files[i].path;
    for (fs::path above = path.parent_path(); folders.insert(above).second;) above = above.parent_path();
    fs::create_directories(path.parent_path(), error);
    if (error) return refused(path, "its folder cannot be made: " + error.message(), "a disk with room");
    if (Result<void> written = write_new(path, files[i].bytes, watcher); !written) return written;
  }
  Result<void> written = write_new(folder / manifest_name, write_manifest(manifest_of(files)), watcher);
  for (const fs::path& each : folders) settle_folder(each);
  return written;
}

Result<void> put_in_place(Unfinished& unfinished, const fs::path& place, const fs::path& shown,
                          base::Watcher& watcher) {
  const fs::path made = unfinished.path();
  const auto failed = [&](const std::error_code& error) {
    return refused(shown, "cannot be put in place: " + error.message(), "name a folder on an ordinary file system");
  };
  std::error_code ignored;
  if (fs::symlink_status(place, ignored).type() == fs::file_type::not_found) {
    if (const std::error_code error = move_into(made, place)) return failed(error);
    settle_folder(place.parent_path());
    return {};
  }
  Exchanged how{};
  if (const std::error_code error = trade_places(made, place, how)) return failed(error);
  if (how == Exchanged::in_two_steps) {
    watcher.note("this file system cannot exchange two folders in one step; two renames were made instead");
  }
  settle_folder(place.parent_path());
  // What somebody put there while we were writing is given back.
  if (Result<void> still = holds_nothing_foreign(made, shown, watcher); !still) {
    if (!trade_places(made, place, how)) return still;
    unfinished.keep();
    return refused(made, "holds the earlier folder, which could not be put back", "move what you need out of it");
  }
  return {};
}

}  // namespace

Result<void> may_replace(const fs::path& folder, base::Watcher& watcher) {
  const Result<fs::path> place = resolved(folder);
  if (!place) return base::passed_on(place.error());
  if (Result<void> ours = holds_nothing_foreign(*place, folder, watcher); !ours) return ours;
  const Result<Unfinished> tried = Unfinished::beside(*place, folder);
  if (!tried) return base::passed_on(tried.error());
  return {};
}

Result<void> publish(std::span<const outputs::File> files, const fs::path& folder, base::Watcher& watcher) {
  if (Result<void> sound = paths_are_sound(files); !sound) return sound;
  const Result<fs::path> place = resolved(folder);
  if (!place) return base::passed_on(place.error());
  if (Result<void> ours = holds_nothing_foreign(*place, folder, watcher); !ours) return ours;
  Result<Unfinished> made = Unfinished::beside(*place, folder);
  if (!made) return base::passed_on(made.error());
  if (Result<void> filled = fill(made->path(), files, watcher); !filled) {
    if (watcher.wants_stop()) return stopped();
    for (base::Fault& fault : filled.error()) {
      fault.key = (folder / fs::path(fault.key).lexically_relative(made->path())).string();
    }
    return filled;
  }
  if (Result<void> ours = holds_nothing_foreign(*place, folder, watcher); !ours) return ours;
  if (watcher.wants_stop()) return stopped();
  return put_in_place(*made, *place, folder, watcher);
}

}  // namespace visewright::pipeline
