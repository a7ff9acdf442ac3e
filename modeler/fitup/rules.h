// The rules that judge how placed parts fit.
#pragma once

#include <span>

#include "reasons/rule.h"

namespace visewright::fitup {

namespace rules {
using reasons::Rule;
inline constexpr std::string_view practice = "common practice, no source";

// What the maker looks at first, in this order.
inline constexpr Rule jaw_to_bench{"gap.jaw_to_bench", "least gap from the front jaw and its lining to the bench top", "least distance over the travel",
    practice, "make the lining or the rear jaw thicker, or ask for a smaller gap"};
inline constexpr Rule screw_to_obstacle{"gap.screw_to_obstacle", "least gap from the screws to what stands behind the bench edge",
    "least distance over the travel; a screw reaches farthest at opening 0", practice, "take a shorter screw, move the vise, or take the obstacle away"};
inline constexpr Rule stop_to_apron{"gap.stop_to_apron", "least gap from the end stop to the hole in the apron, at any turn", "least distance over the travel",
    practice, "bore the hole larger or take a shorter end-stop pin"};
inline constexpr Rule rim_to_cover{"gap.rim_to_cover", "room for the fingers between the wheel's rim and the cover, at any turn", "least distance",
    practice, "take a longer hub or stand the wheel farther out"};
inline constexpr Rule rim_to_rim{"gap.rim_to_rim", "room between the two wheels with their grips, at any turn of either", "least distance", practice,
    "take smaller wheels or spread the screws"};
inline constexpr Rule wheel_to_bench_top{"gap.wheel_to_bench_top", "how far wheel and grip stay below the bench top, at any turn",
    "height of the bench top less the highest point that they pass", practice, "take a smaller wheel or lower the screws"};
inline constexpr Rule cover_to_gears{"gap.cover_to_gears", "least gap from the cover to the gears, at any turn", "least distance", practice,
    "make the gear layer thicker or the gears narrower"};
inline constexpr Rule gear_to_wood{"gap.gear_to_wood", "least gap from the tooth tips to the wood round the pockets, at any turn", "least distance",
    practice, "bore the pockets larger"};

inline constexpr Rule overlap{"fit.overlap", "volume that two parts would both fill, mm³", "common volume of the two solids", practice,
    "move one of the two, or take wood away where they meet"};
inline constexpr Rule gap{"fit.gap", "least gap between a moving and a fixed part, over the whole travel", "least distance, proved stretch by stretch",
    practice, "move one of the two, make the hole larger, or ask for a smaller gap"};
inline constexpr Rule gap_at_least{"fit.gap_at_least", "gap that a moving and a fixed part keep at least, where their surfaces allow only a bound",
    "lower bound of the distance, proved stretch by stretch", practice, "move one of the two, make the hole larger, or ask for a smaller gap"};
inline constexpr Rule unproved{"fit.unproved", "part of the travel over which a gap is proved", "proved stretches added up over the whole travel", practice,
    "move the two parts farther apart, so that the gap can be proved"};
inline constexpr Rule clear{"fit.clear", "pairs of parts that share no volume and keep their gaps", "counted", practice, "nothing to change"};

inline constexpr Rule press{"fit.press", "difference in diameter between a bore and what is pressed into it", "bore less shaft", practice,
    "bore to the size of what is pressed in"};
inline constexpr Rule sliding{"fit.sliding", "play in diameter of a part in its bore, or the gap where neither is round", "bore less shaft", practice,
    "bore larger than what has to slide or turn in it"};
inline constexpr Rule threaded{"fit.threaded", "length of thread engaged, in diameters", "length along which thread and hole face each other, over the diameter",
    "ISO 4032: nuts of style 1 are about 0.8 diameters high and carry what their bolt carries", "take a longer nut or screw, or drill deeper"};
inline constexpr Rule touching{"fit.touching", "gap between parts that must touch", "least distance", practice, "move the two until they touch"};
inline constexpr Rule bonded{"fit.bonded", "gap between parts that are joined to one", "least distance", practice, "move the two until they touch"};

inline constexpr Rule mesh_gap{"train.mesh_gap", "least gap square to the flanks of two neighbours, on either side, turned through one pitch",
    "angle of play times base radius", "ISO 21771:2007, angular play and normal backlash", "spread the axles or thin the teeth"};
inline constexpr Rule mesh_backlash{"train.mesh_backlash", "play of the tightest mesh on the reference circle, measured on the outlines through one pitch",
    "angle of play times reference radius", "ISO 21771:2007, angular play and normal backlash", "spread the axles or thin the teeth"};
inline constexpr Rule mesh_at_worst{"train.mesh_at_worst_spacing", "least gap of two neighbours when their axles stand as near as the marking may put them",
    "gap through one pitch at the centre distance less the largest error of spacing", practice, "mark with a template, or thin the teeth"};

inline constexpr Rule wall_pocket{"wall.pocket_to_edge", "wood left between a gear pocket and the sides, top, bottom and bevel of the jaw",
    "least distance of what the cutter takes away to the faces", practice, "make the jaw higher or longer, or the bevel smaller"};
inline constexpr Rule wall_dog{"wall.dog_to_pocket", "wood left between a dog hole and a gear pocket or any other hollow",
    "least distance of what both cutters take away", practice, "bore the dog hole less deep or move it along the jaw"};
inline constexpr Rule wall_dog_face{"wall.dog_to_face", "wood left between a dog hole and the faces of the jaw", "least distance of what the bit takes away to the faces",
    practice, "move the dog hole in from the face"};
inline constexpr Rule wall_screw{"wall.screw_to_edge", "wood left between a screw's pilot hole and the nearest edge or hollow, in diameters of the hole",
    "least distance, over the diameter", practice, "move the screw in from the edge"};
inline constexpr Rule wall_other{"wall.hollow_to_hollow", "wood left between two other hollows of a part, or to its faces", "least distance of what both cutters take away",
    practice, "move one of the two"};

inline constexpr Rule removal{"fit.removal", "parts that have no straight way out once those before them are off", "each part drawn out past those that are left",
    practice, "open a way for the part, or make it in two pieces"};
}  // namespace rules

[[nodiscard]] std::span<const reasons::Rule* const> rules_of_fitup();
/// The gaps that a maker asks after first, in the order in which to show them.
[[nodiscard]] std::span<const reasons::Rule* const> named_gaps();

}  // namespace visewright::fitup
