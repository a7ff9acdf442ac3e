#include "layout/gear_outline.h"

#include <cmath>
#include <vector>

#include "units/quantity.h"

namespace visewright::layout {
namespace {

using geometry::Arc;
using geometry::Edge;
using geometry::Involute;
using geometry::Point;
using geometry::Trochoid;

double polar_angle(Point p) { return std::atan2(p.y, p.x); }

/// One flank of the tooth at angle 0, the lower one: fillet up to `fillet_end`, involute from `roll_from` to `roll_to`.
struct Flank {
  Trochoid fillet;
  Involute involute;
};

/// Where fillet and involute cross on an undercut gear: the first point beyond the base circle at which the fillet,
/// coming from inside the tooth, leaves it. Bisected in the fillet's roll angle.
double crossing(const Flank& flank, double last) {
  const auto inside = [&](double t) {
    Trochoid part = flank.fillet;
    part.roll_from_rad = 0;
    part.roll_to_rad = t;
    const Point p = geometry::finish(part);
    const double ratio = geometry::length(p) / flank.involute.base_radius_mm;
    if (ratio <= 1) return 1.0;
    const double roll = std::sqrt(ratio * ratio - 1);
    return polar_angle(p) - (flank.involute.start_rad + roll - std::atan(roll));
  };
  constexpr int steps = 400;
  double low = 0, high = last;
  for (int i = 1; i <= steps; ++i) {
    const double t = last * i / steps;
    if (inside(t) < 0) {
      high = t;
      break;
    }
    low = t;
  }
  for (int i = 0; i < 200 && high - low > 0; ++i) {
    const double mid = (low + high) / 2;
    if (mid == low || mid == high) break;
    (inside(mid) < 0 ? high : low) = mid;
  }
  return high;
}

Flank lower_flank(const GearShape& g) {
  const double alpha = g.pressure_angle_rad, m = g.module_mm;
  const double pitch_radius = m * g.teeth / 2, base_radius = pitch_radius * std::cos(alpha);
  const double thickness = m * (units::pi / 2 + 2 * g.shift * std::tan(alpha)) - g.thinning_mm;
  const double inv = std::tan(alpha) - alpha;
  const double rounding = g.tip_rounding * m;
  const double offset = (g.dedendum - g.tip_rounding - g.shift) * m;
  const double tip_radius = pitch_radius + m * (g.addendum + g.shift);
  const double start = -(thickness / (2 * pitch_radius) + inv);
  const double behind = (offset * std::tan(alpha) + rounding / std::cos(alpha)) / pitch_radius - inv;

  Flank flank;
  flank.involute = {{0, 0}, base_radius, start, std::tan(alpha) - (offset / std::sin(alpha) + rounding) / base_radius,
                    std::sqrt(std::pow(tip_radius / base_radius, 2) - 1), true};
  flank.fillet = {{0, 0}, pitch_radius, rounding, offset, start - behind, 0, offset / (pitch_radius * std::tan(alpha)), true};
  if (flank.involute.roll_from_rad < 0) {
    flank.fillet.roll_to_rad = crossing(flank, flank.fillet.roll_to_rad);
    const double ratio = geometry::length(geometry::finish(flank.fillet)) / base_radius;
    flank.involute.roll_from_rad = std::sqrt(std::max(0.0, ratio * ratio - 1));
  }
  return flank;
}

Involute turned(Involute edge, double by) {
  edge.start_rad += by;
  return edge;
}
Trochoid turned(Trochoid edge, double by) {
  edge.start_rad += by;
  return edge;
}

}  // namespace

base::Result<geometry::Loop> gear_outline(const GearShape& g) {
  const Flank low = lower_flank(g);
  Flank high = low;
  high.involute.start_rad = -low.involute.start_rad;
  high.fillet.start_rad = -low.fillet.start_rad;
  high.involute.left = high.fillet.left = false;

  const double pitch = 2 * units::pi / g.teeth;
  if (polar_angle(geometry::finish(low.involute)) >= -1e-9)
    return base::fault(base::Cause::input, "train.teeth", "the teeth run to a point before they reach their tip",
                       "less profile shift, or less backlash");
  if (low.fillet.start_rad <= -pitch / 2 + 1e-9 || low.fillet.offset_mm <= 0)
    return base::fault(base::Cause::input, "train.teeth", "the root fillets of a tooth gap run into each other",
                       "less profile shift, or more teeth");

  std::vector<Edge> edges;
  for (int k = 0; k < g.teeth; ++k) {
    const double angle = pitch * k;
    const Edge up = turned(low.involute, angle), down = geometry::reversed(turned(high.involute, angle));
    const Edge out = turned(low.fillet, angle), in = geometry::reversed(turned(high.fillet, angle));
    const Edge next = turned(low.fillet, angle + pitch);
    edges.insert(edges.end(), {out, up, Arc{geometry::finish(up), geometry::start(down), {0, 0}, true}, down, in,
                               Arc{geometry::finish(in), geometry::start(next), {0, 0}, true}});
  }
  return geometry::trusted(std::move(edges));
}

}  // namespace visewright::layout
