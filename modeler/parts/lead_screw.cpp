#include "parts/lead_screw.h"

#include "parts/compose.h"
#include "parts/wheel_end.h"

namespace visewright::parts {

Part lead_screw(const layout::Plan& plan, std::size_t side) {
  const layout::ScrewPlan& s = plan.screw;
  const double tail = s.tail_out.mm(), rod = s.diameter.mm();
  std::vector<Operation> work = wheel_end(plan, tail, s.front_out.mm(), !plan.wheel.on_centre);
  work.push_back(
      because(cross_hole("hole for the end-stop pin", rod, s.stop_out.mm() - tail, s.stop_pin.mm()), plan, s.stop_out));
  return made_of("lead screw" + of_side(side, s.left_hand[0] != s.left_hand[1]),
                 Rod{s.material, rod, s.length.mm(), s.thread, s.left_hand[side]}, std::move(work));
}

Part end_stop_pin(const layout::Plan& plan) {
  return made_of("end-stop pin", Rod{steel(plan), plan.screw.stop_pin.mm(), plan.screw.stop_length.mm()});
}

}  // namespace visewright::parts
