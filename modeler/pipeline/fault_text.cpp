#include "pipeline/fault_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

namespace visewright::pipeline {
namespace {

using base::Cause;
using base::Fault;

std::string text_name(std::uint16_t text, std::string_view design) {
  if (text == 0) return std::string(design);
  return text == 1 ? "(shop)" : fmt::format("(built-in table {})", text - 1);
}

std::string line(const Fault& fault, std::string_view design) {
  std::string said;
  if (fault.place && fault.place->line > 0) {
    said += fmt::format("{}:{}:{}: ", text_name(fault.place->text, design), fault.place->line, fault.place->column);
  } else if (fault.place) {
    said += text_name(fault.place->text, design) + ": ";
  }
  if (!fault.key.empty()) said += fault.key + ": ";
  said += fault.wrong;
  if (!fault.right.empty()) said += "; " + fault.right;
  std::replace_if(
      said.begin(), said.end(), [](unsigned char c) { return c < 0x20 || c == 0x7F; }, '?');
  return said;
}

std::string_view word(Cause cause) {
  switch (cause) {
    case Cause::input: return "input";
    case Cause::output: return "output";
    case Cause::geometry: return "geometry";
    case Cause::interrupted: return "interrupted";
    case Cause::own_mistake: return "own mistake";
  }
  return "own mistake";
}

}  // namespace

std::string as_text(base::Faults faults, std::string_view design) {
  base::in_line_order(faults);
  std::string all;
  for (const Fault& fault : faults) all += line(fault, design) + "\n";
  return all;
}

std::string as_json(base::Faults faults, std::string_view design) {
  using Json = nlohmann::ordered_json;
  base::in_line_order(faults);
  Json list = Json::array();
  for (const Fault& fault : faults) {
    Json json = {{"cause", word(fault.cause)}, {"key", fault.key}, {"wrong", fault.wrong}, {"right", fault.right}};
    if (fault.place) {
      json["file"] = text_name(fault.place->text, design);
      json["line"] = fault.place->line;
      json["column"] = fault.place->column;
    }
    list.push_back(std::move(json));
  }
  const Json whole = {{"schema", error_schema}, {"exit", exit_status(faults)}, {"faults", std::move(list)}};
  return whole.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

int exit_status(const base::Faults& faults) {
  constexpr std::array gravest_first{Cause::own_mistake, Cause::interrupted, Cause::output, Cause::geometry,
                                     Cause::input};
  for (const Cause cause : gravest_first) {
    const bool met = std::any_of(faults.begin(), faults.end(), [&](const Fault& f) { return f.cause == cause; });
    if (met) return base::exit_status(cause);
  }
  return base::exit_status(Cause::own_mistake);
}

}  // namespace visewright::pipeline
