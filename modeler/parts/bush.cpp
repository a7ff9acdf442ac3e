#include "parts/bush.h"

#include "parts/compose.h"

namespace visewright::parts {
namespace {

Part bush(std::string name, const layout::Plan& plan, const layout::Size& outside, const layout::Size& bore,
          double length_mm) {
  return made_of(std::move(name), Rod{steel(plan), outside.mm(), length_mm},
                 {because(drill("bore", front(length_mm), {0, 0}, bore.mm()), plan, bore)});
}

}  // namespace

Part front_bush(const layout::Plan& plan) {
  return bush("front bush", plan, plan.front_jaw.bush_outside, plan.front_jaw.bush_bore,
              plan.front_jaw.bush_length.mm());
}

Part rear_bush(const layout::Plan& plan) {
  return bush("rear bush", plan, plan.rear_jaw.bush_outside, plan.rear_jaw.bush_bore, plan.rear_jaw.thickness.mm());
}

}  // namespace visewright::parts
