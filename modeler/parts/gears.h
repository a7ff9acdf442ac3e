// Drive gears on the thrust collars, idlers on bearings: printed in layers.
#pragma once

#include "layout/plan.h"
#include "parts/part.h"

namespace visewright::parts {

// Frame of all gears: origin on the axis, z out, z = 0 at the rear face; the centre of one tooth stands on +x, and so
// does the phase mark on the front face. Placed turned by the gear's phase.

/// A drive gear: flange recess from the rear, the hexagon that the collar's nut drops into (a corner on +x), and the
/// bore through the front wall. `index` counts the gears from the left, from 0. Named "drive gear"; with the side when
/// the two differ.
[[nodiscard]] Part drive_gear(const layout::Plan&, std::size_t index);

/// An idler: the bearing's seat from the rear up to where the bearing stands amid the face width, and a lip before it.
/// Named "idler gear"; with the gear's number, counted from 1, when the idlers differ.
[[nodiscard]] Part idler_gear(const layout::Plan&, std::size_t index);

/// The gear of this index, whatever it is.
[[nodiscard]] Part gear(const layout::Plan&, std::size_t index);

/// Whether two gears are the same part.
[[nodiscard]] bool same_gear(const layout::Gear&, const layout::Gear&);

}  // namespace visewright::parts
