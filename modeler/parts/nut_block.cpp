#include "parts/nut_block.h"

#include "layout/rules_screw.h"
#include "parts/compose.h"
#include "parts/nuts.h"

namespace visewright::parts {
namespace {

/// Fillets in the corner between three flats of the nut and the bar.
std::vector<Bead> beads(const layout::Plan& plan) {
  const auto& block = plan.rear_nut;
  const double flat = block.across_flats.mm() / 2, joint = block.length.mm(), leg = block.bead.mm();
  const double half = 0.4 * flat_length_mm(block.across_flats.mm());  // four fifths of the flat
  const std::vector<geometry::Point> corner{{flat, joint - leg}, {flat + leg, joint}, {flat, joint}};
  std::vector<Bead> list;
  for (const double direction : beaded_flats_rad())
    list.push_back({"weld bead", Prism{geometry::region(geometry::polygon(corner)), across_flat(direction), -half, half}});
  return list;
}

Part rear_nut(const layout::Plan& plan, std::size_t side) {
  const auto& block = plan.rear_nut;
  const auto& row = *block.nut[side];
  const std::string name = row.bar ? "rear nut" : block.share_of == 2 ? "half long nut" : "long nut";
  return nut(name, plan, row, block.across_flats.mm(), block.length.mm(), block.share_of, {});
}

Part bar(const layout::Plan& plan) {
  const auto& block = plan.rear_nut;
  const double length = block.bar_length.mm(), height = block.bar_height.mm(), thickness = block.bar_thickness.mm();
  Piece piece{Bar{plan.screw.material, {-length / 2, -height / 2, 0}, {length, height, thickness}}, {}};
  const Face face = front(thickness);
  piece.operations.push_back({"hole for the screw", Drill{face, {0, 0}, block.bar_bore.mm(), std::nullopt}, "", "", &layout::rules::bar_bore});
  for (const double at : {-1.0, 1.0})
    piece.operations.push_back({at < 0 ? "screw hole, left" : "screw hole, right",
                                Drill{face, {at * block.bolt_offset.mm(), 0}, block.bolt_hole.mm(), std::nullopt}, "", "", &layout::rules::bolt_hole});
  return {"nut block bar", std::move(piece), Making::made};
}

}  // namespace

Part nut_block(const layout::Plan& plan, std::size_t side) {
  const double joint = plan.rear_nut.length.mm();
  BuiltUp whole{{member(rear_nut(plan, side)), member(bar(plan), raised(joint))}, {{Joint::Kind::welded, beads(plan)}}, {}};
  return {"nut block" + of_side(side, plan.screw.left_hand[0] != plan.screw.left_hand[1]), std::move(whole), Making::made};
}

}  // namespace visewright::parts
