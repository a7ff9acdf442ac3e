#include "solids/shape_solid.h"

namespace visewright::solids {

base::Result<kernel::Solid> solid(const parts::Prism& prism, double, std::string_view label) {
  return kernel::prism(prism.profile, prism.frame, prism.from_mm, prism.to_mm, label);
}

base::Result<kernel::Solid> solid(const parts::Revolved& body, double, std::string_view label) {
  return kernel::revolution(body.half_section, body.axis, {body.from_rad, body.to_rad}, label);
}

base::Result<kernel::Solid> solid(const parts::HalfSpace& side, double reach_mm, std::string_view label) {
  return kernel::behind(side.plane, reach_mm, label);
}

base::Result<kernel::Solid> solid(const parts::Shape& shape, double reach_mm, std::string_view label) {
  return std::visit([&](const auto& kind) { return solid(kind, reach_mm, label); }, shape);
}

}  // namespace visewright::solids
