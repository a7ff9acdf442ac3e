// The shared hole patterns: one datum, the middle of the screw line, seen from the front.
#include <algorithm>
#include <cmath>

#include "layout/rules_bench.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

using geometry::Point;

void fix_cusps(Plan& plan) {
  const auto& gears = plan.train.gears;
  for (std::size_t i = 0; i + 1 < gears.size(); ++i) {
    // Two pocket circles cross on their common chord.
    const double r1 = gears[i].pocket.mm() / 2, r2 = gears[i + 1].pocket.mm() / 2;
    const double a = gears[i + 1].centre_x.mm() - gears[i].centre_x.mm();
    const double along = (a * a + r1 * r1 - r2 * r2) / (2 * a);
    const double squared = r1 * r1 - along * along;
    if (squared <= 0) continue;  // the pockets do not meet: no cusp
    const double x = gears[i].centre_x.mm() + along, z = std::sqrt(squared);
    plan.cusps.holes.push_back({"cusp " + std::to_string(i + 1) + " top", {x, z}});
    plan.cusps.holes.push_back({"cusp " + std::to_string(i + 1) + " bottom", {x, -z}});
  }
}

/// Edge screws sit in the middle of the band between pockets and edge: between the gears, and at both ends.
void fix_cover_edge(Plan& plan) {
  const auto& gears = plan.train.gears;
  std::vector<double> xs{plan.cover.left.mm() + 11};
  for (std::size_t i = 0; i + 1 < gears.size(); ++i) xs.push_back((gears[i].centre_x.mm() + gears[i + 1].centre_x.mm()) / 2);
  xs.push_back(plan.cover.right.mm() - 11);
  const double z = plan.cover.top.mm() - 11;
  for (const double side : {z, -z})
    for (const double x : xs) plan.cover_edge.holes.push_back({"edge " + std::to_string(plan.cover_edge.holes.size() + 1), {x, side}});
}

/// A bracket's upper screw stands in the top where a mounting screw may come: keep them apart.
double beside_brackets(const Plan& plan, double x) {
  constexpr double apart_mm = 14;
  for (const Size& bracket : plan.bracket.x)
    if (std::abs(x - bracket.mm()) < apart_mm) return bracket.mm() + (x < bracket.mm() ? -apart_mm : apart_mm);
  return x;
}

/// Two rows, set off against each other, 18 mm inside the faces of the bench top.
void fix_rear_mounting(Desk& d) {
  auto& plan = d.plan;
  const double half = plan.rear_jaw.length.mm() / 2 - 20;
  const auto& given = d.design.rear_jaw.mounting.count;
  const int usual = std::max(4, static_cast<int>(std::ceil(plan.rear_jaw.length.mm() / 65)));
  const Count count = d.choose.ledger().count("rear_jaw.mounting.count", given ? given->value : usual,
                                              given ? reasons::Basis::given : reasons::Basis::derived, rules::mounting_count,
                                              {plan.rear_jaw.length.id}, given ? given->place : base::Place{});
  const double top = plan.bench.axis_depth.mm() - 18, bottom = plan.bench.axis_depth.mm() - plan.bench.top_thickness.mm() + 18;
  const double step = count.value > 1 ? 2 * half / (count.value - 1) : 0;
  for (int i = 0; i < count.value; ++i)
    plan.rear_mounting.holes.push_back({"mount " + std::to_string(i + 1), {beside_brackets(plan, -half + step * i), i % 2 == 0 ? bottom : top}});
}

}  // namespace

const Hole& Pattern::hole(std::string_view hole_name) const {
  return *std::find_if(holes.begin(), holes.end(), [&](const Hole& h) { return h.name == hole_name; });
}

void fix_patterns(Desk& d) {
  auto& plan = d.plan;
  const auto& gears = plan.train.gears;
  plan.screws = {"screws", {{"left", {gears.front().centre_x.mm(), 0}}, {"right", {gears.back().centre_x.mm(), 0}}}};
  plan.axles.name = "axles";
  plan.shaft_hole.name = "shaft";
  for (std::size_t i = 1; i + 1 < gears.size(); ++i) {
    const geometry::Point at{gears[i].centre_x.mm(), 0};
    if (gears[i].on_shaft) plan.shaft_hole.holes.push_back({"middle", at});
    else plan.axles.holes.push_back({"axle " + std::to_string(i + 1), at});
  }
  plan.cusps.name = "cusps";
  fix_cusps(plan);
  plan.dogs.name = "dogs";
  for (std::size_t i = 0; i < plan.front_jaw.dog_x.size(); ++i)
    plan.dogs.holes.push_back({"dog " + std::to_string(i + 1),
                               {plan.front_jaw.dog_x[i].mm(), -(plan.front_jaw.dog_out.mm() - plan.front_jaw.backing_rear_out.mm())}});
  plan.cover_edge.name = "cover edge";
  fix_cover_edge(plan);
  plan.rear_mounting.name = "rear mounting";
  fix_rear_mounting(d);
}

}  // namespace visewright::layout
