// Every feature that a machine makes, one line each.
#pragma once

#include <span>
#include <string>

#include "outputs/handoff/set_up.h"

namespace visewright::outputs::handoff {

/// As RFC 4180 says: a heading, then a line a feature, lines end in CR LF. Lengths are millimetres whatever the design
/// shows, for programs read this. x and y count from the low left corner of the stock as it lies in that set-up, z is the
/// height of the face above the table; depth counts from the face. Work that has no place on a face (turning, a bevel, an
/// eased edge, a thread) has lines without x and y. With failing findings every line says so in its last field.
[[nodiscard]] std::string machining_csv(const Facts&, std::span<const Machined>);

}  // namespace visewright::outputs::handoff
