#include "parts/bracket.h"

#include "parts/compose.h"

namespace visewright::parts {
namespace {

using geometry::Point;

Part top_leg(const layout::Plan& plan) {
  const layout::BracketPlan& b = plan.bracket;
  const double w = b.width.mm(), t = b.thickness.mm(), length = b.top_leg.mm();
  const Face upper = top(0);
  const double half = (b.slot_length.mm() - b.slot_width.mm()) / 2, z = bracket_slot_z_mm(plan);
  const geometry::Loop slot =
      geometry::slot(on(upper, {0, 0, z - half}), on(upper, {0, 0, z + half}), b.slot_width.mm());
  return made_of("bracket top leg", Bar{b.material, {-w / 2, -t, -length}, {w, t, length}},
                 {because(cut_out("slot for the screw", upper, slot), plan, b.slot_length)});
}

Part down_leg(const layout::Plan& plan) {
  const layout::BracketPlan& b = plan.bracket;
  const double w = b.width.mm(), t = b.thickness.mm(), length = b.down_leg.mm() - t;
  return made_of(
      "bracket down leg", Bar{b.material, {-w / 2, -b.down_leg.mm(), -t}, {w, length, t}},
      {because(drill("hole for the screw", front(0), {0, bracket_hole_y_mm(plan)}, b.hole.mm()), plan, b.hole)});
}

}  // namespace

double bracket_line_mm(const layout::Plan& plan) { return plan.bench.axis_depth.mm() - plan.bench.top_thickness.mm(); }

// Both holes stand amid what the bead leaves of the leg.
double bracket_slot_z_mm(const layout::Plan& plan) {
  return -(plan.bracket.thickness.mm() + plan.bracket.bead.mm() + plan.bracket.top_leg.mm()) / 2;
}
double bracket_hole_y_mm(const layout::Plan& plan) {
  return -(plan.bracket.thickness.mm() + plan.bracket.bead.mm() + plan.bracket.down_leg.mm()) / 2;
}

Part bracket(const layout::Plan& plan) {
  const layout::BracketPlan& b = plan.bracket;
  const double t = b.thickness.mm(), leg = b.bead.mm(), half = b.width.mm() / 2;
  const Bead bead{"bead", along_x({{-t, -t}, {-t, -t - leg}, {-t - leg, -t}}, -half, half)};
  return {"bracket", BuiltUp{{member(top_leg(plan)), member(down_leg(plan))}, {{Joint::Kind::welded, {bead}}}, {}}};
}

}  // namespace visewright::parts
