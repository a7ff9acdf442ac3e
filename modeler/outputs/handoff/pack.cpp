#include "outputs/handoff/pack.h"

#include "outputs/papers/document.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::handoff {
namespace {

/// The guide: one section a pack, one line a file, both taken from what was written.
std::string guide(const Facts& facts, const std::vector<Pack>& packs) {
  papers::Document text = papers::document(facts, "Who gets what: " + std::string(facts.title));
  text.blocks.push_back(papers::Paragraph{
      "Each folder holds what one person or program needs, and nothing else. Sizes are millimetres unless a heading says otherwise."});
  constexpr std::string_view root = "handoff/";
  for (const Pack& pack : packs) {
    if (pack.files.empty()) continue;
    text.blocks.push_back(papers::Heading{2, std::string(pack.whom)});
    text.blocks.push_back(papers::Paragraph{std::string(pack.words)});
    papers::Table table{{{"file", "what it is for"}}};
    for (const File& file : pack.files) table.rows.push_back({file.path.substr(root.size()), file.what});
    text.blocks.push_back(std::move(table));
  }
  return papers::markdown(text);
}

}  // namespace

std::string file_stem(std::string_view item, std::string_view name) {
  const std::size_t digits = item.find_first_not_of("0123456789") == std::string_view::npos ? item.size() : item.find_first_not_of("0123456789");
  std::string stem = digits == 1 ? "0" : "";
  return stem.append(item).append("_") + papers::slug(name);
}

base::Result<std::vector<File>> write_handoff(const Facts& facts, base::Watcher& watcher) {
  watcher.step("writing files to hand on", 0.98);
  std::vector<Pack> packs;
  for (const auto write : {printer_pack, machine_pack, viewer_pack}) {
    auto pack = write(facts, watcher);
    if (!pack) return base::passed_on(std::move(pack.error()));
    packs.push_back(std::move(*pack));
  }
  std::vector<File> files{{"handoff/README.md", guide(facts, packs), "which of these files is for whom", std::nullopt}};
  for (Pack& pack : packs)
    for (File& file : pack.files) files.push_back(std::move(file));
  return files;
}

}  // namespace visewright::outputs::handoff
