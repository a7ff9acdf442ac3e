#include "parts/thrust_collar.h"

#include <array>
#include <cmath>

#include "parts/compose.h"
#include "parts/nuts.h"

namespace visewright::parts {
namespace {

using geometry::Placement;
using geometry::Point;

/// How far the weld stands out of the flat before it is ground.
constexpr double crown_mm = 0.6;

Bought washer(const layout::Plan& plan, const standards::WasherRow& row, double outside_mm, double thickness_mm) {
  Bought stock{row.designation, row.source.standard, steel(plan), {}, {}};
  stock.shape = {cylinder(outside_mm, 0, thickness_mm)};
  stock.less = {cylinder(units::in_mm(row.bore), -proud_mm, thickness_mm + proud_mm)};
  return stock;
}

/// Seen across a flat (x out of it, y up from the washer's face) the groove is a triangle under 45°.
Operation bevel(double flat_rad, double across_flats_mm, double leg_mm) {
  const Placement across = across_flat(flat_rad);
  Placement plane;
  plane.origin_mm = geometry::to_outside(across, {across_flats_mm / 2, leg_mm, 0});
  plane.x_axis = across.z_axis;
  plane.z_axis = geometry::times(std::sqrt(0.5), geometry::plus(across.x_axis, geometry::times(-1, across.y_axis())));
  return {"grind a bevel on a flat for the bead", Grind{plane}, {}, {}};
}

Bead bead(double flat_rad, const layout::CollarPlan& collar, std::size_t number) {
  const double half = collar.across_flats.mm() / 2, leg = collar.bevel.mm(), length = flat_length_mm(2 * half);
  const std::array<Point, 3> section{Point{half - leg, 0}, {half + crown_mm, 0}, {half, leg}};
  Placement frame = across_flat(flat_rad);
  frame.origin_mm[2] = collar.flange_thickness.mm();
  return {"bead " + std::to_string(number),
          {geometry::region(geometry::polygon(section)), frame, -length / 2, length / 2}};
}

/// The crown goes; the washer, which reaches further out than the flat, stays.
Operation flush(double flat_rad, const layout::CollarPlan& collar) {
  const double length = flat_length_mm(collar.across_flats.mm()), from = collar.flange_thickness.mm();
  const geometry::Loop where = geometry::rectangle({-length / 2, from}, {length / 2, from + collar.nut_height.mm()});
  return {"grind the bead flush with the flat",
          Grind{in_flat(flat_rad, collar.across_flats.mm()), geometry::region(where)},
          {},
          {}};
}

}  // namespace

double collar_pin_height_mm(const layout::Plan& plan) {
  return plan.collar.flange_thickness.mm() + plan.collar.nut_height.mm() / 2;
}

Part thrust_collar(const layout::Plan& plan, std::size_t side) {
  const layout::CollarPlan& collar = plan.collar;
  const double across = collar.across_flats.mm(), flange = collar.flange_thickness.mm();
  std::vector<Operation> bevels;
  BuiltUp built;
  Joint welded{Joint::Kind::welded, {}};
  for (const double flat : beaded_flats_rad()) {
    bevels.push_back(because(bevel(flat, across, collar.bevel.mm()), plan, collar.bevel));
    welded.beads.push_back(bead(flat, collar, welded.beads.size() + 1));
    built.after.push_back(because(flush(flat, collar), plan, collar.bevel));
  }
  built.members.push_back(
      member(bought("collar flange", washer(plan, *collar.flange, collar.flange_outside.mm(), flange))));
  built.members.push_back(
      member(nut("collar nut", plan, *collar.nut[side], across, collar.nut_height.mm(), 1, std::move(bevels)),
             raised(flange)));
  built.joints.push_back(std::move(welded));
  const Face flat = top(across / 2);
  built.after.push_back(because(drill("hole for the collar pin, drilled with the screw", flat,
                                      on(flat, {0, across / 2, collar_pin_height_mm(plan)}), collar.pin.mm()),
                                plan, collar.pin));
  built.after.push_back({"phase mark", Mark{front(flange + collar.nut_height.mm()), {0.45 * across, 0}, "0"}, {}, {}});
  return {"thrust collar" + of_side(side, plan.screw.left_hand[0] != plan.screw.left_hand[1]), std::move(built)};
}

Part collar_pin(const layout::Plan& plan) {
  return made_of("collar pin", Rod{steel(plan), plan.collar.pin.mm(), plan.collar.pin_length.mm()});
}

Part thrust_washer(const layout::Plan& plan) {
  const layout::CollarPlan& collar = plan.collar;
  return bought("thrust washer",
                washer(plan, *collar.thrust, collar.thrust_outside.mm(), collar.thrust_thickness.mm()));
}

}  // namespace visewright::parts
