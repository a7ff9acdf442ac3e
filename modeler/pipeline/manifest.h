// The list that lies in every folder of outputs: what was written, how long, with which digest, and what for.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "base/watcher.h"
#include "outputs/file.h"
#include "pipeline/disk.h"

namespace visewright::pipeline {

inline constexpr std::string_view manifest_name = "manifest.json";
inline constexpr std::string_view manifest_schema = "visewright.manifest/1";

struct ManifestEntry {
  std::string path;
  std::uint64_t size = 0;
  std::string sha256, what;
};

/// In the order in which the outputs were made. The manifest does not list itself.
using Manifest = std::vector<ManifestEntry>;

[[nodiscard]] Manifest manifest_of(std::span<const outputs::File>);
/// JSON, two spaces deep, with a closing newline. Law: read_manifest gives back what was written.
[[nodiscard]] std::string write_manifest(const Manifest&);

/// Reads a manifest's text. Not ours, of another version, or with a path that leads out of the folder: Cause::input
/// with `where` as key.
[[nodiscard]] base::Result<Manifest> read_manifest(std::string_view text, std::string_view where);

/// The manifest that lies in `folder`.
[[nodiscard]] base::Result<Manifest> manifest_in(const std::filesystem::path& folder, base::Watcher&);

/// True for a relative path without empty, "." or ".." steps, other than the manifest's own.
[[nodiscard]] bool stays_inside(std::string_view path);

/// What a folder's listing holds beyond the manifest, its file and the folders on the way to listed files; byte order.
[[nodiscard]] std::vector<std::string> foreign(const Manifest&, const Listing&);

}  // namespace visewright::pipeline
