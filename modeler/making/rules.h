// The rules that judge whether the workshop can make it.
#pragma once

#include <span>

#include "reasons/rule.h"

namespace visewright::making {

namespace rules {
using reasons::Rule;
inline constexpr std::string_view practice = "common practice, no source";

inline constexpr Rule tools_owned{"making.tools_owned", "operations for which the tool is at hand",
                                  "operations whose tool, size and machine are owned, against all that want one",
                                  practice,
                                  "see the findings making.tool and making.machine; borrow, buy, or change the size"};
inline constexpr Rule tool{"making.tool", "nearest size owned of the tool that an operation wants",
                           "a guided, pressed or threaded hole within 0.1 mm; a clearance hole up to a tenth larger, "
                           "0.5 to 2 mm; a pilot a tenth either way",
                           practice, "buy or borrow the size, or change the design to one that is owned"};
inline constexpr Rule machine{"making.machine", "machines at hand of those that an operation wants: 1 at hand, 0 not",
                              "as the ready list of the shop says", practice,
                              "have it done by somebody who has the machine"};
inline constexpr Rule shop{"making.shop", "whether the ready list of tools is known: 1 known, 0 not",
                           "as the catalogue of shops says", practice,
                           "name a shop of the catalogue, or list the tools themselves"};
inline constexpr Rule corner{
    "making.inside_corner", "radius of an inside corner that a round cutter has to make",
    "smallest radius of the outline where the cutter runs inside, against the cutter's own",
    "a cutter leaves its radius",
    "square the corner with a chisel, drill a relief hole into it, round the mating part, or take a thinner cutter"};
inline constexpr Rule print_bed{"making.print_bed",
                                "what the print bed holds of a printed part, as a share of its size",
                                "largest scale at which the part fits the bed, turned as it likes",
                                "J. E. Carver 1957, from memory: a rectangle in a rectangle",
                                "print it on a larger bed, take a smaller module or fewer teeth"};
inline constexpr Rule laser_bed{"making.laser_bed", "what the laser's bed holds of a sheet, as a share of its size",
                                "largest scale at which the sheet fits the bed, turned as it likes",
                                "J. E. Carver 1957, from memory: a rectangle in a rectangle",
                                "saw the outline by hand and have only the holes cut, or use a larger bed"};
inline constexpr Rule stock{"making.stock", "pieces that the stock on hand yields, of those that the parts need",
                            "pieces cut with kerf, trimmed ends and the grain's direction kept", practice,
                            "buy what the cut list says is missing"};

inline constexpr const Rule* all[] = {&tools_owned, &tool, &machine, &shop, &corner, &print_bed, &laser_bed, &stock};
}  // namespace rules

[[nodiscard]] std::span<const reasons::Rule* const> rules_of_making();

}  // namespace visewright::making
