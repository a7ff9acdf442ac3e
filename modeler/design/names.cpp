#include "design/names.h"

#include <algorithm>
#include <vector>

#include "base/nearest.h"
#include "standards/designation.h"

namespace visewright::design {
namespace {

using standards::Catalogue;
using standards::MaterialKind;

constexpr std::size_t suggestions = 3;

template <class Rows>
std::vector<std::string> designations(const Rows& rows) {
  std::vector<std::string> names;
  for (const auto& row : rows) names.push_back(row.designation);
  return names;
}

bool suits(Known known, MaterialKind kind) {
  switch (known) {
    case Known::wood: return kind == MaterialKind::wood || kind == MaterialKind::panel;
    case Known::metal: return kind == MaterialKind::metal;
    default: return true;
  }
}

std::string_view kind_word(MaterialKind kind) {
  switch (kind) {
    case MaterialKind::wood: return "a wood";
    case MaterialKind::panel: return "a panel";
    case MaterialKind::plastic: return "a plastic";
    case MaterialKind::metal: return "a metal";
  }
  return "something else";
}

std::vector<std::string> material_names(Known known, const Catalogue& catalogue) {
  std::vector<std::string> names;
  for (const standards::MaterialRow& row : catalogue.materials()) {
    if (suits(known, row.kind)) names.push_back(row.name);
  }
  return names;
}

/// Everything the catalogue holds that a key may name, in the order of the catalogue.
std::vector<std::string> known_names(const KeyRow& row, const Catalogue& catalogue) {
  switch (row.known) {
    case Known::thread: return designations(catalogue.threads());
    case Known::nut: return designations(catalogue.nuts());
    case Known::washer: return designations(catalogue.washers());
    case Known::wood_screw: return designations(catalogue.wood_screws());
    case Known::wood:
    case Known::metal:
    case Known::material: return material_names(row.known, catalogue);
    case Known::nothing: break;
  }
  return {};
}

/// The nearest names, nearest first; of equals the earlier in the catalogue. Case and spacing do not count.
std::string nearest_names(std::string_view name, std::vector<std::string> known) {
  const std::string key = standards::designation_key(name);
  const auto edits = [&](const std::string& other) {
    return base::edits_between(key, standards::designation_key(other));
  };
  std::stable_sort(known.begin(), known.end(),
                   [&](const std::string& a, const std::string& b) { return edits(a) < edits(b); });
  std::vector<std::string> picked;
  for (const std::string& each : known) {
    const bool twice = std::find(picked.begin(), picked.end(), each) != picked.end();
    if (!twice && picked.size() < suggestions) picked.push_back(each);
  }
  std::string list;
  for (std::size_t i = 0; i < picked.size(); ++i) {
    if (i > 0) list += i + 1 == picked.size() ? " or " : ", ";
    list.append("\"").append(picked[i]).append("\"");
  }
  return list;
}

bool is_known(const KeyRow& row, std::string_view name, const Catalogue& catalogue) {
  switch (row.known) {
    case Known::thread: return catalogue.thread(name) != nullptr;
    case Known::nut: return catalogue.nut(name) != nullptr;
    case Known::washer: {
      const std::string key = standards::designation_key(name);
      const auto washers = catalogue.washers();
      return std::any_of(washers.begin(), washers.end(), [&](const standards::WasherRow& washer) {
        return standards::designation_key(washer.designation) == key;
      });
    }
    case Known::wood_screw: return catalogue.wood_screw(name) != nullptr;
    case Known::wood:
    case Known::metal:
    case Known::material: return catalogue.material(name) != nullptr;
    case Known::nothing: break;
  }
  return true;
}

}  // namespace

std::optional<WrongName> wrong_name(const KeyRow& row, std::string_view name, const Catalogue& catalogue) {
  if (std::find(row.choices.begin(), row.choices.end(), name) != row.choices.end()) return std::nullopt;
  const std::string quoted = std::string("\"").append(name).append("\"");
  const std::string rather = "the nearest are " + nearest_names(name, known_names(row, catalogue));
  if (!is_known(row, name, catalogue)) {
    const std::string wanted_words = wanted(row, units::LengthUnit::millimetre);
    return WrongName{quoted + " is not known here", wanted_words + "; " + rather};
  }
  const standards::MaterialRow* material = catalogue.material(name);
  if (material == nullptr || suits(row.known, material->kind)) return std::nullopt;
  return WrongName{quoted + " is " + std::string(kind_word(material->kind)),
                   wanted(row, units::LengthUnit::millimetre) + "; " + rather};
}

}  // namespace visewright::design
