#include "outputs/papers/svg.h"

#include <fmt/format.h>

#include <cmath>
#include <pugixml.hpp>
#include <sstream>

#include "geometry/measure.h"
#include "outputs/papers/ink.h"
#include "outputs/papers/lettering.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Point;
using pugi::xml_node;

std::string number(double value) { return units::write_number(value, 5); }
std::string pair(Point p) { return number(p.x) + " " + number(-p.y); }

std::string colour(const Ink& with) {
  const auto byte = [&](std::size_t i) { return static_cast<int>(std::lround(255 * with.red_green_blue[i])); };
  return fmt::format("#{:02x}{:02x}{:02x}", byte(0), byte(1), byte(2));
}

void append(std::string& path, const geometry::Edge& edge) {
  if (const auto* line = std::get_if<geometry::Line>(&edge)) {
    path += " L " + pair(line->b);
  } else if (const auto* arc = std::get_if<geometry::Arc>(&edge)) {
    const std::string r = number(geometry::distance(arc->centre, arc->a));
    const double sweep = geometry::swept_rad(*arc);
    path += fmt::format(" A {} {} 0 {} {} {}", r, r, std::abs(sweep) > units::pi ? 1 : 0, sweep > 0 ? 0 : 1, pair(arc->b));
  } else {
    const std::vector<Point> points = geometry::sample(edge, chord_error_mm).points;
    for (std::size_t i = 1; i < points.size(); ++i) path += " L " + pair(points[i]);
  }
}

void put(xml_node group, const Curve& curve) {
  if (const geometry::Arc* circle = as_circle(curve)) {
    xml_node node = group.append_child("circle");
    node.append_attribute("cx") = number(circle->centre.x).c_str();
    node.append_attribute("cy") = number(-circle->centre.y).c_str();
    node.append_attribute("r") = number(geometry::distance(circle->centre, circle->a)).c_str();
    return;
  }
  std::string path = "M " + pair(geometry::start(curve.edges.front()));
  for (const geometry::Edge& edge : curve.edges) append(path, edge);
  if (curve.closed) path += " Z";
  group.append_child("path").append_attribute("d") = path.c_str();
}

void put(xml_node group, const Words& words) {
  static constexpr const char* anchors[] = {"start", "middle", "end"};
  xml_node node = group.append_child("text");
  node.append_attribute("x") = number(words.at.x).c_str();
  node.append_attribute("y") = number(-words.at.y).c_str();
  node.append_attribute("font-size") = number(words.height_mm).c_str();
  if (words.anchor != Anchor::left) node.append_attribute("text-anchor") = anchors[static_cast<std::size_t>(words.anchor)];
  if (words.turn_rad != 0)
    node.append_attribute("transform") =
        fmt::format("rotate({} {})", number(-words.turn_rad * 180 / units::pi), pair(words.at)).c_str();
  node.append_child(pugi::node_pcdata).set_value(words.text.c_str());
}

void start_group(xml_node group, const Layer& layer) {
  const Ink with = ink(layer.pen);
  group.append_attribute("id") = layer.name.c_str();
  group.append_attribute("fill") = "none";
  group.append_attribute("stroke") = colour(with).c_str();
  group.append_attribute("stroke-width") = number(with.width_mm).c_str();
  std::string dashes;
  for (const double each : with.dashes_mm) dashes += (dashes.empty() ? "" : " ") + number(each);
  if (!dashes.empty()) group.append_attribute("stroke-dasharray") = dashes.c_str();
}

/// Words are filled, not stroked: a group of their own inside their layer's.
void put_words(xml_node group, const Sheet& sheet, std::size_t layer) {
  xml_node inner;
  for (const Words& words : sheet.words) {
    if (words.layer != layer) continue;
    if (!inner) {
      inner = group.append_child("g");
      inner.append_attribute("fill") = group.attribute("stroke").value();
      inner.append_attribute("stroke") = "none";
    }
    put(inner, words);
  }
}

}  // namespace

std::string svg(const Sheet& sheet, const geometry::Box& page) {
  pugi::xml_document document;
  xml_node root = document.append_child("svg");
  const std::string width = number(page.high.x - page.low.x), height = number(page.high.y - page.low.y);
  root.append_attribute("xmlns") = "http://www.w3.org/2000/svg";
  root.append_attribute("width") = (width + "mm").c_str();
  root.append_attribute("height") = (height + "mm").c_str();
  root.append_attribute("viewBox") = (number(page.low.x) + " " + number(-page.high.y) + " " + width + " " + height).c_str();
  root.append_attribute("font-family") = std::string(font_family).c_str();
  root.append_child("title").append_child(pugi::node_pcdata).set_value(sheet.title.c_str());
  std::string remarks;
  for (const std::string& remark : sheet.remarks) remarks += (remarks.empty() ? "" : "\n") + remark;
  if (!remarks.empty()) root.append_child("desc").append_child(pugi::node_pcdata).set_value(remarks.c_str());
  for (std::size_t i = 0; i < sheet.layers.size(); ++i) {
    xml_node group = root.append_child("g");
    start_group(group, sheet.layers[i]);
    group.append_child("title").append_child(pugi::node_pcdata).set_value(sheet.layers[i].meaning.c_str());
    for (const Curve& curve : sheet.curves)
      if (curve.layer == i) put(group, curve);
    put_words(group, sheet, i);
  }
  std::ostringstream text;
  document.save(text, " ", pugi::format_indent, pugi::encoding_utf8);
  return text.str();
}

}  // namespace visewright::outputs::papers
