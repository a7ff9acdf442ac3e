// Which tool an operation wants, and which of the tools owned would do.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "layout/plan.h"
#include "making/workpiece.h"
#include "parts/operation.h"
#include "standards/catalogue.h"

namespace visewright::making {

/// What a hole is for, which says how far its size may be off.
enum class Wants : std::uint8_t {
  exact,      // something is guided, pressed or threaded in it: 0.1 mm either way
  clearance,  // something passes through it: larger by a tenth does as well, at least 0.5 mm and at most 2 mm
  about       // a pilot hole for a wood screw: a tenth either way, at least 0.3 mm
};

/// What an operation asks for. `kinds` in order of preference. Sizes are diameters in mm, 0 where none matters; any
/// from `least_mm` to `most_mm` will do. A cutter that follows an outline may be any that is no larger than `most_mm`.
struct ToolNeed {
  std::vector<standards::ToolKind> kinds;
  double size_mm = 0, least_mm = 0, most_mm = 0;
  std::string thread;  // of a tap
};
/// Every operation has a tool; a hole that a thread is cut into wants the tapping size.
[[nodiscard]] ToolNeed tool_for(const parts::Operation&, const Workpiece&, const standards::Catalogue&);

/// Tools at hand: what the design lists, else what the ready list of the shop holds, else every size. A list that is
/// there but empty means that there is none of them.
struct OwnedTools {
  using Sizes = std::optional<std::vector<double>>;
  Sizes drills, flat_bits, hole_saws, cutters, print_bed, laser_bed;
  std::optional<std::vector<std::string>> machines, taps;

  [[nodiscard]] const Sizes* sizes(standards::ToolKind) const;  // null for kinds without sizes
  [[nodiscard]] bool has_machine(std::string_view) const;
};
[[nodiscard]] OwnedTools owned_tools(const layout::Plan&, const standards::Catalogue&);

/// The tool that is taken, and whether it is at hand. When none is, `size_mm` is the size
/// wanted, `kind` the one of which the nearest size is owned, `nearest_mm`; or the one preferred, when none is owned or
/// that is a machine's.
struct ToolChoice {
  standards::ToolKind kind{};
  const standards::ToolRow* row = nullptr;
  double size_mm = 0, wanted_mm = 0;
  bool at_hand = true;
  std::optional<double> nearest_mm;
  std::string thread;
};
[[nodiscard]] ToolChoice choose_tool(const ToolNeed&, const OwnedTools&, const standards::Catalogue&);

}  // namespace visewright::making
