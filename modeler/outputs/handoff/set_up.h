// How a part lies on a machine's table, and where its features are then.
#pragma once

#include <string>
#include <vector>

#include "making/workpiece.h"
#include "outputs/facts.h"
#include "outputs/papers/jobs.h"

namespace visewright::outputs::handoff {

/// One way of holding a part. `table` is a frame of the part's: its origin is the datum corner, the low left corner of
/// the stock as whoever stands at the machine sees it, on the table; x along the longer side, z up.
struct SetUp {
  enum class Side : std::uint8_t { first, turned_over, on_edge } side{};
  papers::FaceJob face;  // in the coordinates of the table, raised to the height of the face
  geometry::Placement table;
  double length_mm = 0, width_mm = 0, height_mm = 0;  // of the stock's box: x, y, z
};
[[nodiscard]] std::string_view word(SetUp::Side);

/// A piece or whole that a machine works on.
struct Machined {
  const making::Workpiece* work = nullptr;
  papers::Job job;
  std::string item, stem;
  std::vector<SetUp> set_ups;  // the first is how it lies in its STEP file
};

/// Everything that is made, save what is printed, bought, sawn off another part, there already or finished; and built-up
/// wholes on which something is drilled or routed after joining. First the face with most work; then the one behind it,
/// then edges. A part without such work lies on its largest side.
[[nodiscard]] std::vector<Machined> machined_parts(const Facts&);

}  // namespace visewright::outputs::handoff
