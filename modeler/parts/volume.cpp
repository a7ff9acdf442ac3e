// Volumes as sums of slices.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

#include "parts/part.h"
#include "parts/slices.h"

namespace visewright::parts {
namespace {

using geometry::Placement;

Slices sliced(const Body& body, const Placement& slicing) {
  const Placement turned = geometry::inverse(slicing);
  std::vector<Sliceable> added, removed;
  for (const Shape& shape : body.added) added.emplace_back(placed(shape, turned));
  for (const Shape& shape : body.removed) removed.emplace_back(placed(shape, turned));
  return {std::move(added), std::move(removed)};
}

/// Gauss's rule with 7 points and Kronrod's extension of it to 15; nodes and weights as in every table of it (from
/// memory; the tests' closed forms hold them).
struct Node {
  double at, kronrod, gauss;
};
constexpr std::array<Node, 8> nodes{{{0.991455371120812639, 0.022935322010529225, 0},
                                     {0.949107912342758525, 0.063092092629978553, 0.129484966168869693},
                                     {0.864864423359769073, 0.104790010322250184, 0},
                                     {0.741531185599394440, 0.140653259715525919, 0.279705391489276668},
                                     {0.586087235467691130, 0.169004726639267903, 0},
                                     {0.405845151377397167, 0.190350578064785410, 0.381830050505118945},
                                     {0.207784955007898468, 0.204432940075298892, 0},
                                     {0, 0.209482141084727828, 0.417959183673469388}}};

/// Integral over a slab. The height runs as the sine of an angle, so that slices through round holes, which start and
/// end like a square root, become smooth; what kinks in between is found by halving.
struct OverSlab {
  const Slices& body;
  double middle, half, tolerance;

  [[nodiscard]] double weighted_mm3(double angle) const {
    return body.area_mm2(middle + half * std::sin(angle)) * half * std::cos(angle);
  }
  [[nodiscard]] double between(double a, double b, int halvings) const {
    const double centre = (a + b) / 2, reach = (b - a) / 2;
    double fine = 0, coarse = 0;
    for (const Node& node : nodes) {
      double value = weighted_mm3(centre + reach * node.at);
      if (node.at > 0) value += weighted_mm3(centre - reach * node.at);
      fine += reach * node.kronrod * value;
      coarse += reach * node.gauss * value;
    }
    if (std::abs(fine - coarse) <= tolerance || halvings == 0) return fine;
    return between(a, centre, halvings - 1) + between(centre, b, halvings - 1);
  }
};

double box_mm3(const Body& body) {
  const Extent e = extent(body.added);
  return (e.high_mm[0] - e.low_mm[0]) * (e.high_mm[1] - e.low_mm[1]) * (e.high_mm[2] - e.low_mm[2]);
}

}  // namespace

double volume_mm3(const Body& body) {
  if (body.added.empty()) return 0;
  const std::array<Placement, 3> ways{Placement{}, Placement{{0, 0, 0}, {0, 1, 0}, {1, 0, 0}},
                                      Placement{{0, 0, 0}, {0, 0, 1}, {0, 1, 0}}};
  std::optional<Slices> best;
  for (const Placement& way : ways) {
    Slices one = sliced(body, way);
    if (one.possible() && (!best || one.changing() < best->changing())) best = std::move(one);
  }
  if (!best) return std::numeric_limits<double>::quiet_NaN();
  const std::vector<double> heights = best->breaks();
  const double tolerance = 1e-10 * box_mm3(body);
  double sum = 0;
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double low = heights[i], high = heights[i + 1], middle = (low + high) / 2;
    if (best->changes(low, high)) {
      sum += OverSlab{*best, middle, (high - low) / 2, tolerance}.between(-units::pi / 2, units::pi / 2, 12);
    } else {
      sum += best->area_mm2(middle) * (high - low);
    }
  }
  return sum;
}

double volume_mm3(const Part& part) {
  double sum = 0;
  for (const Body& body : bodies(part)) sum += volume_mm3(body);
  return sum;
}

}  // namespace visewright::parts
