#include "outputs/facets/three_mf.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <pugixml.hpp>
#include <sstream>

#include "outputs/facets/zip.h"
#include "units/text.h"

namespace visewright::outputs::facets {
namespace {

constexpr const char* content_types = R"(<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
 <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
 <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>
)";
constexpr const char* relations = R"(<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
 <Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>
)";

std::string colour(const ThreeMf& about) {
  const auto part = [](double share) { return static_cast<int>(std::lround(255 * std::clamp(share, 0.0, 1.0))); };
  return fmt::format("#{:02X}{:02X}{:02X}", part(about.red), part(about.green), part(about.blue));
}

void add_text(pugi::xml_node node, const char* name, const std::string& text) {
  if (text.empty()) return;
  pugi::xml_node data = node.append_child("metadata");
  data.append_attribute("name") = name;
  data.text() = text.c_str();
}

void add_mesh(pugi::xml_node object, const Mesh& mesh) {
  pugi::xml_node node = object.append_child("mesh");
  pugi::xml_node vertices = node.append_child("vertices");
  for (const geometry::Vector& p : mesh.points) {
    pugi::xml_node vertex = vertices.append_child("vertex");
    for (std::size_t i = 0; i < 3; ++i) {
      constexpr std::array names{"x", "y", "z"};
      vertex.append_attribute(names[i]) = units::write_number(p[i], 6).c_str();
    }
  }
  pugi::xml_node triangles = node.append_child("triangles");
  for (const auto& t : mesh.triangles) {
    pugi::xml_node triangle = triangles.append_child("triangle");
    triangle.append_attribute("v1") = t[0];
    triangle.append_attribute("v2") = t[1];
    triangle.append_attribute("v3") = t[2];
  }
}

std::string model(const Mesh& mesh, const ThreeMf& about) {
  pugi::xml_document document;
  pugi::xml_node declaration = document.append_child(pugi::node_declaration);
  declaration.append_attribute("version") = "1.0";
  declaration.append_attribute("encoding") = "UTF-8";
  pugi::xml_node root = document.append_child("model");
  root.append_attribute("unit") = "millimeter";
  root.append_attribute("xml:lang") = "en";
  root.append_attribute("xmlns") = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
  add_text(root, "Title", about.title);
  add_text(root, "Description", about.remark);
  add_text(root, "Application", about.application);
  pugi::xml_node resources = root.append_child("resources");
  pugi::xml_node materials = resources.append_child("basematerials");
  materials.append_attribute("id") = 1;
  pugi::xml_node base = materials.append_child("base");
  base.append_attribute("name") = about.material.c_str();
  base.append_attribute("displaycolor") = colour(about).c_str();
  pugi::xml_node object = resources.append_child("object");
  object.append_attribute("id") = 2;
  object.append_attribute("type") = "model";
  object.append_attribute("pid") = 1;
  object.append_attribute("pindex") = 0;
  object.append_attribute("name") = about.title.c_str();
  if (!about.part_number.empty()) object.append_attribute("partnumber") = about.part_number.c_str();
  add_mesh(object, mesh);
  pugi::xml_node item = root.append_child("build").append_child("item");
  item.append_attribute("objectid") = 2;
  std::ostringstream text;
  text.imbue(std::locale::classic());
  document.save(text, " ", pugi::format_indent, pugi::encoding_utf8);
  return text.str();
}

}  // namespace

std::string three_mf(const Mesh& mesh, const ThreeMf& about) {
  const std::array entries{ZipEntry{"[Content_Types].xml", content_types}, ZipEntry{"_rels/.rels", relations},
                           ZipEntry{"3D/3dmodel.model", model(mesh, about)}};
  return zip(entries);
}

}  // namespace visewright::outputs::facets
