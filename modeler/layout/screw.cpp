// Length and opening of the screws, and their end stops.
#include <algorithm>

#include "layout/rules_screw.h"
#include "layout/sections.h"

namespace visewright::layout {
namespace {

constexpr double stop_allowance_mm = 8;

}  // namespace

void fix_screw(Desk& d) {
  auto& plan = d.plan;
  auto& s = plan.screw;
  auto& c = d.choose;
  const double front = s.front_out.mm(), rear = -plan.rear_nut.rear_out.mm();
  const Size pitch = c.catalogue(rules::pitch, "screw.pitch", s.thread->pitch);
  const double run_out = 2 * pitch.mm() + stop_allowance_mm;
  const auto& wanted = d.design.opening;
  const auto& length = d.design.screw.length;
  const bool from_length = length && !wanted;
  const double wish = wanted ? units::in_mm(wanted->value)
                      : from_length ? units::in_mm(length->value) - front - rear - run_out
                                    : 200.0;
  plan.use.opening_wanted = c.length(rules::opening_wanted, wanted, wish);
  s.length = c.length(rules::screw_length, length, c.up(wish + front + rear + run_out, 5, 16),
                      {plan.use.opening_wanted.id, s.front_out.id, plan.rear_nut.rear_out.id, pitch.id});
  plan.use.opening_max = c.derived(rules::opening_max, s.length.mm() - front - rear - run_out,
                                   {s.length.id, s.front_out.id, plan.rear_nut.rear_out.id, pitch.id});
  const double least = wanted ? wish : 20.0;
  if (length && plan.use.opening_max.mm() < least - 1e-9) {
    const std::string needed = units::write_length(units::mm(c.up(least + front + rear + run_out, 5, 16)), plan.unit);
    std::string what = "the screw is too short: it opens to " + units::write_length(plan.use.opening_max.value, plan.unit);
    if (wanted) what += ", and line " + std::to_string(wanted->place.line) + " asks for " + units::write_length(wanted->value, plan.unit);
    d.wrong("screw.length", what, "at least " + needed + ", or a smaller opening", &length->place);
  }
  s.tail_out = c.derived(rules::tail, front - s.length.mm(), {s.front_out.id, s.length.id});
  s.stop_pin = c.derived(rules::stop_pin, plan.collar.pin.mm(), {plan.collar.pin.id});
  s.stop_length = c.derived(rules::stop_length, s.diameter.mm() + 6, {s.diameter.id});
  s.stop_out = c.derived(rules::stop_out, plan.rear_nut.rear_out.mm() - plan.use.opening_max.mm() - s.stop_pin.mm() / 2,
                         {plan.rear_nut.rear_out.id, plan.use.opening_max.id});
}

}  // namespace visewright::layout
