// Files that are handed to somebody, kept together in one folder.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::handoff {

/// What one person gets: `whom` heads its section in the folder's guide, `words` say in a sentence or two what to do.
struct Pack {
  std::string_view whom, words;
  std::vector<File> files;
};

/// "7" as "07" and "3.1" as "03.1", so that files sort by item; then the name in small letters: "07_cover".
[[nodiscard]] std::string file_stem(std::string_view item, std::string_view name);

/// Gears as STL and 3MF, a small test piece, and what to tell the printer: handoff/printer/.
[[nodiscard]] base::Result<Pack> printer_pack(const Facts&, base::Watcher&);
/// Solids, flat outlines and positions of the parts that are cut, drilled and turned: handoff/cnc/.
[[nodiscard]] base::Result<Pack> machine_pack(const Facts&, base::Watcher&);
/// The vise with names, materials and movement: handoff/viewer/.
[[nodiscard]] base::Result<Pack> viewer_pack(const Facts&, base::Watcher&);

/// All packs and the guide to them, handoff/README.md, which is made from the list of their files.
[[nodiscard]] base::Result<std::vector<File>> write_handoff(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::handoff
