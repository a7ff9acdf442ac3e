// Keys of what turns: the top level, the train, the screws, collars, rear nuts and the drive.
#include <array>

#include "design/key_rows.h"

namespace visewright::design {
namespace {

using namespace rows;

constexpr std::array<View, 2> unit_names{"mm", "in"};
constexpr std::array<View, 4> ways_made{"printed", "laser", "routed", "bought"};
constexpr std::array<View, 2> hand_names{"right", "left"};
constexpr std::array<View, 8> strength_classes{"4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "10.9", "12.9"};
constexpr std::array<View, 2> washer_series{"normal", "large"};
constexpr std::array<View, 3> rear_nut_kinds{"half long nut", "long nut", "hexagon bar"};
constexpr std::array<View, 4> wheel_places{"ends", "left", "right", "centre"};

constexpr KeyRow hands_row() {
  KeyRow row = list(KeyType::hands, "screw", "hand", {}, {1, 2, true},
                    {"\"right\"", "right; with an even count of gears the screw at the right is left-handed",
                     "Hand of the threads, one for both screws or one each, left to right"},
                    field<&Design::screw, &Screw::hand>());
  row.choices = hand_names;
  return row;
}

constexpr KeyRow strength_row() {
  KeyRow row = sized(KeyType::strength, "screw", "strength_class", {100, 1500},
                     {"\"8.8\"", "4.6", "Strength class of the rod, or its yield stress as \"300 MPa\""},
                     field<&Design::screw, &Screw::strength_class>());
  row.choices = strength_classes;
  return row;
}

constexpr std::array all{
    plain(KeyType::text, "", "title", {"\"Bench vise\"", "no title", "Name of the design on every sheet"},
          field<&Design::title>()),
    choice("", "units", unit_names, {"\"mm\"", "mm", "Unit of every length that is written without one"},
           field<&Design::unit>()),
    length(
        "", "opening", {10, 1500},
        {"\"250 mm\"", "what the given screw length allows, else 200 mm", "Largest opening wanted between the linings"},
        field<&Design::opening>()),
    length("", "axis_depth", {20, 500},
           {"\"110 mm\"", "the least that clears bench, pockets, bevel and wheel",
            "Bench top down to the line of the screws"},
           field<&Design::axis_depth>()),
    plain(KeyType::date, "", "date", {"\"2024-05-17\"", "no date", "Date that is printed on the sheets"},
          field<&Design::date>()),

    needed(
        list(KeyType::counts, "train", "teeth", {8, 200}, {2, 63},
             {"[30, 30, 30]", "must be given", "Teeth of each gear, left to right; the first and the last are equal"},
             field<&Design::train, &Train::teeth>())),
    sized(KeyType::millimetres, "train", "module", {0.5, 10},
          {"3", "one of module and diametral_pitch must be given", "Module of the teeth, always in millimetres"},
          field<&Design::train, &Train::module>()),
    number("train", "diametral_pitch", {2.54, 50.8},
           {"8", "one of module and diametral_pitch must be given",
            "Teeth to an inch of diameter, in place of the module"},
           field<&Design::train, &Train::diametral_pitch>()),
    sized(KeyType::angle, "train", "pressure_angle", {10, 35},
          {"20", "20 degrees", "Slope of the tooth flanks on the reference circle"},
          field<&Design::train, &Train::pressure_angle>()),
    list(KeyType::numbers, "train", "profile_shift", {-1, 1.5}, {1, 63, true},
         {"[0.2, 0, 0.2]", "0", "Shift of the teeth outwards, in modules; one for all gears or one each"},
         field<&Design::train, &Train::profile_shift>()),
    length("train", "backlash", {0, 5},
           {"\"0.45 mm\"", "0.10 × module, and 0.15 mm for printed or plywood teeth",
            "Total thinning of the two teeth of a mesh on the reference circles, half each"},
           field<&Design::train, &Train::backlash>()),
    length("train", "face_width", {2, 200},
           {"\"24 mm\"", "the greater of 8 × module and what the collar needs", "Width of the gears"},
           field<&Design::train, &Train::face_width>()),
    lengths("train", "centre_distances", {4, 2000}, {1, 62},
            {"[\"90 mm\", \"90 mm\"]", "tight mesh for the given shifts",
             "Distances between neighbouring axes, left to right"},
            field<&Design::train, &Train::centre_distances>()),
    name("train", "material", Known::material, {"\"PETG\"", "PETG", "What the gears are made of"},
         field<&Design::train, &Train::material>()),
    choice("train", "made_by", ways_made, {"\"printed\"", "printed", "How the gears are made"},
           field<&Design::train, &Train::made_by>()),

    needed(name("screw", "thread", Known::thread,
                {"\"M20\"", "must be given", "Thread of both screws, as \"M20\", \"Tr 24x5\" or \"1-5 Acme\""},
                field<&Design::screw, &Screw::thread>())),
    hands_row(),
    length("screw", "length", {50, 4000},
           {"\"475 mm\"", "what the opening and the stacks at both ends need", "Length of each screw"},
           field<&Design::screw, &Screw::length>()),
    strength_row(),

    name("collar", "nut", Known::nut,
         {"\"hexagon nut M20\"", "the thread's hexagon nut, or hexagon bar where there is none",
          "Nut of the thrust collar"},
         field<&Design::collar, &Collar::nut>()),
    name("collar", "washer", Known::washer, {"\"normal\"", "normal", "Washer that is welded to the collar's nut"},
         field<&Design::collar, &Collar::washer>(), washer_series),
    name("collar", "thrust_washer", Known::washer, {"\"large\"", "large", "Washer between the collar and the wood"},
         field<&Design::collar, &Collar::thrust_washer>(), washer_series),
    length("collar", "pin", {1, 25},
           {"\"5 mm\"", "0.25 × screw, a whole size", "Diameter of the pin through collar and screw"},
           field<&Design::collar, &Collar::pin>()),

    choice("rear_nut", "kind", rear_nut_kinds,
           {"\"half long nut\"", "half long nut; hexagon bar where the thread has no long nut",
            "What the rear nuts are made of"},
           field<&Design::rear_nut, &RearNut::kind>()),
    length("rear_nut.bar", "thickness", {2, 100},
           {"\"10 mm\"", "0.5 × screw", "Thickness of the bar the nut is welded to"},
           field<&Design::rear_nut, &RearNut::bar, &BarSize::thickness>()),
    length("rear_nut.bar", "height", {10, 300}, {"\"60 mm\"", "3 × screw", "Height of that bar"},
           field<&Design::rear_nut, &RearNut::bar, &BarSize::height>()),
    length("rear_nut.bar", "length", {20, 600}, {"\"110 mm\"", "5.5 × screw", "Length of that bar along the jaw"},
           field<&Design::rear_nut, &RearNut::bar, &BarSize::length>()),

    choice("drive", "at", wheel_places,
           {"\"right\"", "ends", "Where the wheels sit: on both screws, on one, or on the middle gear's shaft"},
           field<&Design::drive, &Drive::at>()),
    sized(KeyType::force, "drive", "hand_force", {1, 2000}, {"\"100 N\"", "100 N", "Push of the hand at the rim"},
          field<&Design::drive, &Drive::hand_force>()),
    length("drive.wheel", "diameter", {30, 1000},
           {"\"180 mm\"", "180 mm, less where the bench or the other wheel is near", "Diameter of a hand wheel"},
           field<&Design::drive, &Drive::wheel, &Wheel::diameter>()),
    length("drive.wheel", "bore", {3, 100}, {"\"15 mm\"", "as the journal", "Bore of the wheel"},
           field<&Design::drive, &Drive::wheel, &Wheel::bore>()),
    length("drive.wheel", "hub", {5, 300},
           {"\"45 mm\"", "45 mm, and room for the fingers", "Length of the wheel's hub"},
           field<&Design::drive, &Drive::wheel, &Wheel::hub>()),
    length("drive.wheel", "grip", {10, 300}, {"\"64 mm\"", "64 mm", "Length of the folding grip"},
           field<&Design::drive, &Drive::wheel, &Wheel::grip>()),
};

}  // namespace

std::span<const KeyRow> drive_rows() { return all; }

}  // namespace visewright::design
