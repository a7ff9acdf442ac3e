// Gears for holes that were drilled wrong: printed gears can be shifted to suit them.
#include "formulas/rescue.h"

#include "layout/sections.h"
#include "layout/spur.h"

namespace visewright::layout {
namespace {

constexpr double printed_tip = 0.4, other_tip = 0.25, least_gap_share = 0.5;

std::vector<double> distances(const std::vector<std::vector<units::Length>>& centres) {
  std::vector<double> list;
  for (std::size_t i = 0; i + 1 < centres.size(); ++i) {
    const auto height = [&](std::size_t k) { return centres[k].size() > 1 ? units::in_mm(centres[k][1]) : 0.0; };
    list.push_back(std::hypot(units::in_mm(centres[i + 1][0] - centres[i][0]), height(i + 1) - height(i)));
  }
  return list;
}

bool printed(const Desk& d) { return !d.design.train.made_by || d.design.train.made_by->value == "printed"; }

}  // namespace

std::vector<double> measured_distances(const Desk& d) {
  const auto& centres = d.design.measured.axle_centres;
  return centres ? distances(centres->value) : std::vector<double>{};
}

std::vector<double> rescued_shifts(Desk& d, const std::vector<Gear>& designed) {
  auto& train = d.plan.train;
  const auto measured = measured_distances(d);
  if (measured.empty() || d.design.train.profile_shift || !printed(d)) return {};
  formulas::RescueInput in;
  for (const Gear& gear : designed) {
    in.gears.push_back(spur_gear(train, gear));
    in.room.push_back({gear.pocket.mm() / 2, gear.drive ? d.plan.collar.flange_recess.mm() / 2 : 0});
  }
  in.distances_mm = measured;
  in.backlash_mm.assign(measured.size(), train.backlash.mm());
  in.limits.tip_thickness_factor = printed(d) ? printed_tip : other_tip;
  // The pocket is drilled; half of the wanted gap is still a gap.
  in.limits.gear_to_wood_mm = least_gap_share * train.gear_to_wood.mm();
  auto rescue = formulas::rescue(in);
  train.beyond_rescue = std::move(rescue.beyond);
  return rescue.shifts;
}

}  // namespace visewright::layout
