#include "parts/shape.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace visewright::parts {
namespace {

using geometry::Box;
using geometry::Vector;

Box box_of(const geometry::Profile& profile) {
  Box result = geometry::box(profile.outer.front());
  for (const geometry::Loop& loop : profile.outer) {
    const Box more = geometry::box(loop);
    result.low = {std::min(result.low.x, more.low.x), std::min(result.low.y, more.low.y)};
    result.high = {std::max(result.high.x, more.high.x), std::max(result.high.y, more.high.y)};
  }
  return result;
}

struct Growing {
  Extent& extent;

  void include(const geometry::Placement& frame, Vector low, Vector high) const {
    for (const double x : {low[0], high[0]})
      for (const double y : {low[1], high[1]})
        for (const double z : {low[2], high[2]}) {
          const Vector corner = geometry::to_outside(frame, {x, y, z});
          for (std::size_t i = 0; i < 3; ++i) {
            extent.low_mm[i] = std::min(extent.low_mm[i], corner[i]);
            extent.high_mm[i] = std::max(extent.high_mm[i], corner[i]);
          }
        }
  }
  void operator()(const Prism& prism) const {
    const Box box = box_of(prism.profile);
    include(prism.frame, {box.low.x, box.low.y, prism.from_mm}, {box.high.x, box.high.y, prism.to_mm});
  }
  void operator()(const Revolved& turned) const {
    const Box box = box_of(turned.half_section);
    const double r = box.high.x;
    include(turned.axis, {-r, -r, box.low.y}, {r, r, box.high.y});
  }
  void operator()(const HalfSpace&) const {}
};

}  // namespace

Shape placed(const Shape& shape, const geometry::Placement& at) {
  Shape result = shape;
  if (auto* prism = std::get_if<Prism>(&result)) prism->frame = geometry::combined(at, prism->frame);
  if (auto* turned = std::get_if<Revolved>(&result)) turned->axis = geometry::combined(at, turned->axis);
  if (auto* half = std::get_if<HalfSpace>(&result)) half->plane = geometry::combined(at, half->plane);
  return result;
}

double Extent::diagonal_mm() const {
  return std::hypot(high_mm[0] - low_mm[0], high_mm[1] - low_mm[1], high_mm[2] - low_mm[2]);
}

Extent extent(std::span<const Shape> shapes) {
  constexpr double far = std::numeric_limits<double>::infinity();
  Extent result{{far, far, far}, {-far, -far, -far}};
  for (const Shape& shape : shapes) std::visit(Growing{result}, shape);
  return result;
}

}  // namespace visewright::parts
