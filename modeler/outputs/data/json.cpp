#include "outputs/data/json.h"

#include <cmath>
#include <cstdint>

namespace visewright::outputs::data {

Json number(double value) {
  if (!std::isfinite(value)) return nullptr;
  constexpr double whole_up_to = 9007199254740992.0;  // 2^53
  const double finer = std::abs(value) < 1e6 ? std::round(value * 1e9) / 1e9 : value;
  if (finer == std::trunc(finer) && std::abs(finer) < whole_up_to) return static_cast<std::int64_t>(finer);
  return finer;
}

Json number(const std::optional<double>& value) { return value ? number(*value) : Json(nullptr); }

std::string key(std::string_view stem, reasons::Unit unit) {
  std::string name(stem);
  if (const std::string_view end = reasons::suffix(unit); !end.empty()) name.append("_").append(end);
  return name;
}

Json place(const base::Place& where) {
  if (where.line == 0) return nullptr;
  const char* text = where.text == 0 ? "design" : where.text == 1 ? "shop" : "catalogue";
  return {{"text", text}, {"line", where.line}, {"column", where.column}};
}

std::string bytes(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

}  // namespace visewright::outputs::data
