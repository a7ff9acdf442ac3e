#include "outputs/facets/mesh.h"

#include <algorithm>
#include <utility>

namespace visewright::outputs::facets {

std::size_t open_edges(const Mesh& mesh) {
  // Each edge as (lower point, higher point, sense): a closed skin has them in pairs of opposite senses.
  struct Use {
    std::uint32_t low, high;
    int sense;
  };
  std::vector<Use> uses;
  uses.reserve(3 * mesh.triangles.size());
  for (const auto& t : mesh.triangles)
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t a = t[i], b = t[(i + 1) % 3];
      uses.push_back({std::min(a, b), std::max(a, b), a < b ? 1 : -1});
    }
  const auto key = [](const Use& u) { return std::pair(u.low, u.high); };
  std::sort(uses.begin(), uses.end(), [&](const Use& a, const Use& b) { return key(a) < key(b); });
  std::size_t open = 0;
  for (std::size_t i = 0; i < uses.size();) {
    std::size_t end = i;
    int sum = 0;
    while (end < uses.size() && key(uses[end]) == key(uses[i])) sum += uses[end++].sense;
    open += end - i != 2 || sum != 0 || uses[i].low == uses[i].high;
    i = end;
  }
  return open;
}

double volume_mm3(const Mesh& mesh) {
  double six = 0;
  for (const auto& [a, b, c] : mesh.triangles)
    six += geometry::dot(mesh.points[a], geometry::cross(mesh.points[b], mesh.points[c]));
  return six / 6;
}

}  // namespace visewright::outputs::facets
