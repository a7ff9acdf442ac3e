// Where every body of an assembly stands, ready to be held against every other; and how two of them can move.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "assembly/assembly.h"
#include "fitup/stack.h"

namespace visewright::fitup {

/// One body of one placed part at opening 0. Turning bodies also as what they pass through in a full turn.
struct Stand {
  std::uint32_t placed = 0, body = 0;
  bool grip_out = false;  // the folding grip stands here twice, folded and out
  std::string name;       // of the body
  std::shared_ptr<const Witness> truth;
  Placement at;
  std::vector<Element> still, turned;
  std::vector<Stack> still_out, turned_out;  // the elements cut square to the way out of the bench
  Box3 still_box, turned_box;
};

/// Out of the bench: the way the jaw opens.
[[nodiscard]] const Placement& out_axis();

/// All bodies of all placed parts in their order; a grip's bodies folded, then out. Spread over the cores.
[[nodiscard]] std::vector<Stand> stands(const assembly::Assembly&);

/// How two bodies move against each other over the whole travel.
enum class Motion : std::uint8_t {
  none,   // stay as they are to each other
  turn,   // one turns beside the other, or both about different axes
  slide,  // one slides out, the other is fixed
  turn_and_slide,
};
[[nodiscard]] Motion motion(const assembly::Placed&, const assembly::Placed&);

}  // namespace visewright::fitup
