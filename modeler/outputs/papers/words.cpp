#include "outputs/papers/words.h"

#include <algorithm>
#include <cmath>

#include "units/text.h"

namespace visewright::outputs::papers {

std::string length(double mm, units::LengthUnit show) { return units::write_length(units::mm(mm), show); }

bool through(const Feature& f, double thickness_mm) { return !f.depth || *f.depth >= thickness_mm - 1e-6; }

std::string size_words(const Feature& f, double thickness_mm, units::LengthUnit show) {
  std::string text = f.diameter_mm ? "⌀" + length(*f.diameter_mm, show) + ", " : "";
  if (through(f, thickness_mm)) return text + "through";
  text += length(*f.depth, show) + " deep";
  if (f.flat) text += ", flat floor";
  if (f.from_behind) text += ", from the other side";
  return text;
}

std::string_view tool_words(const Feature& f, const layout::OwnedPlan& owned) {
  if (!f.diameter_mm) return f.kind == Feature::Kind::recess ? "router" : "saw or router";
  const auto has = [&](const std::vector<double>& list) {
    return std::any_of(list.begin(), list.end(), [&](double d) { return std::abs(d - *f.diameter_mm) < 0.01; });
  };
  if (f.flat) return has(owned.flat_bits_mm) || owned.flat_bits_mm.empty() ? "flat bit or router" : "router";
  if (has(owned.hole_saws_mm)) return "hole saw";
  return *f.diameter_mm <= 40 ? "drill" : "hole saw or router";
}

std::string name_of(const Feature& f, const layout::Plan& plan) {
  for (const layout::Pattern* pattern : {&plan.screws, &plan.shaft_hole, &plan.axles, &plan.cusps, &plan.dogs,
                                         &plan.cover_edge, &plan.rear_mounting}) {
    if (pattern->name != f.operation->pattern) continue;
    for (const layout::Hole& hole : pattern->holes) {
      // Seen from behind x has changed its sign.
      const bool here = std::abs(std::abs(hole.at.x) - std::abs(f.centre.x)) < 1e-6 && std::abs(hole.at.y - f.centre.y) < 1e-6;
      if (hole.name == f.operation->hole && here) return pattern == &plan.screws ? "screw, " + hole.name : hole.name;
    }
  }
  return f.operation->name;
}

std::string slug(std::string_view name) {
  std::string out;
  for (const char c : name) {
    const bool small = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'), large = c >= 'A' && c <= 'Z';
    if (small) out += c;
    else if (large) out += static_cast<char>(c - 'A' + 'a');
    else if (!out.empty() && out.back() != '-') out += '-';
  }
  while (!out.empty() && out.back() == '-') out.pop_back();
  return out;
}

std::string digits(double mm) {
  std::string text = units::write_number(mm, 3);
  if (text.find('.') == std::string::npos) text += ".0";
  std::replace(text.begin(), text.end(), '.', '_');
  return text;
}

geometry::Placement in_vise(const assembly::Assembly& assembly, const FaceJob& face) {
  geometry::Placement at{};
  for (const assembly::Placed& placed : assembly.placed) {
    if (placed.part != face.job->part) continue;
    at = placed.shut;
    break;
  }
  return geometry::combined(geometry::combined(at, face.job->in_part), face.face.datum);
}

std::string_view way_words(const geometry::Vector& d) {
  constexpr double straight = 1 - 1e-6;
  if (d[0] > straight) return "person's right";
  if (d[0] < -straight) return "person's left";
  if (d[1] > straight) return "into the bench";
  if (d[1] < -straight) return "towards the person";
  if (d[2] > straight) return "up";
  if (d[2] < -straight) return "down";
  return {};
}

std::string face_words(const assembly::Assembly& assembly, const FaceJob& face) {
  const geometry::Placement at = in_vise(assembly, face);
  const std::string_view eye = way_words(at.z_axis), right = way_words(at.x_axis);
  std::string text = "You look at the " + std::string(face.face.name) + " of the " + face.job->name;
  if (eye == "towards the person") text += ", as the person at the vise sees it.";
  else if (eye == "into the bench") text += ", from behind, as seen from the bench.";
  else if (eye == "up") text += ", from above.";
  else if (eye == "down") text += ", from below.";
  else text += ".";
  if (right == "person's left")
    text += " Left and right are exchanged against the front: the person's left is at the right of this sheet.";
  return text;
}

}  // namespace visewright::outputs::papers
