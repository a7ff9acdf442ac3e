#include "outputs/papers/section.h"

#include <algorithm>
#include <cmath>

#include "parts/sliceable.h"
#include "units/quantity.h"

namespace visewright::outputs::papers {
namespace {

/// Slices are wanted a hair beside the plane: on it a shape may just begin or end.
constexpr double beside_mm = 1e-4;

struct Cut {
  const geometry::Placement& to_plane;
  geometry::Box window;
  bool askew = false;

  void add(const parts::Shape& shape, std::vector<geometry::Profile>& to) {
    const parts::Shape here = parts::placed(shape, to_plane);
    if (const auto* turned = std::get_if<parts::Revolved>(&here); turned != nullptr && along(*turned)) return add(*turned, to);
    const parts::Sliceable slices(here);
    if (!slices.possible()) {
      askew = true;
      return;
    }
    // Without breaks a shape has no end; with them it may lie beside the plane.
    if (const std::vector<double>& breaks = slices.breaks(); breaks.size() > 1) {
      const auto [low, high] = std::minmax_element(breaks.begin(), breaks.end());
      if (*low > beside_mm || *high < beside_mm) return;
    }
    for (geometry::Profile& p : slices.slice(beside_mm, window)) to.push_back(std::move(p));
  }

  /// Whether the axis lies in the plane.
  static bool along(const parts::Revolved& turned) {
    return turned.all_round() && std::abs(turned.axis.z_axis[2]) < 1e-9 && std::abs(turned.axis.origin_mm[2]) < 1e-6;
  }
  /// The half section, and its mirror image on the other side of the axis.
  static void add(const parts::Revolved& turned, std::vector<geometry::Profile>& to) {
    const geometry::Vector& axis = turned.axis.z_axis;
    const double angle = std::atan2(axis[1], axis[0]) - units::pi / 2;
    const geometry::Point origin{turned.axis.origin_mm[0], turned.axis.origin_mm[1]};
    geometry::Profile mirror;
    for (const geometry::Loop& loop : turned.half_section.outer) mirror.outer.push_back(geometry::mirrored(loop));
    for (const geometry::Loop& loop : turned.half_section.holes) mirror.holes.push_back(geometry::mirrored(loop));
    to.push_back(geometry::moved(turned.half_section, angle, origin));
    to.push_back(geometry::moved(mirror, angle, origin));
  }
};

}  // namespace

Region section(const parts::Body& body, const geometry::Placement& where, const geometry::Placement& plane) {
  const geometry::Placement to_plane = geometry::combined(geometry::inverse(plane), where);
  std::vector<parts::Shape> there;
  for (const parts::Shape& shape : body.added) there.push_back(parts::placed(shape, to_plane));
  if (there.empty()) return {};
  const parts::Extent extent = parts::extent(there);
  if (extent.low_mm[2] > 0 || extent.high_mm[2] < 0) return {};
  const geometry::Point margin{2, 2};
  Cut cut{to_plane, {geometry::Point{extent.low_mm[0], extent.low_mm[1]} - margin, geometry::Point{extent.high_mm[0], extent.high_mm[1]} + margin}};
  Region region;
  for (const parts::Shape& shape : body.added) cut.add(shape, region.added);
  if (region.added.empty()) return {};
  for (const parts::Shape& shape : body.removed) cut.add(shape, region.removed);
  return cut.askew && region.added.empty() ? Region{} : region;
}

}  // namespace visewright::outputs::papers
