// The rules that set the numbers along the screw: collar, journal, bearing, wheel, nut.
#pragma once

#include "layout/rules_train.h"

namespace visewright::layout::rules {

inline constexpr Rule thread{"screw.thread", "thread of both screws", "as the design says", practice, "choose a thread of the catalogue"};
inline constexpr Rule hand{"screw.hand", "hand of a screw's thread",
    "right; with an even count of gears the right-hand screw is left-handed", practice, "odd counts let both screws be right-handed"};
inline constexpr Rule screw_diameter{"screw.diameter", "outside diameter of the rod", "major diameter of the thread",
    "the thread's standard", "measure the rod"};
inline constexpr Rule pitch{"screw.pitch", "from one turn of the thread to the next", "the thread's standard", "the thread's standard",
    "choose another thread"};
inline constexpr Rule thread_root{"screw.thread_root", "diameter of the rod at the bottom of its thread", "the thread's standard",
    "the thread's standard", "choose another thread"};
inline constexpr Rule nut_across{"collar.across_flats", "collar nut across flats", "greatest size of the nut's standard",
    "the nut's standard", "measure the nut"};
inline constexpr Rule nut_height{"collar.nut_height", "height of the collar nut", "greatest size of the nut's standard; 0.8 × screw for hexagon bar",
    "the nut's standard", "choose another nut"};
inline constexpr Rule flange_outside{"collar.flange_outside", "outside of the collar's washer", "the washer's standard",
    "the washer's standard", "a large washer costs clamp force"};
inline constexpr Rule flange_thickness{"collar.flange_thickness", "thickness of the collar's washer", "the washer's standard",
    "the washer's standard", "choose another washer"};
inline constexpr Rule thrust_outside{"collar.thrust_outside", "outside of the thrust washer on the wood", "the large washer's standard",
    "the washer's standard", "larger spares the wood"};
inline constexpr Rule thrust_thickness{"collar.thrust_thickness", "thickness of the thrust washer", "the large washer's standard",
    "the washer's standard", "choose another washer"};
inline constexpr Rule bevel_leg{"collar.bevel", "groove ground on three flats for the weld", "3 mm each way", practice,
    "follow the welder's advice; weld bare steel only"};
inline constexpr Rule collar_pin{"collar.pin", "pin that ties collar and screw", "0.25 × screw {0}, to a whole size", practice,
    "the pin is the weakest part of the drive by intent"};
inline constexpr Rule collar_pin_length{"collar.pin_length", "length of the collar pin", "across flats {0} − 0.5 mm", practice,
    "it must not stand out of the hexagon"};
inline constexpr Rule collar_pin_out{"collar.pin_out", "where the collar pin sits, out from the bench",
    "middle of the nut: joint {0} + flange {1} + half the nut {2}", practice, "follows the nut"};
inline constexpr Rule hexagon{"collar.hexagon", "hexagon pocket in the drive gear, across flats",
    "nut {0} + 0.2 mm for the print", practice, "print a test pocket first"};
inline constexpr Rule hexagon_depth{"collar.hexagon_depth", "depth of the hexagon pocket", "nut {0} + 0.5 mm", practice, "follows the nut"};
inline constexpr Rule flange_recess{"collar.flange_recess", "recess for the flange in the drive gear's rear face",
    "flange {0} + 1 mm", practice, "follows the washer"};
inline constexpr Rule flange_recess_depth{"collar.flange_recess_depth", "depth of that recess",
    "flange {0} − gap {1}", practice, "follows the washer"};
inline constexpr Rule front_bore{"collar.front_bore", "bore through the drive gear's front wall", "screw {0} + 0.6 mm", practice,
    "follows the screw"};
inline constexpr Rule journal{"screw.journal", "diameter of the turned wheel end",
    "largest bearing bore not above the thread root {0} − 0.5 mm", practice, "a bearing one size down"};
inline constexpr Rule shoulder{"screw.shoulder_out", "where the thread ends and the journal begins, out from the bench",
    "0.5 mm before the greater of gear front {0} and nut front", practice, "follows the gear"};
inline constexpr Rule shaft_relief{"shaft.relief", "recess in the backing that the middle collar's flange turns in", "flange {0} + 2 mm, up to a whole size", practice, "follows the washer"};
inline constexpr Rule shaft_relief_depth{"shaft.relief_depth", "depth of that recess", "2 mm", practice, "the flange must not rub"};
inline constexpr Rule shaft_seat{"shaft.seat", "seat of the shaft's rear bearing in the backing", "outside of the bearing {0}", practice, "bore a trial seat first"};
inline constexpr Rule shaft_seat_depth{"shaft.seat_depth", "depth of the seat from the glue joint", "recess {0} + bearing {1}", practice, "follows the bearing"};
inline constexpr Rule shaft_clearance{"shaft.clearance", "hole behind the inner ring, so that it turns free", "between the lands {0} and {1} of the bearing", practice, "the floor must hold the outer ring"};
inline constexpr Rule shaft_clearance_depth{"shaft.clearance_depth", "depth of that hole from the glue joint", "seat {0} + 2 mm", practice, "follows the seat"};
inline constexpr Rule shaft_shoulder{"shaft.shoulder_out", "where the shaft's rear journal begins, out from the bench", "glue joint {0} − recess {1}", practice, "it rests on the inner ring"};
inline constexpr Rule shaft_rear{"shaft.rear_out", "rear end of the shaft", "shoulder {0} − bearing {1}", practice, "follows the bearing"};
inline constexpr Rule screw_front{"screw.front_out", "front end of the screw", "flush with the hub {0}", practice, "follows the wheel"};
inline constexpr Rule screw_front_plain{"screw.front_out_without_wheel", "front end of a screw that carries no wheel", "flush with the cover: its rear {0} + thickness {1}", practice, "follows the cover"};
inline constexpr Rule shaft_front{"shaft.front_out", "front end of the shaft", "flush with the hub {0}", practice, "follows the wheel"};
inline constexpr Rule screw_length{"screw.length", "length of each screw",
    "opening {0} + front stack {1} + rear stack {2} + two pitches {3} each + 8 mm for the stop, up to a whole size", practice,
    "a longer rod opens wider"};
inline constexpr Rule tail{"screw.tail_out", "tail end of the screw at shut", "front end {0} − length {1}", practice,
    "a shorter rod needs less room"};
inline constexpr Rule opening_wanted{"opening_wanted", "greatest opening asked for", "200 mm when nothing is said", practice,
    "as you need it"};
inline constexpr Rule opening_max{"opening_max", "greatest opening the screw allows",
    "screw {0} − front stack {1} − rear stack {2} − two pitches {3} each − 8 mm for the stop", practice, "a longer screw"};
inline constexpr Rule groove_out{"screw.groove_out", "ring groove for the wheel's lock screw", "hub {0} + 12 mm", practice, "follows the wheel"};
inline constexpr Rule groove_width{"screw.groove_width", "width of the ring groove", "lock screw {0} + 0.5 mm", practice, "follows the lock screw"};
inline constexpr Rule groove_depth{"screw.groove_depth", "depth of the ring groove", "1 mm", practice, "deep enough that the wheel cannot slip off"};
inline constexpr Rule dimple{"screw.dimple", "dimple in the groove for the lock screw's point", "0.7 × lock screw {0}", practice,
    "the groove holds the wheel on, the dimple holds it round"};
inline constexpr Rule stop_pin{"screw.stop_pin", "diameter of the end stop's cross pin", "as the collar pin {0}", practice, "follows the collar pin"};
inline constexpr Rule stop_length{"screw.stop_length", "length of the end stop's cross pin", "screw {0} + 6 mm", practice,
    "it must pass the apron hole with 4 mm all round"};
inline constexpr Rule stop_out{"screw.stop_out", "where the end stop sits at shut",
    "so that it meets the nut {0} at the greatest opening {1}", practice, "follows the screw"};
inline constexpr Rule strength_class{"screw.strength_class", "strength class of the rod", "4.6 when nothing is said", "ISO 898-1",
    "8.8 rod bends later"};
inline constexpr Rule bearing_size{"bearing.size", "size of the wheel-end bearing", "the bearing's standard", "ISO 15", "another bearing of this bore"};
inline constexpr Rule inner_land{"bearing.inner_land", "outside of a bearing's inner ring", "bore {0} + 0.3 × (outside {1} − bore {0})",
    practice, "measure the bearing"};
inline constexpr Rule outer_land{"bearing.outer_land", "inside of a bearing's outer ring", "outside {1} − 0.3 × (outside {1} − bore {0})",
    practice, "measure the bearing"};
inline constexpr Rule end_float{"gaps.end_float", "play of the screw endwise", "0.3 mm, set with shims", practice, "0.2 to 0.5 mm"};
inline constexpr Rule keeper_bore{"keeper.bore", "bore of the keeper ring", "journal {0} + 0.2 mm", practice, "follows the journal"};
inline constexpr Rule keeper_outside{"keeper.outside", "outside of the keeper ring", "screw {0} + 4 mm", practice, "follows the screw"};
inline constexpr Rule keeper_thickness{"keeper.thickness", "thickness of the keeper ring", "1 mm", practice, "1 mm sheet"};
inline constexpr Rule keeper_relief{"keeper.relief_diameter", "front of the keeper relieved to this, to clear the outer ring",
    "inner land {0} of the bearing", practice, "it must not touch the outer ring"};
inline constexpr Rule keeper_relief_depth{"keeper.relief_depth", "depth of that relief", "0.4 mm", practice, "less than the thickness"};
inline constexpr Rule keeper_rear{"keeper.rear_out", "where the keeper sits", "on the shoulder {0}", practice, "follows the shoulder"};
inline constexpr Rule wheel_diameter{"wheel.diameter", "diameter of the hand wheel",
    "180 mm, less where twice the axis depth {0} − 20 mm, or the spacing {1} − 40 mm between two wheels, is less", practice,
    "a smaller wheel, or a lower screw line"};
inline constexpr Rule hub_diameter{"wheel.hub_diameter", "diameter of the wheel's hub", "2.5 × journal {0}, at least 36 mm", practice, "follows the wheel"};
inline constexpr Rule hub_rear{"wheel.hub_rear_out", "rear of the hub", "cover {0} + 3 mm", practice, "3 mm keeps hub and cover apart"};
inline constexpr Rule hub_front{"wheel.hub_front_out", "front of the hub", "hub {0} + its length, 45 mm unless given, and room for the rim", practice, "a longer hub"};
inline constexpr Rule rim_rear{"wheel.rim_rear_out", "rear of the rim", "front of the hub {0} − rim {1}", practice, "a longer hub gives the fingers room"};
inline constexpr Rule rim_thickness{"wheel.rim_thickness", "thickness of the rim", "20 mm", practice, "follows the wheel"};
inline constexpr Rule web_thickness{"wheel.web_thickness", "thickness of the wheel's web", "8 mm", practice, "follows the wheel"};
inline constexpr Rule wheel_bore{"wheel.bore", "bore of the wheel, rebored to the journal", "journal {0}", practice, "follows the journal"};
inline constexpr Rule lock_screw{"wheel.lock_screw", "screw that locks the wheel on its journal", "6 mm, dog point", practice, "one size up for hard use"};
inline constexpr Rule grip_diameter{"wheel.grip_diameter", "diameter of the folding grip", "24 mm", practice, "as it fits the hand"};
inline constexpr Rule grip_length{"wheel.grip_length", "length of the folding grip", "64 mm", practice, "as it fits the hand"};
inline constexpr Rule grip_radius{"wheel.grip_radius", "distance of the grip's hinge from the axis", "half the wheel {0} − 16 mm", practice, "follows the wheel"};
inline constexpr Rule grip_out{"wheel.grip_out", "line of the grip's hinge", "hub {0} + 1 mm + half the grip {1}", practice, "follows the grip"};
inline constexpr Rule hand_force{"drive.hand_force", "push of the hand at the rim", "100 N when nothing is said", practice, "what you can push for a minute"};
inline constexpr Rule rear_nut_kind{"rear_nut.kind", "what the rear nut is made of", "half a long nut; hexagon bar where no standard nut exists", practice, "a whole long nut droops less"};
inline constexpr Rule rear_nut_across{"rear_nut.across_flats", "rear nut across flats", "the nut's standard", "the nut's standard", "measure the nut"};
inline constexpr Rule rear_nut_length{"rear_nut.length", "length of the rear nut", "half a long nut less 1 mm of saw cut; 1.5 × screw {0} for bar", practice, "a longer nut droops less"};
inline constexpr Rule bar_thickness{"rear_nut.bar.thickness", "thickness of the nut block's bar", "half the screw {0}", practice, "follows the screw"};
inline constexpr Rule bar_height{"rear_nut.bar.height", "height of the nut block's bar", "3 × screw {0}", practice, "it must stay below the bench top"};
inline constexpr Rule bar_length{"rear_nut.bar.length", "length of the nut block's bar", "5.5 × screw {0}", practice, "follows the screw"};
inline constexpr Rule bar_bore{"rear_nut.bar_bore", "hole in the bar for the screw", "screw {0} + 2 mm", practice, "follows the screw"};
inline constexpr Rule bar_rear{"rear_nut.bar_rear_out", "rear face of the bar", "rear jaw {0} − bar {1}", practice, "follows the jaw"};
inline constexpr Rule nut_rear{"rear_nut.rear_out", "rear end of the nut", "bar {0} − nut {1}", practice, "follows the bar"};
inline constexpr Rule bolt_offset{"rear_nut.bolt_offset", "place of the bar's screws beside the axis", "2 × screw {0}", practice, "follows the bar"};
inline constexpr Rule bolt_shank{"rear_nut.bolt_shank", "screws that hold the nut block's bar", "the screw's standard", "the screw's standard", "choose another screw"};
inline constexpr Rule bolt_hole{"rear_nut.bolt_hole", "holes in the bar, with play to set the block", "screw {0} + 3 mm", practice, "the play is for setting"};
inline constexpr Rule rear_bead{"rear_nut.bead", "leg of the weld between nut and bar", "4 mm", practice, "follow the welder's advice"};

inline constexpr const Rule* screw[] = {&thread, &hand, &screw_diameter, &pitch, &thread_root, &nut_across, &nut_height, &flange_outside, &flange_thickness,
    &thrust_outside, &thrust_thickness, &bevel_leg, &collar_pin, &collar_pin_length, &collar_pin_out, &hexagon, &hexagon_depth,
    &flange_recess, &flange_recess_depth, &front_bore, &journal, &shoulder, &screw_front, &screw_length, &tail, &opening_wanted,
    &opening_max, &groove_out, &groove_width, &groove_depth, &dimple, &stop_pin, &stop_length, &stop_out, &shaft_relief, &shaft_relief_depth, &shaft_seat, &shaft_seat_depth,
    &shaft_clearance, &shaft_clearance_depth, &shaft_shoulder, &shaft_front, &screw_front_plain, &shaft_rear, &strength_class,
    &bearing_size, &inner_land, &outer_land, &end_float, &keeper_bore, &keeper_outside, &keeper_thickness, &keeper_relief,
    &keeper_relief_depth, &keeper_rear, &wheel_diameter, &hub_diameter, &hub_rear, &hub_front, &rim_rear, &rim_thickness,
    &web_thickness, &wheel_bore, &lock_screw, &grip_diameter, &grip_length, &grip_radius, &grip_out, &hand_force, &rear_nut_kind,
    &rear_nut_across, &rear_nut_length, &bar_thickness, &bar_height, &bar_length, &bar_bore, &bar_rear, &nut_rear, &bolt_offset,
    &bolt_shank, &bolt_hole, &rear_bead};

}  // namespace visewright::layout::rules
