#include "outputs/papers/machine_path.h"

#include <algorithm>

#include "geometry/grown.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

bool through(const Layer& layer) { return layer.name.find("THROUGH") != std::string::npos; }

std::vector<geometry::Loop> beside(const Curve& curve, double by_mm) {
  auto loop = geometry::Loop::of(curve.edges);
  if (!loop) return {};
  auto grown = geometry::grown(*loop, curve.waste == Waste::outside ? by_mm : -by_mm);
  return grown ? std::move(*grown) : std::vector<geometry::Loop>{};
}

/// `which` says of a layer whether the machine works on it.
template <class Which>
Sheet path(const Sheet& sheet, double by_mm, Which which) {
  Sheet result = sheet;
  result.curves.clear();
  const std::size_t read_only = result.layer("READ-ONLY", Pen::read_only, "for reading; nothing is cut along it");
  std::size_t too_small = 0;
  for (const Curve& curve : sheet.curves) {
    Curve same = curve;
    if (curve.waste == Waste::none) {
      result.curves.push_back(std::move(same));
      continue;
    }
    std::vector<geometry::Loop> loops;
    if (which(sheet.layers[curve.layer])) {
      loops = beside(curve, by_mm);
      too_small += loops.empty();
    }
    for (const geometry::Loop& loop : loops) result.outline(curve.layer, loop, curve.waste);
    if (loops.empty()) {
      same.layer = read_only;
      result.curves.push_back(std::move(same));
    }
  }
  if (too_small > 0)
    result.remarks.insert(result.remarks.begin(), "Too narrow for this, left on READ-ONLY as designed: " + std::to_string(too_small) + ".");
  return result;
}

void say(Sheet& sheet, const std::string& how) {
  sheet.remarks.insert(sheet.remarks.begin(), how + " Do not compensate again on the machine. Names and sizes in words are those of the finished part.");
}

}  // namespace

Sheet kerf_path(const Sheet& sheet, double kerf_mm, units::LengthUnit show) {
  Sheet result = path(sheet, kerf_mm / 2, through);
  say(result, "ALREADY COMPENSATED for a kerf of " + units::write_length(units::mm(kerf_mm), show) + ": cuts right through lie half of it on the side of the waste.");
  return result;
}

Sheet cutter_path(const Sheet& sheet, double cutter_mm, units::LengthUnit show) {
  Sheet result = path(sheet, cutter_mm / 2, [](const Layer&) { return true; });
  say(result, "ALREADY COMPENSATED for a cutter of " + units::write_length(units::mm(cutter_mm), show) + ": lines are the path of its middle.");
  return result;
}

}  // namespace visewright::outputs::papers
