#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "outputs/facets/bytes.h"
#include "outputs/facets/gltf.h"

namespace visewright::outputs::facets {
namespace {

using Json = nlohmann::ordered_json;

constexpr int array_buffer = 34962, element_buffer = 34963, float_type = 5126, unsigned_type = 5125;

/// Colours of materials are linear in the format (IEC 61966-2-1 turned round).
double linear(double srgb) { return srgb <= 0.04045 ? srgb / 12.92 : std::pow((srgb + 0.055) / 1.055, 2.4); }

/// Single precision, as the format's numbers are meant, in a text that reads back the same.
double rounded(double value) { return std::round(value * 1e9) / 1e9; }

template <class Numbers>
Json list(const Numbers& values) {
  Json array = Json::array();
  for (const double v : values) array.push_back(rounded(v) == 0 ? 0.0 : rounded(v));
  return array;
}

void pad(std::string& bytes, char with) {
  while (bytes.size() % 4 != 0) bytes.push_back(with);
}

}  // namespace

/// One writing: the buffer grows while the JSON points into it.
class GltfWriting {
 public:
  explicit GltfWriting(const Gltf& gltf) : gltf_(gltf) {}

  std::string file(const std::string& generator) {
    json_["asset"] = {{"version", "2.0"}, {"generator", generator}};
    for (const auto& [name, text] : gltf_.notes_) json_["asset"]["extras"][name] = text;
    json_["scene"] = 0;
    json_["scenes"] = Json::array({{{"nodes", gltf_.roots_}}});
    add_nodes();
    add_materials();
    add_meshes();
    add_animation();
    pad(buffer_, '\0');
    json_["accessors"] = std::move(accessors_);
    json_["bufferViews"] = std::move(views_);
    json_["buffers"] = Json::array({{{"byteLength", buffer_.size()}}});
    return contained(json_.dump());
  }

 private:
  void add_nodes() {
    Json nodes = Json::array();
    for (const Gltf::Node& node : gltf_.nodes_) {
      Json one{{"name", node.name}};
      if (node.mesh) one["mesh"] = *node.mesh;
      if (node.place.translation != std::array<double, 3>{0, 0, 0}) one["translation"] = list(node.place.translation);
      if (node.place.rotation != std::array<double, 4>{0, 0, 0, 1}) one["rotation"] = list(node.place.rotation);
      if (!node.children.empty()) one["children"] = node.children;
      nodes.push_back(std::move(one));
    }
    json_["nodes"] = std::move(nodes);
  }

  void add_materials() {
    Json materials = Json::array();
    for (const GltfMaterial& m : gltf_.materials_) {
      const std::array<double, 4> colour{linear(m.colour[0]), linear(m.colour[1]), linear(m.colour[2]), m.opacity};
      Json one{{"name", m.name},
               {"pbrMetallicRoughness",
                {{"baseColorFactor", list(colour)}, {"metallicFactor", m.metallic}, {"roughnessFactor", m.roughness}}}};
      if (m.opacity < 1) one["alphaMode"] = "BLEND";
      materials.push_back(std::move(one));
    }
    json_["materials"] = std::move(materials);
  }

  void add_meshes() {
    Json meshes = Json::array();
    for (const Gltf::Mesh& mesh : gltf_.meshes_) {
      const std::size_t points = vectors(mesh.points, true), normals = vectors(mesh.normals, false);
      const std::size_t at = buffer_.size();
      for (const std::uint32_t n : mesh.numbers) add_u32(buffer_, n);
      const std::size_t numbers = accessor(at, mesh.numbers.size(), unsigned_type, "SCALAR", element_buffer);
      Json primitive{{"attributes", {{"POSITION", points}, {"NORMAL", normals}}}, {"indices", numbers}, {"material", mesh.material}};
      meshes.push_back({{"name", mesh.name}, {"primitives", Json::array({std::move(primitive)})}});
    }
    json_["meshes"] = std::move(meshes);
  }

  std::size_t vectors(const std::vector<std::array<float, 3>>& values, bool with_bounds) {
    const std::size_t at = buffer_.size();
    for (const auto& v : values)
      for (const float x : v) add_float(buffer_, x);
    const std::size_t made = accessor(at, values.size(), float_type, "VEC3", array_buffer);
    if (!with_bounds) return made;
    std::array<float, 3> low = values.front(), high = values.front();
    for (const auto& v : values)
      for (std::size_t i = 0; i < 3; ++i) low[i] = std::min(low[i], v[i]), high[i] = std::max(high[i], v[i]);
    accessors_[made]["min"] = low;
    accessors_[made]["max"] = high;
    return made;
  }

  std::size_t accessor(std::size_t from, std::size_t count, int component, const char* type, int target) {
    Json view{{"buffer", 0}, {"byteOffset", from}, {"byteLength", buffer_.size() - from}};
    if (target != 0) view["target"] = target;
    views_.push_back(std::move(view));
    accessors_.push_back({{"bufferView", views_.size() - 1}, {"componentType", component}, {"count", count}, {"type", type}});
    return accessors_.size() - 1;
  }

  void add_animation() {
    if (gltf_.movements_.empty()) return;
    const std::size_t at = buffer_.size();
    for (const float t : gltf_.key_times_) add_float(buffer_, t);
    const std::size_t input = accessor(at, gltf_.key_times_.size(), float_type, "SCALAR", 0);
    accessors_[input]["min"] = Json::array({gltf_.key_times_.front()});
    accessors_[input]["max"] = Json::array({gltf_.key_times_.back()});
    Json samplers = Json::array(), channels = Json::array();
    for (const GltfMovement& movement : gltf_.movements_) {
      const std::size_t from = buffer_.size(), numbers = movement.turns ? 4 : 3;
      for (const auto& value : movement.values)
        for (std::size_t i = 0; i < numbers; ++i) add_float(buffer_, static_cast<float>(value[i]));
      const std::size_t output = accessor(from, movement.values.size(), float_type, movement.turns ? "VEC4" : "VEC3", 0);
      channels.push_back({{"sampler", samplers.size()},
                          {"target", {{"node", movement.node}, {"path", movement.turns ? "rotation" : "translation"}}}});
      samplers.push_back({{"input", input}, {"interpolation", "LINEAR"}, {"output", output}});
    }
    json_["animations"] = Json::array({{{"name", gltf_.animation_}, {"channels", std::move(channels)}, {"samplers", std::move(samplers)}}});
  }

  std::string contained(std::string json) const {
    pad(json, ' ');
    std::string out;
    add_u32(out, 0x46546C67U);  // "glTF"
    add_u32(out, 2);
    add_u32(out, static_cast<std::uint32_t>(12 + 8 + json.size() + 8 + buffer_.size()));
    add_u32(out, static_cast<std::uint32_t>(json.size()));
    add_u32(out, 0x4E4F534AU);  // "JSON"
    out += json;
    add_u32(out, static_cast<std::uint32_t>(buffer_.size()));
    add_u32(out, 0x004E4942U);  // "BIN"
    return out + buffer_;
  }

  const Gltf& gltf_;
  Json json_, accessors_ = Json::array(), views_ = Json::array();
  std::string buffer_;
};

std::string Gltf::to_bytes(const std::string& generator) const { return GltfWriting(*this).file(generator); }

}  // namespace visewright::outputs::facets
