#include "parts/hand_wheel.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "parts/compose.h"
#include "parts/wheel_end.h"

namespace visewright::parts {
namespace {

using geometry::Point;

constexpr int holes_in_web = 5;

/// Hub, web and rim as one casting. The web stands amid the rim's thickness.
Revolved casting(const layout::Plan& plan) {
  const layout::WheelPlan& w = plan.wheel;
  const double hub = w.hub_diameter.mm() / 2, outer = w.diameter.mm() / 2, inner = outer - rim_breadth_mm(plan);
  const double front = w.hub_front_out.mm() - w.hub_rear_out.mm(), rim_rear = w.rim_rear_out.mm() - w.hub_rear_out.mm();
  const double rim_front = rim_rear + w.rim_thickness.mm();
  const double web_rear = rim_rear + (w.rim_thickness.mm() - w.web_thickness.mm()) / 2,
               web_front = web_rear + w.web_thickness.mm();
  return turned_body({{0, 0},
                      {hub, 0},
                      {hub, web_rear},
                      {inner, web_rear},
                      {inner, rim_rear},
                      {outer, rim_rear},
                      {outer, rim_front},
                      {inner, rim_front},
                      {inner, web_front},
                      {hub, web_front},
                      {hub, front},
                      {0, front}});
}

std::vector<Operation> lightening_holes(const layout::Plan& plan) {
  const layout::WheelPlan& w = plan.wheel;
  const double hub = w.hub_diameter.mm() / 2, inner = w.diameter.mm() / 2 - rim_breadth_mm(plan);
  const double diameter = std::floor(0.6 * (inner - hub)), radius = (inner + hub) / 2;
  const Face face = front(w.hub_front_out.mm() - w.hub_rear_out.mm());
  std::vector<Operation> result;
  for (int i = 0; i < holes_in_web; ++i)
    result.push_back(drill("lightening hole " + std::to_string(i + 1), face,
                           geometry::polar(radius, units::pi / 2 + 2 * units::pi * i / holes_in_web), diameter));
  return result;
}

}  // namespace

double rim_breadth_mm(const layout::Plan& plan) {
  return 1.25 * (plan.wheel.diameter.mm() / 2 - plan.wheel.grip_radius.mm());
}

double lock_screw_height_mm(const layout::Plan& plan) {
  return plan.screw.groove_out.mm() - plan.wheel.hub_rear_out.mm();
}

Part hand_wheel(const layout::Plan& plan) {
  const layout::WheelPlan& w = plan.wheel;
  const double hub = w.hub_diameter.mm() / 2, screw = w.lock_screw.mm();
  const Face face = front(w.hub_front_out.mm() - w.hub_rear_out.mm()), side = right(hub);
  const Point at = on(side, {hub, 0, lock_screw_height_mm(plan)});
  std::vector<Operation> work = lightening_holes(plan);
  work.push_back(because(drill("rebore the hub", face, {0, 0}, w.bore.mm()), plan, w.bore));
  work.push_back(because(drill("hole for the lock screw", side, at, screw, hub), plan, w.lock_screw));
  work.push_back({"thread for the lock screw",
                  CutThread{side, at, "M" + std::to_string(std::lround(screw)), hub - w.bore.mm() / 2},
                  {},
                  {}});
  Bought stock{
      "hand wheel " + std::to_string(std::lround(w.diameter.mm())) + " mm", "", w.material, {casting(plan)}, {}};
  return made_of("hand wheel", std::move(stock), std::move(work), Making::bought);
}

Part lock_screw(const layout::Plan& plan) {
  // The screw's thread ends in the ring groove; its dog point fills the dimple.
  const double hub = plan.wheel.hub_diameter.mm() / 2,
               floor = plan.screw.journal.mm() / 2 - plan.screw.groove_depth.mm();
  const double thread = plan.wheel.lock_screw.mm() / 2, dog = plan.screw.dimple.mm() / 2, length = hub - floor;
  Bought stock{"set screw with dog point M" + std::to_string(std::lround(2 * thread)) + " x " +
                   std::to_string(std::lround(length)),
               "ISO 4028",
               steel(plan),
               {},
               {}};
  stock.shape = {turned_body({{0, -length - dimple_depth_mm},
                              {dog, -length - dimple_depth_mm},
                              {dog, -length},
                              {thread, -length},
                              {thread, 0},
                              {0, 0}})};
  return bought("lock screw", std::move(stock));
}

Part grip(const layout::Plan& plan) {
  const double r = plan.wheel.grip_diameter.mm() / 2, length = plan.wheel.grip_length.mm();
  const geometry::Loop half =
      geometry::trusted({geometry::Arc{{0, -r}, {r, 0}, {0, 0}, true}, geometry::Line{{r, 0}, {r, length}},
                         geometry::Line{{r, length}, {0, length}}, geometry::Line{{0, length}, {0, -r}}});
  Bought stock{
      "folding grip " + std::to_string(std::lround(2 * r)) + " x " + std::to_string(std::lround(length)) + " mm",
      "",
      plan.front_jaw.wood,
      {},
      {}};
  stock.shape = {Revolved{geometry::region(half), {}}};
  return bought("grip", std::move(stock));
}

}  // namespace visewright::parts
