#include "parts/nut_block.h"

#include <array>

#include "parts/compose.h"
#include "parts/nuts.h"

namespace visewright::parts {
namespace {

using geometry::Point;

Part bar(const layout::Plan& plan) {
  const layout::RearNutPlan& n = plan.rear_nut;
  const double length = n.bar_length.mm(), height = n.bar_height.mm(), thickness = n.bar_thickness.mm();
  const Face face = front(thickness);
  std::vector<Operation> work{because(drill("hole for the screw", face, {0, 0}, n.bar_bore.mm()), plan, n.bar_bore)};
  for (const double side : {-1.0, 1.0})
    work.push_back(because(drill(side < 0 ? "bolt hole, left" : "bolt hole, right", face,
                                 {side * n.bolt_offset.mm(), 0}, n.bolt_hole.mm()),
                           plan, n.bolt_hole));
  return made_of("nut bar", Bar{steel(plan), {-length / 2, -height / 2, 0}, {length, height, thickness}},
                 std::move(work));
}

/// A fillet in the corner between a flat and the bar.
Bead fillet(double flat_rad, const layout::RearNutPlan& n, std::size_t number) {
  const double half = n.across_flats.mm() / 2, leg = n.bead.mm(), length = flat_length_mm(2 * half);
  const std::array<Point, 3> section{Point{half, 0}, {half, -leg}, {half + leg, 0}};
  geometry::Placement frame = across_flat(flat_rad);
  frame.origin_mm[2] = n.length.mm();
  return {"bead " + std::to_string(number),
          {geometry::region(geometry::polygon(section)), frame, -length / 2, length / 2}};
}

}  // namespace

Part nut_block(const layout::Plan& plan, std::size_t side) {
  const layout::RearNutPlan& n = plan.rear_nut;
  Joint welded{Joint::Kind::welded, {}};
  for (const double flat : beaded_flats_rad()) welded.beads.push_back(fillet(flat, n, welded.beads.size() + 1));
  BuiltUp built{{member(bar(plan), raised(n.length.mm())),
                 member(nut("rear nut", plan, *n.nut[side], n.across_flats.mm(), n.length.mm(), n.share_of, {}))},
                {std::move(welded)},
                {}};
  return {"nut block" + of_side(side, plan.screw.left_hand[0] != plan.screw.left_hand[1]), std::move(built)};
}

}  // namespace visewright::parts
