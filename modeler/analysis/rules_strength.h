// The rules of what gives way, each a stress that grows with the clamp force.
#pragma once

#include <array>

#include "reasons/rule.h"

namespace visewright::analysis::rules {

using reasons::Rule;
inline constexpr std::string_view design_book = "Shigley's Mechanical Engineering Design, from memory";
inline constexpr std::string_view statics = "statics of rigid bodies and elementary beam theory";

inline constexpr Rule tooth_of_idler{"strength.tooth_of_idler", "bending of an idler's tooth, which is bent both ways in turn",
    "tangential force over (face width × module × form factor); the strength counts 0.7", "Lewis; reversed bending 0.7 as in ISO 6336-5, from memory",
    "wider or larger teeth, a stronger material, or less hand force"};
inline constexpr Rule tooth_of_drive{"strength.tooth_of_drive", "bending of a drive gear's tooth",
    "tangential force over (face width × module × form factor)", "Lewis; Shigley's Mechanical Engineering Design table 14-2", "wider or larger teeth, or a stronger material"};
inline constexpr Rule hexagon_pocket{"strength.hexagon_pocket", "pressure of the collar's hexagon in the drive gear",
    "6 × torque over (depth × across flats squared)", statics, "a thicker collar nut, or denser print"};
inline constexpr Rule collar_pin{"strength.collar_pin", "shear of the pin that ties collar and screw",
    "4 × torque over (π × screw × pin squared)", design_book, "a thicker pin, or one of spring steel"};
inline constexpr Rule lock_screw{"strength.lock_screw", "shear of the dog point that ties the wheel to its journal",
    "torque over half the journal, over the section of the point", design_book, "a larger lock screw, or a cross pin through hub and journal"};
inline constexpr Rule bead{"strength.collar_bead", "shear in the throat of the bead between nut and flange; it carries the flange's friction alone",
    "friction torque over (π/2 × diameter squared × throat × share welded)", design_book, "a larger bead, welded by somebody with practice"};
inline constexpr Rule idler_axle{"strength.idler_axle", "bending of an idler's axle where it leaves the wood",
    "32 × load × lever over (π × diameter cubed), the load twice the tangential force", statics, "a thicker axle"};
inline constexpr Rule rear_nut{"strength.rear_nut_thread", "shear in the rear nut's thread over its engaged length",
    "2 × force over (π × major diameter × engaged length)", design_book, "a longer nut"};
inline constexpr Rule collar_nut{"strength.collar_thread", "shear in the collar nut's thread over its engaged length",
    "2 × force over (π × major diameter × engaged length)", design_book, "a higher nut"};
inline constexpr Rule screw_mid{"strength.screw_mid_throat", "pull, twist and bending in a screw, work at mid-throat",
    "von Mises of pull, twist and half the clamp force × height", "distortion energy; statics of two screws", "thicker screws, a higher strength class, or hold work lower"};
inline constexpr Rule screw_top{"strength.screw_near_top", "pull, twist and bending in a screw, work 15 mm below the jaw's top",
    "von Mises of pull, twist and half the clamp force × height", "distortion energy; statics of two screws", "thicker screws, a higher strength class, or hold work lower"};
inline constexpr Rule screw_dogs{"strength.screw_at_dogs", "pull, twist and bending in a screw, work between dogs on the bench",
    "von Mises of pull, twist and half the clamp force × height", "distortion energy; statics of two screws", "clamp lightly between dogs, or take thicker screws"};
inline constexpr Rule screw_at_pin{"strength.screw_at_pin", "pull in the screw where the collar pin crosses it, work over that screw",
    "force over (core area less pin × core diameter)", design_book, "a thinner pin or a thicker screw"};
inline constexpr Rule washer_on_wood{"strength.washer_on_wood", "pressure of the thrust washer on the backing, work over one screw",
    "force over the ring that presses, less the bush", statics, "a larger or thicker thrust washer, or a harder wood"};
inline constexpr Rule front_jaw_middle{"strength.front_jaw_middle", "bending of the front jaw between the screws, narrow work in the middle",
    "force × spacing over 4, over the section without the pockets", statics, "a thicker backing"};
inline constexpr Rule front_jaw_end{"strength.front_jaw_end", "bending of the front jaw at a screw, narrow work at the jaw's end",
    "force × overhang, over the section at bore, recess and pocket", statics, "do not clamp hard outside the screws; a thicker backing"};
inline constexpr Rule rear_jaw_middle{"strength.rear_jaw_middle", "bending of the rear jaw between the screws, narrow work in the middle",
    "force × spacing over 4, over breadth × thickness squared over 6", statics, "a thicker rear jaw"};
inline constexpr Rule cover_outside{"strength.cover", "bending of the cover where a bearing pushes, narrow work at the jaw's end",
    "clamped disc over the pocket, pressed by the bearing", "Roark's Formulas for Stress and Strain, from memory", "a thicker cover, or clamp between the screws"};
inline constexpr Rule mounting_jaws{"strength.mounting_in_jaws", "pull on the hardest loaded mounting screw, work near the top of the jaws",
    "force × height × distance over the sum of squared distances, from the notch's upper edge", statics, "more or longer mounting screws, or bolts through the top"};
inline constexpr Rule mounting_dogs{"strength.mounting_at_dogs", "pull on the hardest loaded mounting screw, work between dogs on the bench",
    "force × depth of the screw line × distance over the sum of squared distances", statics, "more or longer mounting screws, or bolts through the top"};

inline constexpr std::array<const Rule*, 20> strength{&tooth_of_idler, &tooth_of_drive, &hexagon_pocket, &collar_pin, &lock_screw, &bead,
    &idler_axle, &rear_nut, &collar_nut, &screw_mid, &screw_top, &screw_dogs, &screw_at_pin, &washer_on_wood, &front_jaw_middle, &front_jaw_end,
    &rear_jaw_middle, &cover_outside, &mounting_jaws, &mounting_dogs};

}  // namespace visewright::analysis::rules
