// Short ways from a design text to its Plan.
#pragma once

#include <gtest/gtest.h>

#include <array>
#include <stdexcept>
#include <string>

#include "design/read.h"
#include "layout/plan.h"
#include "standards/known_catalogue.h"
#include "support/scratch_folder.h"

namespace visewright::layout {

inline constexpr std::array<const char*, 4> preset_names{"inch-cabinet-bench", "joinery-bench", "left-hand-wheel-bench",
                                                         "small-instrument-bench"};

inline std::string preset_text(const std::string& name) {
  return support::read_file(std::string(VISEWRIGHT_SOURCE_DIR) + "/presets/designs/" + name + ".toml");
}

inline base::Result<Plan> planning_of(const std::string& text) {
  const auto design = design::read(text, "vise.toml", standards::known());
  if (!design) return base::passed_on(design.error());
  return plan(*design, standards::known());
}

/// The Plan of a text that must be good.
inline Plan good_plan(const std::string& text) {
  auto result = planning_of(text);
  if (!result) {
    std::string all;
    for (const base::Fault& fault : result.error()) all += fault.key + ": " + fault.wrong + "; " + fault.right + "\n";
    throw std::runtime_error(all);
  }
  return std::move(*result);
}

inline base::Faults faults_of(const std::string& text) {
  const auto result = planning_of(text);
  return result ? base::Faults{} : result.error();
}

/// A number of the ledger that must be there.
inline const reasons::Number& number(const Plan& p, std::string_view name) {
  const reasons::Number* found = p.ledger.find(name);
  if (found == nullptr) throw std::runtime_error("no number " + std::string(name));
  return *found;
}

/// Five gears of module 3 on M20 rod: the design that is worked out by hand on paper.
inline const std::string five_gears = R"(opening = 250
train = { teeth = [30, 30, 30, 30, 30], module = 3 }
screw = { thread = "M20", strength_class = "8.8" }
drive = { at = "ends", hand_force = "100 N", wheel = { diameter = 180 } }
front_jaw = { wood = "beech", backing = 40 }
bench = { top = { thickness = 60 }, apron = { thickness = 25, height = 100, setback = 88, doubler = 18 } }
)";

inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  if (at == std::string::npos) throw std::runtime_error("no \"" + from + "\" in the design");
  return text.replace(at, from.size(), to);
}

}  // namespace visewright::layout
