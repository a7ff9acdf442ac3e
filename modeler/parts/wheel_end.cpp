#include "parts/wheel_end.h"

#include "parts/compose.h"

namespace visewright::parts {

Operation cross_hole(std::string name, double rod_mm, double height_mm, double diameter_mm) {
  const Face side = top(rod_mm / 2);
  return drill(std::move(name), side, on(side, {0, rod_mm / 2, height_mm}), diameter_mm);
}

std::vector<Operation> wheel_end(const layout::Plan& plan, double rear_out_mm, double front_out_mm, bool with_wheel) {
  const layout::ScrewPlan& s = plan.screw;
  const double rod = s.diameter.mm(), journal = s.journal.mm(), half = s.groove_width.mm() / 2;
  const double shoulder = s.shoulder_out.mm() - rear_out_mm, groove = s.groove_out.mm() - rear_out_mm,
               end = front_out_mm - rear_out_mm, floor = journal / 2 - s.groove_depth.mm();
  std::vector<Operation> work{because(
      turned_away("turn the journal down to the shoulder", journal / 2, rod / 2, shoulder, end + proud_mm), plan, s.journal)};
  if (with_wheel) {
    const Face in_groove = right(floor);
    work.push_back(because(turned_away("ring groove for the lock screw", floor, journal / 2, groove - half, groove + half),
                           plan, s.groove_depth));
    work.push_back(because(drill("dimple for the lock screw", in_groove, on(in_groove, {floor, 0, groove}),
                                 s.dimple.mm(), dimple_depth_mm),
                           plan, s.dimple));
  }
  work.push_back(because(cross_hole("hole for the collar pin, drilled with the collar", rod,
                                    s.collar_pin_out.mm() - rear_out_mm, plan.collar.pin.mm()),
                         plan, s.collar_pin_out));
  return work;
}

}  // namespace visewright::parts
