// Putting it together: sub-assemblies, then the vise.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "assembly/assembly.h"
#include "layout/plan.h"
#include "making/cautions.h"

namespace visewright::making {

/// A step as data. `{name}` in the text stands for a figure of the Plan, as listed in assembling.cpp; `parts` are
/// beginnings of names in the assembly: without one of them the step falls away. With `only_if` set it falls away
/// unless that figure is above zero.
struct AssemblyText {
  std::string_view group;  // "rear jaw", "lead screws", "front jaw", "together", "setting"
  std::string_view parts;  // separated by ";"
  std::string_view text;
  std::string_view cautions = {};  // names, separated by ";"
  std::string_view only_if = {};
};
[[nodiscard]] std::span<const AssemblyText> assembly_texts();

struct AssemblyStep {
  std::string group, text;
  std::vector<std::string> parts;  // names in the assembly of what it handles
  std::vector<const Caution*> cautions;
};
/// Figures put in, in the unit of the design.
[[nodiscard]] std::vector<AssemblyStep> assembly_steps(const layout::Plan&, const assembly::Assembly&);

/// A figure that texts may name, as text; empty when there is none of this name.
[[nodiscard]] std::string figure(const layout::Plan&, std::string_view name);

}  // namespace visewright::making
