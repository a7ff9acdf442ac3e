#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "base/nearest.h"
#include "pipeline/catalogue_rows.h"
#include "pipeline/front_door.h"

namespace visewright::pipeline {
namespace {

using Json = nlohmann::ordered_json;

/// "major_mm" with 20 becomes "major 20 mm".
std::string figure(std::string key, const Json& value) {
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 9> suffixes{{{"_mm2", " mm²"},
                                                                                          {"_g_cm3", " g/cm³"},
                                                                                          {"_mm", " mm"},
                                                                                          {"_deg", "°"},
                                                                                          {"_mpa", " MPa"},
                                                                                          {"_kg", " kg"},
                                                                                          {"_percent", " %"},
                                                                                          {"_per_kelvin", " /K"},
                                                                                          {"", ""}}};
  const auto* const suffix =
      std::find_if(suffixes.begin(), suffixes.end(), [&](const auto& each) { return key.ends_with(each.first); });
  key.resize(key.size() - suffix->first.size());
  std::replace(key.begin(), key.end(), '_', ' ');
  if (value.is_string()) return key + " " + value.get<std::string>();
  return key + " " + units::write_number(value.get<double>(), 7) + std::string(suffix->second);
}

std::string row_in_words(const Json& row, std::size_t width) {
  std::vector<std::string> figures;
  for (const auto& [key, value] : row.items()) {
    if (key == "title")
      figures.push_back(value.get<std::string>());
    else if (key != "name" && key != "source" && key != "known")
      figures.push_back(figure(key, value));
  }
  std::string line = fmt::format("{:<{}}  {}", row["name"].get<std::string>(), width, fmt::join(figures, ", "));
  if (row.contains("source")) {
    line += fmt::format("  [{}; {}]", row["source"].get<std::string>(), row["known"].get<std::string>());
  }
  return line + "\n";
}

std::string in_words(const Json& rows) {
  std::size_t width = 0;
  for (const Json& row : rows) width = std::max(width, row["name"].get_ref<const std::string&>().size());
  std::string text;
  for (const Json& row : rows) text += row_in_words(row, width);
  return text;
}

Answer answer(const CatalogueJob& job, const standards::Catalogue& known) {
  Json kinds = Json::object();
  std::string text;
  for (const CatalogueKind& kind : catalogue_kinds()) {
    if (!job.kind.empty() && job.kind != kind.name) continue;
    Json rows = kind.rows(known);
    if (job.kind.empty()) text += fmt::format("{}{}\n", text.empty() ? "" : "\n", kind.name);
    text += in_words(rows);
    kinds[std::string(kind.name)] = std::move(rows);
  }
  if (!job.json) return {text};
  const Json whole = {{"schema", "visewright.catalogue/1"}, {"kinds", std::move(kinds)}};
  return {whole.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"};
}

}  // namespace

base::Result<Answer> catalogue(const CatalogueJob& job, base::Watcher&) {
  std::vector<std::string_view> names;
  for (const CatalogueKind& kind : catalogue_kinds()) names.push_back(kind.name);
  if (!job.kind.empty() && std::find(names.begin(), names.end(), job.kind) == names.end()) {
    return base::fault(base::Cause::input, "catalogue", "there is no kind \"" + job.kind + "\"",
                       fmt::format("did you mean \"{}\"? The kinds are {}", base::nearest_name(job.kind, names),
                                   fmt::join(names, ", ")));
  }
  return standards::Catalogue::embedded().map([&](const standards::Catalogue& known) { return answer(job, known); });
}

}  // namespace visewright::pipeline
