// A folder of its own for a test, gone when the test ends, and the few things that tests do with files.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>

namespace visewright::support {

class ScratchFolder {
 public:
  ScratchFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "visewright-test-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no scratch folder: " + name);
    path_ = std::filesystem::canonical(name);
  }
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  ~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  [[nodiscard]] std::filesystem::path operator/(const std::string& below) const { return path_ / below; }

 private:
  std::filesystem::path path_;
};

inline void write_file(const std::filesystem::path& path, const std::string& text) {
  std::filesystem::create_directories(path.parent_path());
  std::ofstream file(path, std::ios::binary);
  file << text;
  file.close();
  if (!file) throw std::runtime_error("cannot write " + path.string());
}

inline std::string read_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error("cannot read " + path.string());
  return {std::istreambuf_iterator<char>(file), {}};
}

/// Every entry below a folder: files with their text, links as "-> target", anything else as "(folder)".
inline std::map<std::string, std::string> everything_below(const std::filesystem::path& folder) {
  namespace fs = std::filesystem;
  std::map<std::string, std::string> all;
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder)) {
    std::string& held = all[entry.path().lexically_relative(folder).generic_string()];
    if (entry.is_symlink())
      held = "-> " + fs::read_symlink(entry.path()).string();
    else
      held = entry.is_regular_file() ? read_file(entry.path()) : "(folder)";
  }
  return all;
}

}  // namespace visewright::support
