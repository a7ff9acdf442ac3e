#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <system_error>
#include <vector>

#include "pipeline/disk.h"
#include "pipeline/front_door.h"
#include "pipeline/manifest.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;

struct Comparison {
  std::size_t listed = 0;
  std::vector<std::string> missing, altered, extra;
  [[nodiscard]] bool matches() const { return missing.empty() && altered.empty() && extra.empty(); }
};

/// What cannot be read here is a folder that was handed in, not an output of ours.
tl::unexpected<base::Faults> as_input(base::Faults faults) {
  for (base::Fault& fault : faults) fault.cause = base::Cause::input;
  return base::passed_on(std::move(faults));
}

base::Result<Comparison> compare(const fs::path& folder, const Manifest& manifest, base::Watcher& watcher) {
  const base::Result<Listing> listing = list_below(folder);
  if (!listing) return as_input(listing.error());
  Comparison found{manifest.size(), {}, {}, foreign(manifest, *listing)};
  double done = 0;
  for (const ManifestEntry& entry : manifest) {
    if (watcher.wants_stop())
      return base::fault(base::Cause::interrupted, "verify", "stopped", "run the command again");
    watcher.step(entry.path, done++ / static_cast<double>(manifest.size()));
    const fs::path path = folder / entry.path;
    if (!std::binary_search(listing->files.begin(), listing->files.end(), entry.path)) {
      found.missing.push_back(entry.path);
      continue;
    }
    std::error_code error;
    const bool same_size = fs::file_size(path, error) == entry.size;
    const base::Result<std::string> sum = same_size ? sha256_of_file(path) : base::Result<std::string>("");
    if (!sum) return as_input(sum.error());
    if (*sum != entry.sha256) found.altered.push_back(entry.path);
  }
  for (std::vector<std::string>* list : {&found.missing, &found.altered}) std::sort(list->begin(), list->end());
  return found;
}

std::string in_words(const Comparison& found) {
  std::string text;
  for (const std::string& path : found.missing) text += "missing  " + path + "\n";
  for (const std::string& path : found.altered) text += "altered  " + path + "\n";
  for (const std::string& path : found.extra) text += "extra    " + path + "\n";
  if (found.matches()) return fmt::format("{} files, all as listed\n", found.listed);
  return text + fmt::format("{} files listed: {} missing, {} altered, {} extra\n", found.listed, found.missing.size(),
                            found.altered.size(), found.extra.size());
}

std::string in_json(const Comparison& found, const std::string& folder) {
  using Json = nlohmann::ordered_json;
  const Json json = {{"schema", "visewright.verify/1"},
                     {"folder", folder},
                     {"matches", found.matches()},
                     {"files", found.listed},
                     {"missing", found.missing},
                     {"altered", found.altered},
                     {"extra", found.extra}};
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace

base::Result<Answer> verify(const VerifyJob& job, base::Watcher& watcher) {
  std::error_code error;
  if (!fs::is_directory(job.folder, error)) {
    return base::fault(base::Cause::input, job.folder,
                       fs::exists(job.folder, error) ? "is not a folder" : "there is no such folder",
                       "give a folder that `visewright make` wrote");
  }
  if (!fs::exists(fs::symlink_status(fs::path(job.folder) / manifest_name, error))) {
    return base::fault(base::Cause::input, job.folder, fmt::format("holds no {}", manifest_name),
                       "give a folder that `visewright make` wrote");
  }
  return manifest_in(job.folder, watcher)
      .and_then([&](const Manifest& manifest) { return compare(job.folder, manifest, watcher); })
      .map([&](const Comparison& found) {
        return Answer{job.json ? in_json(found, job.folder) : in_words(found), found.matches() ? 0 : 1};
      });
}

}  // namespace visewright::pipeline
