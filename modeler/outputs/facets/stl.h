// Binary STL: triangles and nothing else. The format has no unit; the head says millimetres.
#pragma once

#include <string>
#include <string_view>

#include "outputs/facets/mesh.h"

namespace visewright::outputs::facets {

/// `name` stands in the head of 80 bytes, as far as it fits. Coordinates are single precision.
[[nodiscard]] std::string stl(const Mesh&, std::string_view name);

}  // namespace visewright::outputs::facets
