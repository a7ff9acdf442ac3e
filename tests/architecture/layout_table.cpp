#include "architecture/layout_table.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <regex>
#include <sstream>

namespace visewright::architecture {
namespace {

namespace fs = std::filesystem;
using Folders = std::set<std::string>;

Folders with(Folders folders, const Folders& more) {
  folders.insert(more.begin(), more.end());
  return folders;
}

std::map<std::string, Folders> table() {
  const Folders plain{"base", "units"};
  const Folders layout = with(plain, {"reasons", "geometry", "formulas", "standards", "design"});
  const Folders parts = with(plain, {"reasons", "geometry", "formulas", "standards", "layout"});
  const Folders assembly = with(plain, {"reasons", "geometry", "standards", "layout", "parts"});
  const Folders analysis = with(parts, {"parts", "assembly"});
  const Folders solids = with(plain, {"geometry", "parts", "kernel"});
  const Folders fitup =
      with(plain, {"reasons", "geometry", "formulas", "layout", "parts", "assembly", "kernel", "solids"});
  const Folders all =
      with(with(layout, analysis), {"reading", "analysis", "making", "kernel", "solids", "fitup", "layout"});
  return {{"base", {}},
          {"units", {"base"}},
          {"reasons", plain},
          {"geometry", plain},
          {"formulas", {"base"}},
          {"reading", plain},
          {"standards", with(plain, {"reading"})},
          {"design", with(plain, {"reading", "standards"})},
          {"layout", layout},
          {"parts", parts},
          {"assembly", assembly},
          {"analysis", analysis},
          {"making", analysis},
          {"kernel", with(plain, {"geometry"})},
          {"solids", solids},
          {"fitup", fitup},
          {"outputs", all},
          {"pipeline", with(all, {"outputs"})},
          {"cli", with(plain, {"pipeline"})}};
}

/// A later family of outputs may use an earlier one. The folder's own files (the list of all outputs) use them all.
constexpr std::array<std::string_view, 6> output_families{"data", "exchange", "facets", "papers", "handoff", "page"};

/// A library that only some folders may see, by the beginning and the end of the header's name.
struct Fenced {
  std::string_view begins, ends;
  Folders folders;
};
const std::vector<Fenced>& fenced() {
  static const std::vector<Fenced> all{{"", ".hxx", {"kernel"}},
                                       {"toml++/", "", {"reading"}},
                                       {"toml.hpp", "", {"reading"}},
                                       {"CLI/", "", {"cli"}},
                                       {"spdlog/", "", {"cli"}},
                                       {"fcl/", "", {"fitup"}},
                                       {"presets_files.h", "", {"pipeline"}},
                                       {"shops_files.h", "", {"standards"}},
                                       {"standards_files.h", "", {"standards"}}};
  return all;
}

std::vector<std::string> steps(const std::string& path) {
  std::vector<std::string> all;
  std::istringstream text(path);
  for (std::string step; std::getline(text, step, '/');) all.push_back(step);
  return all;
}

/// "modeler/units/text.h" belongs to units, "cli/make.cpp" to cli.
std::string folder_of(const std::vector<std::string>& path) {
  return path.front() == "modeler" ? path.at(1) : path.front();
}

std::size_t family_rank(const std::string& step) {
  const auto* const found = std::find(output_families.begin(), output_families.end(), step);
  return static_cast<std::size_t>(found - output_families.begin());
}

std::string wrong_family(const std::vector<std::string>& from, const std::vector<std::string>& to) {
  if (from.size() < 4 || to.size() < 3) return "";
  if (family_rank(from.at(2)) == output_families.size())
    return "is in a family of outputs that the layout does not name";
  return family_rank(to.at(1)) > family_rank(from.at(2)) ? "uses a later family of outputs" : "";
}

std::string wrong_include(const std::vector<std::string>& from, const std::string& header, bool quoted) {
  const std::string folder = folder_of(from);
  for (const Fenced& fence : fenced()) {
    if (!header.starts_with(fence.begins) || !header.ends_with(fence.ends)) continue;
    return fence.folders.contains(folder) ? "" : "may be seen only from " + *fence.folders.begin();
  }
  if (!quoted) return "";
  const std::vector<std::string> to = steps(header);
  if (to.size() < 2 || !may_include().contains(to.front())) return "does not name one of the layout's folders";
  if (to.front() == folder) return folder == "outputs" ? wrong_family(from, to) : "";
  return may_include().at(folder).contains(to.front()) ? "" : folder + " may not include " + to.front();
}

}  // namespace

const std::map<std::string, Folders>& may_include() {
  static const std::map<std::string, Folders> all = table();
  return all;
}

std::vector<std::string> wrong_includes(const std::string& path, std::string_view text) {
  static const std::regex include(R"(^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]+)[>"].*)");
  const std::vector<std::string> from = steps(path);
  if (!may_include().contains(folder_of(from))) return {path + ": lies in a folder that the layout does not name"};
  std::vector<std::string> wrong;
  std::istringstream lines{std::string(text)};
  for (std::string line; std::getline(lines, line);) {
    std::smatch match;
    if (!std::regex_match(line, match, include)) continue;
    const std::string why = wrong_include(from, match[2], match[1] == "\"");
    if (!why.empty()) wrong.push_back(path + ": " + match[2].str() + " " + why);
  }
  return wrong;
}

std::vector<Source> sources_below(const std::string& folder, const Folders& endings) {
  const fs::path root = VISEWRIGHT_SOURCE_DIR;
  std::vector<Source> all;
  for (auto entry = fs::recursive_directory_iterator(root / folder); entry != fs::recursive_directory_iterator();
       ++entry) {
    if (entry->is_directory() && entry->path().filename() == "node_modules") entry.disable_recursion_pending();
    if (!entry->is_regular_file() || !endings.contains(entry->path().extension().string())) continue;
    std::ifstream file(entry->path(), std::ios::binary);
    all.push_back(
        {entry->path().lexically_relative(root).generic_string(), {std::istreambuf_iterator<char>(file), {}}});
  }
  std::sort(all.begin(), all.end(), [](const Source& a, const Source& b) { return a.path < b.path; });
  return all;
}

std::map<std::string, Folders> linked_folders(const std::string& cmake) {
  static const std::regex call(R"(visewright_folder\(([^)]*)\))");
  std::map<std::string, Folders> all;
  for (auto match = std::sregex_iterator(cmake.begin(), cmake.end(), call); match != std::sregex_iterator(); ++match) {
    std::istringstream words((*match)[1].str());
    std::string name, word;
    words >> name;
    Folders& folders = all[name];
    for (bool ours = false; words >> word;) {
      if (word == "FOLDERS" || word == "PUBLIC" || word == "PRIVATE")
        ours = word == "FOLDERS";
      else if (ours)
        folders.insert(word);
    }
  }
  return all;
}

}  // namespace visewright::architecture
