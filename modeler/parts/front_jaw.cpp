#include "parts/front_jaw.h"

#include <cmath>
#include <tuple>

#include "parts/compose.h"
#include "parts/fasteners.h"

namespace visewright::parts {
namespace {

using geometry::Placement;
using geometry::Point;
using layout::Hole;
using layout::Plan;

double height_mm(const Plan& plan) { return plan.front_jaw.below.mm() + plan.front_jaw.above.mm(); }
double thickness_mm(const Plan& plan) { return plan.front_jaw.backing.mm() + plan.front_jaw.gear_layer.mm(); }

Board board(const Plan& plan, double thickness) {
  const double length = plan.front_jaw.length.mm(), height = height_mm(plan);
  return {plan.front_jaw.wood,
          {-length / 2, -plan.front_jaw.below.mm(), 0},
          {length, height, thickness},
          rough(length, height, thickness)};
}

/// Recesses to put the hands in, from below at both ends.
void add_hand_grips(const Plan& plan, std::vector<Operation>& work) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const Face face = bottom(-jaw.below.mm());
  const double width = jaw.hand_grip_width.mm(), half = (jaw.hand_grip_length.mm() - width) / 2;
  const double middle = jaw.length.mm() / 2 - jaw.hand_grip_length.mm() / 2 - width;
  for (const double side : {-1.0, 1.0}) {
    const Point a = on(face, {side * middle - half, 0, jaw.backing.mm() / 2}),
                b = on(face, {side * middle + half, 0, jaw.backing.mm() / 2});
    work.push_back(because({side < 0 ? "hand grip, left" : "hand grip, right",
                            Rout{face, geometry::region(geometry::slot(a, b, width)), jaw.hand_grip_depth.mm()},
                            {},
                            {}},
                           plan, jaw.hand_grip_depth));
  }
}

/// From the widest to the narrowest, so that each cutter still finds the centre.
void add_shaft_seat(const Plan& plan, std::vector<Operation>& work) {
  const layout::ShaftPlan& s = plan.shaft;
  const Face face = front(plan.front_jaw.backing.mm());
  const std::tuple<const char*, const layout::Size*, const layout::Size*> steps[] = {
      {"recess for the flange, ", &s.relief, &s.relief_depth},
      {"bearing seat, ", &s.seat, &s.seat_depth},
      {"clearance behind the bearing, ", &s.clearance, &s.clearance_depth}};
  for (const Hole& hole : plan.shaft_hole.holes)
    for (const auto& [what, diameter, depth] : steps)
      work.push_back(follows(because(recess(what + hole.name, face, hole.at, diameter->mm(), depth->mm()), plan, *diameter),
                             plan.shaft_hole, hole));
}

/// The recess comes before the bore, whose cutter would take away its centre.
Part backing(const Plan& plan) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const Face face = front(jaw.backing.mm());
  std::vector<Operation> work;
  for (const Hole& hole : plan.axles.holes)
    work.push_back(follows(
        because(drill("hole for " + hole.name, face, hole.at, plan.axle.diameter.mm(), plan.axle.hole_depth.mm()), plan,
                plan.axle.hole_depth),
        plan.axles, hole));
  for (const Hole& hole : plan.screws.holes)
    work.push_back(follows(because(recess("thrust recess, " + hole.name, face, hole.at, jaw.thrust_recess.mm(),
                                          jaw.thrust_recess_depth.mm()),
                                   plan, jaw.thrust_recess),
                           plan.screws, hole));
  for (const Hole& hole : plan.screws.holes)
    work.push_back(follows(
        because(drill("bore for the bush, " + hole.name, face, hole.at, jaw.bush_outside.mm()), plan, jaw.bush_outside),
        plan.screws, hole));
  add_shaft_seat(plan, work);
  if (jaw.hand_grips) add_hand_grips(plan, work);
  return made_of("front jaw backing", board(plan, jaw.backing.mm()), std::move(work));
}

/// The hole of a pattern that a gear turns about.
std::pair<const layout::Pattern*, const Hole*> axis_of(const Plan& plan, std::size_t gear) {
  if (gear == 0) return {&plan.screws, &plan.screws.holes.front()};
  if (gear + 1 == plan.train.gears.size()) return {&plan.screws, &plan.screws.holes.back()};
  if (plan.train.gears[gear].on_shaft) return {&plan.shaft_hole, &plan.shaft_hole.holes.front()};
  return {&plan.axles, &plan.axles.hole("axle " + std::to_string(gear + 1))};
}

/// Cusp holes come before the pockets that cross at their centres.
Part gear_layer(const Plan& plan) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const Face face = front(jaw.gear_layer.mm());
  std::vector<Operation> work;
  for (const Hole& hole : plan.cover_edge.holes)
    work.push_back(follows(because(drill("pilot hole, cover " + hole.name, face, hole.at,
                                         pilot_mm(plan.cover.edge_screw.mm()), edge_screw_pilot_mm(plan)),
                                   plan, plan.cover.edge_screw),
                           plan.cover_edge, hole));
  for (const Hole& hole : plan.cusps.holes)
    work.push_back(follows(
        because(drill("relief hole, " + hole.name, face, hole.at, plan.train.relief.mm()), plan, plan.train.relief),
        plan.cusps, hole));
  for (std::size_t i = 0; i < plan.train.gears.size(); ++i) {
    const auto [pattern, hole] = axis_of(plan, i);
    const layout::Size& pocket = plan.train.gears[i].pocket;
    work.push_back(follows(
        because(cut_out("pocket for gear " + std::to_string(i + 1), face, geometry::circle(hole->at, pocket.mm() / 2)),
                plan, pocket),
        *pattern, *hole));
  }
  if (jaw.ease.mm() > 0) {
    for (std::size_t i = 0; i < plan.train.gears.size(); ++i) {
      const auto [pattern, hole] = axis_of(plan, i);
      const geometry::Loop edge = geometry::circle(hole->at, plan.train.gears[i].pocket.mm() / 2);
      work.push_back(follows(
          because({"ease the edge of pocket " + std::to_string(i + 1), Ease{face, edge, jaw.ease.mm(), true}, {}, {}},
                  plan, jaw.ease),
          *pattern, *hole));
    }
  }
  return made_of("gear layer", board(plan, jaw.gear_layer.mm()), std::move(work));
}

/// From the front face, `bevel_height` below the top, to the top, `bevel_depth` behind the front.
Operation bevel(const Plan& plan) {
  const double height = plan.front_jaw.bevel_height.mm(), depth = plan.front_jaw.bevel_depth.mm(),
               slope = std::hypot(height, depth);
  const Placement plane{
      {0, plan.front_jaw.above.mm() - height, thickness_mm(plan)}, {1, 0, 0}, {0, depth / slope, height / slope}};
  return because({"saw the bevel and keep the offcut", SawFlat{plane}, {}, {}}, plan, plan.front_jaw.bevel_height);
}

Part landing_block(const Plan& plan, std::size_t index) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const double top_mm = jaw.above.mm(), face = thickness_mm(plan), x = plan.dogs.holes[index].at.x,
               half = jaw.landing_length.mm() / 2;
  const Prism wedge =
      along_x({{top_mm - jaw.bevel_height.mm(), face}, {top_mm, face}, {top_mm, face - jaw.bevel_depth.mm()}}, x - half,
              x + half);
  return made_of("landing block " + std::to_string(index + 1), Offcut{"front jaw", jaw.wood, wedge});
}

}  // namespace

Part front_jaw(const Plan& plan) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  BuiltUp glued{
      {member(backing(plan)), member(gear_layer(plan), raised(jaw.backing.mm()))}, {{Joint::Kind::glued, {}}}, {}};
  if (jaw.bevel_height.mm() > 0) glued.after.push_back(bevel(plan));
  BuiltUp whole{{member({"bevelled jaw", std::move(glued)})}, {}, {}};
  if (jaw.landing_length.mm() > 0 && jaw.bevel_height.mm() > 0) {
    for (std::size_t i = 0; i < plan.dogs.holes.size(); ++i) whole.members.push_back(member(landing_block(plan, i)));
    whole.joints.push_back({Joint::Kind::glued, {}});
  }
  const Face upper = top(jaw.above.mm());
  for (const Hole& hole : plan.dogs.holes)
    whole.after.push_back(
        follows(because(drill("hole for " + hole.name, upper, hole.at, jaw.dog_diameter.mm(), jaw.dog_depth.mm()), plan,
                        jaw.dog_diameter),
                plan.dogs, hole));
  return {"front jaw", std::move(whole)};
}

}  // namespace visewright::parts
