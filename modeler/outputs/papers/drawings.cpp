#include "outputs/papers/drawings.h"

#include <cmath>
#include <set>

#include "outputs/papers/assembly_section.h"
#include "outputs/papers/part_drawing.h"
#include "outputs/papers/pdf.h"
#include "outputs/papers/svg.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {
namespace {

/// The page of a drawing: from its border outwards by the margins.
PaperSize paper_of(const Sheet& page) {
  const geometry::Box b = geometry::box(page.curves.front().edges.front());
  const double width = b.high.x + 10;
  for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter})
    if (const PaperSize size = size_of(paper).on_its_side(); std::abs(size.width_mm - width) < 0.1) return size;
  return size_of(Paper::a4).on_its_side();
}

bool drawn(const Job& job) {
  if (job.piece == nullptr) return true;
  return !std::holds_alternative<parts::Existing>(job.piece->stock);
}

}  // namespace

base::Result<std::vector<File>> as_files(const Facts& facts, const std::string& name, std::vector<Sheet> sheets, std::optional<std::uint32_t> part) {
  std::vector<File> files;
  if (sheets.empty()) return files;
  const std::string path = "papers/drawings/" + slug(name);
  std::vector<Page> pages;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const PaperSize size = paper_of(sheets[i]);
    const geometry::Box whole{{0, 0}, {size.width_mm, size.height_mm}};
    files.push_back({path + "-" + std::to_string(i + 1) + ".svg", svg(sheets[i], whole), "drawing: " + name + ", sheet " + std::to_string(i + 1), part});
    pages.push_back({size, {{std::make_shared<const Sheet>(std::move(sheets[i])), whole, {0, 0}}}});
  }
  auto bytes = pdf(pages, {name, std::string(facts.header_time), "visewright"});
  if (!bytes) return base::passed_on(std::move(bytes.error()));
  files.push_back({path + ".pdf", std::move(*bytes), "drawing: " + name, part});
  return files;
}

base::Result<std::vector<File>> drawings(const Facts& facts, Projection projection, base::Watcher& watcher) {
  watcher.step("drawing the parts", 0.97);
  std::vector<File> files;
  if (facts.plan.screws.holes.empty()) return files;
  const auto add = [&](base::Result<std::vector<File>> some) {
    if (some)
      for (File& file : *some) files.push_back(std::move(file));
    return some ? base::Faults{} : some.error();
  };
  std::set<std::string> known;
  for (std::uint32_t i = 0; i < facts.assembly.parts.size(); ++i) {
    if (facts.assembly.parts[i]->making == parts::Making::existing) continue;
    for (const Job& job : jobs(*facts.assembly.parts[i], i)) {
      if (!drawn(job) || !known.insert(job.name).second) continue;
      if (base::Faults faults = add(as_files(facts, job.name, part_drawing(facts, job, projection), i)); !faults.empty()) return base::passed_on(std::move(faults));
    }
  }
  if (base::Faults faults = add(as_files(facts, "section through a drive screw", {assembly_section(facts, projection)}, std::nullopt)); !faults.empty())
    return base::passed_on(std::move(faults));
  return files;
}

base::Result<std::vector<File>> write_drawings(const Facts& facts, base::Watcher& watcher) { return drawings(facts, usual_projection, watcher); }

}  // namespace visewright::outputs::papers
