#include "parts/lead_screw.h"

#include "parts/compose.h"

namespace visewright::parts {
namespace {

Operation cross_hole(std::string name, double rod_mm, double height_mm, double diameter_mm) {
  const Face side = top(rod_mm / 2);
  return drill(std::move(name), side, on(side, {0, rod_mm / 2, height_mm}), diameter_mm);
}

}  // namespace

Part lead_screw(const layout::Plan& plan, std::size_t side) {
  const layout::ScrewPlan& s = plan.screw;
  const double tail = s.tail_out.mm(), length = s.length.mm(), rod = s.diameter.mm(), journal = s.journal.mm();
  const double shoulder = s.shoulder_out.mm() - tail, groove = s.groove_out.mm() - tail,
               floor = journal / 2 - s.groove_depth.mm();
  const double half = s.groove_width.mm() / 2;
  const Face in_groove = right(floor);
  std::vector<Operation> work{
      because(turned_away("turn the journal down to the shoulder", journal / 2, rod / 2, shoulder, length + proud_mm),
              plan, s.journal),
      because(turned_away("ring groove for the lock screw", floor, journal / 2, groove - half, groove + half), plan,
              s.groove_depth),
      because(drill("dimple for the lock screw", in_groove, on(in_groove, {floor, 0, groove}), s.dimple.mm(),
                    dimple_depth_mm),
              plan, s.dimple),
      because(cross_hole("hole for the collar pin, drilled with the collar", rod, s.collar_pin_out.mm() - tail,
                         plan.collar.pin.mm()),
              plan, s.collar_pin_out),
      because(cross_hole("hole for the end-stop pin", rod, s.stop_out.mm() - tail, s.stop_pin.mm()), plan, s.stop_out)};
  return made_of("lead screw" + of_side(side, s.left_hand[0] != s.left_hand[1]),
                 Rod{s.material, rod, length, s.thread, s.left_hand[side]}, std::move(work));
}

Part end_stop_pin(const layout::Plan& plan) {
  return made_of("end-stop pin", Rod{steel(plan), plan.screw.stop_pin.mm(), plan.screw.stop_length.mm()});
}

}  // namespace visewright::parts
