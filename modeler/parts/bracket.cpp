#include "parts/bracket.h"

#include "layout/rules_bench.h"
#include "parts/compose.h"
#include "parts/rear_jaw.h"

namespace visewright::parts {
namespace {

double under_top(const layout::Plan& plan) { return plan.bench.axis_depth.mm() - plan.bench.top_thickness.mm(); }

Part top_leg(const layout::Plan& plan) {
  const auto& b = plan.bracket;
  const double width = b.width.mm(), t = b.thickness.mm(), top = under_top(plan);
  Piece piece{Bar{b.material, {-width / 2, top - t, 0}, {width, t, b.top_leg.mm() - t}}, {}};
  const Face face = bottom(top - t);
  const double z = bracket_top_screw_z(plan), half = (b.slot_length.mm() - b.slot_width.mm()) / 2;
  piece.operations.push_back({"slot", CutOut{face, geometry::region(geometry::slot({0, z - half}, {0, z + half}, b.slot_width.mm()))}, "", "",
                              &layout::rules::bracket_slot});
  return {"bracket top leg", std::move(piece), Making::made};
}

Part down_leg(const layout::Plan& plan) {
  const auto& b = plan.bracket;
  const double width = b.width.mm(), t = b.thickness.mm(), top = under_top(plan);
  Piece piece{Bar{b.material, {-width / 2, top - b.down_leg.mm(), b.top_leg.mm() - t}, {width, b.down_leg.mm(), t}}, {}};
  const Face face = front(b.top_leg.mm());
  piece.operations.push_back({"screw hole", Drill{face, {0, bracket_screws(plan).front().y}, b.hole.mm(), std::nullopt}, "", "",
                              &layout::rules::bracket_hole});
  return {"bracket down leg", std::move(piece), Making::made};
}

Bead corner_bead(const layout::Plan& plan) {
  const auto& b = plan.bracket;
  const double t = b.thickness.mm(), leg = b.bead.mm(), half = b.width.mm() / 2 - 3;
  const double y = under_top(plan) - t, z = b.top_leg.mm() - t;
  return {"weld bead", along_x({{y - leg, z}, {y, z}, {y, z - leg}}, -half, half)};
}

}  // namespace

double bracket_top_screw_z(const layout::Plan& plan) {
  return (plan.bracket.top_leg.mm() - plan.bracket.thickness.mm() - plan.bracket.bead.mm()) / 2;
}

Part bracket(const layout::Plan& plan) {
  BuiltUp whole{{member(top_leg(plan)), member(down_leg(plan))}, {{Joint::Kind::welded, {corner_bead(plan)}}}, {}};
  return {"bracket", std::move(whole), Making::made};
}

}  // namespace visewright::parts
