#include "parts/centre_shaft.h"

#include "parts/compose.h"
#include "parts/wheel_end.h"

namespace visewright::parts {

Part centre_shaft(const layout::Plan& plan) {
  const layout::ScrewPlan& s = plan.screw;
  const double rear = plan.shaft.rear_out.mm(), rod = s.diameter.mm();
  std::vector<Operation> work = wheel_end(plan, rear, plan.shaft.front_out.mm(), true);
  work.push_back(because(turned_away("turn the rear journal up to its shoulder", s.journal.mm() / 2, rod / 2, -proud_mm,
                                     plan.shaft.shoulder_out.mm() - rear),
                         plan, s.journal));
  return made_of("centre shaft", Rod{s.material, rod, plan.shaft.front_out.mm() - rear, s.thread, s.left_hand[0]}, std::move(work));
}

}  // namespace visewright::parts
