// The order of work: for each part what is done to it, one line a step.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "making/cautions.h"
#include "making/speeds.h"
#include "making/tools.h"

namespace visewright::making {

/// One line of work. Coordinates are those of the operation's face, from its datum.
struct Step {
  enum class Kind : std::uint8_t { stock, operation, join } kind{};
  std::string text;  // "saw 540 × 191 × 44 mm, plane to …"; the operation's name; "glue …"
  const parts::Operation* operation = nullptr;    // set for Kind::operation
  ToolChoice tool;                                // for Kind::operation
  std::string face;                               // empty when the operation has none
  std::optional<geometry::Point> at_mm;           // of an outline: the middle of its box
  double size_mm = 0;                             // diameter, narrower side of an outline, width of an eased edge; or 0
  double length_mm = 0;                           // longer side of an outline; 0 for round things
  std::optional<std::array<double, 2>> along_mm;  // turning: from and to along the axis, from the rear end
  std::optional<double> depth_mm;                 // blind depth; absent: right through
  double through_mm = 0;                          // thickness there, when it goes through
  bool flat_floor = false;
  std::optional<SpeedRange> speed;
  std::vector<const Caution*> cautions;
};
struct PartSteps {
  std::string part, material;
  std::uint32_t of = 0;  // index of the assembly's part
  int count = 0;
  bool whole = false;  // built up from parts before it
  std::vector<Step> steps;
};

/// Whether doing `first` would take away the material that the centre of `second` stands on: then it must come after.
/// A shallow recess leaves a floor for the centre of a deeper hole; the deeper hole leaves none for the recess's
/// cutter.
[[nodiscard]] bool takes_centre(const parts::Operation& first, const parts::Operation& second, const Workpiece&);

/// The operations of a workpiece as indices, in an order to work in: as the part has them, save that holes come before
/// what takes their centre, threads after their holes, turning before cross holes, easing and treatment last.
[[nodiscard]] std::vector<std::size_t> work_order(const Workpiece&);

/// Steps of everything that is not finished, bought as it is, or standing already; members before their whole.
[[nodiscard]] std::vector<PartSteps> order_of_work(const std::vector<Workpiece>&, const layout::Plan&,
                                                   const OwnedTools&, const standards::Catalogue&);

}  // namespace visewright::making
