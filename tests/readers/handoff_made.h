// What a design hands on, written into a folder, for the readers of such files.
#pragma once

#include <memory>
#include <nlohmann/json.hpp>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "outputs/handoff/pack.h"
#include "pipeline/study.h"
#include "readers/papers_made.h"
#include "readers/step_file.h"
#include "solids/solid_set.h"
#include "support/scratch_folder.h"

namespace visewright::tests {

class Handoff {
 public:
  explicit Handoff(const std::string& design) {
    support::write_file(scratch_ / "design.toml", design);
    base::Silence silence;
    auto study = pipeline::sized((scratch_ / "design.toml").string(), silence);
    if (!study) throw std::runtime_error(study.error().front().key + " " + study.error().front().wrong);
    study_ = std::move(*study);
    auto solids = solids::SolidSet::of(study_->assembly.parts, silence);
    if (!solids) throw std::runtime_error(solids.error().front().key + " " + solids.error().front().wrong);
    study_->solids = std::move(*solids);
    files = outputs::handoff::write_handoff(facts(), silence).value();
    for (const outputs::File& file : files) support::write_file(scratch_ / file.path, file.bytes);
  }
  [[nodiscard]] outputs::Facts facts() const { return pipeline::facts(*study_, std::nullopt); }
  [[nodiscard]] const layout::Plan& plan() const { return study_->plan; }
  [[nodiscard]] const assembly::Assembly& vise() const { return study_->assembly; }
  [[nodiscard]] const pipeline::Study& study() const { return *study_; }
  [[nodiscard]] std::string path(const std::string& name) const { return (scratch_ / ("handoff/" + name)).string(); }
  [[nodiscard]] const std::string& bytes(const std::string& name) const {
    for (const outputs::File& file : files)
      if (file.path == "handoff/" + name) return file.bytes;
    throw std::runtime_error("no file " + name);
  }
  /// Names of the files whose names begin and end so.
  [[nodiscard]] std::vector<std::string> named(const std::string& begin, const std::string& end) const {
    std::vector<std::string> list;
    for (const outputs::File& file : files) {
      const std::string name = file.path.substr(std::string("handoff/").size());
      if (name.starts_with(begin) && name.ends_with(end)) list.push_back(name);
    }
    return list;
  }
  /// What the reader in Python says; throws when it finds something wrong.
  [[nodiscard]] nlohmann::json read(const std::string& kind, const std::string& name, const std::string& more = "") const {
    return nlohmann::json::parse(said_by("/usr/bin/python3 " VISEWRIGHT_SOURCE_DIR "/tests/readers/handoff_read.py " + kind + " " + path(name) + " " + more));
  }
  void put(const std::string& name, const std::string& bytes) const { support::write_file(scratch_ / ("handoff/" + name), bytes); }

  std::vector<outputs::File> files;

 private:
  support::ScratchFolder scratch_;
  std::unique_ptr<pipeline::Study> study_;
};

/// The small bench, made once a process.
inline const Handoff& small_bench() {
  static const Handoff once(preset("small-instrument-bench"));
  return once;
}

/// Five unequal gears and one dog hole at the person's left: whatever is mirrored shows.
inline constexpr const char* uneven_design = R"(
title = "uneven"
[train]
teeth = [28, 22, 30, 24, 28]
module = 3
[screw]
thread = "M20"
[front_jaw]
dog_holes = { diameter = 19, depth = 60, positions = [-120] }
)";

}  // namespace visewright::tests
