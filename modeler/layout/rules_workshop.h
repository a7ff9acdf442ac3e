// The rules behind what is assumed of materials, friction and the maker's accuracy.
#pragma once

#include "layout/rules_train.h"

namespace visewright::layout::rules {

inline constexpr std::string_view catalogue_row = "the catalogue's row for the material";

inline constexpr Rule marking{"accuracy.marking", "how the holes of the train are marked", "one template when nothing is said", practice, "drill every part through one template"};
inline constexpr Rule mark_error{"accuracy.mark_error", "how far a mark may stand from where it should", "0.3 mm when nothing is said", practice, "mark with a knife and a square, or use a template"};
inline constexpr Rule drill_wander{"accuracy.drill_wander", "how far a drill may leave its mark", "0.2 mm when nothing is said", practice, "a pilot hole, a drill press, a brad point"};
inline constexpr Rule template_error{"accuracy.template_error", "how far a hole of the template may stand from where it should", "0.1 mm when nothing is said", practice, "have the template cut by machine"};
inline constexpr Rule template_scale{"accuracy.template_scale", "how much longer or shorter every length of the template may be", "0 % when nothing is said", practice, "measure the check bar and set the printer's correction"};
inline constexpr Rule moisture_swing{"accuracy.moisture_swing", "change of the wood's moisture through the year", "4 % when nothing is said", "Wood Handbook FPL-GTR-282 chapter 4, from memory", "keep the shop's air steady"};
inline constexpr Rule temperature_swing{"accuracy.temperature_swing", "change of temperature through the year", "20 K when nothing is said", practice, "give your shop's own"};
inline constexpr Rule hole_allowance{"accuracy.hole_allowance", "what printed holes come out too small", "0.2 mm when nothing is said", practice, "print a coupon and measure it"};
inline constexpr Rule kerf{"accuracy.kerf", "width of the laser's cut", "as the design says", practice, "cut a coupon and measure it"};
inline constexpr Rule cutter{"accuracy.cutter", "diameter of the router's cutter", "as the design says", practice, "follows the cutter"};

inline constexpr Rule thread_friction{"assume.thread_friction", "friction of the thread", "0.15 when nothing is said", "Shigley's Mechanical Engineering Design, steel on steel lightly oiled 0.12 to 0.20, from memory", "grease the screws"};
inline constexpr Rule collar_friction{"assume.collar_friction", "friction between collar and thrust washer", "0.15 when nothing is said", "Shigley's Mechanical Engineering Design, from memory", "grease the washer, or take a bronze one"};
inline constexpr Rule mesh_efficiency{"assume.mesh_efficiency", "share of the torque that a mesh passes on", "0.97 when nothing is said", practice, "clean, dry teeth"};
inline constexpr Rule screw_modulus{"assume.screw_modulus", "modulus of elasticity of the screws", "205 000 MPa, steel", "Shigley's Mechanical Engineering Design, from memory", "follows the material"};
inline constexpr Rule screw_yield{"assume.screw_yield", "yield stress of the rod", "10 × the two figures of the strength class", "ISO 898-1:2013, from memory", "a rod of a higher class"};
inline constexpr Rule wood_modulus{"assume.wood_modulus", "modulus of elasticity of the front jaw along its grain", "as the wood's row, else 10 000 MPa", catalogue_row, "a stiffer wood"};
inline constexpr Rule panel_modulus{"assume.panel_modulus", "modulus of elasticity of the rear jaw's core along the jaw", "as the panel's row, else 8000 MPa", catalogue_row, "a stiffer panel"};
inline constexpr Rule wood_strength{"assume.wood_strength", "bending strength of the front jaw's wood", "as the wood's row, else 60 MPa", catalogue_row, "a stronger wood"};
inline constexpr Rule wood_crushing{"assume.wood_crushing", "pressure at which the front jaw's wood crushes across its grain", "as the wood's row, else 4 MPa", catalogue_row, "a harder wood"};
inline constexpr Rule gear_strength{"assume.gear_strength", "bending strength of the gears' material", "as the material's row, else 40 MPa", catalogue_row, "a stronger material"};
inline constexpr Rule cover_strength{"assume.cover_strength", "bending strength of the cover's material", "as the material's row, else 40 MPa", catalogue_row, "a stronger sheet"};
inline constexpr Rule pin_strength{"assume.pin_strength", "yield stress of the cross pins", "240 MPa, mild steel", practice, "a pin of spring steel"};
inline constexpr Rule weld_strength{"assume.weld_strength", "stress in a weld's throat that may be counted on", "120 MPa when nothing is said", practice, "let somebody with practice weld it"};
inline constexpr Rule wood_share{"assume.wood_share", "share of its strength that wood may be loaded to", "0.33: long loads, knots and sloping grain", practice, "clear, straight-grained wood"};
inline constexpr Rule tooth_share{"assume.tooth_share", "share of its strength that a tooth may be loaded to", "0.24 for printed teeth (layers, creep, wear), 0.35 for others", practice, "print a trial gear and load it"};
inline constexpr Rule cover_share{"assume.cover_share", "share of its strength that the cover may be loaded to", "0.3: notches and long loads craze plastics", practice, "a thicker cover"};
inline constexpr Rule withdrawal_share{"assume.withdrawal_share", "share of its ultimate hold that a wood screw may be loaded to", "0.2: a fifth", practice, "more screws, or bolts"};
inline constexpr Rule nut_play{"assume.nut_play", "play of the screw in its nut, on the diameter", "0.24 mm for metric and unified, 0.45 mm for trapezoidal and Acme threads", "ISO 965-3 6g/6H and ISO 2903 7e/7H, middle of the range, from memory", "a nut that fits the rod closely"};
inline constexpr Rule gear_run_out{"assume.gear_run_out", "how far a gear's teeth run out of true", "0.1 mm for printed gears", practice, "print gears flat, on a level bed"};
inline constexpr Rule lean_force{"assume.lean_force", "a person leaning on the jaw", "300 N when nothing is said", practice, "do not stand on the vise"};

inline constexpr const Rule* workshop[] = {&marking, &mark_error, &drill_wander, &template_error, &template_scale, &moisture_swing,
    &temperature_swing, &hole_allowance, &kerf, &cutter, &thread_friction, &collar_friction, &mesh_efficiency, &screw_modulus, &screw_yield,
    &wood_modulus, &panel_modulus, &wood_strength, &wood_crushing, &gear_strength, &cover_strength, &pin_strength, &weld_strength, &wood_share,
    &tooth_share, &cover_share, &withdrawal_share, &nut_play, &gear_run_out, &lean_force};

}  // namespace visewright::layout::rules
