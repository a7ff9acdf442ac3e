#include "outputs/facets/stl.h"

#include <cmath>

#include "outputs/facets/bytes.h"

namespace visewright::outputs::facets {

std::string stl(const Mesh& mesh, std::string_view name) {
  // A head that begins with "solid" is taken for the other, written-out kind of file.
  std::string bytes = "binary facets, millimetres: ";
  bytes += name;
  bytes.resize(80, ' ');
  add_u32(bytes, static_cast<std::uint32_t>(mesh.triangles.size()));
  for (const auto& triangle : mesh.triangles) {
    const auto &a = mesh.points[triangle[0]], &b = mesh.points[triangle[1]], &c = mesh.points[triangle[2]];
    const geometry::Vector normal = geometry::cross(geometry::plus(b, geometry::times(-1, a)), geometry::plus(c, geometry::times(-1, a)));
    const double length = std::sqrt(geometry::dot(normal, normal));
    for (const double n : normal) add_float(bytes, length > 0 ? static_cast<float>(n / length) : 0.0F);
    for (const std::uint32_t corner : triangle)
      for (const double x : mesh.points[corner]) add_float(bytes, static_cast<float>(x));
    add_u16(bytes, 0);
  }
  return bytes;
}

}  // namespace visewright::outputs::facets
