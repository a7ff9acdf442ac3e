// The design files that the program carries with it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace visewright::pipeline {

/// `name` is what `start` takes, `title` the design's own, `text` the whole file.
struct Preset {
  std::string_view name, title, text;
};

/// In byte order of the name.
[[nodiscard]] std::vector<Preset> presets();
[[nodiscard]] std::optional<Preset> preset_named(std::string_view name);

}  // namespace visewright::pipeline
