// The rules that set the numbers of the gear train.
#pragma once

#include "reasons/rule.h"

namespace visewright::layout::rules {

using reasons::Rule;
inline constexpr std::string_view practice = "common practice, no source";
inline constexpr std::string_view spur = "ISO 21771:2007";

inline constexpr Rule module{"train.module", "size of the teeth: pitch diameter over tooth count",
    "25.4 mm over the diametral pitch {0}", "ISO 54:1996", "choose a module that a cutter or printer makes well"};
inline constexpr Rule diametral_pitch{"train.diametral_pitch", "teeth to an inch of pitch diameter", "as the design says",
    "ANSI/AGMA 1012, from memory", "choose one of the usual pitches"};
inline constexpr Rule pressure_angle{"train.pressure_angle", "slope of the tooth flank at the pitch circle",
    "20° when nothing is said", "ISO 53:1998", "leave it at 20° unless bought gears differ"};
inline constexpr Rule backlash{"train.backlash", "thinning of the two teeth of a mesh together, on the reference circles",
    "0.10 × module {0} + 0.15 mm for printed or plywood teeth", practice, "ask for more backlash; it hardly costs parallelism"};
inline constexpr Rule teeth{"train.teeth", "number of teeth", "as the design says", practice, "first and last must be equal"};
inline constexpr Rule shift{"train.profile_shift", "rack offset of a gear, in modules", "none unless the design asks for it", spur,
    "shift gears with few teeth outwards"};
inline constexpr Rule rescued_shift{"train.profile_shift", "rack offset of a gear, in modules",
    "the shift that brings each mesh back to its backlash at the distance really drilled, the largest as small as can be", spur,
    "print the gears anew, each marked with its place"};
inline constexpr Rule thinning{"train.thinning", "what one gear's tooth gives up for backlash",
    "half of the backlash {0}", spur, "change the backlash"};
inline constexpr Rule tip{"train.tip_diameter", "outside diameter of a gear", "module {0} × (teeth {1} + 2 + 2 × shift {2})", spur,
    "change module or teeth"};
inline constexpr Rule root{"train.root_diameter", "diameter at the bottom of the teeth",
    "module {0} × (teeth {1} − 2.5 + 2 × shift {2})", spur, "change module or teeth"};
inline constexpr Rule pitch_diameter{"train.pitch_diameter", "reference diameter", "module {0} × teeth {1}", spur,
    "change module or teeth"};
inline constexpr Rule centre_distance{"train.centre_distance", "distance between two neighbouring axles",
    "tight mesh of the two gears for their shifts: module {0}, teeth {1} and {2}", spur,
    "leave the distance out, or shift the gears to suit it"};
inline constexpr Rule measured_distance{"train.centre_distance", "distance between two neighbouring axles",
    "measured on the drilled jaw", practice, "shift the gears to suit the holes"};
inline constexpr Rule centre_x{"train.centre_x", "place of an axle along the jaw, from its middle",
    "from the left screw {0}, less half the spacing {1}", practice, "change the centre distances"};
inline constexpr Rule left_screw{"train.left_screw", "the left screw, from which the axles are measured off", "the datum", practice,
    "nothing to change"};
inline constexpr Rule from_left{"train.from_left", "place of an axle from the left screw", "{0} + centre distance {1}", practice,
    "change the centre distances"};
inline constexpr Rule spacing{"train.spacing", "distance between the two screws", "the last axle stands {0} from the first", practice,
    "change module, teeth or the count of gears"};
inline constexpr Rule operating_angle{"train.operating_pressure_angle", "pressure angle at the real centre distance",
    "cos = base diameters over twice the centre distance {0}", spur, "change the centre distance"};
inline constexpr Rule mesh_backlash{"train.mesh_backlash", "play of a mesh on the reference circle at the real distance",
    "thinning {0} plus what the centre distance {1} adds", spur, "thin the teeth or spread the axles"};
inline constexpr Rule normal_backlash{"train.normal_backlash", "play of a mesh along the line of action",
    "backlash {0} × cos of the pressure angle {1}", spur, "thin the teeth or spread the axles"};
inline constexpr Rule contact_ratio{"train.contact_ratio", "teeth in contact on average",
    "length of action over base pitch, at distance {0}", spur, "more teeth, or axles closer together"};
inline constexpr Rule tip_clearance{"train.tip_clearance", "gap from a tip to the mate's root",
    "centre distance {0} less tip and root radius", spur, "spread the axles"};
inline constexpr Rule phase{"train.phase", "where a gear's tooth stands when the vise is shut",
    "tooth of one gear in the gap of the next, along the row", spur, "nothing to change: it follows from the teeth"};
inline constexpr Rule axial_gap{"train.axial_gap", "gap between a gear and the pocket floor", "1.5 mm when nothing is said",
    practice, "keep at least 1 mm"};
inline constexpr Rule gear_to_wood{"train.gear_to_wood", "gap from tooth tips to the pocket wall",
    "2 mm when nothing is said", practice, "more for wood that moves much"};
inline constexpr Rule face_width{"train.face_width", "width of the gears",
    "greater of 8 × module {0} and flange {1} + nut {2} + 3.5 mm − gap {3}, up to a whole size", practice,
    "wider gears carry more"};
inline constexpr Rule pocket{"front_jaw.pocket", "diameter of the hole a gear runs in",
    "tip {0} + 2 × gear to wood {1}, up to the next size", practice, "use the next cutter up"};
inline constexpr Rule pocket_drilled{"front_jaw.pocket", "diameter of the hole a gear runs in",
    "as drilled for the gear without its rescue: tip for module {0} and teeth {1}, + 2 × gear to wood {2}, up to the next size", practice, "use the next cutter up"};
inline constexpr Rule relief{"front_jaw.relief", "hole that takes the sharp cusp between two pockets away",
    "greater of 8 mm and 4 × module {0}", practice, "any drill near this size"};
inline constexpr Rule gear_rear{"train.gear_rear", "where the gears begin, out from the bench",
    "joint {0} + gap {1}", practice, "change the gap"};
inline constexpr Rule gear_front{"train.gear_front", "where the gears end, out from the bench",
    "rear {0} + face width {1}", practice, "change the face width"};
inline constexpr Rule gear_material{"train.material", "what the gears are made of", "PETG when nothing is said", practice,
    "a tougher plastic for more force"};

inline constexpr const Rule* train[] = {&module, &diametral_pitch, &pressure_angle, &backlash, &teeth, &shift, &rescued_shift, &thinning, &tip,
    &root, &pitch_diameter, &centre_distance, &measured_distance, &centre_x, &left_screw, &from_left, &spacing, &operating_angle, &mesh_backlash,
    &normal_backlash, &contact_ratio, &tip_clearance, &phase, &axial_gap, &gear_to_wood, &face_width, &pocket, &pocket_drilled, &relief,
    &gear_rear, &gear_front, &gear_material};

}  // namespace visewright::layout::rules
