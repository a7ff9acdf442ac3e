// The folder of outputs: it appears whole or not at all.
#pragma once

#include <filesystem>
#include <span>

#include "base/fault.h"
#include "base/watcher.h"
#include "outputs/file.h"

namespace visewright::pipeline {

/// Puts the files and a manifest.json into `folder`. They are written into a folder beside it, forced to the disk and
/// exchanged with it in one step; whoever looks sees the earlier folder or the new one. On a file system that cannot
/// exchange, two renames follow each other, and the watcher is told.
///
/// `folder` is replaced only if it is absent, empty, or holds our manifest and nothing that the manifest does not list.
/// Else, and for every trouble on the disk: Cause::output, with the first foreign file as key. When the watcher wants
/// to stop: Cause::interrupted, and the earlier folder stands untouched. Two files with one path, or a path that leads
/// out of the folder: Cause::own_mistake.
[[nodiscard]] base::Result<void> publish(std::span<const outputs::File> files, const std::filesystem::path& folder,
                                         base::Watcher&);

/// The same refusals, a place that cannot be written to among them, without leaving anything: to be asked before long
/// work starts.
[[nodiscard]] base::Result<void> may_replace(const std::filesystem::path& folder, base::Watcher&);

}  // namespace visewright::pipeline
