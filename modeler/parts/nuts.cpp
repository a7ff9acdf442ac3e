#include "parts/nuts.h"

#include <cmath>

#include "parts/compose.h"

namespace visewright::parts {
namespace {

using geometry::Vector;

Vector out_of(double flat_rad) { return {std::cos(flat_rad), std::sin(flat_rad), 0}; }

}  // namespace

Part nut(std::string name, const layout::Plan& plan, const standards::NutRow& row, double across_flats_mm,
         double length_mm, int share_of, std::vector<Operation> work) {
  const double major = units::in_mm(plan.screw.thread->major);
  if (row.bar) {
    std::vector<Operation> first{
        drill("hole for the thread", front(length_mm), {0, 0}, major),
        {"thread",
         CutThread{
             front(length_mm), {0, 0}, plan.screw.thread->designation + (row.left_hand ? " left-hand" : ""), length_mm},
         {},
         {}}};
    first.insert(first.end(), work.begin(), work.end());
    return made_of(std::move(name), HexBar{steel(plan), across_flats_mm, length_mm}, std::move(first));
  }
  Bought stock{row.designation, row.source.standard, steel(plan), {}, {}, share_of};
  stock.shape = {Prism{geometry::region(geometry::hexagon({0, 0}, across_flats_mm, 0)), {}, 0, length_mm}};
  stock.less = {cylinder(major, -proud_mm, length_mm + proud_mm)};
  return made_of(std::move(name), std::move(stock), std::move(work), Making::bought);
}

std::array<double, 3> beaded_flats_rad() { return {units::pi / 2, 7 * units::pi / 6, 11 * units::pi / 6}; }

geometry::Placement across_flat(double flat_rad) {
  const Vector out = out_of(flat_rad);
  return {{0, 0, 0}, out, geometry::cross(out, {0, 0, 1})};
}

geometry::Placement in_flat(double flat_rad, double across_flats_mm) {
  const Vector out = out_of(flat_rad);
  return {geometry::times(across_flats_mm / 2, out), geometry::cross({0, 0, 1}, out), out};
}

double flat_length_mm(double across_flats_mm) { return across_flats_mm / std::sqrt(3.0); }

}  // namespace visewright::parts
