// Which folder may include which: the one table of the layout, and the sources that are held against it.
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace visewright::architecture {

/// Folder → folders it may include beside itself.
[[nodiscard]] const std::map<std::string, std::set<std::string>>& may_include();

/// Everything wrong with the includes of one source, a sentence each. `path` is relative to the repository.
[[nodiscard]] std::vector<std::string> wrong_includes(const std::string& path, std::string_view text);

struct Source {
  std::string path, text;  // path relative to the repository
};
/// Sources below a folder of the repository with one of the endings, in byte order of the path.
[[nodiscard]] std::vector<Source> sources_below(const std::string& folder, const std::set<std::string>& endings);

/// FOLDERS of each visewright_folder(...) in a CMake text.
[[nodiscard]] std::map<std::string, std::set<std::string>> linked_folders(const std::string& cmake);

}  // namespace visewright::architecture
