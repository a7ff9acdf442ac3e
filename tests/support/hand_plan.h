// A Plan filled in by hand: five gears of 90 mm pitch circle, M20 rod, beech jaws, opening 250. Worked out on paper
// from the rules, not by the program.
#pragma once

#include <cmath>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "layout/plan.h"

namespace visewright::support {

inline layout::Size mm(double value) { return {units::mm(value), 0}; }

inline standards::MaterialRow material(std::string name, standards::MaterialKind kind, double density) {
  return {std::move(name), kind, density, {}, {}, {}, {}, {}, {}, 0.5, 0.5, 0.5, {}};
}

/// A star with straight flanks in place of a gear: its area is z·r·R·sin(π/z).
inline std::shared_ptr<const geometry::Loop> star(int teeth, double tip_mm, double root_mm) {
  std::vector<geometry::Point> corners;
  for (int i = 0; i < 2 * teeth; ++i)
    corners.push_back(geometry::polar(i % 2 == 0 ? tip_mm / 2 : root_mm / 2, units::pi * i / teeth));
  return std::make_shared<const geometry::Loop>(geometry::polygon(corners));
}

/// The rows and the Plan that points at them.
struct HandPlan {
  standards::MaterialRow beech = material("beech", standards::MaterialKind::wood, 0.72);
  standards::MaterialRow panel = material("birch plywood", standards::MaterialKind::panel, 0.68);
  standards::MaterialRow steel = material("steel", standards::MaterialKind::metal, 7.85);
  standards::MaterialRow petg = material("PETG", standards::MaterialKind::plastic, 1.27);
  standards::MaterialRow clear = material("polycarbonate", standards::MaterialKind::plastic, 1.20);
  standards::ThreadRow m20{"M20",
                           standards::ThreadFamily::metric,
                           units::mm(20),
                           units::mm(2.5),
                           units::mm(2.5),
                           units::mm(18.376),
                           units::mm(17.294),
                           units::mm(16.933),
                           244.79,
                           units::degrees(30),
                           {}};
  standards::NutRow nut{"hexagon nut M20", "M20",         false,           false, false, units::mm(30),
                        units::mm(29.16),  units::mm(18), units::mm(16.9), {}};
  standards::NutRow long_nut{"long nut M20",   "M20",         true,          false, false, units::mm(30),
                             units::mm(29.16), units::mm(60), units::mm(60), {}};
  standards::NutRow hexagon_bar{"hexagon bar 30 mm for M20",
                                "M20",
                                false,
                                true,
                                false,
                                units::mm(30),
                                units::mm(29.87),
                                units::mm(16),
                                units::mm(16),
                                {}};
  standards::WasherRow normal{"washer 20 (normal)", "M20", false, units::mm(21), units::mm(37), units::mm(3), {}};
  standards::WasherRow large{"washer 20 (large)", "M20", true, units::mm(21), units::mm(60), units::mm(4), {}};
  standards::BearingRow b6002{"6002", units::mm(15), units::mm(32), units::mm(9), units::mm(9), units::kilograms(0.030),
                              {}};
  standards::BearingRow b6001{"6001", units::mm(12), units::mm(28), units::mm(8), units::mm(8), units::kilograms(0),
                              {}};
  standards::WoodScrewRow long_screw{"wood screw 6 x 90", units::mm(6), units::mm(12), units::mm(90), {}};
  standards::WoodScrewRow short_screw{"wood screw 6 x 40", units::mm(6), units::mm(12), units::mm(40), {}};
  standards::WoodScrewRow thin_screw{"wood screw 4 x 30", units::mm(4), units::mm(8), units::mm(30), {}};
  layout::Plan plan;

  HandPlan() {
    set_train();
    set_screw();
    set_collar();
    set_bearings_and_wheel();
    set_front_jaw();
    set_cover();
    set_rear();
    set_bench();
    set_patterns();
  }
  HandPlan(const HandPlan&) = delete;
  HandPlan& operator=(const HandPlan&) = delete;

 private:
  void set_train() {
    layout::Train& t = plan.train;
    t.module = mm(3);
    t.pressure_angle = {units::degrees(20), 0};
    t.backlash = mm(0.45);
    t.face_width = mm(24);
    t.axial_gap = mm(1.5);
    t.gear_to_wood = mm(2);
    t.relief = mm(12);
    t.spacing = mm(360);
    t.material = &petg;
    t.rear_out = mm(44.5);
    t.front_out = mm(68.5);
    const auto outline = star(30, 96, 82.5);
    for (int i = 0; i < 5; ++i) {
      layout::Gear g;
      g.teeth = {30, 0};
      g.pitch_diameter = mm(90);
      g.tip = mm(96);
      g.root = mm(82.5);
      g.pocket = mm(100);
      g.centre_x = mm(-180 + 90 * i);
      g.outline = outline;
      g.drive = i == 0 || i == 4;
      g.sense = i % 2 == 0 ? 1 : -1;
      t.gears.push_back(g);
    }
  }
  void set_screw() {
    layout::ScrewPlan& s = plan.screw;
    s.thread = &m20;
    s.material = &steel;
    s.diameter = mm(20);
    s.length = mm(475);
    s.tail_out = mm(-344);
    s.shoulder_out = mm(69);
    s.front_out = mm(131);
    s.journal = mm(15);
    s.groove_out = mm(98);
    s.groove_width = mm(6.5);
    s.groove_depth = mm(1);
    s.dimple = mm(4.2);
    s.collar_pin_out = mm(55);
    s.stop_out = mm(-333.5);
    s.stop_pin = mm(5);
    s.stop_length = mm(26);
  }
  void set_collar() {
    layout::CollarPlan& c = plan.collar;
    c.nut[0] = c.nut[1] = &nut;
    c.flange = &normal;
    c.thrust = &large;
    c.across_flats = mm(30);
    c.nut_height = mm(18);
    c.flange_outside = mm(37);
    c.flange_thickness = mm(3);
    c.thrust_outside = mm(60);
    c.thrust_thickness = mm(4);
    c.bevel = mm(3);
    c.pin = mm(5);
    c.pin_length = mm(29.5);
    c.hexagon = mm(30.2);
    c.hexagon_depth = mm(18.5);
    c.flange_recess = mm(38);
    c.flange_recess_depth = mm(1.5);
    c.front_bore = mm(20.6);
  }
  void set_bearings_and_wheel() {
    plan.bearing = {&b6002, mm(15), mm(32), mm(9), mm(20.1), mm(26.9)};
    plan.keeper = {mm(15.2), mm(24), mm(1), mm(20), mm(0.4), mm(69)};
    layout::WheelPlan& w = plan.wheel;
    w.material = &steel;
    w.on_screw = {0, 1};
    w.diameter = mm(180);
    w.hub_diameter = mm(38);
    w.hub_rear_out = mm(86);
    w.hub_front_out = mm(131);
    w.rim_rear_out = mm(111);
    w.rim_thickness = mm(20);
    w.web_thickness = mm(8);
    w.bore = mm(15);
    w.lock_screw = mm(6);
    w.grip_diameter = mm(24);
    w.grip_length = mm(64);
    w.grip_radius = mm(74);
    w.grip_out = mm(144);
  }
  void set_front_jaw() {
    layout::AxlePlan& a = plan.axle;
    a.material = &steel;
    a.diameter = mm(12);
    a.hole_depth = mm(30);
    a.front_out = mm(74.7);
    a.bearing = {&b6001, mm(12), mm(28), mm(8), mm(16.8), mm(23.2)};
    a.spacer_outside = mm(16.8);
    a.spacer_rear = mm(9.5);
    a.spacer_front = mm(14.2);
    a.tap = mm(5);
    a.tap_depth = mm(15);
    layout::FrontJawPlan& j = plan.front_jaw;
    j.wood = &beech;
    j.length = mm(520);
    j.above = mm(110);
    j.below = mm(75);
    j.backing = mm(40);
    j.gear_layer = mm(32);
    j.backing_rear_out = mm(3);
    j.joint_out = mm(43);
    j.front_out = mm(75);
    j.bevel_height = mm(35);
    j.bevel_depth = mm(45);
    j.bush_outside = mm(26);
    j.bush_bore = mm(20.15);
    j.bush_length = mm(36);
    j.thrust_recess = mm(65);
    j.thrust_recess_depth = mm(4);
    j.dog_diameter = mm(19);
    j.dog_depth = mm(60);
    j.dog_out = mm(23);
    j.landing_length = mm(50);
    j.ease = mm(2);
  }
  void set_cover() {
    layout::CoverPlan& c = plan.cover;
    c.material = &clear;
    c.thickness = mm(8);
    c.rear_out = mm(75);
    c.left = mm(-256);
    c.right = mm(256);
    c.top = mm(72);
    c.bottom = mm(-72);
    c.seat = mm(33);
    c.seat_depth = mm(4.3);
    c.lip_bore = mm(24);
    c.axle_hole = mm(5.5);
    c.axle_slot = mm(8);
    c.edge_screw = mm(4);
    c.edge_hole = mm(5);
    c.edge_slot = mm(6.5);
    c.ease = mm(1);
    c.corner = mm(8);
    c.edge_screw_row = &thin_screw;
    plan.lining = {&beech, mm(3), mm(26)};
  }
  void set_rear() {
    layout::RearJawPlan& j = plan.rear_jaw;
    j.core = &panel;
    j.cap = &beech;
    j.length = mm(520);
    j.above = mm(110);
    j.below = mm(75);
    j.thickness = mm(36);
    j.cap_height = mm(25);
    j.rear_out = mm(-39);
    j.front_out = mm(-3);
    j.bush_outside = mm(26);
    j.bush_bore = mm(20.15);
    j.screw = &long_screw;
    j.counterbore = mm(15);
    j.counterbore_depth = mm(8);
    layout::RearNutPlan& n = plan.rear_nut;
    n.kind = "half long nut";
    n.nut[0] = n.nut[1] = &long_nut;
    n.share_of = 2;
    n.across_flats = mm(30);
    n.length = mm(29);
    n.rear_out = mm(-78);
    n.bar_thickness = mm(10);
    n.bar_height = mm(60);
    n.bar_length = mm(110);
    n.bar_bore = mm(22);
    n.bar_rear_out = mm(-49);
    n.bolt_offset = mm(40);
    n.bolt_hole = mm(9);
    n.screw = &short_screw;
    n.bead = mm(4);
    layout::BracketPlan& b = plan.bracket;
    b.material = &steel;
    b.thickness = mm(6);
    b.width = mm(40);
    b.top_leg = mm(45);
    b.down_leg = mm(70);
    b.x = {mm(-75), mm(75)};
    b.slot_width = mm(7);
    b.slot_length = mm(13);
    b.hole = mm(7);
    b.screw = &short_screw;
    b.bead = mm(5);
  }
  void set_bench() {
    layout::BenchPlan& b = plan.bench;
    b.wood = &beech;
    b.top_thickness = mm(60);
    b.top_depth = mm(600);
    b.top_length = mm(1500);
    b.axis_depth = mm(110);
    b.notch_length = mm(526);
    b.notch_depth = mm(39);
    b.has_apron = b.has_doubler = true;
    b.apron_thickness = mm(25);
    b.apron_height = mm(100);
    b.apron_front_out = mm(-88);
    b.doubler = mm(18);
    b.apron_hole = mm(34);
  }
  void set_patterns() {
    plan.screws = {"screws", {{"left", {-180, 0}}, {"right", {180, 0}}}};
    plan.axles = {"axles", {{"axle 2", {-90, 0}}, {"axle 3", {0, 0}}, {"axle 4", {90, 0}}}};
    plan.cusps.name = "cusps";
    plan.dogs.name = "dogs";
    plan.cover_edge.name = "cover edge";
    plan.rear_mounting.name = "rear mounting";
    const double cusp = std::sqrt(50.0 * 50.0 - 45.0 * 45.0);
    for (int i = 0; i < 4; ++i) {
      const double x = -135 + 90 * i;
      plan.cusps.holes.push_back({"cusp " + std::to_string(i + 1) + " top", {x, cusp}});
      plan.cusps.holes.push_back({"cusp " + std::to_string(i + 1) + " bottom", {x, -cusp}});
      plan.front_jaw.dog_x.push_back(mm(x));
      plan.dogs.holes.push_back({"dog " + std::to_string(i + 1), {x, -20}});
    }
    for (const double z : {61.0, -61.0})
      for (const double x : {-245.0, -135.0, -45.0, 45.0, 135.0, 245.0})
        plan.cover_edge.holes.push_back({"edge " + std::to_string(plan.cover_edge.holes.size() + 1), {x, z}});
    const std::vector<double> xs{-240, -200, -120, -40, 40, 120, 200, 240};
    for (std::size_t i = 0; i < xs.size(); ++i)
      plan.rear_mounting.holes.push_back({"mount " + std::to_string(i + 1), {xs[i], i % 2 == 0 ? 68.0 : 92.0}});
  }
};

}  // namespace visewright::support
