// glTF 2.0 in its binary container: named nodes with bodies, plain metal-and-rough materials, and movements.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "kernel/facets.h"

namespace visewright::outputs::facets {

/// Where a node stands in its parent: metres, and a turn as a unit quaternion x, y, z, w.
struct GltfPlace {
  std::array<double, 3> translation{0, 0, 0};
  std::array<double, 4> rotation{0, 0, 0, 1};
};

struct GltfMaterial {
  std::string name;
  std::array<double, 3> colour{};  // sRGB, 0 to 1
  double metallic = 0, roughness = 0.8, opacity = 1;
};

/// A movement of one node between keys that all movements share; between two keys straight, or along the shorter arc.
struct GltfMovement {
  std::size_t node = 0;
  bool turns = false;                         // else it shifts
  std::vector<std::array<double, 4>> values;  // quaternions, or shifts in the first three
};

/// Built up, then written. Nodes are numbered as they are added.
class Gltf {
 public:
  std::size_t add_material(GltfMaterial);
  /// A body of one material; points come in mm and are written in metres. Faces that turn by less than 30° against
  /// each other are shown as one smooth surface.
  std::size_t add_mesh(const kernel::Facets&, std::size_t material, std::string name);
  /// Without a parent it stands in the scene. A node that holds several bodies has a child for each.
  std::size_t add_node(std::string name, std::optional<std::size_t> parent, const GltfPlace&,
                       std::optional<std::size_t> mesh = std::nullopt);
  /// REQUIRES: as many values in each movement as there are key times, which rise from 0; seconds.
  void set_animation(std::string name, std::vector<float> key_times, std::vector<GltfMovement>);
  /// Words that stand with the file, by name.
  void note(std::string name, std::string text) { notes_.emplace_back(std::move(name), std::move(text)); }

  /// The file. Law: the same content gives the same bytes.
  [[nodiscard]] std::string to_bytes(const std::string& generator) const;

 private:
  struct Mesh {
    std::string name;
    std::size_t material;
    std::vector<std::array<float, 3>> points, normals;
    std::vector<std::uint32_t> numbers;
  };
  struct Node {
    std::string name;
    GltfPlace place;
    std::optional<std::size_t> mesh;
    std::vector<std::size_t> children;
  };
  friend class GltfWriting;
  std::vector<GltfMaterial> materials_;
  std::vector<Mesh> meshes_;
  std::vector<Node> nodes_;
  std::vector<std::size_t> roots_;
  std::string animation_;
  std::vector<float> key_times_;
  std::vector<GltfMovement> movements_;
  std::vector<std::pair<std::string, std::string>> notes_;
};

}  // namespace visewright::outputs::facets
