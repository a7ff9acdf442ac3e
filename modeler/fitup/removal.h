// Can the vise be taken apart? Each part needs a straight way out once those before it are off.
#pragma once

#include <map>

#include "fitup/stand.h"
#include "reasons/finding.h"

namespace visewright::fitup {

/// One step of taking apart: what comes off, which way.
struct TakenOff {
  std::uint32_t placed;
  Vector way;
};

struct Removal {
  std::vector<TakenOff> order;       // every part that has a way out, in an order in which each has
  std::vector<std::uint32_t> stuck;  // the others; the bench and what stands already are not asked
  std::map<std::uint32_t, std::vector<std::uint32_t>> shut_by;  // of those that are stuck: what stands in each way tried
};

/// At opening 0, grips folded. Along the way out a part of the jaw leaves the whole of what moves; across it, and when it is
/// fixed, what it has a fit with. Whichever part can leaves, the outermost first; when none can alone, one with all that is pressed, pinned,
/// screwed or glued to it. Taking one off never shuts another's way, so the order does not change who is stuck.
[[nodiscard]] Removal taken_apart(const assembly::Assembly&, const std::vector<Stand>&);

[[nodiscard]] std::vector<reasons::Finding> removal_findings(const assembly::Assembly&, const std::vector<Stand>&);

}  // namespace visewright::fitup
