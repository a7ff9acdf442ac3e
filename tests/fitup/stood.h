// Parts made by hand and stood where a test wants them.
#pragma once

#include <gtest/gtest.h>

#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "assembly/assemble.h"
#include "fitup/check.h"
#include "layout/planning.h"
#include "parts/compose.h"
#include "parts/list.h"

namespace visewright::fitup {

/// The text of a preset's design.
std::string text_of(const std::string& preset);

/// A piece of a shape, without operations.
inline parts::Part piece(std::string name, std::vector<parts::Shape> shape, std::vector<parts::Shape> less = {}) {
  static const standards::MaterialRow steel{};
  parts::Bought stock{"", "", &steel, std::move(shape), std::move(less)};
  return parts::bought(std::move(name), std::move(stock));
}
inline parts::Shape block(const geometry::Vector& low, const geometry::Vector& high) {
  return parts::Prism{geometry::region(geometry::rectangle({low[0], low[1]}, {high[0], high[1]})), {}, low[2], high[2]};
}
inline parts::Shape turned(geometry::Loop half_section) { return parts::Revolved{geometry::region(std::move(half_section)), {}}; }
inline geometry::Loop half_disc(double radius) {
  return geometry::trusted({geometry::Arc{{0, -radius}, {0, radius}, {0, 0}, true}, geometry::Line{{0, radius}, {0, -radius}}});
}

/// The assembly that is put together part by part.
struct Stood {
  assembly::Assembly assembly;

  std::uint32_t add(parts::Part part, const geometry::Placement& at = {}, assembly::Group group = assembly::Group::fixed) {
    assembly::Placed placed;
    placed.part = static_cast<std::uint32_t>(assembly.parts.size());
    placed.name = part.name;
    placed.shut = at;
    placed.group = group;
    assembly.parts.push_back(std::make_shared<const parts::Part>(std::move(part)));
    assembly.placed.push_back(std::move(placed));
    return static_cast<std::uint32_t>(assembly.placed.size() - 1);
  }
};

/// How near the first two parts stand.
inline Nearness near(const Stood& s, double within_mm = 1000) {
  const auto all = stands(s.assembly);
  return as_they_stand(all[0], all[1], within_mm);
}
inline Nearness near(parts::Part a, parts::Part b, const geometry::Placement& at_b, double within_mm = 1000) {
  Stood s;
  s.add(std::move(a));
  s.add(std::move(b), at_b);
  return near(s, within_mm);
}

/// The assembly with these placed parts alone.
inline assembly::Assembly only(const assembly::Assembly& whole, const std::vector<std::string>& names) {
  assembly::Assembly some;
  some.opening_max_mm = whole.opening_max_mm;
  some.moving_to_fixed_mm = whole.moving_to_fixed_mm;
  std::map<std::uint32_t, std::uint32_t> index;
  for (std::uint32_t i = 0; i < whole.placed.size(); ++i) {
    if (std::find(names.begin(), names.end(), whole.placed[i].name) == names.end()) continue;
    index[i] = static_cast<std::uint32_t>(some.placed.size());
    some.placed.push_back(whole.placed[i]);
    some.placed.back().part = static_cast<std::uint32_t>(some.parts.size());
    some.parts.push_back(whole.parts[whole.placed[i].part]);
  }
  for (const auto& pair : whole.declared)
    if (index.contains(pair.a) && index.contains(pair.b)) some.declared.push_back({index[pair.a], index[pair.b], pair.fit});
  if (some.placed.size() != names.size()) throw std::runtime_error("a part that is not there");
  return some;
}
inline assembly::Placed& placed(assembly::Assembly& a, const std::string& name) {
  for (auto& p : a.placed)
    if (p.name == name) return p;
  throw std::runtime_error("no part " + name);
}
/// Another part in the place of one.
inline void swap_part(assembly::Assembly& a, const std::string& name, parts::Part part) {
  a.parts.push_back(std::make_shared<const parts::Part>(std::move(part)));
  placed(a, name).part = static_cast<std::uint32_t>(a.parts.size() - 1);
}

/// The check with the solids that it may ask for.
inline Report checked(const layout::Plan& plan, const assembly::Assembly& assembly, Asked asked = {false, false}) {
  base::Silence silence;
  const auto solids = solids::SolidSet::of(assembly.parts, silence);
  if (!solids) throw std::runtime_error(solids.error().front().wrong);
  auto report = check(plan, assembly, *solids, silence, asked);
  if (!report) throw std::runtime_error(report.error().front().wrong);
  return std::move(*report);
}

inline const reasons::Finding* about(const Report& report, const reasons::Rule& rule, const std::vector<std::string>& parts) {
  for (const auto& f : report.findings) {
    const auto holds = [&](const std::string& name) { return std::find(f.parts.begin(), f.parts.end(), name) != f.parts.end(); };
    if (f.rule == &rule && std::all_of(parts.begin(), parts.end(), holds)) return &f;
  }
  return nullptr;
}

inline std::string failures(const Report& report) {
  std::string all;
  for (const auto& f : report.findings)
    if (f.verdict == reasons::Verdict::fail) all += say(f, units::LengthUnit::millimetre) + "\n";
  return all;
}

}  // namespace visewright::fitup
