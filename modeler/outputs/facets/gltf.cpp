#include "outputs/facets/gltf.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "geometry/placement.h"

namespace visewright::outputs::facets {
namespace {

using geometry::Vector;

/// cos 30°: faces that turn less against each other are one surface.
constexpr double crease_cosine = 0.866;

Vector as_vector(const std::array<float, 3>& p) { return {p[0], p[1], p[2]}; }

/// Square to a triangle, as long as twice its area.
Vector across(const kernel::Facets& facets, const std::array<std::uint32_t, 3>& t) {
  const Vector a = as_vector(facets.points[t[0]]), minus_a = geometry::times(-1, a);
  return geometry::cross(geometry::plus(as_vector(facets.points[t[1]]), minus_a), geometry::plus(as_vector(facets.points[t[2]]), minus_a));
}

Vector direction(const Vector& v) {
  const double length = std::sqrt(geometry::dot(v, v));
  return length > 0 ? geometry::times(1 / length, v) : Vector{0, 0, 1};
}

/// To a fixed grid, so that corners with the same normal are one vertex whatever the order of the sums.
std::array<std::int32_t, 3> grid(const Vector& v) {
  std::array<std::int32_t, 3> cell{};
  for (std::size_t i = 0; i < 3; ++i) cell[i] = static_cast<std::int32_t>(std::lround(v[i] * 1e4));
  return cell;
}

}  // namespace

std::size_t Gltf::add_material(GltfMaterial material) {
  materials_.push_back(std::move(material));
  return materials_.size() - 1;
}

std::size_t Gltf::add_mesh(const kernel::Facets& facets, std::size_t material, std::string name) {
  Mesh mesh{std::move(name), material, {}, {}, {}};
  std::vector<Vector> face, weighted;
  std::vector<std::vector<std::uint32_t>> about(facets.points.size());
  for (std::uint32_t i = 0; i < facets.triangles.size(); ++i) {
    weighted.push_back(across(facets, facets.triangles[i]));
    face.push_back(direction(weighted.back()));
    for (const std::uint32_t corner : facets.triangles[i]) about[corner].push_back(i);
  }
  std::map<std::pair<std::uint32_t, std::array<std::int32_t, 3>>, std::uint32_t> known;
  for (std::uint32_t i = 0; i < facets.triangles.size(); ++i) {
    for (const std::uint32_t corner : facets.triangles[i]) {
      Vector sum{0, 0, 0};
      for (const std::uint32_t other : about[corner])
        if (geometry::dot(face[i], face[other]) > crease_cosine) sum = geometry::plus(sum, weighted[other]);
      const auto cell = grid(direction(sum));
      const auto [at, is_new] = known.try_emplace({corner, cell}, static_cast<std::uint32_t>(mesh.points.size()));
      if (is_new) {
        const auto& p = facets.points[corner];
        mesh.points.push_back({p[0] / 1000, p[1] / 1000, p[2] / 1000});
        const Vector normal = direction({cell[0] / 1e4, cell[1] / 1e4, cell[2] / 1e4});
        mesh.normals.push_back({static_cast<float>(normal[0]), static_cast<float>(normal[1]), static_cast<float>(normal[2])});
      }
      mesh.numbers.push_back(at->second);
    }
  }
  meshes_.push_back(std::move(mesh));
  return meshes_.size() - 1;
}

std::size_t Gltf::add_node(std::string name, std::optional<std::size_t> parent, const GltfPlace& place, std::optional<std::size_t> mesh) {
  const std::size_t number = nodes_.size();
  nodes_.push_back({std::move(name), place, mesh, {}});
  (parent ? nodes_[*parent].children : roots_).push_back(number);
  return number;
}

void Gltf::set_animation(std::string name, std::vector<float> key_times, std::vector<GltfMovement> movements) {
  animation_ = std::move(name);
  key_times_ = std::move(key_times);
  movements_ = std::move(movements);
}

}  // namespace visewright::outputs::facets
