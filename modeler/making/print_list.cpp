#include "making/print_list.h"

#include <algorithm>

#include "geometry/measure.h"

namespace visewright::making {
namespace {

double outline_mm(const geometry::Profile& profile) {
  double all = 0;
  for (const geometry::Loop& loop : profile.outer) all += geometry::perimeter_mm(loop);
  for (const geometry::Loop& loop : profile.holes) all += geometry::perimeter_mm(loop);
  return all;
}

/// Plastic laid down: walls along every outline, floor and roof solid, the rest in part.
double laid_mm3(const parts::Print& print, double height_mm) {
  const double skin = height_mm > 0 ? std::min(1.0, 2 * skin_mm / height_mm) : 1;
  double volume = 0;
  for (const parts::Layer& layer : print.layers) {
    const double area = geometry::area_mm2(layer.profile),
                 wall = std::min(area, outline_mm(layer.profile) * walls * line_width_mm);
    const double inner = area - wall;
    volume += (layer.to_mm - layer.from_mm) * (wall + inner * (skin + (1 - skin) * infill_share));
  }
  return volume;
}

/// "print in layers, rear face down" says how it lies.
std::string orientation_of(const std::string& name) {
  const std::size_t comma = name.find(", ");
  return comma == std::string::npos ? std::string("as drawn") : name.substr(comma + 2);
}

}  // namespace

std::vector<PrintItem> print_list(const std::vector<Workpiece>& pieces, const layout::Plan& plan) {
  std::vector<PrintItem> list;
  for (const Workpiece& work : pieces) {
    if (work.made || work.form != Form::printed || work.piece == nullptr) continue;
    for (const parts::Operation& operation : work.operations) {
      const auto* print = std::get_if<parts::Print>(&operation.work);
      if (print == nullptr) continue;
      PrintItem item;
      item.part = work.part->name;
      item.material = work.material->name;
      item.orientation = orientation_of(operation.name);
      item.count = work.count;
      item.hole_allowance_mm = plan.accuracy.hole_allowance.mm();
      for (std::size_t i = 0; i < 3; ++i) item.size_mm.push_back(work.high_mm[i] - work.low_mm[i]);
      item.mass_kg = laid_mm3(*print, item.size_mm[2]) * work.material->density_g_cm3 * 1e-6;
      list.push_back(std::move(item));
    }
  }
  return list;
}

}  // namespace visewright::making
