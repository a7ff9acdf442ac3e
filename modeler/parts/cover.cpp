#include "parts/cover.h"

#include <algorithm>
#include <cmath>

#include "parts/compose.h"

namespace visewright::parts {
namespace {

using geometry::Point;
using layout::Hole;
using layout::Plan;

/// The cover is held where it must not move: at the axle nearest the middle.
const Hole* held_at(const Plan& plan) {
  const auto& holes = plan.axles.holes;
  const auto nearest = std::min_element(
      holes.begin(), holes.end(), [](const Hole& a, const Hole& b) { return std::abs(a.at.x) < std::abs(b.at.x); });
  return nearest == holes.end() ? nullptr : &*nearest;
}

/// A slot of this length over all about a hole of a pattern.
Operation slot(std::string name, const Face& face, const Hole& hole, Point way, double width_mm, double length_mm) {
  const Point half = (length_mm - width_mm) / 2 * way;
  return cut_out(std::move(name), face, geometry::slot(hole.at - half, hole.at + half, width_mm));
}

void add_bearing_seats(const Plan& plan, std::vector<Operation>& work) {
  const layout::CoverPlan& cover = plan.cover;
  const Face rear = back();
  const auto for_all = [&](auto operation) {
    for (const layout::Pattern* pattern : {&plan.screws, &plan.shaft_hole})
      for (const Hole& hole : pattern->holes) work.push_back(follows(operation(hole), *pattern, hole));
  };
  for_all([&](const Hole& hole) {
    return because(recess("bearing seat, " + hole.name, rear, on(rear, hole.at), cover.seat.mm(), cover.seat_depth.mm()), plan,
                   cover.seat);
  });
  for_all([&](const Hole& hole) {
    return because(drill("bore in the lip, " + hole.name, rear, on(rear, hole.at), cover.lip_bore.mm()), plan, cover.lip_bore);
  });
}

/// Slots run along the jaw, where the sheet grows with heat and the wood hardly moves.
void add_axle_screws(const Plan& plan, std::vector<Operation>& work) {
  const layout::CoverPlan& cover = plan.cover;
  const Face face = front(cover.thickness.mm());
  const Hole* held = held_at(plan);
  for (const Hole& hole : plan.axles.holes) {
    Operation operation =
        &hole == held
            ? because(drill("screw hole, " + hole.name, face, hole.at, cover.axle_hole.mm()), plan, cover.axle_hole)
            : because(slot("screw slot, " + hole.name, face, hole, {1, 0}, cover.axle_hole.mm(), cover.axle_slot.mm()),
                      plan, cover.axle_slot);
    work.push_back(follows(std::move(operation), plan.axles, hole));
  }
}

/// Slots run up and down, where the wood below moves across its grain and the sheet does not.
void add_edge_screws(const Plan& plan, std::vector<Operation>& work) {
  const layout::CoverPlan& cover = plan.cover;
  const Face face = front(cover.thickness.mm());
  for (const Hole& hole : plan.cover_edge.holes)
    work.push_back(follows(
        because(slot("screw slot, " + hole.name, face, hole, {0, 1}, cover.edge_hole.mm(), cover.edge_slot.mm()), plan,
                cover.edge_slot),
        plan.cover_edge, hole));
}

}  // namespace

Part cover(const Plan& plan) {
  const layout::CoverPlan& c = plan.cover;
  const Point low{c.left.mm(), c.bottom.mm()}, high{c.right.mm(), c.top.mm()};
  const Face face = front(c.thickness.mm());
  const geometry::Loop outline = geometry::rounded_rectangle(low, high, c.corner.mm());
  std::vector<Operation> work;
  add_bearing_seats(plan, work);
  add_axle_screws(plan, work);
  add_edge_screws(plan, work);
  if (c.corner.mm() > 0)
    work.push_back(because({"round the corners", CutTo{face, geometry::region(outline)}, {}, {}}, plan, c.corner));
  if (c.ease.mm() > 0)
    work.push_back(because({"ease the front edge", Ease{face, outline, c.ease.mm(), false}, {}, {}}, plan, c.ease));
  return made_of("cover",
                 Sheet{c.material, {low.x, low.y, 0}, {high.x - low.x, high.y - low.y, c.thickness.mm()}, false},
                 std::move(work));
}

}  // namespace visewright::parts
