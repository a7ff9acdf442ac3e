#include "making/weld_list.h"

#include <algorithm>
#include <cmath>

namespace visewright::making {
namespace {

/// Shorter side of the box round the section: the leg, whatever the crown stands out.
double leg_mm(const parts::Bead& bead) {
  const geometry::Box box = geometry::box(bead.shape.profile.outer.front());
  return std::min(box.high.x - box.low.x, box.high.y - box.low.y);
}

bool same(const WeldItem& a, const WeldItem& b) {
  return std::llround(a.leg_mm * 1e6) == std::llround(b.leg_mm * 1e6) &&
         std::llround(a.length_mm * 1e6) == std::llround(b.length_mm * 1e6);
}

}  // namespace

std::vector<WeldItem> weld_list(const std::vector<Workpiece>& pieces) {
  std::vector<WeldItem> list;
  for (const Workpiece& work : pieces) {
    const auto* built = std::get_if<parts::BuiltUp>(&work.part->made);
    if (built == nullptr || work.made) continue;
    const std::size_t first = list.size();
    for (const parts::Joint& joint : built->joints) {
      for (const parts::Bead& bead : joint.beads) {
        WeldItem item;
        item.part = work.part->name;
        for (const parts::Member& member : built->members) item.joins.push_back(member.part->name);
        item.parts = work.count;
        item.beads = 1;
        item.leg_mm = leg_mm(bead);
        item.throat_mm = item.leg_mm * std::sqrt(0.5);
        item.length_mm = bead.shape.to_mm - bead.shape.from_mm;
        item.ground_flush = std::any_of(built->after.begin(), built->after.end(), [](const parts::Operation& o) {
          return std::holds_alternative<parts::Grind>(o.work);
        });
        const auto like = std::find_if(list.begin() + static_cast<std::ptrdiff_t>(first), list.end(),
                                       [&](const WeldItem& other) { return same(item, other); });
        if (like == list.end())
          list.push_back(std::move(item));
        else
          ++like->beads;
      }
    }
  }
  return list;
}

}  // namespace visewright::making
