#include "parts/bearing.h"

#include "parts/compose.h"

namespace visewright::parts {
namespace {

double ring_area(double outside_mm, double bore_mm) { return outside_mm * outside_mm - bore_mm * bore_mm; }

Part ring(const std::string& which, const layout::Plan& plan, const layout::BearingPlan& b, double outside_mm,
          double bore_mm) {
  const double whole = ring_area(b.inner_land.mm(), b.bore.mm()) + ring_area(b.outside.mm(), b.outer_land.mm());
  const double width = b.width.mm();
  Bought stock{b.row->designation,
               b.row->source.standard,
               steel(plan),
               {cylinder(outside_mm, 0, width)},
               {cylinder(bore_mm, -proud_mm, width + proud_mm)},
               2};
  stock.mass_kg = units::in_kilograms(b.row->mass) * ring_area(outside_mm, bore_mm) / whole;
  return bought("bearing " + b.row->designation + ", " + which, std::move(stock));
}

}  // namespace

Part inner_ring(const layout::Plan& plan, const layout::BearingPlan& b) {
  return ring("inner ring", plan, b, b.inner_land.mm(), b.bore.mm());
}

Part outer_ring(const layout::Plan& plan, const layout::BearingPlan& b) {
  return ring("outer ring", plan, b, b.outside.mm(), b.outer_land.mm());
}

}  // namespace visewright::parts
