// The rules of droop, bow, skew, movement and mounting.
#pragma once

#include <array>

#include "analysis/rules_strength.h"

namespace visewright::analysis::rules {

inline constexpr std::string_view trade = "common practice, no source";

inline constexpr Rule droop{"jaw.droop", "how far the jaw hangs at the greatest opening by its own weight",
    "half the play of the bush + lean from play × free length + bending of two screws + half the play of the front bush; a hundredth of the opening as the most", statics,
    "closer bushes, a longer nut block, thicker screws, or a lighter jaw"};
inline constexpr Rule leaned_on{"screw.leaned_on", "bending of the screws when a person leans on the open jaw",
    "half of weight and lean × free length, over the core", statics, "do not lean on the open jaw; thicker screws"};
inline constexpr Rule top_edge{"jaw.top_edge", "how far the jaws part at the top, thin work held at mid-throat",
    "bending of the screws × height; the toe-in and 0.5 mm as the most", statics, "more toe-in, thicker screws, or hold work lower"};
inline constexpr Rule front_bow{"jaw.front_bow", "bow of the front jaw, narrow work in the middle",
    "force × spacing cubed over (48 × modulus × inertia), and shear; pockets taken out", statics, "a thicker backing"};
inline constexpr Rule rear_bow{"jaw.rear_bow", "bow of the rear jaw, narrow work in the middle",
    "force × spacing cubed over (48 × modulus × inertia)", statics, "a thicker rear jaw, or a stiffer core"};
inline constexpr Rule skew_inside{"jaw.skew", "skew over the screws, work halfway between the middle and a screw",
    "difference of the screws' forces over the stiffness of screw and wood", statics, "thicker thrust washers, or clamp in the middle"};
inline constexpr Rule skew_outside{"jaw.skew_outside", "skew over the screws, narrow work at the jaw's end",
    "end float + axial play of the nut + give of the cover", statics, "a packing of the same thickness at the other end"};
inline constexpr Rule skew_backlash{"jaw.skew_from_backlash", "skew when the wheel changes its sense",
    "lead × sum of backlash over the end gear's circumference", statics, "nothing to change: parallelism hardly knows backlash"};
inline constexpr Rule forced_open{"cover.forced_open", "bending of the cover when the whole hand torque tries to open a stuck jaw",
    "half of the torque over the thread's own friction on each bearing; clamped disc over the pocket", "Roark's Formulas for Stress and Strain, from memory",
    "never force the wheel open: free the jaw first; the cover is what breaks"};
inline constexpr Rule mounting_leaned_on{"mounting.leaned_on", "pull on the hardest loaded mounting screw when a person leans on the open jaw",
    "lean × lever × distance over the sum of squared distances, from the notch's lower edge", statics, "more or longer mounting screws"};
inline constexpr Rule apron_section{"bench.apron_section", "bending strength that the holes leave of the apron, doubler counted",
    "section modulus with the hole over that without", statics, "a doubler glued on, three hole diameters beyond each hole"};
inline constexpr Rule jaw_top{"movement.jaw_top", "how far the jaw's top moves against the bench through the year",
    "height above the screw line × movement × change of moisture", "Wood Handbook FPL-GTR-282 chapter 13", "set it flush at mid-season; quarter-sawn wood moves half as much"};
inline constexpr Rule pocket_left{"movement.pocket", "gap from tooth tip to wood when the wood is driest",
    "gap less half the pocket × movement × change of moisture", "Wood Handbook FPL-GTR-282 chapter 13", "a larger gear_to_wood, or quarter-sawn wood"};
inline constexpr Rule cover_play{"movement.cover", "play of the cover's bearing seats against what heat needs",
    "half the growth against the wood + 0.25 mm", statics, "a larger seat"};
inline constexpr Rule gear_growth{"movement.gears", "backlash left when the gears are at their warmest",
    "backlash less 2 × tan of the pressure angle × centre distance × difference of growth × heat", "ISO 21771:2007", "more backlash"};
inline constexpr Rule self_locking{"screw.self_locking", "friction of the thread over what holds the load by itself",
    "friction × π × mean diameter over (lead × cos of half the flank angle)", design_book, "a smaller lead; a vise must not open by itself"};
inline constexpr Rule turns{"drive.turns", "turns of the wheel from shut to the greatest opening", "opening over lead", trade,
    "a larger lead, or a wheel in the middle on a smaller gear"};
inline constexpr Rule dead_turn{"drive.dead_turn", "turn of the wheel that moves nothing when its sense changes", "sum of the backlash over the gear's radius", statics,
    "less backlash, if spacing is exact enough"};
inline constexpr Rule tip_thickness{"train.tip_thickness", "thickness of the thinnest tooth's tip, in modules", "arc on the tip circle", "ISO 21771:2007; 0.25 as the least is common practice",
    "less profile shift"};
inline constexpr Rule root_room{"train.root_room", "length of flank left before a tip meets the mate's root", "start of the involute against the tip's reach, along the line of action",
    "ISO 21771:2007", "more teeth, or shift the small gear outwards"};

inline constexpr std::array<const Rule*, 20> use{&droop, &leaned_on, &top_edge, &front_bow, &rear_bow, &skew_inside, &skew_outside, &skew_backlash,
    &forced_open, &mounting_leaned_on, &apron_section, &jaw_top, &pocket_left, &cover_play, &gear_growth, &self_locking, &turns, &dead_turn,
    &tip_thickness, &root_room};

}  // namespace visewright::analysis::rules
