#include "fitup/stand.h"

#include <cmath>

#include "fitup/spread.h"

namespace visewright::fitup {
namespace {

using assembly::Group;

constexpr double same_rate = 1e-9;

Box3 around(const std::vector<Element>& all) {
  Box3 box;
  for (const Element& e : all) box.include(e.box);
  return box;
}

std::vector<Stack> cut_out(const std::vector<Element>& all) {
  std::vector<Stack> result;
  for (const Element& e : all) result.push_back(stack(e, out_axis()));
  return result;
}

void prepare(Stand& s, const std::vector<Element>& own, const assembly::Placed& placed) {
  s.still = fitup::placed(own, s.at);
  s.still_box = around(s.still);
  s.still_out = cut_out(s.still);
  if (placed.group != Group::turning) return;
  s.turned = swept(s.still, {placed.turn_about_mm, {1, 0, 0}, out_axis().z_axis});
  s.turned_box = around(s.turned);
  s.turned_out = cut_out(s.turned);
}

}  // namespace

const Placement& out_axis() {
  static const Placement axis = frame_along({0, -1, 0});
  return axis;
}

std::vector<Stand> stands(const assembly::Assembly& assembly) {
  // Each part is read once, however often it is placed.
  std::vector<std::vector<parts::Body>> bodies(assembly.parts.size());
  std::vector<std::vector<std::vector<Element>>> own(assembly.parts.size());
  std::vector<std::vector<std::shared_ptr<const Witness>>> truth(assembly.parts.size());
  spread(assembly.parts.size(), [&](std::size_t i) {
    bodies[i] = parts::bodies(*assembly.parts[i]);
    for (const parts::Body& body : bodies[i]) {
      own[i].push_back(elements(body));
      truth[i].push_back(std::make_shared<const Witness>(body));
    }
  });
  std::vector<Stand> all;
  for (std::uint32_t p = 0; p < assembly.placed.size(); ++p) {
    const assembly::Placed& placed = assembly.placed[p];
    for (const bool out : {false, true}) {
      if (out && !placed.grip_out) continue;
      for (std::uint32_t b = 0; b < bodies[placed.part].size(); ++b) {
        Stand s;
        s.placed = p;
        s.body = b;
        s.grip_out = out;
        s.name = bodies[placed.part][b].name;
        s.truth = truth[placed.part][b];
        s.at = assembly::at(placed, {0, out});
        all.push_back(std::move(s));
      }
    }
  }
  spread(all.size(), [&](std::size_t i) {
    const assembly::Placed& placed = assembly.placed[all[i].placed];
    prepare(all[i], own[placed.part][all[i].body], placed);
  });
  return all;
}

Motion motion(const assembly::Placed& a, const assembly::Placed& b) {
  const bool fixed = (a.group == Group::fixed) != (b.group == Group::fixed);
  const bool turning = a.group == Group::turning || b.group == Group::turning;
  if (fixed) return turning ? Motion::turn_and_slide : Motion::slide;
  if (!turning) return Motion::none;
  const bool one_axis = a.group == b.group && std::abs(a.turn_rad_per_mm - b.turn_rad_per_mm) < same_rate &&
                        std::hypot(a.turn_about_mm[0] - b.turn_about_mm[0], a.turn_about_mm[2] - b.turn_about_mm[2]) < same_rate;
  return one_axis ? Motion::none : Motion::turn;
}

}  // namespace visewright::fitup
