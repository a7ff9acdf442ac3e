// The design file as values: what the maker wrote, each with its place; what was left out is absent.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/fault.h"
#include "units/quantity.h"
#include "units/text.h"

namespace visewright::design {

template <class T>
struct Given {
  T value{};
  base::Place place;
};
template <class T>
using Maybe = std::optional<Given<T>>;

using Length = units::Length;
using Force = units::Force;

/// [train]. Exactly one of `module` and `diametral_pitch` is given. A list of one value stands for all gears.
struct Train {
  Given<std::vector<int>> teeth;
  Maybe<Length> module;
  Maybe<double> diametral_pitch;  // teeth per inch of diameter
  Maybe<units::Angle> pressure_angle;
  Maybe<std::vector<double>> profile_shift;
  Maybe<Length> backlash, face_width;
  Maybe<std::vector<Length>> centre_distances;
  Maybe<std::string> material, made_by;
};

/// [screw]. `hand` holds "right" or "left", one for both or one each, left to right.
struct Screw {
  Given<std::string> thread;
  Maybe<std::vector<std::string>> hand;
  Maybe<Length> length;
  Maybe<std::string> strength_class;
};

struct BarSize {
  Maybe<Length> thickness, height, length;
};

struct Collar {
  Maybe<std::string> nut, washer, thrust_washer;  // designations; washer "normal" or "large"
  Maybe<Length> pin;
};

struct RearNut {
  Maybe<std::string> kind;  // "half long nut", "long nut", "hexagon bar"
  BarSize bar;
};

struct Wheel {
  Maybe<Length> diameter, bore, hub, grip;
};

struct Drive {
  Maybe<std::string> at;  // "ends", "left", "right", "centre"
  Maybe<Force> hand_force;
  Wheel wheel;
};

struct Bevel {
  Maybe<Length> height, depth;
};

struct DogHoles {
  Maybe<Length> diameter, depth;
  Maybe<std::vector<Length>> positions;
};

struct FrontJaw {
  Maybe<std::string> wood;
  Maybe<Length> length, below_axis, top_offset, backing, gear_layer;
  Bevel bevel;
  DogHoles dog_holes;
  Maybe<bool> hand_grips;
  Maybe<double> toe_in;  // percent of the height above the axis
};

struct Mounting {
  Maybe<std::string> screw;
  Maybe<int> count;
};

struct RearJaw {
  Maybe<std::string> core, cap;
  Maybe<Length> thickness, length, height;
  Mounting mounting;
};

struct SheetPart {  // [cover], [lining]
  Maybe<std::string> material;
  Maybe<Length> thickness;
};

struct Axle {
  Maybe<std::string> material;
  Maybe<Length> diameter;
};

struct Bracket {
  Maybe<std::string> material;
  Maybe<Length> thickness, top_leg, down_leg, width;
};

struct BenchTop {
  Maybe<Length> thickness, depth, length;
  Maybe<std::string> material;
};

struct Apron {
  Maybe<Length> thickness, height, setback, doubler;
};

/// A thing that is in the way: two opposite corners, each as [right of the jaw's middle, back from the edge, down from
/// the top].
struct Obstacle {
  Given<std::string> name;
  Given<std::vector<Length>> from, to;
};

struct Bench {
  BenchTop top;
  Apron apron;
  std::vector<Obstacle> obstacles;
};

struct Gaps {
  Maybe<Length> gear_to_wood, gear_axial, moving_to_fixed, rim_to_cover, rim_to_rim, web, end_float;
};

struct Accuracy {
  Maybe<std::string> marking;
  Maybe<Length> mark_error, drill_wander, template_error;
  Maybe<double> template_scale, moisture_swing, temperature_swing;
  Maybe<Length> hole_allowance, kerf, cutter;
};

/// [assume]: the coefficients, absent where the usual value is to be used.
struct Assume {
  Maybe<double> thread_friction, collar_friction, mesh_efficiency;
  Maybe<double> screw_modulus_mpa, wood_modulus_mpa;
  Maybe<double> panel_modulus_mpa, wood_strength_mpa, wood_crushing_mpa, gear_strength_mpa, cover_strength_mpa;
  Maybe<double> pin_strength_mpa, weld_strength_mpa;
  Maybe<double> wood_share, tooth_share, cover_share, withdrawal_share;  // of a strength, that may be used
  Maybe<Length> nut_play, gear_run_out;
  Maybe<Force> lean_force;
};

struct Shop {
  Maybe<std::string> preset;
  Maybe<std::vector<Length>> drills, hole_saws, flat_bits, cutters, print_bed, laser_bed;
};

struct StockPiece {
  Given<std::string> kind, material;
  Given<std::vector<Length>> size;
  Maybe<int> count;
  Maybe<double> price;
};

struct Measured {
  Maybe<std::vector<std::vector<Length>>> axle_centres;  // [x] or [x, z] each
  Maybe<Length> backing, gear_layer, cover, rod_diameter, nut_across_flats;
  Maybe<std::vector<std::string>> made;
};

struct Design {
  Maybe<std::string> title, date;
  units::LengthUnit unit = units::LengthUnit::millimetre;
  Maybe<Length> opening, axis_depth;
  Train train;
  Screw screw;
  Collar collar;
  RearNut rear_nut;
  Drive drive;
  FrontJaw front_jaw;
  RearJaw rear_jaw;
  SheetPart cover, lining;
  Axle axle;
  Bracket bracket;
  Bench bench;
  Gaps gaps;
  Accuracy accuracy;
  Assume assume;
  Shop shop;
  std::vector<StockPiece> stock;
  Measured measured;
};

}  // namespace visewright::design
