#include "pipeline/manifest.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "pipeline/sha256.h"

namespace visewright::pipeline {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t longest_manifest = 16U << 20U;

auto not_ours(std::string_view where, std::string wrong) {
  return base::fault(base::Cause::input, std::string(where), std::move(wrong),
                     "a manifest of the kind " + std::string(manifest_schema));
}

bool is_digest(std::string_view text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

std::optional<ManifestEntry> entry_of(const Json& json) {
  if (!json.is_object()) return std::nullopt;
  const auto path = json.find("path"), size = json.find("size"), sum = json.find("sha256"), what = json.find("what");
  const bool complete = path != json.end() && path->is_string() && size != json.end() && size->is_number_unsigned() &&
                        sum != json.end() && sum->is_string() && what != json.end() && what->is_string();
  if (!complete) return std::nullopt;
  ManifestEntry entry{path->get<std::string>(), size->get<std::uint64_t>(), sum->get<std::string>(),
                      what->get<std::string>()};
  if (!stays_inside(entry.path) || !is_digest(entry.sha256)) return std::nullopt;
  return entry;
}

}  // namespace

Manifest manifest_of(std::span<const outputs::File> files) {
  Manifest manifest;
  for (const outputs::File& file : files) {
    manifest.push_back({file.path, file.bytes.size(), sha256_hex(file.bytes), file.what});
  }
  return manifest;
}

std::string write_manifest(const Manifest& manifest) {
  Json files = Json::array();
  for (const ManifestEntry& entry : manifest) {
    files.push_back({{"path", entry.path}, {"size", entry.size}, {"sha256", entry.sha256}, {"what", entry.what}});
  }
  const Json whole = {{"schema", manifest_schema}, {"files", std::move(files)}};
  return whole.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

base::Result<Manifest> read_manifest(std::string_view text, std::string_view where) {
  const Json json = Json::parse(text, nullptr, false);
  if (json.is_discarded()) return not_ours(where, "is not JSON");
  if (!json.is_object() || !json.contains("schema") || json["schema"] != manifest_schema) {
    return not_ours(where, "names another schema, or none");
  }
  const auto files = json.find("files");
  if (files == json.end() || !files->is_array()) return not_ours(where, "has no list of files");
  Manifest manifest;
  for (const Json& file : *files) {
    std::optional<ManifestEntry> entry = entry_of(file);
    if (!entry)
      return not_ours(where, "file " + std::to_string(manifest.size() + 1) + " of its list is not as it should be");
    manifest.push_back(*std::move(entry));
  }
  return manifest;
}

base::Result<Manifest> manifest_in(const std::filesystem::path& folder, base::Watcher& watcher) {
  const std::filesystem::path path = folder / manifest_name;
  return read_text(path, longest_manifest, watcher).and_then([&](const std::string& text) {
    return read_manifest(text, path.string());
  });
}

bool stays_inside(std::string_view path) {
  if (path.empty() || path == manifest_name || path.find('\0') != std::string_view::npos) return false;
  while (true) {
    const std::size_t slash = path.find('/');
    const std::string_view step = path.substr(0, slash);
    if (step.empty() || step == "." || step == "..") return false;
    if (slash == std::string_view::npos) return true;
    path.remove_prefix(slash + 1);
  }
}

std::vector<std::string> foreign(const Manifest& manifest, const Listing& listing) {
  std::set<std::string, std::less<>> known{std::string(manifest_name)};
  for (const ManifestEntry& entry : manifest) {
    known.insert(entry.path);
    for (std::size_t at = entry.path.find('/'); at != std::string::npos; at = entry.path.find('/', at + 1)) {
      known.insert(entry.path.substr(0, at + 1));
    }
  }
  std::vector<std::string> strange = listing.others;  // a link is never ours, whatever it is called
  for (const std::vector<std::string>* list : {&listing.files, &listing.folders}) {
    std::copy_if(list->begin(), list->end(), std::back_inserter(strange),
                 [&](const std::string& path) { return !known.contains(path); });
  }
  std::sort(strange.begin(), strange.end());
  return strange;
}

}  // namespace visewright::pipeline
