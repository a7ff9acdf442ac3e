#include "outputs/papers/templates.h"

#include <algorithm>
#include <set>

#include "outputs/data/notice.h"
#include "outputs/papers/dxf.h"
#include "outputs/papers/legend.h"
#include "outputs/papers/machine_path.h"
#include "outputs/papers/pattern_sheet.h"
#include "outputs/papers/svg.h"
#include "outputs/papers/template_sheet.h"
#include "outputs/papers/tiles.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {
namespace {

struct Named {
  Sheet sheet;
  std::optional<std::uint32_t> part;
};

std::vector<Named> all_sheets(const Facts& facts) {
  std::vector<Named> sheets;
  if (facts.plan.screws.holes.empty()) return sheets;
  sheets.push_back({pattern_sheet(facts), std::nullopt});
  std::set<std::string> known;
  for (std::uint32_t i = 0; i < facts.assembly.parts.size(); ++i)
    for (const Job& job : jobs(*facts.assembly.parts[i], i)) {
      if (!takes_template(job)) continue;
      for (const FaceJob& face : faces(job)) {
        Sheet sheet = template_sheet(facts, face);
        if (known.insert(sheet.title).second) sheets.push_back({std::move(sheet), i});
      }
    }
  return sheets;
}

/// The paths of a machine, for what the plan says of it.
std::vector<std::pair<std::string, Sheet>> paths(const Facts& facts, const Sheet& sheet) {
  std::vector<std::pair<std::string, Sheet>> list;
  if (const auto& kerf = facts.plan.accuracy.kerf)
    list.emplace_back("-kerf-" + digits(kerf->mm()), kerf_path(sheet, kerf->mm(), facts.show));
  if (const auto& cutter = facts.plan.accuracy.cutter)
    list.emplace_back("-cutter-" + digits(cutter->mm()), cutter_path(sheet, cutter->mm(), facts.show));
  return list;
}

}  // namespace

base::Result<std::vector<File>> templates(const Facts& facts, const Print& print, base::Watcher& watcher) {
  watcher.step("drawing templates", 0.96);
  std::vector<File> files;
  const std::string foot = std::string(facts.title) + ", visewright " + std::string(facts.program_version);
  for (const auto& [sheet, part] : all_sheets(facts)) {
    const std::string path = "papers/templates/" + slug(sheet.title), what = "template: " + sheet.title;
    const Sheet with_words = with_legend(sheet);
    files.push_back({path + ".svg", svg(with_words, whole(with_words, 8)), what, part});
    files.push_back({path + ".dxf", dxf(with_words), what + ", for machines", part});
    const PageWords words{sheet.title, data::failing_notice(facts.findings), foot};
    auto pages = pdf(full_size_pages(sheet, words, print.paper, print.correction),
                     {sheet.title, std::string(facts.header_time), "visewright"}, print.correction);
    if (!pages) return base::passed_on(std::move(pages.error()));
    files.push_back({path + ".pdf", std::move(*pages), what + ", to print full size", part});
    for (const auto& [ending, machine] : paths(facts, sheet))
      files.push_back({path + ending + ".dxf", dxf(with_legend(machine)), what + ", path of the machine", part});
  }
  return files;
}

base::Result<std::vector<File>> write_templates(const Facts& facts, base::Watcher& watcher) {
  return templates(facts, {facts.paper, {}}, watcher);
}

}  // namespace visewright::outputs::papers
