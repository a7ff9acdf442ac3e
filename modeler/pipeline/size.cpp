#include "outputs/data/size_json.h"
#include "outputs/data/size_text.h"
#include "pipeline/front_door.h"
#include "pipeline/study.h"

namespace visewright::pipeline {

base::Result<Answer> size(const SizeJob& job, base::Watcher& watcher) {
  const auto study = sized(job.design, watcher);
  if (!study) return base::passed_on(study.error());
  const outputs::Facts all = facts(**study, job.show);
  return Answer{job.json ? outputs::data::size_json(all) : outputs::data::size_text(all), exit_of(**study)};
}

}  // namespace visewright::pipeline
