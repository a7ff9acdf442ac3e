#include "outputs/data/findings_json.h"
#include "outputs/data/size_text.h"
#include "pipeline/front_door.h"
#include "pipeline/study.h"

namespace visewright::pipeline {

base::Result<Answer> check(const CheckJob& job, base::Watcher& watcher) {
  const auto study = fitted(job.design, watcher);
  if (!study) return base::passed_on(study.error());
  const outputs::Facts all = facts(**study, job.show);
  return Answer{job.json ? outputs::data::findings_json(all) : outputs::data::check_text(all), exit_of(**study)};
}

}  // namespace visewright::pipeline
