// Keys of how well one works, what is assumed, owned, in stock and already made.
#include <array>

#include "design/key_rows.h"

namespace visewright::design {
namespace {

using namespace rows;

constexpr std::array<View, 3> ways_of_marking{"template", "one datum", "one from the next"};
constexpr Range stress{0.1, 5000};
constexpr Range modulus{10, 500000};
constexpr Range share{0.01, 1};
constexpr Range tool{0.3, 300};
constexpr Range bed{20, 5000};
constexpr Items sizes{1, 200};

constexpr std::array all{
    choice("accuracy", "marking", ways_of_marking,
           {"\"template\"", "template", "How the holes of the train are marked"},
           field<&Design::accuracy, &Accuracy::marking>()),
    length("accuracy", "mark_error", {0, 10}, {"\"0.3 mm\"", "0.3 mm", "How far a mark may stand from where it should"},
           field<&Design::accuracy, &Accuracy::mark_error>()),
    length("accuracy", "drill_wander", {0, 10}, {"\"0.2 mm\"", "0.2 mm", "How far a drill may leave its mark"},
           field<&Design::accuracy, &Accuracy::drill_wander>()),
    length("accuracy", "template_error", {0, 10},
           {"\"0.1 mm\"", "0.1 mm", "How far a hole of the template may stand from where it should"},
           field<&Design::accuracy, &Accuracy::template_error>()),
    percent("accuracy", "template_scale", {0, 10},
            {"0.1", "0", "How far every length on the template may be off in proportion"},
            field<&Design::accuracy, &Accuracy::template_scale>()),
    length("accuracy", "hole_allowance", {0, 2}, {"\"0.2 mm\"", "0.2 mm", "What printed holes come out too small"},
           field<&Design::accuracy, &Accuracy::hole_allowance>()),
    length("accuracy", "kerf", {0, 10}, {"\"0.2 mm\"", "0.2 mm", "Width of the laser's cut"},
           field<&Design::accuracy, &Accuracy::kerf>()),
    length("accuracy", "cutter", {0.5, 50}, {"\"6 mm\"", "6 mm", "Diameter of the router's cutter"},
           field<&Design::accuracy, &Accuracy::cutter>()),
    percent("accuracy", "moisture_swing", {0, 20},
            {"4", "4", "Change of the wood's moisture through the year, in percent of its dry weight"},
            field<&Design::accuracy, &Accuracy::moisture_swing>()),
    number("accuracy", "temperature_swing", {0, 80}, {"20", "20", "Change of temperature through the year, in kelvin"},
           field<&Design::accuracy, &Accuracy::temperature_swing>()),

    number("assume", "thread_friction", {0.01, 1}, {"0.15", "0.15", "Friction of the thread"},
           field<&Design::assume, &Assume::thread_friction>()),
    number("assume", "collar_friction", {0.01, 1}, {"0.15", "0.15", "Friction between collar and thrust washer"},
           field<&Design::assume, &Assume::collar_friction>()),
    number("assume", "mesh_efficiency", {0.3, 1}, {"0.97", "0.97", "What a mesh passes on of the torque"},
           field<&Design::assume, &Assume::mesh_efficiency>()),
    number("assume", "screw_modulus_mpa", modulus,
           {"205000", "the catalogue's for steel", "Modulus of elasticity of the screws"},
           field<&Design::assume, &Assume::screw_modulus_mpa>()),
    number("assume", "wood_modulus_mpa", modulus,
           {"14000", "the catalogue's for the wood", "Modulus of elasticity of the front jaw's wood along its grain"},
           field<&Design::assume, &Assume::wood_modulus_mpa>()),
    number("assume", "wood_strength_mpa", stress,
           {"110", "the catalogue's for the wood", "Bending strength of the front jaw's wood"},
           field<&Design::assume, &Assume::wood_strength_mpa>()),
    number("assume", "gear_strength_mpa", stress,
           {"50", "the catalogue's for the gears' material", "Bending strength of the gears' material"},
           field<&Design::assume, &Assume::gear_strength_mpa>()),
    number("assume", "cover_strength_mpa", stress,
           {"62", "the catalogue's for the cover's material", "Bending strength of the cover's material"},
           field<&Design::assume, &Assume::cover_strength_mpa>()),

    number("assume", "panel_modulus_mpa", modulus,
           {"9000", "the catalogue's for the panel", "Modulus of elasticity of the rear jaw's core along the jaw"},
           field<&Design::assume, &Assume::panel_modulus_mpa>()),
    number("assume", "wood_crushing_mpa", stress,
           {"7", "the catalogue's for the wood", "Pressure at which the front jaw's wood crushes across its grain"},
           field<&Design::assume, &Assume::wood_crushing_mpa>()),
    number("assume", "pin_strength_mpa", stress, {"240", "240", "Yield stress of the cross pins"},
           field<&Design::assume, &Assume::pin_strength_mpa>()),
    number("assume", "weld_strength_mpa", stress,
           {"120", "120", "Stress in the throat of a weld that a careful amateur may count on"},
           field<&Design::assume, &Assume::weld_strength_mpa>()),
    number("assume", "wood_share", share, {"0.33", "0.33", "Share of its strength that wood may be loaded to"},
           field<&Design::assume, &Assume::wood_share>()),
    number("assume", "tooth_share", share,
           {"0.24", "0.24 printed, 0.35 otherwise", "Share of its strength that a tooth may be loaded to"},
           field<&Design::assume, &Assume::tooth_share>()),
    number("assume", "cover_share", share, {"0.3", "0.3", "Share of its strength that the cover may be loaded to"},
           field<&Design::assume, &Assume::cover_share>()),
    number("assume", "withdrawal_share", share,
           {"0.2", "0.2", "Share of its ultimate hold that a wood screw may be loaded to"},
           field<&Design::assume, &Assume::withdrawal_share>()),
    length("assume", "nut_play", {0.01, 3},
           {"\"0.24 mm\"", "by the thread's family", "Play of the screw in its nut, on the diameter"},
           field<&Design::assume, &Assume::nut_play>()),
    length("assume", "gear_run_out", {0, 3}, {"\"0.1 mm\"", "0.1 mm", "How far a gear's teeth run out of true"},
           field<&Design::assume, &Assume::gear_run_out>()),
    sized(KeyType::force, "assume", "lean_force", {1, 5000}, {"\"300 N\"", "300 N", "A person leaning on the jaw"},
          field<&Design::assume, &Assume::lean_force>()),

    plain(KeyType::text, "shop", "preset", {"\"small\"", "none", "Name of a ready list of tools"},
          field<&Design::shop, &Shop::preset>()),
    lengths("shop", "drills", tool, sizes, {"[\"6 mm\", \"8 mm\"]", "every size", "Twist drills owned"},
            field<&Design::shop, &Shop::drills>()),
    lengths("shop", "hole_saws", tool, sizes, {"[\"89 mm\", \"100 mm\"]", "every size", "Hole saws owned"},
            field<&Design::shop, &Shop::hole_saws>()),
    lengths("shop", "flat_bits", tool, sizes,
            {"[\"19 mm\", \"65 mm\"]", "every size", "Bits owned that leave a flat floor"},
            field<&Design::shop, &Shop::flat_bits>()),
    lengths("shop", "cutters", tool, sizes, {"[\"6 mm\", \"12 mm\"]", "every size", "Router cutters owned"},
            field<&Design::shop, &Shop::cutters>()),
    lengths("shop", "print_bed", bed, {2, 3},
            {"[\"220 mm\", \"220 mm\", \"250 mm\"]", "no limit", "Size of what the printer can print"},
            field<&Design::shop, &Shop::print_bed>()),
    lengths("shop", "laser_bed", bed, {2, 2},
            {"[\"600 mm\", \"400 mm\"]", "no limit", "Size of what the laser can cut"},
            field<&Design::shop, &Shop::laser_bed>()),

    needed(plain(KeyType::text, "stock", "kind",
                 {"\"board\"", "must be given", "Kind of stock: board, sheet, rod, bar, a designation"},
                 field<&Design::stock, &StockPiece::kind>())),
    needed(plain(KeyType::text, "stock", "material",
                 {"\"beech\"", "must be given", "Its material, or for a rod its thread"},
                 field<&Design::stock, &StockPiece::material>())),
    lengths("stock", "size", {0.1, 20000}, {0, 3},
            {"[\"2000 mm\", \"200 mm\", \"45 mm\"]", "none, for a bought piece", "Its size, longest first"},
            field<&Design::stock, &StockPiece::size>()),
    count("stock", "count", {1, 10000}, {"2", "1", "How many pieces there are"},
          field<&Design::stock, &StockPiece::count>()),
    number("stock", "price", {0, 1000000}, {"18.5", "no price", "Price of one piece, in your own money"},
           field<&Design::stock, &StockPiece::price>()),

    list(KeyType::points, "measured", "axle_centres", {-2000, 2000}, {2, 63},
         {"[[\"-90 mm\"], [\"0.2 mm\", \"-0.1 mm\"], [\"90 mm\"]]", "as designed",
          "Axes of all gears as drilled, [along the jaw] or [along the jaw, above the screw line] each, left to right"},
         field<&Design::measured, &Measured::axle_centres>()),
    length("measured", "backing", {5, 200}, {"\"39.6 mm\"", "as designed", "Thickness of the backing as planed"},
           field<&Design::measured, &Measured::backing>()),
    length("measured", "gear_layer", {5, 200}, {"\"31.8 mm\"", "as designed", "Thickness of the gear layer as planed"},
           field<&Design::measured, &Measured::gear_layer>()),
    length("measured", "cover", {1, 50}, {"\"7.8 mm\"", "as designed", "Thickness of the cover as bought"},
           field<&Design::measured, &Measured::cover>()),
    length("measured", "rod_diameter", {3, 100}, {"\"19.8 mm\"", "as the standard", "Outside diameter of the rod"},
           field<&Design::measured, &Measured::rod_diameter>()),
    length("measured", "nut_across_flats", {5, 200}, {"\"29.7 mm\"", "as the standard", "Collar nut across its flats"},
           field<&Design::measured, &Measured::nut_across_flats>()),
    list(KeyType::texts, "measured", "made", {}, {0, 500},
         {"[\"backing\"]", "nothing", "Names of the parts that are finished"},
         field<&Design::measured, &Measured::made>()),
};

}  // namespace

std::span<const KeyRow> workshop_rows() { return all; }

}  // namespace visewright::design
