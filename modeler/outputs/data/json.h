// How facts become JSON: ordered keys, one way to write a number, the unit at the end of the key.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "base/fault.h"
#include "reasons/ledger.h"
#include "units/quantity.h"

namespace visewright::outputs::data {

using Json = nlohmann::ordered_json;

/// Rounded to 1e-9, so that last digits that differ between processors do not show; whole numbers without a point,
/// everything else in the shortest form that reads back the same. Not finite: null.
[[nodiscard]] Json number(double);
[[nodiscard]] Json number(const std::optional<double>&);
[[nodiscard]] inline Json mm(const reasons::Size& size) { return number(size.mm()); }
[[nodiscard]] inline Json degrees(units::Angle angle) { return number(units::in_degrees(angle)); }

/// "value" and Unit::mm give "value_mm"; a plain number's key stays as it is.
[[nodiscard]] std::string key(std::string_view stem, reasons::Unit);

/// {"text": "design", "line": 4, "column": 9}; null when the design does not give it.
[[nodiscard]] Json place(const base::Place&);

/// The bytes of a file: two spaces deep, UTF-8, a newline at the end.
[[nodiscard]] std::string bytes(const Json&);

}  // namespace visewright::outputs::data
