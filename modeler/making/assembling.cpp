#include "making/assembling.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "units/text.h"

namespace visewright::making {
namespace {

using layout::Plan;

/// A figure that texts name. Lengths are shown in the design's unit, the others as plain numbers.
struct Figure {
  std::string_view name;
  bool length;
  double (*value)(const Plan&);
};

double lead_mm(const Plan& plan) { return units::in_mm(plan.screw.thread->lead); }
/// The hexagon has six positions, so tooth and corner together give finer steps than the tooth alone.
double setting_step_mm(const Plan& plan) { return lead_mm(plan) / std::lcm(plan.train.gears.front().teeth.value, 6); }

constexpr Figure figures[] = {
    {"axis depth", true, [](const Plan& p) { return p.bench.axis_depth.mm(); }},
    {"notch length", true, [](const Plan& p) { return p.bench.notch_length.mm(); }},
    {"notch depth", true, [](const Plan& p) { return p.bench.notch_depth.mm(); }},
    {"nut spacer", true,
     [](const Plan& p) {
       return p.bench.axis_depth.mm() - p.bench.top_thickness.mm() - p.rear_nut.bar_height.mm() / 2;
     }},
    {"bolt play", true,
     [](const Plan& p) { return (p.rear_nut.bolt_hole.mm() - units::in_mm(p.rear_nut.screw->shank)) / 2; }},
    {"axle stands out", true, [](const Plan& p) { return p.axle.front_out.mm() - p.front_jaw.joint_out.mm(); }},
    {"shoulder to flange", true, [](const Plan& p) { return p.screw.shoulder_out.mm() - p.front_jaw.joint_out.mm(); }},
    {"collar pin", true, [](const Plan& p) { return p.collar.pin.mm(); }},
    {"collar pin length", true, [](const Plan& p) { return p.collar.pin_length.mm(); }},
    {"rear spacer", true, [](const Plan& p) { return p.axle.spacer_rear.mm(); }},
    {"front spacer", true, [](const Plan& p) { return p.axle.spacer_front.mm(); }},
    {"end float", true, [](const Plan& p) { return p.gaps.end_float.mm(); }},
    {"stop pin", true, [](const Plan& p) { return p.screw.stop_pin.mm(); }},
    {"stop length", true, [](const Plan& p) { return p.screw.stop_length.mm(); }},
    {"opening", true, [](const Plan& p) { return p.use.opening_max.mm(); }},
    {"turns", false, [](const Plan& p) { return std::ceil(p.use.opening_max.mm() / lead_mm(p) - 1e-9); }},
    {"tooth step", true, [](const Plan& p) { return lead_mm(p) / p.train.gears.front().teeth.value; }},
    {"setting step", true, setting_step_mm},
};

const Figure* find(std::string_view name) {
  const auto* const found =
      std::find_if(std::begin(figures), std::end(figures), [&](const Figure& f) { return f.name == name; });
  return found == std::end(figures) ? nullptr : found;
}

std::vector<std::string_view> split(std::string_view list) {
  std::vector<std::string_view> items;
  while (!list.empty()) {
    const std::size_t end = std::min(list.find(';'), list.size());
    items.push_back(list.substr(0, end));
    list.remove_prefix(std::min(end + 1, list.size()));
  }
  return items;
}

/// "gear" names "gear 2" and "gear", not "gear layer"; "cover" not "cover edge screw, edge 1".
bool is_named(std::string_view placed, std::string_view stem) {
  if (!placed.starts_with(stem)) return false;
  placed.remove_prefix(stem.size());
  return placed.empty() || placed[0] == ',' ||
         (placed.size() > 1 && placed[0] == ' ' && placed[1] >= '0' && placed[1] <= '9');
}

/// All parts that a step handles, or nothing when one of its kinds is not in the vise.
std::optional<std::vector<std::string>> handled(const AssemblyText& text, const assembly::Assembly& assembly) {
  std::vector<std::string> names;
  for (const std::string_view stem : split(text.parts)) {
    const std::size_t before = names.size();
    for (const assembly::Placed& placed : assembly.placed)
      if (is_named(placed.name, stem)) names.push_back(placed.name);
    if (names.size() == before) return std::nullopt;
  }
  return names;
}

std::string filled(std::string_view text, const Plan& plan) {
  std::string result;
  while (!text.empty()) {
    const std::size_t open = text.find('{');
    result += text.substr(0, open);
    if (open == std::string_view::npos) break;
    const std::size_t close = text.find('}', open);
    result += figure(plan, text.substr(open + 1, close - open - 1));
    text.remove_prefix(close + 1);
  }
  return result;
}

}  // namespace

std::string figure(const Plan& plan, std::string_view name) {
  const Figure* found = find(name);
  if (found == nullptr) return {};
  const double value = found->value(plan);
  return found->length ? units::write_length(units::mm(value), plan.unit) : units::write_number(value, 0);
}

std::vector<AssemblyStep> assembly_steps(const Plan& plan, const assembly::Assembly& assembly) {
  std::vector<AssemblyStep> steps;
  for (const AssemblyText& text : assembly_texts()) {
    const Figure* needed = text.only_if.empty() ? nullptr : find(text.only_if);
    if (needed != nullptr && needed->value(plan) <= 1e-9) continue;
    const auto parts = handled(text, assembly);
    if (!parts) continue;
    AssemblyStep step{std::string(text.group), filled(text.text, plan), *parts, {}};
    for (const std::string_view name : split(text.cautions))
      if (const Caution* found = caution(name)) step.cautions.push_back(found);
    steps.push_back(std::move(step));
  }
  return steps;
}

}  // namespace visewright::making
