// The rules that set the numbers of the jaws, the cover, the axles and the linings.
#pragma once

#include "layout/rules_train.h"

namespace visewright::layout::rules {

inline constexpr Rule lining_thickness{"lining.thickness", "thickness of the jaw linings", "3 mm when nothing is said", practice, "as you have it"};
inline constexpr Rule lining_hole{"lining.hole", "hole in the linings round each screw", "as the bush outside {0}", practice, "follows the bush"};
inline constexpr Rule backing{"front_jaw.backing", "thickness of the backing board",
    "greatest of dog {0} + 20 mm, axle hole + 10 mm and 1.5 × screw {1}, up to the next board", practice, "a thicker board"};
inline constexpr Rule gear_layer{"front_jaw.gear_layer", "thickness of the board the gears sit in",
    "front of the bearing less its depth in the cover, up to a whole size: cover {0}, gears {1} wide", practice, "follows the bearing"};
inline constexpr Rule backing_rear{"front_jaw.backing_rear_out", "rear face of the backing", "front lining {0}", practice, "follows the lining"};
inline constexpr Rule joint{"front_jaw.joint_out", "glue joint of backing and gear layer", "lining {0} + backing {1}", practice, "follows the boards"};
inline constexpr Rule jaw_front{"front_jaw.front_out", "front of the gear layer", "joint {0} + gear layer {1}", practice, "follows the boards"};
inline constexpr Rule jaw_length{"front_jaw.length", "length of the jaw", "spacing {0} + 2 × (half the pocket {1} + 30 mm)", practice, "at least this, for the end webs"};
inline constexpr Rule jaw_below{"front_jaw.below_axis", "wood below the screw line", "half the pocket {0} + 25 mm", practice, "at least this, for the bottom web"};
inline constexpr Rule axis_depth{"axis_depth", "bench top down to the screw line",
    "greatest of top {0} + half the bar {1} + 10 mm, half the pocket {2} + 25 mm + bevel {3}, and half a given wheel + 10 mm", practice,
    "a lower screw line clears the bench"};
inline constexpr Rule jaw_above{"front_jaw.above_axis", "wood above the screw line", "axis depth {0} + what the jaw stands proud", practice, "change top_offset"};
inline constexpr Rule bevel_height{"front_jaw.bevel.height", "height of the bevel on the front top edge",
    "35 mm, less where half the pocket {0} + 25 mm leaves less", practice, "a lower bevel leaves more wood"};
inline constexpr Rule bevel_depth{"front_jaw.bevel.depth", "depth of the bevel", "0.6 × thickness of the jaw", practice, "a shallower bevel spares the landing blocks"};
inline constexpr Rule bush_outside{"bush.outside", "outside of the bushes", "screw {0} + 6 mm", practice, "follows the screw"};
inline constexpr Rule bush_bore{"bush.bore", "bore of the bushes", "screw {0} + 0.15 mm", practice, "its play enters the mesh"};
inline constexpr Rule front_bush_length{"front_jaw.bush_length", "length of the front bush", "backing {0} − thrust recess {1}", practice, "follows the backing"};
inline constexpr Rule thrust_recess{"front_jaw.thrust_recess", "recess for the thrust washer", "washer {0} + 2 mm, up to the next size", practice, "use the next cutter up"};
inline constexpr Rule thrust_recess_depth{"front_jaw.thrust_recess_depth", "depth of that recess", "washer {0}", practice, "the washer ends flush"};
inline constexpr Rule dog_diameter{"front_jaw.dog_holes.diameter", "diameter of the dog holes", "19 mm, or 3/4 in", practice, "as your dogs are"};
inline constexpr Rule dog_depth{"front_jaw.dog_holes.depth", "depth of the dog holes", "60 mm", practice, "as your dogs are"};
inline constexpr Rule dog_out{"front_jaw.dog_holes.out", "line of the dog holes, out from the bench",
    "middle of the backing {0} where it is 18 mm thicker than the dog {1}, else the middle of the jaw", practice, "a thicker backing"};
inline constexpr Rule dog_x{"front_jaw.dog_holes.x", "place of a dog hole along the jaw", "midway between the axles at {0} and {1}", practice, "give positions"};
inline constexpr Rule landing{"front_jaw.landing_block", "length of the blocks glued back for a flat entry",
    "dog {0} + 30 mm where the hole meets the bevel, else none", practice, "a shallower bevel"};
inline constexpr Rule ease{"front_jaw.ease", "broken edges", "2 mm", practice, "as you like them"};
inline constexpr Rule hand_grip_length{"front_jaw.hand_grip_length", "length of the hand grips", "100 mm", practice, "a hand is 90 mm wide"};
inline constexpr Rule hand_grip_width{"front_jaw.hand_grip_width", "width of the hand grips", "20 mm", practice, "room for fingers"};
inline constexpr Rule hand_grip_depth{"front_jaw.hand_grip_depth", "depth of the hand grips", "12 mm", practice, "leave wood below the pockets"};

inline constexpr Rule cover_thickness{"cover.thickness", "thickness of the cover", "8 mm when nothing is said", practice, "6 mm for a small vise"};
inline constexpr Rule toe_in{"front_jaw.toe_in", "how much further the jaw's top stands back towards the bench than its screw line", "0.5 % of the height above the screw line when nothing is said", practice, "plane or shim the lining; the top must touch first"};
inline constexpr Rule cover_rear{"cover.rear_out", "rear face of the cover", "front of the gear layer {0}", practice, "follows the jaw"};
inline constexpr Rule cover_side{"cover.half_length", "cover from the middle to its ends",
    "half the spacing {0} + half the pocket {1} + 22 mm, inside the jaw by 3 mm", practice, "follows the pockets"};
inline constexpr Rule cover_height{"cover.half_height", "cover from the screw line to its edges", "half the pocket {0} + 22 mm", practice, "follows the pockets"};
inline constexpr Rule seat{"cover.seat", "diameter of the bearing seat in the cover",
    "bearing {0} + play for heat: half the growth of the spacing {1} and 0.25 mm, each side", practice, "the cover must float"};
inline constexpr Rule seat_depth{"cover.seat_depth", "depth of the bearing seat from the back", "front of the bearing less rear of the cover {0}", practice, "follows the bearing"};
inline constexpr Rule lip_bore{"cover.lip_bore", "bore of the lip in front of the bearing", "between the lands {0} and {1} of the bearing", practice, "the lip must hold the outer ring"};
inline constexpr Rule axle_hole{"cover.axle_hole", "width of the holes for the axle screws", "screw {0} + 0.5 mm", practice, "more for a long cover"};
inline constexpr Rule axle_slot{"cover.axle_slot", "height of the slots for the axle screws", "hole {0} + 2.5 mm for the wood below", practice, "wood moves across the grain"};
inline constexpr Rule edge_screw{"cover.edge_screw", "edge screws of the cover", "4 mm wood screws", practice, "stainless or brass"};
inline constexpr Rule edge_hole{"cover.edge_hole", "width of the edge screw holes", "screw {0} + 1 mm", practice, "more for a long cover"};
inline constexpr Rule edge_slot{"cover.edge_slot", "height of the edge screw slots", "hole {0} + 1.5 mm", practice, "wood moves across the grain"};
inline constexpr Rule cover_ease{"cover.ease", "broken edge of the cover", "1 mm", practice, "no sharp edge at the hand"};
inline constexpr Rule cover_corner{"cover.corner", "rounded corners of the cover", "8 mm", practice, "no sharp corner at the hand"};

inline constexpr Rule axle_diameter{"axle.diameter", "diameter of the idler axles", "12 mm from module 2.5 up, else 8 mm; inch designs 1/2 and 3/8 in", practice, "as the bearing's bore"};
inline constexpr Rule axle_hole_depth{"axle.hole_depth", "depth of the axle holes in the backing", "less of 2.5 × axle {0} and backing {1} − 10 mm", practice, "a thicker backing"};
inline constexpr Rule axle_front{"axle.front_out", "front end of the axles", "0.3 mm behind the cover {0}", practice, "follows the cover"};
inline constexpr Rule spacer_outside{"axle.spacer_outside", "outside of the idler spacers", "inner land {0} of the bearing", practice, "it must not touch the outer ring"};
inline constexpr Rule spacer_rear{"axle.spacer_rear", "rear spacer of an idler", "gap {0} + half of (face {1} − bearing {2})", practice, "follows the gear"};
inline constexpr Rule spacer_front{"axle.spacer_front", "front spacer of an idler", "from the bearing to the end of the axle {0}", practice, "follows the gear"};
inline constexpr Rule axle_tap{"axle.tap", "cover screw in the axle's end", "5 mm; 4 mm in a thin axle", practice, "follows the axle"};
inline constexpr Rule axle_tap_depth{"axle.tap_depth", "depth of that thread", "3 × screw {0}", practice, "follows the screw"};

inline constexpr const Rule* jaw[] = {&lining_thickness, &lining_hole, &backing, &gear_layer, &backing_rear, &joint, &jaw_front, &jaw_length,
    &jaw_below, &axis_depth, &jaw_above, &bevel_height, &bevel_depth, &bush_outside, &bush_bore, &front_bush_length, &thrust_recess,
    &thrust_recess_depth, &dog_diameter, &dog_depth, &dog_out, &dog_x, &landing, &ease, &hand_grip_length, &hand_grip_width,
    &hand_grip_depth, &cover_thickness, &toe_in, &cover_rear, &cover_side, &cover_height, &seat, &seat_depth, &lip_bore, &axle_hole, &axle_slot,
    &edge_screw, &edge_hole, &edge_slot, &cover_ease, &cover_corner, &axle_diameter, &axle_hole_depth, &axle_front, &spacer_outside,
    &spacer_rear, &spacer_front, &axle_tap, &axle_tap_depth};

}  // namespace visewright::layout::rules
