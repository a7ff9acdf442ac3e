#include "pipeline/presets.h"

#include <algorithm>

#include "presets_files.h"

namespace visewright::pipeline {
namespace {

constexpr std::string_view ending = ".toml";

/// The text between the quotes of the line `title = "…"`; our own files have one, before any table.
std::string_view title_in(std::string_view text) {
  constexpr std::string_view key = "\ntitle = \"";
  const std::size_t at = text.starts_with(key.substr(1)) ? 0 : text.find(key);
  if (at == std::string_view::npos) return {};
  const std::size_t from = text.find('"', at) + 1;
  return text.substr(from, text.find('"', from) - from);
}

}  // namespace

std::vector<Preset> presets() {
  std::vector<Preset> all;
  for (const embedded::File& file : embedded::presets()) {
    if (!file.path.ends_with(ending)) continue;
    all.push_back({file.path.substr(0, file.path.size() - ending.size()), title_in(file.text), file.text});
  }
  std::sort(all.begin(), all.end(), [](const Preset& a, const Preset& b) { return a.name < b.name; });
  return all;
}

std::optional<Preset> preset_named(std::string_view name) {
  for (const Preset& preset : presets()) {
    if (preset.name == name) return preset;
  }
  return std::nullopt;
}

}  // namespace visewright::pipeline
