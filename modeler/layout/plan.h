// The Plan: every choice made, each with its reason. Parts only place what stands here.
//
// Distances `out` run towards the person from the face of the rear lining, at opening 0; x runs to the person's right
// from the middle between the screws; z runs up from the screw line. Shapes seen from the front use x right, y up.
#pragma once

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "base/fault.h"
#include "design/design.h"
#include "formulas/rescue.h"
#include "geometry/loop.h"
#include "layout/workshop.h"
#include "reasons/ledger.h"
#include "standards/catalogue.h"

namespace visewright::layout {

using reasons::Count;
using reasons::Ratio;
using reasons::Size;
using reasons::Turn;

/// A named hole of a shared pattern, in the front frame.
struct Hole {
  std::string name;
  geometry::Point at;
};
/// Holes that several parts share. One datum: the middle of the screw line, seen from the front. Parts point at it.
struct Pattern {
  std::string name;
  std::vector<Hole> holes;
  [[nodiscard]] const Hole& hole(std::string_view hole_name) const;
};

struct Gear {
  Count teeth;
  Ratio shift;
  Size thinning, tip, root, pitch_diameter, centre_x, pocket;
  Turn phase;  // of one tooth centre at shut, from +X, anticlockwise as the person sees it
  std::shared_ptr<const geometry::Loop> outline;  // equal gears share one; a tooth centre stands on its +x axis
  bool drive = false;     // sits on a collar's hexagon: the ends, and the one on the wheel's shaft
  bool on_shaft = false;  // the middle one, when the wheel drives it
  int sense = 1;  // of its turning against the first gear's: 1 or −1
};

/// Two neighbouring gears, left one first.
struct Mesh {
  Size centre_distance, backlash, normal_backlash, tip_clearance;
  Turn operating_angle;
  Ratio contact_ratio;
};

struct Train {
  Size module;
  Turn pressure_angle;
  Size backlash;  // total thinning of two teeth
  Size face_width, axial_gap, gear_to_wood, relief;  // relief: diameter of the cusp holes
  std::vector<Gear> gears;
  std::vector<Mesh> meshes;
  Size spacing;  // first to last axis
  std::vector<formulas::Beyond> beyond_rescue;  // holes drilled wrong that no shift of the gears makes good
  const standards::MaterialRow* material = nullptr;
  Size rear_out, front_out;  // of the gears
};

/// A cross hole or step on a screw, measured from its tail end.
struct ScrewPlan {
  const standards::ThreadRow* thread = nullptr;
  const standards::MaterialRow* material = nullptr;
  std::vector<const standards::ThreadRow*> near_sizes;  // of the same family: up to two below and two above, rising
  std::string strength_class;
  Size diameter;   // measured, or the thread's major
  Size length, tail_out, shoulder_out, front_out;
  Size journal;    // diameter
  Size groove_out, groove_width, groove_depth, dimple;  // for the wheel's lock screw
  Size collar_pin_out;                                  // axis of the cross hole
  Size stop_out, stop_pin, stop_length;                 // end stop: axis at shut, diameter, length
  std::array<bool, 2> left_hand{false, false};          // left screw, right screw
  std::array<bool, 2> closes_clockwise{true, true};
};

struct CollarPlan {
  const standards::NutRow* nut[2] = {nullptr, nullptr};  // for the left and the right screw
  const standards::WasherRow* flange = nullptr;
  const standards::WasherRow* thrust = nullptr;
  Size across_flats, nut_height, flange_outside, flange_thickness, thrust_outside, thrust_thickness;
  Size bevel;  // leg of the bead's groove
  Size pin, pin_length;
  Size hexagon, hexagon_depth;             // pocket in the gear
  Size flange_recess, flange_recess_depth; // in the gear's rear face
  Size front_bore;                         // through the gear's front wall
};

struct BearingPlan {
  const standards::BearingRow* row = nullptr;
  Size bore, outside, width, inner_land, outer_land;  // lands: outside of the inner ring, inside of the outer ring
};

struct KeeperPlan {
  Size bore, outside, thickness, relief_diameter, relief_depth, rear_out;
};

struct WheelPlan {
  std::vector<int> on_screw;  // 0 left, 1 right
  bool on_centre = false;
  Size diameter, hub_diameter, hub_rear_out, hub_front_out, rim_rear_out, rim_thickness, web_thickness;
  const standards::MaterialRow* material = nullptr;
  Size bore, lock_screw;
  Size grip_diameter, grip_length, grip_radius;  // radius: of the pivot from the axis
  Size grip_out;  // pivot line
  reasons::Ratio hand_force;  // newtons
};

/// The shaft of a wheel in the middle, from the rod of the screws; its front end is like theirs. Depths are from the
/// glue joint.
struct ShaftPlan {
  Size relief, relief_depth, seat, seat_depth, clearance, clearance_depth, shoulder_out, rear_out, front_out;
};

struct AxlePlan {
  const standards::MaterialRow* material = nullptr;
  Size diameter, hole_depth, front_out;
  BearingPlan bearing;
  Size spacer_outside, spacer_rear, spacer_front;  // lengths
  Size tap, tap_depth;                             // of the cover screw in the axle's end
};

struct FrontJawPlan {
  const standards::MaterialRow* wood = nullptr;
  Size length, above, below, backing, gear_layer;
  Size backing_rear_out, joint_out, front_out;
  Size bevel_height, bevel_depth;
  Size bush_outside, bush_bore, bush_length;
  Size thrust_recess, thrust_recess_depth;
  Size dog_diameter, dog_depth, dog_out;  // dog_out: of its axis
  std::vector<Size> dog_x;
  Size landing_length;  // 0: no block is needed
  Size ease;
  Ratio toe_in;  // percent of the height above the screw line, by which the top touches first
  bool hand_grips = false;
  Size hand_grip_length, hand_grip_width, hand_grip_depth;
};

struct CoverPlan {
  const standards::MaterialRow* material = nullptr;
  Size thickness, rear_out, left, right, top, bottom;  // left and bottom negative
  Size seat, seat_depth, lip_bore;
  Size axle_hole, axle_slot;     // width and length of the slots for axle screws
  Size edge_screw, edge_hole, edge_slot;
  Size ease, corner;
  const standards::WoodScrewRow* edge_screw_row = nullptr;
};

struct LiningPlan {
  const standards::MaterialRow* material = nullptr;
  Size thickness, hole;
};

struct RearJawPlan {
  const standards::MaterialRow* core = nullptr;
  const standards::MaterialRow* cap = nullptr;
  Size length, above, below, thickness, cap_height, rear_out, front_out;
  Size bush_outside, bush_bore;
  const standards::WoodScrewRow* screw = nullptr;
  Size counterbore, counterbore_depth;
};

struct RearNutPlan {
  std::string kind;
  const standards::NutRow* nut[2] = {nullptr, nullptr};
  int share_of = 1;
  Size across_flats, length, rear_out;
  Size bar_thickness, bar_height, bar_length, bar_bore, bar_rear_out;
  Size bolt_offset, bolt_hole;  // two holes at ±offset along x
  const standards::WoodScrewRow* screw = nullptr;
  Size bead;
};

struct BracketPlan {
  const standards::MaterialRow* material = nullptr;
  Size thickness, width, top_leg, down_leg;
  std::vector<Size> x;
  Size slot_width, slot_length, hole;
  const standards::WoodScrewRow* screw = nullptr;
  Size bead;
};

struct BenchPlan {
  const standards::MaterialRow* wood = nullptr;
  Size top_thickness, top_depth, top_length, axis_depth;
  Size notch_length, notch_depth;
  bool has_apron = false, has_doubler = false;
  Size apron_thickness, apron_height, apron_front_out, doubler, apron_hole;  // apron_front_out is negative
  struct Obstacle {
    std::string name;
    std::array<double, 3> low_mm, high_mm;  // X, Y, Z of the model
  };
  std::vector<Obstacle> obstacles;
};

struct GapPlan {
  Size moving_to_fixed, rim_to_cover, rim_to_rim, web, end_float;
};

struct UsePlan {
  Size opening_wanted, opening_max;
  Size projection_shut, projection_grip_out;  // from the bench edge
  Size free_depth;                            // behind the bench edge at shut
  Size clear_width;                           // between the screws
};

struct Plan {
  std::string title;
  units::LengthUnit unit = units::LengthUnit::millimetre;
  reasons::Ledger ledger;
  Train train;
  ScrewPlan screw;
  CollarPlan collar;
  BearingPlan bearing;
  KeeperPlan keeper;
  WheelPlan wheel;
  ShaftPlan shaft;  // all zero unless wheel.on_centre
  AxlePlan axle;
  FrontJawPlan front_jaw;
  CoverPlan cover;
  LiningPlan lining;
  RearJawPlan rear_jaw;
  RearNutPlan rear_nut;
  BracketPlan bracket;
  BenchPlan bench;
  GapPlan gaps;
  UsePlan use;
  AccuracyPlan accuracy;
  AssumePlan assume;
  WorkshopPlan workshop;
  Pattern screws;      // "left", "right"
  Pattern shaft_hole;  // "middle", or none
  Pattern axles;       // "axle 2" … by gear number
  Pattern cusps;       // "cusp 1 top", "cusp 1 bottom" …
  Pattern dogs;        // in the face "top" frame: x right, y back from the jaw's clamping face (negative: out)
  Pattern cover_edge;  // "edge 1" …
  Pattern rear_mounting;  // "mount 1" …
};

/// Design → Plan: the only place where designations are looked up. Numbers that contradict each other, so that no
/// vise exists, are faults; a Plan that makes a bad vise is for the findings.
[[nodiscard]] base::Result<Plan> plan(const design::Design&, const standards::Catalogue&);

}  // namespace visewright::layout
