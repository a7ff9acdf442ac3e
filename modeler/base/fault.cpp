#include "base/fault.h"

#include <algorithm>
#include <tuple>

namespace visewright::base {

int exit_status(Cause cause) noexcept {
  switch (cause) {
    case Cause::input: return 2;
    case Cause::output: return 3;
    case Cause::geometry: return 4;
    case Cause::interrupted: return 130;
    case Cause::own_mistake: return 70;
  }
  return 70;
}

void in_line_order(Faults& faults) {
  const auto rank = [](const Fault& f) {
    const Place p = f.place.value_or(Place{});
    return std::tuple(!f.place.has_value(), p.text, p.line, p.column);
  };
  std::stable_sort(faults.begin(), faults.end(), [&](const Fault& a, const Fault& b) { return rank(a) < rank(b); });
}

}  // namespace visewright::base
