#include "parts/gears.h"

#include <algorithm>

#include "parts/compose.h"

namespace visewright::parts {
namespace {

using geometry::Loop;

Layer layer(const layout::Gear& gear, Loop hole, double from_mm, double to_mm) {
  return {geometry::region(*gear.outline, {std::move(hole)}), from_mm, to_mm};
}

Part printed(std::string name, const layout::Plan& plan, const layout::Gear& gear, std::vector<Layer> layers) {
  const double face = plan.train.face_width.mm(), module = plan.train.module.mm();
  std::vector<Operation> work{
      {"print in layers, rear face down", Print{std::move(layers)}, {}, {}, why(plan, plan.train.face_width)},
      {"phase mark", Mark{front(face), {gear.root.mm() / 2 - module, 0}, "0"}, {}, {}, nullptr}};
  return made_of(std::move(name), Printed{plan.train.material}, std::move(work), Making::printed);
}

/// What sets a drive gear's name apart, where the drive gears differ.
std::string which_drive(const layout::Train& train, std::size_t index) {
  const layout::Gear &first = train.gears.front(), &last = train.gears.back(), &gear = train.gears[index];
  if (gear.on_shaft) return same_gear(gear, first) ? which_drive(train, 0) : same_gear(gear, last) ? which_drive(train, train.gears.size() - 1) : ", centre";
  return of_side(index == 0 ? 0 : 1, !same_gear(first, last));
}

bool idlers_differ(const layout::Train& train) {
  const auto idler = [](const layout::Gear& g) { return !g.drive; };
  const auto first = std::find_if(train.gears.begin(), train.gears.end(), idler);
  return std::any_of(first, train.gears.end(), [&](const layout::Gear& g) { return idler(g) && !same_gear(g, *first); });
}

}  // namespace

bool same_gear(const layout::Gear& a, const layout::Gear& b) { return a.outline == b.outline && a.drive == b.drive; }

Part drive_gear(const layout::Plan& plan, std::size_t index) {
  const layout::Gear& gear = plan.train.gears[index];
  const layout::CollarPlan& collar = plan.collar;
  const double recess = collar.flange_recess_depth.mm(), floor = recess + collar.hexagon_depth.mm();
  std::vector<Layer> layers;
  if (recess > 0) layers.push_back(layer(gear, geometry::circle({0, 0}, collar.flange_recess.mm() / 2), 0, recess));
  layers.push_back(layer(gear, geometry::hexagon({0, 0}, collar.hexagon.mm(), 0), std::max(recess, 0.0), floor));
  layers.push_back(
      layer(gear, geometry::circle({0, 0}, collar.front_bore.mm() / 2), floor, plan.train.face_width.mm()));
  return printed("drive gear" + which_drive(plan.train, index), plan, gear, std::move(layers));
}

Part idler_gear(const layout::Plan& plan, std::size_t index) {
  const layout::Gear& gear = plan.train.gears[index];
  const layout::BearingPlan& bearing = plan.axle.bearing;
  const double face = plan.train.face_width.mm(), seat = (face + bearing.width.mm()) / 2;
  std::vector<Layer> layers{layer(gear, geometry::circle({0, 0}, bearing.outside.mm() / 2), 0, seat),
                            layer(gear, geometry::circle({0, 0}, bearing.outer_land.mm() / 2), seat, face)};
  const std::string number = idlers_differ(plan.train) ? " " + std::to_string(index + 1) : "";
  return printed("idler gear" + number, plan, gear, std::move(layers));
}

Part gear(const layout::Plan& plan, std::size_t index) {
  return plan.train.gears[index].drive ? drive_gear(plan, index) : idler_gear(plan, index);
}

}  // namespace visewright::parts
