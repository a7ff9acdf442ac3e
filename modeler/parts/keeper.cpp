#include "parts/keeper.h"

#include "parts/compose.h"

namespace visewright::parts {

Part keeper_ring(const layout::Plan& plan) {
  const layout::KeeperPlan& k = plan.keeper;
  const double thickness = k.thickness.mm();
  return made_of("keeper ring", Rod{steel(plan), k.outside.mm(), thickness},
                 {because(drill("bore", front(thickness), {0, 0}, k.bore.mm()), plan, k.bore),
                  because(turned_away("relieve the front face", k.relief_diameter.mm() / 2, k.outside.mm() / 2,
                                      thickness - k.relief_depth.mm(), thickness + proud_mm),
                          plan, k.relief_depth)});
}

}  // namespace visewright::parts
