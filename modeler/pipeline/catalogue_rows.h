// The catalogue as rows that a table or a program can show: one list of facts behind both.
#pragma once

#include <nlohmann/json.hpp>
#include <span>
#include <string_view>

#include "standards/catalogue.h"

namespace visewright::pipeline {

/// One kind of thing that is known. `rows` gives an array of objects: "name" first, figures with their unit at the end
/// of the key, then "source" and "known" where the row comes from a standard.
struct CatalogueKind {
  std::string_view name;
  nlohmann::ordered_json (*rows)(const standards::Catalogue&);
};

[[nodiscard]] std::span<const CatalogueKind> catalogue_kinds();

}  // namespace visewright::pipeline
