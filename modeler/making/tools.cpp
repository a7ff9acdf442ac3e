#include "making/tools.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "making/beds.h"
#include "making/corners.h"
#include "making/outlines.h"

namespace visewright::making {
namespace {

using standards::MaterialKind;
using standards::ToolKind;
using Kinds = std::vector<ToolKind>;

constexpr double exact_mm = 0.1;
/// Twist drills above this are dear and need a large chuck; router cutters reach about this deep.
constexpr double usual_drill_mm = 13, usual_cutter_mm = 12, cutter_reach_mm = 40, flat_bit_usual_mm = 35, thick_mm = 30;

/// Beginnings of the names of operations that leave room for something to pass.
constexpr std::array<std::string_view, 11> clearance_names{
    "hole for the screw", "screw hole",    "screw slot",      "slot for the screw",    "bolt hole",
    "counterbore",        "thrust recess", "pocket for gear", "recess for the flange", "relief hole",
    "bore in the lip"};
constexpr std::string_view pilot_name = "pilot hole";

Wants wanted_of(std::string_view name) {
  if (name.starts_with(pilot_name)) return Wants::about;
  const bool passes =
      std::any_of(clearance_names.begin(), clearance_names.end(), [&](auto n) { return name.starts_with(n); });
  return passes ? Wants::clearance : Wants::exact;
}

ToolNeed sized(Kinds kinds, double size_mm, Wants wants) {
  const double tenth = 0.1 * size_mm;
  switch (wants) {
    case Wants::exact: return {std::move(kinds), size_mm, size_mm - exact_mm, size_mm + exact_mm, {}};
    case Wants::clearance:
      return {std::move(kinds), size_mm, size_mm - exact_mm, size_mm + std::clamp(tenth, 0.5, 2.0), {}};
    case Wants::about: break;
  }
  return {std::move(kinds), size_mm, size_mm - std::max(tenth, 0.3), size_mm + std::max(tenth, 0.3), {}};
}

std::string without_hand(std::string_view designation) {
  return std::string(designation.substr(0, designation.find(" left-hand")));
}

/// The size to drill when a thread follows in the same place: by the tap's table, else the thread's minor diameter.
std::optional<double> tapping_mm(const parts::Drill& hole, const Workpiece& work,
                                 const standards::Catalogue& catalogue) {
  for (const parts::Operation& other : work.operations) {
    const auto* thread = std::get_if<parts::CutThread>(&other.work);
    if (thread == nullptr || thread->face.name != hole.face.name || geometry::distance(thread->at, hole.at) > 1e-6)
      continue;
    const std::string designation = without_hand(thread->designation);
    if (const auto* tap = catalogue.tap(designation)) return units::in_mm(tap->drill);
    if (const auto* row = catalogue.thread(designation)) return units::in_mm(row->nut_minor);
  }
  return std::nullopt;
}

/// On the axis that a lathe would turn the piece about.
bool on_axis(const parts::Face& face, geometry::Point at, const Workpiece& work) {
  if (work.form != Form::round && work.form != Form::bought) return false;
  const geometry::Vector point = geometry::to_outside(face.datum, {at.x, at.y, 0});
  return std::abs(std::abs(face.datum.z_axis[2]) - 1) < 1e-9 && std::hypot(point[0], point[1]) < 1e-6;
}

Kinds for_metal_hole(double size_mm, bool turned) {
  if (turned)
    return size_mm <= usual_drill_mm ? Kinds{ToolKind::drill, ToolKind::lathe_tool}
                                     : Kinds{ToolKind::lathe_tool, ToolKind::drill};
  return size_mm <= usual_drill_mm ? Kinds{ToolKind::drill} : Kinds{ToolKind::drill, ToolKind::hole_saw};
}

/// Wood, panels and plastics. A hole saw leaves no floor, a twist drill none that is flat.
Kinds for_soft_hole(double size_mm, bool blind, bool flat, double depth_mm, bool plastic) {
  Kinds kinds;
  if (flat) {
    kinds = plastic ? Kinds{ToolKind::cutter, ToolKind::flat_bit} : Kinds{ToolKind::flat_bit, ToolKind::cutter};
  } else if (size_mm <= usual_drill_mm) {
    kinds = {ToolKind::drill, ToolKind::flat_bit};
  } else if (blind) {
    kinds = {ToolKind::flat_bit, ToolKind::drill};
  } else if (size_mm <= flat_bit_usual_mm) {
    kinds = {ToolKind::flat_bit, ToolKind::drill, ToolKind::hole_saw, ToolKind::cutter};
  } else {
    kinds = {ToolKind::hole_saw, ToolKind::flat_bit, ToolKind::cutter};
  }
  if (depth_mm > cutter_reach_mm) std::erase(kinds, ToolKind::cutter);
  return kinds;
}

bool is_metal(const Workpiece& work) { return work.material != nullptr && work.material->kind == MaterialKind::metal; }
bool is_plastic(const Workpiece& work) {
  return work.material != nullptr && work.material->kind == MaterialKind::plastic;
}
bool laser_may(const Workpiece& work, double thickness_mm) {
  return work.form == Form::sheet && work.material != nullptr && laser_cuts(*work.material, thickness_mm);
}

struct NeedOf {
  const parts::Operation& operation;
  const Workpiece& work;
  const standards::Catalogue& catalogue;

  ToolNeed hole(const parts::Face& face, geometry::Point at, double size_mm, parts::Depth depth, bool flat,
                Wants wants) const {
    if (is_metal(work)) return sized(for_metal_hole(size_mm, on_axis(face, at, work)), size_mm, wants);
    const double through = work.through_mm(face);
    Kinds kinds = for_soft_hole(size_mm, depth.has_value(), flat, depth.value_or(through), is_plastic(work));
    if (!depth && laser_may(work, through)) kinds.push_back(ToolKind::laser);
    return sized(std::move(kinds), size_mm, wants);
  }
  /// Any cutter that gets into the corners and between the sides.
  ToolNeed along(Kinds kinds, const geometry::Profile& outline, bool within) const {
    const double most = largest_cutter_mm(outline, within);
    return {std::move(kinds), most, 0, most, {}};
  }

  ToolNeed operator()(const parts::Drill& d) const {
    const auto tapping = tapping_mm(d, work, catalogue);
    return hole(d.face, d.at, tapping.value_or(d.diameter_mm), d.depth, d.flat,
                tapping ? Wants::exact : wanted_of(operation.name));
  }
  ToolNeed operator()(const parts::Rout& r) const {
    if (is_metal(work)) return along({ToolKind::fretsaw}, r.outline, true);
    return along({ToolKind::cutter}, r.outline, true);
  }
  ToolNeed operator()(const parts::CutOut& c) const {
    if (const auto round = as_circle(c.outline))
      return hole(c.face, round->centre, 2 * round->radius_mm, {}, false, wanted_of(operation.name));
    const double through = work.through_mm(c.face);
    if (is_metal(work)) return along({ToolKind::fretsaw}, c.outline, true);
    if (through > thick_mm) return along({ToolKind::saw}, c.outline, true);
    if (laser_may(work, through)) return along({ToolKind::laser, ToolKind::cutter, ToolKind::fretsaw}, c.outline, true);
    return along({ToolKind::cutter, ToolKind::fretsaw}, c.outline, true);
  }
  ToolNeed operator()(const parts::CutTo& c) const {
    const double through = work.through_mm(c.face);
    if (is_metal(work)) return {{ToolKind::saw}, 0, 0, 0, {}};
    if (laser_may(work, through))
      return along({ToolKind::laser, ToolKind::cutter, ToolKind::fretsaw}, c.outline, false);
    return along({ToolKind::cutter, ToolKind::fretsaw}, c.outline, false);
  }
  ToolNeed operator()(const parts::SawFlat&) const { return {{ToolKind::saw}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::Turn&) const { return {{ToolKind::lathe_tool}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::Grind&) const { return {{ToolKind::grinder}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::Ease&) const { return {{ToolKind::edge_tool}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::CutThread& t) const {
    const std::string thread = without_hand(t.designation);
    const bool by_tap = catalogue.tap(thread) != nullptr && thread == t.designation;
    return {{by_tap ? ToolKind::tap : ToolKind::lathe_tool}, 0, 0, 0, t.designation};
  }
  ToolNeed operator()(const parts::Print&) const { return {{ToolKind::printer}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::Mark&) const { return {{ToolKind::punch}, 0, 0, 0, {}}; }
  ToolNeed operator()(const parts::Treat&) const { return {{ToolKind::brush}, 0, 0, 0, {}}; }
};

OwnedTools::Sizes listed(const std::vector<double>& given, const standards::ShopRow* shop,
                         std::vector<units::Length> standards::ShopRow::*list) {
  if (!given.empty()) return given;
  if (shop == nullptr) return std::nullopt;
  std::vector<double> sizes;
  for (const units::Length size : shop->*list) sizes.push_back(units::in_mm(size));
  return sizes;
}

bool below(double a, double b) { return std::llround(a * 1e6) < std::llround(b * 1e6); }

/// The owned size that will do and is nearest to the one wanted; a cutter need not fill a recess.
std::optional<double> fitting(const std::vector<double>& sizes, const ToolNeed& need, bool cutter) {
  std::optional<double> best;
  const double wanted = cutter ? std::min(need.size_mm, usual_cutter_mm) : need.size_mm;
  const auto off = [&](double size) { return std::abs(size - wanted); };
  for (const double size : sizes) {
    if (below(need.most_mm, size) || (!cutter && below(size, need.least_mm))) continue;
    if (!best || below(off(size), off(*best))) best = size;
  }
  return best;
}

std::optional<double> nearest(const std::vector<double>& sizes, double wanted_mm) {
  std::optional<double> best;
  for (const double size : sizes)
    if (!best || below(std::abs(size - wanted_mm), std::abs(*best - wanted_mm))) best = size;
  return best;
}

/// Of all kinds that would do, the one of which the nearest size is owned.
void tell_nearest(const ToolNeed& need, const OwnedTools& owned, ToolChoice& choice) {
  for (const ToolKind kind : need.kinds) {
    const OwnedTools::Sizes* sizes = owned.sizes(kind);
    const auto found = sizes == nullptr || !sizes->has_value() ? std::nullopt : nearest(**sizes, need.size_mm);
    if (!found ||
        (choice.nearest_mm && !below(std::abs(*found - need.size_mm), std::abs(*choice.nearest_mm - need.size_mm))))
      continue;
    choice.kind = kind;
    choice.nearest_mm = found;
  }
}

/// The size taken of a kind of tool, or nothing when none at hand will do.
std::optional<double> taken(const ToolNeed& need, const standards::ToolRow& row, const OwnedTools& owned) {
  if (row.kind == ToolKind::laser && (!owned.laser_bed || owned.laser_bed->empty())) return std::nullopt;
  if (!row.machine.empty() && !owned.has_machine(row.machine)) return std::nullopt;
  if (row.kind == ToolKind::tap) {
    const bool have =
        !owned.taps || std::find(owned.taps->begin(), owned.taps->end(), need.thread) != owned.taps->end();
    return have ? std::optional(0.0) : std::nullopt;
  }
  const OwnedTools::Sizes* sizes = owned.sizes(row.kind);
  if (sizes == nullptr) return need.size_mm;
  const bool cutter = row.kind == ToolKind::cutter;
  if (sizes->has_value()) return fitting(**sizes, need, cutter);
  const double largest = units::in_mm(row.largest),
               size = cutter ? std::min(need.size_mm, usual_cutter_mm) : need.size_mm;
  if (below(size, units::in_mm(row.smallest)) || below(largest, size)) return std::nullopt;
  return size;
}

}  // namespace

ToolNeed tool_for(const parts::Operation& operation, const Workpiece& work, const standards::Catalogue& catalogue) {
  return std::visit(NeedOf{operation, work, catalogue}, operation.work);
}

const OwnedTools::Sizes* OwnedTools::sizes(ToolKind kind) const {
  switch (kind) {
    case ToolKind::drill: return &drills;
    case ToolKind::flat_bit: return &flat_bits;
    case ToolKind::hole_saw: return &hole_saws;
    case ToolKind::cutter: return &cutters;
    case ToolKind::saw:
    case ToolKind::fretsaw:
    case ToolKind::lathe_tool:
    case ToolKind::grinder:
    case ToolKind::tap:
    case ToolKind::edge_tool:
    case ToolKind::printer:
    case ToolKind::laser:
    case ToolKind::punch:
    case ToolKind::brush: return nullptr;
  }
  return nullptr;
}

bool OwnedTools::has_machine(std::string_view machine) const {
  if (machine == "printer" && print_bed && !print_bed->empty()) return true;
  if (machine == "router" && cutters && !cutters->empty()) return true;
  if (machine == "laser" && laser_bed && !laser_bed->empty()) return true;
  return !machines || std::find(machines->begin(), machines->end(), machine) != machines->end();
}

OwnedTools owned_tools(const layout::Plan& plan, const standards::Catalogue& catalogue) {
  using standards::ShopRow;
  const layout::OwnedPlan& given = plan.workshop.owned;
  const ShopRow* shop = given.preset.empty() ? nullptr : catalogue.shop(given.preset);
  OwnedTools owned;
  owned.drills = listed(given.drills_mm, shop, &ShopRow::drills);
  owned.flat_bits = listed(given.flat_bits_mm, shop, &ShopRow::flat_bits);
  owned.hole_saws = listed(given.hole_saws_mm, shop, &ShopRow::hole_saws);
  owned.cutters = listed(given.cutters_mm, shop, &ShopRow::cutters);
  owned.print_bed = listed(given.print_bed_mm, shop, &ShopRow::print_bed);
  owned.laser_bed = listed(given.laser_bed_mm, shop, &ShopRow::laser_bed);
  if (shop != nullptr) {
    owned.machines = shop->machines;
    owned.taps = shop->taps;
  }
  return owned;
}

ToolChoice choose_tool(const ToolNeed& need, const OwnedTools& owned, const standards::Catalogue& catalogue) {
  ToolChoice choice;
  choice.thread = need.thread;
  choice.wanted_mm = need.size_mm;
  for (const ToolKind kind : need.kinds) {
    const standards::ToolRow* row = catalogue.tool(kind);
    if (row == nullptr) continue;
    if (const auto size = taken(need, *row, owned)) {
      choice.kind = kind;
      choice.row = row;
      choice.size_mm = *size;
      return choice;
    }
  }
  choice.at_hand = false;
  choice.size_mm = need.size_mm;
  choice.kind = need.kinds.front();
  // What a machine without sizes would do is not made up for by an odd drill; else the nearest size owned is told.
  if (owned.sizes(choice.kind) != nullptr) tell_nearest(need, owned, choice);
  choice.row = catalogue.tool(choice.kind);
  return choice;
}

}  // namespace visewright::making
