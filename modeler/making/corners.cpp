#include "making/corners.h"

#include <algorithm>
#include <cmath>

#include "making/outlines.h"

namespace visewright::making {
namespace {

using geometry::Edge;
using geometry::Loop;

/// Turns smaller than this are joins of smooth edges.
constexpr double smooth = 1e-4;

/// The radius of an edge where the material bends round the tool; absent where it does not. An anticlockwise outline
/// bends round a tool inside it when it turns left.
struct RadiusOf {
  bool within;
  std::optional<double> operator()(const geometry::Line&) const { return std::nullopt; }
  std::optional<double> operator()(const geometry::Arc& arc) const {
    if (arc.left != within) return std::nullopt;
    return geometry::distance(arc.centre, arc.a);
  }
  std::optional<double> operator()(const geometry::Involute&) const { return std::nullopt; }
  /// The root of a gear: nowhere tighter than the rounding that leaves it.
  std::optional<double> operator()(const geometry::Trochoid& root) const {
    return within ? std::nullopt : std::optional(root.tip_radius_mm);
  }
};

bool sharp(const Edge& before, const Edge& after, bool within) {
  const double turn = geometry::cross(geometry::direction(before, 1), geometry::direction(after, 0));
  return within ? turn > smooth : turn < -smooth;
}

std::optional<double> smallest(const Loop& loop, bool within) {
  std::optional<double> least;
  const auto note = [&](std::optional<double> radius) {
    if (radius) least = std::min(least.value_or(*radius), *radius);
  };
  const auto edges = loop.edges();
  for (std::size_t i = 0; i < edges.size(); ++i) {
    note(std::visit(RadiusOf{within}, edges[i]));
    if (sharp(edges[i], edges[(i + 1) % edges.size()], within)) note(0);
  }
  return least;
}

/// The outline that a router follows, if the work is such.
struct Routed {
  const geometry::Profile* outline = nullptr;
  bool within = true;
};
struct RoutedOf {
  Routed operator()(const parts::Rout& r) const { return {&r.outline, true}; }
  Routed operator()(const parts::CutOut& c) const { return {&c.outline, true}; }
  Routed operator()(const parts::CutTo& c) const { return {&c.outline, false}; }
  Routed operator()(const parts::Drill&) const { return {}; }
  Routed operator()(const parts::SawFlat&) const { return {}; }
  Routed operator()(const parts::Turn&) const { return {}; }
  Routed operator()(const parts::Grind&) const { return {}; }
  Routed operator()(const parts::Ease&) const { return {}; }
  Routed operator()(const parts::CutThread&) const { return {}; }
  Routed operator()(const parts::Print&) const { return {}; }
  Routed operator()(const parts::Mark&) const { return {}; }
  Routed operator()(const parts::Treat&) const { return {}; }
};

/// The thinnest cutter that may be used: the design's, else the thinnest owned, else the one the choice came to.
double thinnest_mm(const ToolChoice& choice, const layout::Plan& plan, const OwnedTools& owned) {
  if (plan.accuracy.cutter) return plan.accuracy.cutter->mm();
  if (owned.cutters && !owned.cutters->empty()) return *std::min_element(owned.cutters->begin(), owned.cutters->end());
  return choice.size_mm;
}

}  // namespace

std::optional<double> smallest_inside_radius_mm(const geometry::Profile& outline, bool within) {
  std::optional<double> least;
  const auto note = [&](std::optional<double> radius) {
    if (radius) least = std::min(least.value_or(*radius), *radius);
  };
  for (const Loop& loop : outline.outer) note(smallest(loop, within));
  for (const Loop& loop : outline.holes) note(smallest(loop, !within));
  return least;
}

std::vector<Corner> corners(const std::vector<Workpiece>& pieces, const layout::Plan& plan, const OwnedTools& owned,
                            const standards::Catalogue& catalogue) {
  std::vector<Corner> all;
  for (const Workpiece& work : pieces) {
    if (work.made) continue;
    for (const parts::Operation& operation : work.operations) {
      const Routed routed = std::visit(RoutedOf{}, operation.work);
      if (routed.outline == nullptr) continue;
      const ToolChoice choice = choose_tool(tool_for(operation, work, catalogue), owned, catalogue);
      const auto radius = smallest_inside_radius_mm(*routed.outline, routed.within);
      if (choice.kind != standards::ToolKind::cutter || !radius) continue;
      if (!choice.at_hand && !plan.accuracy.cutter) continue;  // there is no cutter to hold it against
      Corner corner{work.part->name, operation.name, *radius, thinnest_mm(choice, plan, owned) / 2, true};
      corner.reached = std::llround(corner.cutter_radius_mm * 1e6) <= std::llround(corner.radius_mm * 1e6);
      all.push_back(std::move(corner));
    }
  }
  return all;
}

}  // namespace visewright::making
