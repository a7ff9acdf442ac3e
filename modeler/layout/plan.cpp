#include "layout/plan.h"

#include "layout/rules_bench.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

void fix_general_gaps(Desk& d) {
  d.plan.gaps.moving_to_fixed = d.choose.length(rules::moving_to_fixed, d.design.gaps.moving_to_fixed, 3);
  d.plan.gaps.web = d.choose.length(rules::web, d.design.gaps.web, 10);
}

}  // namespace

base::Result<Plan> plan(const design::Design& design, const standards::Catalogue& catalogue) {
  Plan result;
  base::Faults faults;
  result.title = design.title ? design.title->value : "twin-screw bench vise";
  result.unit = design.unit;
  Chooser choose(result.ledger, design.unit);
  Desk desk{design, catalogue, choose, result, faults};
  using Section = void (*)(Desk&);
  for (const Section fix : {fix_general_gaps, fix_workshop, fix_hardware, fix_gears, fix_face_width, fix_axle_bearing, fix_front_jaw, fix_wheel,
                            fix_shaft, fix_rear, fix_screw, fix_bench, fix_cover, fix_patterns, fix_assumptions}) {
    fix(desk);
    if (!faults.empty()) {  // later sections would only repeat it
      base::in_line_order(faults);
      return base::passed_on(std::move(faults));
    }
  }
  return result;
}

}  // namespace visewright::layout
