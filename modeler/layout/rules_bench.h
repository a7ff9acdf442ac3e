// The rules that set the numbers of the rear jaw, the brackets, the bench and the gaps.
#pragma once

#include "layout/rules_train.h"

namespace visewright::layout::rules {

inline constexpr Rule rear_thickness{"rear_jaw.thickness", "thickness of the rear jaw", "greater of 30 mm and screw {0} + 14 mm, up to a panel size", practice, "a thicker panel bows less"};
inline constexpr Rule rear_length{"rear_jaw.length", "length of the rear jaw", "as the front jaw {0}", practice, "as the front jaw"};
inline constexpr Rule rear_below{"rear_jaw.below", "rear jaw below the screw line", "as the front jaw {0}", practice, "give rear_jaw.height"};
inline constexpr Rule rear_above{"rear_jaw.above", "rear jaw above the screw line", "flush with the bench top: axis depth {0}", practice, "follows the axis"};
inline constexpr Rule cap_height{"rear_jaw.cap_height", "height of the hardwood cap", "25 mm", practice, "follows the wood"};
inline constexpr Rule rear_front{"rear_jaw.front_out", "front face of the rear jaw", "behind the lining {0}", practice, "follows the lining"};
inline constexpr Rule rear_rear{"rear_jaw.rear_out", "rear face of the rear jaw", "front {0} − thickness {1}", practice, "follows the jaw"};
inline constexpr Rule mounting_screw{"rear_jaw.mounting.screw", "screws that hold the rear jaw", "6 mm wood screws into the notch face", practice, "longer screws hold more"};
inline constexpr Rule mounting_count{"rear_jaw.mounting.count", "how many of them", "a screw about every 65 mm of jaw {0}", practice, "more screws hold more"};
inline constexpr Rule mounting_head{"rear_jaw.mounting.head", "head of the screws that hold the rear jaw", "the screw's standard", "the screw's standard", "choose another screw"};
inline constexpr Rule counterbore{"rear_jaw.counterbore", "counterbore under the lining", "screw head {0} + 3 mm", practice, "follows the screw"};
inline constexpr Rule counterbore_depth{"rear_jaw.counterbore_depth", "depth of the counterbore", "8 mm", practice, "the head must lie below the lining"};
inline constexpr Rule notch_length{"bench.notch_length", "length of the notch in the bench edge", "jaw {0} + 2 × gap {1}", practice, "follows the jaw"};
inline constexpr Rule notch_depth{"bench.notch_depth", "depth of the notch", "rear jaw {0} + lining {1}", practice, "follows the jaw"};
inline constexpr Rule top_thickness{"bench.top.thickness", "thickness of the bench top", "60 mm when nothing is said", practice, "measure your bench"};
inline constexpr Rule top_depth{"bench.top.depth", "depth of the bench top", "600 mm when nothing is said", practice, "measure your bench"};
inline constexpr Rule top_length{"bench.top.length", "length of the bench top", "jaw {0} + 600 mm when nothing is said", practice, "measure your bench"};
inline constexpr Rule apron_thickness{"bench.apron.thickness", "thickness of the apron", "25 mm when nothing is said", practice, "measure your bench"};
inline constexpr Rule apron_height{"bench.apron.height", "height of the apron", "100 mm when nothing is said", practice, "measure your bench"};
inline constexpr Rule apron_setback{"bench.apron.setback", "front of the apron behind the bench edge", "behind the nut {0} by 10 mm", practice, "measure your bench"};
inline constexpr Rule apron_front{"bench.apron.front_out", "front face of the apron", "setback {0} behind the edge", practice, "measure your bench"};
inline constexpr Rule doubler{"bench.apron.doubler", "board glued behind the apron", "none when nothing is said", practice, "a doubler makes up for the holes"};
inline constexpr Rule apron_hole{"bench.apron.hole", "holes in the apron for the screws", "end stop {0} + 8 mm", practice, "4 mm all round the end stop"};
inline constexpr Rule bracket_thickness{"bracket.thickness", "thickness of the bracket plates", "6 mm", practice, "follows the stock"};
inline constexpr Rule bracket_width{"bracket.width", "width of the brackets", "40 mm", practice, "follows the stock"};
inline constexpr Rule bracket_top{"bracket.top_leg", "bracket leg under the bench top", "45 mm, less where an apron at {0} leaves less behind the jaw {1}", practice, "4 mm before the apron"};
inline constexpr Rule bracket_down{"bracket.down_leg", "bracket leg on the back of the jaw", "70 mm", practice, "within the jaw's height"};
inline constexpr Rule bracket_x{"bracket.x", "place of a bracket along the jaw", "half the spacing {0} − half the bar {1} − 15 mm − half its width; one in the middle where two do not fit", practice, "clear of the bars"};
inline constexpr Rule bracket_hole{"bracket.hole", "screw holes in the brackets", "screw + 1 mm", practice, "follows the screw"};
inline constexpr Rule bracket_slot_width{"bracket.slot_width", "width of the slots where the top moves", "as the screw hole {0}", practice, "follows the screw"};
inline constexpr Rule bracket_slot_length{"bracket.slot_length", "length of the slots where the top moves", "screw hole {0} + 6 mm", practice, "wood moves across the grain"};
inline constexpr Rule bracket_bead{"bracket.bead", "leg of the weld in the bracket's corner", "5 mm", practice, "follow the welder's advice"};
inline constexpr Rule moving_to_fixed{"gaps.moving_to_fixed", "least gap between moving and fixed parts", "3 mm when nothing is said", practice, "wood moves; keep it"};
inline constexpr Rule rim_to_cover{"gaps.rim_to_cover", "room for fingers behind the rim", "25 mm", "ISO 13854, from memory", "a longer hub"};
inline constexpr Rule rim_to_rim{"gaps.rim_to_rim", "room between two rims", "40 mm", practice, "smaller wheels"};
inline constexpr Rule web{"gaps.web", "least wood between holes and to faces", "10 mm", practice, "more wood"};
inline constexpr Rule projection{"projection_shut", "how far the vise stands out when shut, grip folded", "front of the grip's line {0} + half the grip {1}", practice, "a shorter hub"};
inline constexpr Rule projection_out{"projection_grip_out", "how far it stands out with the grip out", "grip's line {0} + grip {1}", practice, "a shorter grip"};
inline constexpr Rule free_depth{"free_depth", "room the screws need behind the bench edge at shut", "tail of the screw {0}", practice, "a shorter screw"};
inline constexpr Rule clear_width{"clear_width", "widest work that goes down between the screws", "spacing {0} − bush {1} − 10 mm", practice, "a wider spacing"};
inline constexpr Rule wood{"front_jaw.wood", "wood of the front jaw", "beech when nothing is said", practice, "a hard, straight-grained wood"};
inline constexpr Rule material_choice{"material", "what a part is made of", "the usual material when nothing is said", practice, "name another in the design"};

inline constexpr const Rule* bench[] = {&rear_thickness, &rear_length, &rear_below, &rear_above, &cap_height, &rear_front, &rear_rear,
    &mounting_screw, &mounting_count, &mounting_head, &counterbore, &counterbore_depth, &notch_length, &notch_depth, &top_thickness, &top_depth, &top_length,
    &apron_thickness, &apron_height, &apron_setback, &apron_front, &doubler, &apron_hole, &bracket_thickness, &bracket_width, &bracket_top, &bracket_down,
    &bracket_x, &bracket_hole, &bracket_slot_width, &bracket_slot_length, &bracket_bead, &moving_to_fixed, &rim_to_cover, &rim_to_rim, &web, &projection, &projection_out,
    &free_depth, &clear_width, &wood, &material_choice};

}  // namespace visewright::layout::rules
