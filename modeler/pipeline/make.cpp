#include <nlohmann/json.hpp>

#include "outputs/all.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/size_text.h"
#include "pipeline/front_door.h"
#include "pipeline/publish.h"
#include "pipeline/study.h"

namespace visewright::pipeline {
namespace {

/// The pose that pictures and the assembly file show.
base::Result<assembly::Pose> pose(const MakeJob& job, const Study& study) {
  assembly::Pose at{0, job.grip == Grip::out};
  if (!job.opening) return at;
  auto opening = units::read_length(*job.opening, study.design.unit, "--opening", {});
  if (!opening) return base::passed_on(std::move(opening.error()));
  at.opening_mm = units::in_mm(*opening);
  if (at.opening_mm < 0 || at.opening_mm > study.assembly.opening_max_mm)
    return base::fault(base::Cause::input, "--opening", "the vise does not open to " + *job.opening,
                       "0 to " + units::write_length(units::mm(study.assembly.opening_max_mm), study.design.unit));
  return at;
}

base::Result<std::vector<outputs::File>> written(const outputs::Facts& all, base::Watcher& watcher) {
  std::vector<outputs::File> files;
  for (const outputs::Output& output : outputs::all()) {
    if (watcher.wants_stop()) return base::fault(base::Cause::interrupted, "make", "stopped before all files were written", "start again");
    auto some = output.write(all, watcher);
    if (!some) return base::passed_on(std::move(some.error()));
    for (outputs::File& file : *some) files.push_back(std::move(file));
  }
  return files;
}

std::string said(const MakeJob& job, const outputs::Facts& all, const std::vector<outputs::File>& files) {
  if (!job.json) return outputs::data::check_text(all);
  nlohmann::ordered_json json{{"schema", "visewright.make/1"}, {"folder", job.folder}};
  for (const outputs::File& file : files) json["files"].push_back({{"path", file.path}, {"what", file.what}});
  json["findings"] = outputs::data::finding_list(all.findings);
  return json.dump(2) + "\n";
}

}  // namespace

base::Result<Answer> make(const MakeJob& job, base::Watcher& watcher) {
  // Asked before the long work, so that nobody waits for a refusal.
  if (const auto free = may_replace(job.folder, watcher); !free) return base::passed_on(free.error());
  const auto study = fitted(job.design, watcher);
  if (!study) return base::passed_on(study.error());
  outputs::Facts all = facts(**study, job.show);
  const auto shown = pose(job, **study);
  if (!shown) return base::passed_on(shown.error());
  all.pose = *shown;
  all.paper = job.paper == Paper::a3 ? outputs::Paper::a3 : job.paper == Paper::letter ? outputs::Paper::letter : outputs::Paper::a4;
  all.step_schema = job.schema == StepSchema::ap214 ? outputs::StepSchema::ap214 : outputs::StepSchema::ap242;
  auto files = written(all, watcher);
  if (!files) return base::passed_on(std::move(files.error()));
  if (const auto done = publish(*files, job.folder, watcher); !done) return base::passed_on(done.error());
  return Answer{said(job, all, *files), exit_of(**study)};
}

}  // namespace visewright::pipeline
