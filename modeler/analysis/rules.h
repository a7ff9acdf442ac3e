// The rules that judge a Plan without solids.
#pragma once

#include <span>

#include "reasons/rule.h"

namespace visewright::analysis {

namespace rules {
using reasons::Rule;
inline constexpr std::string_view practice = "common practice, no source";

inline constexpr Rule backlash{"train.backlash", "play of the tightest mesh at its real centre distance, on the reference circle",
    "thinning of both teeth plus what the centre distance adds", "ISO 21771:2007; a mesh without play jams",
    "spread the axles or ask for more backlash: it costs dead turn at the wheel, hardly any parallelism"};
inline constexpr Rule contact_ratio{"train.contact_ratio", "teeth in contact on average in the loosest mesh",
    "length of action over base pitch", "ISO 21771:2007; 1.1 as the least is common practice", "bring the axles closer, or take more teeth"};
inline constexpr Rule tip_clearance{"train.tip_clearance", "gap from tooth tips to the mate's root",
    "centre distance less tip and root radius", "ISO 53:1998 gives 0.25 module; half of it as the least is common practice", "spread the axles"};
inline constexpr Rule undercut{"train.undercut", "profile shift that the smallest gear has beyond what undercut asks for",
    "shift less (1 − teeth/2 × sin² of the pressure angle)", "ISO 21771:2007", "shift the gear outwards, or take more teeth"};
inline constexpr Rule rescue{"train.rescue", "how far a hole that was drilled wrong lies beyond what shifted gears make good",
    "shift that the hole asks for beyond undercut, tip, pocket, rim, contact or clearance", "ISO 21771:2007 for the shifts; the limits are common practice",
    "plug the hole and drill it again, or enlarge what is named"};
inline constexpr Rule opening{"screw.opening", "greatest opening against the one asked for", "screw less both stacks and the stop", practice,
    "a longer screw"};
inline constexpr Rule rim_to_cover{"wheel.rim_to_cover", "room for the fingers between rim and cover", "rear of the rim less front of the cover",
    "ISO 13854, from memory: 25 mm for a finger", "a longer hub"};
inline constexpr Rule rim_to_rim{"wheel.rim_to_rim", "room between the two rims", "spacing less the wheel's diameter", practice,
    "smaller wheels, or one wheel"};
inline constexpr Rule rim_to_bench{"wheel.rim_to_bench_top", "how far the rim stays below the bench top, for the knuckles",
    "axis depth less half the wheel", practice, "a smaller wheel, or a lower screw line"};
inline constexpr Rule stop_in_apron{"screw.stop_in_apron", "gap round the end stop in the apron's hole", "half of (hole less end stop)", practice,
    "a larger hole, or a shorter pin"};
inline constexpr Rule end_web{"front_jaw.end_web", "wood left beside the last pocket", "half the jaw less half the spacing and half the pocket", practice,
    "a longer jaw"};
inline constexpr Rule bottom_web{"front_jaw.bottom_web", "wood left below the pockets", "wood below the screw line less half the pocket", practice,
    "more wood below the screw line"};
inline constexpr Rule bevel_web{"front_jaw.bevel_web", "wood left between pockets and bevel", "wood above the screw line less bevel and half the pocket",
    practice, "a lower bevel, or a lower screw line"};
inline constexpr Rule closing_sense{"drive.closing_sense", "which way the driven wheel turns to close: 1 clockwise, 0 anticlockwise",
    "right-hand thread closes clockwise", practice, "put the wheel on a right-hand screw; in the middle, take 5, 9 or 13 gears"};
}  // namespace rules

[[nodiscard]] std::span<const reasons::Rule* const> rules_of_analysis();

}  // namespace visewright::analysis
