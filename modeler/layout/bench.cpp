// The bench that stands already, what is in the way, and what the vise needs of it.
#include <algorithm>

#include "layout/rules_bench.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double least_top_behind_notch_mm = 100;

void fix_top(Desk& d) {
  auto& plan = d.plan;
  auto& b = plan.bench;
  const auto& given = d.design.bench.top;
  auto& c = d.choose;
  b.wood = d.material("bench.top.material", given.material, "beech");
  b.top_depth = c.length(rules::top_depth, given.depth, 600);
  b.top_length = c.length(rules::top_length, given.length, plan.front_jaw.length.mm() + 600, {plan.front_jaw.length.id});
  b.notch_length = c.derived(rules::notch_length, plan.rear_jaw.length.mm() + 2 * plan.gaps.moving_to_fixed.mm(),
                             {plan.rear_jaw.length.id, plan.gaps.moving_to_fixed.id});
  b.notch_depth = c.derived(rules::notch_depth, -plan.rear_jaw.rear_out.mm(), {plan.rear_jaw.thickness.id, plan.lining.thickness.id});
  const double left = b.top_depth.mm() - b.notch_depth.mm();
  if (left < least_top_behind_notch_mm)
    d.wrong("bench.top.depth", "the notch leaves only " + units::write_length(units::mm(left), plan.unit) + " of top behind it",
            "a top at least " + units::write_length(units::mm(b.notch_depth.mm() + least_top_behind_notch_mm), plan.unit) + " deep, or a thinner rear jaw",
            place_of(given.depth));
  if (b.top_length.mm() < b.notch_length.mm() - 1e-9)
    d.wrong("bench.top.length", "the bench is shorter than the jaw with its notch, " + units::write_length(b.notch_length.value, plan.unit),
            "a longer bench, or fewer or smaller gears", place_of(given.length));
}

void fix_apron(Desk& d) {
  auto& plan = d.plan;
  auto& b = plan.bench;
  const auto& given = d.design.bench.apron;
  auto& c = d.choose;
  b.has_doubler = given.doubler && given.doubler->value > units::mm(0);
  b.apron_thickness = c.length(rules::apron_thickness, given.thickness, 25);
  b.apron_height = c.length(rules::apron_height, given.height, 100);
  b.doubler = c.length(rules::doubler, given.doubler, 0);
  b.apron_hole = c.derived(rules::apron_hole, plan.screw.stop_length.mm() + 8, {plan.screw.stop_length.id});
}

void fix_obstacles(Desk& d) {
  auto& plan = d.plan;
  const double axis = plan.bench.axis_depth.mm();
  for (const auto& given : d.design.bench.obstacles) {
    BenchPlan::Obstacle o{given.name.value, {}, {}};
    for (std::size_t i = 0; i < 3; ++i) {
      double a = units::in_mm(given.from.value[i]), b = units::in_mm(given.to.value[i]);
      if (i == 2) {  // given downwards from the top
        a = axis - a;
        b = axis - b;
      }
      o.low_mm[i] = std::min(a, b);
      o.high_mm[i] = std::max(a, b);
    }
    plan.bench.obstacles.push_back(o);
  }
}

void fix_use(Desk& d) {
  auto& plan = d.plan;
  auto& c = d.choose;
  const auto& w = plan.wheel;
  plan.use.projection_shut = c.derived(rules::projection, w.grip_out.mm() + w.grip_diameter.mm() / 2, {w.grip_out.id, w.grip_diameter.id});
  plan.use.projection_grip_out = c.derived(rules::projection_out, w.grip_out.mm() + w.grip_length.mm(), {w.grip_out.id, w.grip_length.id});
  plan.use.free_depth = c.derived(rules::free_depth, -plan.screw.tail_out.mm(), {plan.screw.tail_out.id});
  plan.use.clear_width = c.derived(rules::clear_width, plan.train.spacing.mm() - plan.front_jaw.bush_outside.mm() - 10,
                                   {plan.train.spacing.id, plan.front_jaw.bush_outside.id});
}

}  // namespace

void fix_bench(Desk& d) {
  fix_top(d);
  fix_apron(d);
  fix_obstacles(d);
  fix_use(d);
}

}  // namespace visewright::layout
