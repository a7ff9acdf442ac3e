#include "outputs/data/stack.h"

#include <algorithm>
#include <cmath>

namespace visewright::outputs::data {
namespace {

using assembly::Group;

void bench_layers(const layout::Plan& plan, std::vector<Layer>& layers) {
  const layout::BenchPlan& bench = plan.bench;
  if (!bench.has_apron) return;
  const double front = bench.apron_front_out.mm(), rear = front - bench.apron_thickness.mm();
  if (bench.has_doubler) layers.push_back({"doubler", rear - bench.doubler.mm(), rear, Group::fixed});
  layers.push_back({"apron", rear, front, Group::fixed});
}

void fixed_layers(const layout::Plan& plan, std::vector<Layer>& layers) {
  const layout::RearNutPlan& nut = plan.rear_nut;
  const double lining = plan.lining.thickness.mm();
  layers.push_back({"rear nut", nut.rear_out.mm(), nut.rear_out.mm() + nut.length.mm(), Group::fixed});
  layers.push_back({"nut bar", nut.bar_rear_out.mm(), nut.bar_rear_out.mm() + nut.bar_thickness.mm(), Group::fixed});
  layers.push_back({"rear jaw", plan.rear_jaw.rear_out.mm(), plan.rear_jaw.front_out.mm(), Group::fixed});
  layers.push_back({"rear lining", plan.rear_jaw.front_out.mm(), plan.rear_jaw.front_out.mm() + lining, Group::fixed});
}

void jaw_layers(const layout::Plan& plan, std::vector<Layer>& layers) {
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const double cover = plan.cover.rear_out.mm();
  layers.push_back({"front lining", jaw.backing_rear_out.mm() - plan.lining.thickness.mm(), jaw.backing_rear_out.mm(),
                    Group::moving});
  layers.push_back({"backing", jaw.backing_rear_out.mm(), jaw.joint_out.mm(), Group::moving});
  layers.push_back({"gear layer", jaw.joint_out.mm(), jaw.front_out.mm(), Group::moving});
  layers.push_back({"cover", cover, cover + plan.cover.thickness.mm(), Group::moving});
}

void turning_layers(const layout::Plan& plan, std::vector<Layer>& layers) {
  const layout::CollarPlan& collar = plan.collar;
  const double joint = plan.front_jaw.joint_out.mm(), flange = joint + collar.flange_thickness.mm();
  const double keeper = plan.keeper.rear_out.mm(), bearing = plan.cover.rear_out.mm() + plan.cover.seat_depth.mm();
  layers.push_back({"screw", plan.screw.tail_out.mm(), plan.screw.front_out.mm(), Group::turning});
  if (plan.wheel.on_centre)
    layers.push_back({"centre shaft", plan.shaft.rear_out.mm(), plan.shaft.front_out.mm(), Group::turning});
  layers.push_back({"thrust washer", joint - collar.thrust_thickness.mm(), joint, Group::moving});
  layers.push_back({"collar flange", joint, flange, Group::turning});
  layers.push_back({"collar nut", flange, flange + collar.nut_height.mm(), Group::turning});
  layers.push_back({"gears", plan.train.rear_out.mm(), plan.train.front_out.mm(), Group::turning});
  layers.push_back({"keeper ring", keeper, keeper + plan.keeper.thickness.mm(), Group::turning});
  layers.push_back({"bearing", bearing - plan.bearing.width.mm(), bearing, Group::turning});
  layers.push_back({"wheel hub", plan.wheel.hub_rear_out.mm(), plan.wheel.hub_front_out.mm(), Group::turning});
  layers.push_back({"wheel rim", plan.wheel.rim_rear_out.mm(),
                    plan.wheel.rim_rear_out.mm() + plan.wheel.rim_thickness.mm(), Group::turning});
}

}  // namespace

std::vector<Layer> stack(const layout::Plan& plan) {
  std::vector<Layer> layers;
  bench_layers(plan, layers);
  fixed_layers(plan, layers);
  jaw_layers(plan, layers);
  turning_layers(plan, layers);
  // Neighbours share faces only to rounding, so the order is taken on millionths of a millimetre.
  std::stable_sort(layers.begin(), layers.end(), [](const Layer& a, const Layer& b) {
    return std::llround(a.from_out_mm * 1e6) < std::llround(b.from_out_mm * 1e6);
  });
  return layers;
}

std::string_view word(assembly::Group group) {
  switch (group) {
    case Group::fixed: return "fixed";
    case Group::moving: return "moving";
    case Group::turning: return "turning";
  }
  return "";
}

}  // namespace visewright::outputs::data
