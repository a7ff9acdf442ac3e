#include "pipeline/study.h"

#include <algorithm>
#include <cstdlib>
#include <ctime>

#include "analysis/analyse.h"
#include "analysis/rules.h"
#include "assembly/assemble.h"
#include "design/read.h"
#include "fitup/check.h"
#include "fitup/rules.h"
#include "layout/rules.h"
#include "making/rules.h"
#include "pipeline/disk.h"
#include "reading/tree.h"

namespace visewright::pipeline {
namespace {

/// What file headers carry in place of a clock: SOURCE_DATE_EPOCH when it is set, else a fixed date.
const std::string& header_time() {
  static const std::string text = [] {
    std::string time = "2000-01-01T00:00:00";
    if (const char* epoch = std::getenv("SOURCE_DATE_EPOCH")) {
      char* end = nullptr;
      const auto seconds = static_cast<std::time_t>(std::strtoll(epoch, &end, 10));
      std::tm utc{};
      char shown[32];
      if (end != epoch && *end == '\0' && gmtime_r(&seconds, &utc) && std::strftime(shown, sizeof shown, "%Y-%m-%dT%H:%M:%S", &utc) > 0)
        time = shown;
    }
    return time;
  }();
  return text;
}

}  // namespace

StudyResult sized(const std::string& design_file, base::Watcher& watcher) {
  auto text = read_text(design_file, reading::longest_text, watcher);
  if (!text) return base::passed_on(std::move(text.error()));
  auto catalogue = standards::Catalogue::embedded();
  if (!catalogue) return base::passed_on(std::move(catalogue.error()));
  auto design = design::read(*text, design_file, *catalogue);
  if (!design) return base::passed_on(std::move(design.error()));
  auto study = std::unique_ptr<Study>(new Study{std::move(*catalogue), std::move(*design), {}, {}, {}, {}, {}, std::nullopt});
  auto plan = layout::plan(study->design, study->catalogue);
  if (!plan) return base::passed_on(std::move(plan.error()));
  study->plan = std::move(*plan);
  study->assembly = assembly::assemble(study->plan);
  auto analysis = analysis::analyse(study->plan, study->assembly);
  study->figures = std::move(analysis.figures);
  study->findings = std::move(analysis.findings);
  study->work = making::work(study->plan, study->assembly, study->catalogue);
  study->findings.insert(study->findings.end(), study->work.findings.begin(), study->work.findings.end());
  reasons::worst_first(study->findings);
  return study;
}

StudyResult fitted(const std::string& design_file, base::Watcher& watcher) {
  auto study = sized(design_file, watcher);
  if (!study) return study;
  Study& s = **study;
  auto solids = solids::SolidSet::of(s.assembly.parts, watcher);
  if (!solids) return base::passed_on(std::move(solids.error()));
  s.solids = std::move(*solids);
  auto report = fitup::check(s.plan, s.assembly, *s.solids, watcher);
  if (!report) return base::passed_on(std::move(report.error()));
  s.findings.insert(s.findings.end(), report->findings.begin(), report->findings.end());
  reasons::worst_first(s.findings);
  return study;
}

outputs::Facts facts(const Study& study, std::optional<units::LengthUnit> show) {
  outputs::Facts all{study.design, study.plan, study.assembly, study.figures, study.work, study.findings, study.plan.title, VISEWRIGHT_VERSION, header_time()};
  all.show = show.value_or(study.design.unit);
  all.solids = study.solids ? &*study.solids : nullptr;
  return all;
}

int exit_of(const Study& study) {
  return std::any_of(study.findings.begin(), study.findings.end(),
                     [](const reasons::Finding& f) { return f.verdict == reasons::Verdict::fail; })
             ? 1
             : 0;
}

std::vector<const reasons::Rule*> all_rules() {
  std::vector<const reasons::Rule*> list;
  for (const auto rules : {layout::rules_of_layout(), analysis::rules_of_analysis(), making::rules_of_making(), fitup::rules_of_fitup()})
    list.insert(list.end(), rules.begin(), rules.end());
  return list;
}

}  // namespace visewright::pipeline
