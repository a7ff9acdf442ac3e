// Keys of the wooden parts and what is fixed to them: both jaws, cover, linings, axles and brackets.
#include <array>

#include "design/key_rows.h"

namespace visewright::design {
namespace {

using namespace rows;

constexpr std::array all{
    name("front_jaw", "wood", Known::wood, {"\"beech\"", "beech", "Wood of the front jaw"},
         field<&Design::front_jaw, &FrontJaw::wood>()),
    length("front_jaw", "length", {50, 3000},
           {"\"520 mm\"", "spacing + 2 × (half a pocket + 30 mm)", "Length of the front jaw, along its grain"},
           field<&Design::front_jaw, &FrontJaw::length>()),
    length("front_jaw", "below_axis", {10, 500},
           {"\"75 mm\"", "half the largest pocket + 25 mm", "Wood below the line of the screws"},
           field<&Design::front_jaw, &FrontJaw::below_axis>()),
    length("front_jaw", "top_offset", {-50, 50},
           {"\"1 mm\"", "0, flush", "How far the jaw stands above the bench top; negative is below it"},
           field<&Design::front_jaw, &FrontJaw::top_offset>()),
    length(
        "front_jaw", "backing", {10, 200},
        {"\"40 mm\"", "what dog holes, axles and screw need, up to the next board", "Thickness of the backing board"},
        field<&Design::front_jaw, &FrontJaw::backing>()),
    length("front_jaw", "gear_layer", {5, 200},
           {"\"32 mm\"", "what gears and bearings need", "Thickness of the board the gears run in"},
           field<&Design::front_jaw, &FrontJaw::gear_layer>()),
    plain(KeyType::yes_no, "front_jaw", "hand_grips",
          {"true", "false", "Whether hollows for the hands are routed in the jaw's underside"},
          field<&Design::front_jaw, &FrontJaw::hand_grips>()),
    percent("front_jaw", "toe_in", {0, 5},
            {"0.5", "0.5", "How far the clamping face leans in at the top, of its height above the screws"},
            field<&Design::front_jaw, &FrontJaw::toe_in>()),
    length("front_jaw.bevel", "height", {0, 300},
           {"\"35 mm\"", "35 mm, less where the pockets come near",
            "Height of the bevel on the front top edge; 0 for none"},
           field<&Design::front_jaw, &FrontJaw::bevel, &Bevel::height>()),
    length("front_jaw.bevel", "depth", {0, 300},
           {"\"43 mm\"", "0.6 × thickness of the jaw", "Depth of that bevel, back from the front; 0 for none"},
           field<&Design::front_jaw, &FrontJaw::bevel, &Bevel::depth>()),
    length("front_jaw.dog_holes", "diameter", {3, 60},
           {"\"19 mm\"", "19 mm; 3/4 in in an inch file", "Diameter of the dog holes"},
           field<&Design::front_jaw, &FrontJaw::dog_holes, &DogHoles::diameter>()),
    length("front_jaw.dog_holes", "depth", {5, 300},
           {"\"60 mm\"", "60 mm; 2-1/2 in in an inch file", "Depth of the dog holes"},
           field<&Design::front_jaw, &FrontJaw::dog_holes, &DogHoles::depth>()),
    lengths("front_jaw.dog_holes", "positions", {-1500, 1500}, {0, 40},
            {"[\"-135 mm\", \"-45 mm\", \"45 mm\", \"135 mm\"]", "between the gears, clear of the screws",
             "Places of the dog holes from the jaw's middle, right positive; an empty list for none"},
            field<&Design::front_jaw, &FrontJaw::dog_holes, &DogHoles::positions>()),

    name("rear_jaw", "core", Known::wood,
         {"\"birch plywood\"", "birch plywood", "Panel or wood of the rear jaw's core"},
         field<&Design::rear_jaw, &RearJaw::core>()),
    name("rear_jaw", "cap", Known::wood, {"\"beech\"", "as the front jaw", "Wood of the cap on the rear jaw"},
         field<&Design::rear_jaw, &RearJaw::cap>()),
    length("rear_jaw", "thickness", {10, 200},
           {"\"36 mm\"", "the greater of 30 mm and screw + 14 mm, up to a panel size", "Thickness of the rear jaw"},
           field<&Design::rear_jaw, &RearJaw::thickness>()),
    length("rear_jaw", "length", {50, 3000}, {"\"520 mm\"", "as the front jaw", "Length of the rear jaw"},
           field<&Design::rear_jaw, &RearJaw::length>()),
    length("rear_jaw", "height", {30, 1000},
           {"\"185 mm\"", "down as far as the front jaw", "Height of the rear jaw, with its cap"},
           field<&Design::rear_jaw, &RearJaw::height>()),
    name("rear_jaw.mounting", "screw", Known::wood_screw,
         {"\"wood screw 6 x 90\"", "wood screw 6 x 90; wood screw 1/4 x 3-1/2 in an inch file",
          "Screws that hold the rear jaw in the bench"},
         field<&Design::rear_jaw, &RearJaw::mounting, &Mounting::screw>()),
    count("rear_jaw.mounting", "count", {2, 200}, {"8", "one about every 65 mm of jaw", "How many of them"},
          field<&Design::rear_jaw, &RearJaw::mounting, &Mounting::count>()),

    name("cover", "material", Known::material, {"\"polycarbonate\"", "polycarbonate", "Sheet that covers the gears"},
         field<&Design::cover, &SheetPart::material>()),
    length("cover", "thickness", {2, 50}, {"\"8 mm\"", "8 mm", "Thickness of the cover"},
           field<&Design::cover, &SheetPart::thickness>()),

    name("lining", "material", Known::material, {"\"cork rubber\"", "beech", "What the jaws are lined with"},
         field<&Design::lining, &SheetPart::material>()),
    length("lining", "thickness", {0.5, 30}, {"\"3 mm\"", "3 mm", "Thickness of each lining"},
           field<&Design::lining, &SheetPart::thickness>()),

    name("axle", "material", Known::material, {"\"steel\"", "steel", "What the idler axles are made of"},
         field<&Design::axle, &Axle::material>()),
    length("axle", "diameter", {3, 60},
           {"\"12 mm\"", "12 mm from module 2.5 up, else 8 mm; 1/2 and 3/8 in in an inch file",
            "Diameter of the idler axles"},
           field<&Design::axle, &Axle::diameter>()),

    name("bracket", "material", Known::metal,
         {"\"steel\"", "steel", "What the brackets under the bench top are made of"},
         field<&Design::bracket, &Bracket::material>()),
    length("bracket", "thickness", {1, 30}, {"\"6 mm\"", "6 mm", "Thickness of a bracket's plates"},
           field<&Design::bracket, &Bracket::thickness>()),
    length("bracket", "top_leg", {10, 500},
           {"\"45 mm\"", "45 mm, less where the apron is near", "Leg under the bench top, back from the jaw"},
           field<&Design::bracket, &Bracket::top_leg>()),
    length("bracket", "down_leg", {10, 500}, {"\"70 mm\"", "70 mm", "Leg down the back of the rear jaw"},
           field<&Design::bracket, &Bracket::down_leg>()),
    length("bracket", "width", {10, 300}, {"\"40 mm\"", "40 mm", "Width of a bracket along the jaw"},
           field<&Design::bracket, &Bracket::width>()),
};

}  // namespace

std::span<const KeyRow> jaw_rows() { return all; }

}  // namespace visewright::design
