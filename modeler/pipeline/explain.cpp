#include "outputs/data/explain.h"

#include "pipeline/front_door.h"
#include "pipeline/study.h"

namespace visewright::pipeline {

base::Result<Answer> explain(const ExplainJob& job, base::Watcher& watcher) {
  const auto rules = all_rules();
  std::unique_ptr<Study> study;
  if (job.design) {
    auto done = sized(*job.design, watcher);
    if (!done) return base::passed_on(std::move(done.error()));
    study = std::move(*done);
  }
  const auto show = job.show.value_or(study ? study->design.unit : units::LengthUnit::millimetre);
  const auto found = study ? outputs::data::explain(job.name, rules, &study->plan, study->findings, show)
                           : outputs::data::explain(job.name, rules, nullptr, {}, show);
  if (!found) return base::passed_on(found.error());
  return Answer{job.json ? outputs::data::explain_json(*found) : outputs::data::explain_text(*found), 0};
}

}  // namespace visewright::pipeline
