#include "making/speeds.h"

#include <algorithm>
#include <cmath>

#include "units/quantity.h"

namespace visewright::making {
namespace {

double two_digits(double value) {
  const double whole = std::floor(std::round(value * 1e6) / 1e6);
  double step = 1;
  while (whole / step >= 100) step *= 10;
  return std::floor(whole / step) * step;
}

}  // namespace

std::optional<SpeedRange> speed_for(standards::ToolKind tool, double diameter_mm,
                                    const standards::MaterialRow& material, const standards::Catalogue& catalogue) {
  const standards::SpeedRow* row = catalogue.speed(tool, material);
  if (row == nullptr || diameter_mm <= 0) return std::nullopt;
  const auto turns = [&](double speed_m_min) {
    return two_digits(std::min(1000 * speed_m_min / (units::pi * diameter_mm), row->most_per_minute));
  };
  return SpeedRange{turns(row->low_m_min), turns(row->high_m_min), row};
}

}  // namespace visewright::making
