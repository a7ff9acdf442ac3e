#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <vector>

#include "base/nearest.h"
#include "pipeline/disk.h"
#include "pipeline/front_door.h"
#include "pipeline/presets.h"

namespace visewright::pipeline {

base::Result<Answer> start(const StartJob& job, base::Watcher& watcher) {
  const std::optional<Preset> preset = preset_named(job.preset);
  if (!preset) {
    std::vector<std::string_view> known;
    for (const Preset& each : presets()) known.push_back(each.name);
    return base::fault(base::Cause::input, "start", "there is no preset \"" + job.preset + "\"",
                       known.empty() ? "no preset is built in"
                                     : fmt::format("did you mean \"{}\"? `visewright catalogue presets` lists all",
                                                   base::nearest_name(job.preset, known)));
  }
  const std::string file = job.file.value_or(std::string(preset->name) + ".toml");
  return write_new(file, preset->text, watcher).map([&] {
    if (!job.json) return Answer{file + "\n"};
    const nlohmann::ordered_json json = {
        {"schema", "visewright.start/1"}, {"preset", preset->name}, {"file", file}, {"size", preset->text.size()}};
    return Answer{json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n"};
  });
}

}  // namespace visewright::pipeline
