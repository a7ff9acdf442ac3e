#include "parts/fasteners.h"

#include <algorithm>
#include <cmath>

#include "parts/compose.h"

namespace visewright::parts {
namespace {

/// Wood that is left under the tip of a pilot hole.
constexpr double left_under_tip_mm = 2;

double length_of(const standards::WoodScrewRow& row) { return units::in_mm(row.length); }
double shank_of(const standards::WoodScrewRow& row) { return units::in_mm(row.shank); }

/// How deep a screw stands in the second part, when `through_mm` of it are in the first.
double engaged(const standards::WoodScrewRow& row, double through_mm) { return length_of(row) - through_mm; }

Part wood_screw(std::string name, const layout::Plan& plan, const standards::WoodScrewRow& row, double through_mm,
                double pilot_depth_mm) {
  const double shank = shank_of(row) / 2, core = pilot_mm(shank_of(row)) / 2, head = units::in_mm(row.head) / 2;
  const double end = through_mm + std::min(engaged(row, through_mm), pilot_depth_mm);
  Bought stock{row.designation, row.source.standard, steel(plan), {}, {}};
  stock.shape = {turned_body({{0, -end},
                              {core, -end},
                              {core, -through_mm},
                              {shank, -through_mm},
                              {shank, 0},
                              {head, 0},
                              {head, 1.2 * shank},
                              {0, 1.2 * shank}})};
  return bought(std::move(name), std::move(stock));
}

}  // namespace

double pilot_mm(double shank_mm) { return std::round(2 * 0.7 * shank_mm) / 2; }
double clearance_mm(double shank_mm) { return shank_mm + 0.5; }

namespace {

double through_rear_jaw(const layout::Plan& plan) {
  return plan.rear_jaw.thickness.mm() - plan.rear_jaw.counterbore_depth.mm();
}

}  // namespace

double mounting_pilot_mm(const layout::Plan& plan) { return engaged(*plan.rear_jaw.screw, through_rear_jaw(plan)); }

double nut_block_pilot_mm(const layout::Plan& plan) {
  return std::min(engaged(*plan.rear_nut.screw, plan.rear_nut.bar_thickness.mm()),
                  plan.rear_jaw.thickness.mm() - left_under_tip_mm);
}

double bracket_pilot_mm(const layout::Plan& plan) {
  return std::min(engaged(*plan.bracket.screw, plan.bracket.thickness.mm()),
                  plan.rear_jaw.thickness.mm() - left_under_tip_mm);
}

double edge_screw_pilot_mm(const layout::Plan& plan) {
  return std::min(engaged(*plan.cover.edge_screw_row, plan.cover.thickness.mm()),
                  plan.front_jaw.gear_layer.mm() - left_under_tip_mm);
}

Part mounting_screw(const layout::Plan& plan) {
  return wood_screw("mounting screw", plan, *plan.rear_jaw.screw, through_rear_jaw(plan), mounting_pilot_mm(plan));
}

Part nut_block_screw(const layout::Plan& plan) {
  return wood_screw("nut block screw", plan, *plan.rear_nut.screw, plan.rear_nut.bar_thickness.mm(),
                    nut_block_pilot_mm(plan));
}

Part bracket_screw(const layout::Plan& plan) {
  return wood_screw("bracket screw", plan, *plan.bracket.screw, plan.bracket.thickness.mm(), bracket_pilot_mm(plan));
}

Part edge_screw(const layout::Plan& plan) {
  return wood_screw("cover edge screw", plan, *plan.cover.edge_screw_row, plan.cover.thickness.mm(),
                    edge_screw_pilot_mm(plan));
}

Part axle_screw(const layout::Plan& plan) {
  const double size = plan.axle.tap.mm(), r = size / 2;
  const double to_axle = plan.cover.rear_out.mm() + plan.cover.thickness.mm() - plan.axle.front_out.mm();
  const double length = std::floor(to_axle + plan.axle.tap_depth.mm() - left_under_tip_mm);
  Bought stock{"machine screw M" + std::to_string(std::lround(size)) + " x " + std::to_string(std::lround(length)) +
                   " with washer",
               "ISO 7045",
               steel(plan),
               {},
               {}};
  stock.shape = {turned_body({{0, -length}, {r, -length}, {r, 0}, {size, 0}, {size, 1.4 * r}, {0, 1.4 * r}})};
  return bought("axle screw", std::move(stock));
}

}  // namespace visewright::parts
