// Short ways from a design text to its making.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "assembly/assemble.h"
#include "layout/planning.h"
#include "making/making.h"

namespace visewright::making {

/// A design with its Plan, assembly and work, all of which point at each other.
struct Made {
  layout::Plan plan;
  assembly::Assembly assembly;
  Work work;

  explicit Made(const std::string& text)
      : plan(layout::good_plan(text)),
        assembly(assembly::assemble(plan)),
        work(making::work(plan, assembly, standards::known())) {}
  Made(const Made&) = delete;
  Made& operator=(const Made&) = delete;

  [[nodiscard]] const Workpiece& piece(std::string_view name) const {
    const auto found =
        std::find_if(work.pieces.begin(), work.pieces.end(), [&](const Workpiece& w) { return w.part->name == name; });
    if (found == work.pieces.end()) throw std::runtime_error("no part " + std::string(name));
    return *found;
  }
  [[nodiscard]] const PartSteps& steps(std::string_view name) const {
    const auto found =
        std::find_if(work.order.begin(), work.order.end(), [&](const PartSteps& s) { return s.part == name; });
    if (found == work.order.end()) throw std::runtime_error("no steps for " + std::string(name));
    return *found;
  }
};

inline const Step& step(const PartSteps& part, std::string_view text) {
  const auto found =
      std::find_if(part.steps.begin(), part.steps.end(), [&](const Step& s) { return s.text.starts_with(text); });
  if (found == part.steps.end()) throw std::runtime_error("no step " + std::string(text));
  return *found;
}

inline std::vector<const reasons::Finding*> findings(const Work& work, std::string_view rule) {
  std::vector<const reasons::Finding*> found;
  for (const reasons::Finding& finding : work.findings)
    if (finding.rule->name == rule) found.push_back(&finding);
  return found;
}

}  // namespace visewright::making
