// 3MF: facets with their unit, name and material, in a zip archive. After the 3MF Core Specification 1.3.
#pragma once

#include <string>
#include <string_view>

#include "outputs/facets/mesh.h"

namespace visewright::outputs::facets {

struct ThreeMf {
  std::string title, part_number, material;
  double red = 0.5, green = 0.5, blue = 0.5;  // of the material, sRGB, 0 to 1
  std::string remark;                         // what to know before printing
  std::string application;                    // "visewright 0.1.0"
};

/// One object, standing on the bed as the mesh does. Law: the same content gives the same bytes; the file holds neither
/// a clock's time nor a random number.
[[nodiscard]] std::string three_mf(const Mesh&, const ThreeMf&);

}  // namespace visewright::outputs::facets
