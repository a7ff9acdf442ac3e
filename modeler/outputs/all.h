// The one list of what `make` writes.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs {

/// One output: its name, the folder below the target in which its files stand (empty: the target itself; the paths of
/// its files begin with it), and the function that gives their bytes. Outputs open no file and decide nothing.
struct Output {
  std::string_view name, folder;
  bool needs_solids;
  base::Result<std::vector<File>> (*write)(const Facts&, base::Watcher&);
};

/// In the order of the manifest.
[[nodiscard]] std::span<const Output> all();

}  // namespace visewright::outputs
