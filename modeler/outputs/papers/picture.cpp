#include "outputs/papers/picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "kernel/hidden_lines.h"
#include "solids/solid_set.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

constexpr double deflection_mm = 0.4, margin_mm = 60;

/// Looking down on the vise from the person's right: a pictorial view along (−0.5, 0.75, −0.45).
geometry::Placement pictorial_view() {
  const geometry::Vector eye = [] {
    const geometry::Vector raw{0.5, -0.75, 0.45};
    return geometry::times(1 / std::sqrt(geometry::dot(raw, raw)), raw);
  }();
  const geometry::Vector across = geometry::cross({0, 0, 1}, eye);
  return {{0, 0, 0}, geometry::times(1 / std::sqrt(geometry::dot(across, across)), across), eye};
}

std::vector<kernel::PlacedSolid> placed_solids(const Facts& facts) {
  std::vector<kernel::PlacedSolid> list;
  for (const auto& placed : facts.assembly.placed)
    for (const auto& body : facts.solids->bodies(placed.part))
      list.push_back({body.solid, assembly::at(placed, facts.pose), static_cast<int>(placed.group)});
  return list;
}

struct Frame {
  double left = 1e300, right = -1e300, bottom = 1e300, top = -1e300;
};

/// Round what moves; of the bench only what comes near it.
Frame frame(const std::vector<kernel::Segment>& segments) {
  constexpr int bench_and_rear = static_cast<int>(assembly::Group::fixed);
  Frame f;
  for (const auto& s : segments)
    if (s.colour_group != bench_and_rear)
    for (const geometry::Point p : {s.a, s.b}) {
      f.left = std::min(f.left, p.x);
      f.right = std::max(f.right, p.x);
      f.bottom = std::min(f.bottom, p.y);
      f.top = std::max(f.top, p.y);
    }
  return f;
}

std::string number(double value) { return units::write_number(value, 2); }

/// One path a group: what stands, what moves, what turns; segments that follow on from each other in one stroke.
std::string path(const std::vector<kernel::Segment>& segments, int group, const Frame& f) {
  std::string d;
  geometry::Point last{1e300, 1e300};
  for (const auto& s : segments) {
    if (s.colour_group != group) continue;
    const auto at = [&](geometry::Point p) { return number(p.x - f.left + margin_mm) + " " + number(f.top - p.y + margin_mm); };
    if (geometry::distance(s.a, last) > 1e-6) d += "M" + at(s.a);
    d += "L" + at(s.b);
    last = s.b;
  }
  return d;
}

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '>' ? "&gt;" : std::string(1, c);
  return out;
}

std::string svg(const Facts& facts, const std::vector<kernel::Segment>& segments) {
  const Frame f = frame(segments);
  const double width = f.right - f.left + 2 * margin_mm, height = f.top - f.bottom + 2 * margin_mm + 24;
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 3> groups{
      {{"fixed", "#5b5f66"}, {"moving", "#8a5a2b"}, {"turning", "#1f5f8b"}}};
  std::string text = fmt::format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" overflow=\"hidden\">\n<title>{2}</title>\n"
      "<rect width=\"{0}\" height=\"{1}\" fill=\"#fffdf8\"/>\n",
      number(width), number(height), escaped(facts.title));
  for (std::size_t i = 0; i < groups.size(); ++i)
    text += fmt::format("<path id=\"{}\" d=\"{}\" fill=\"none\" stroke=\"{}\" stroke-width=\"0.8\" stroke-linecap=\"round\"/>\n",
                        groups[i].first, path(segments, static_cast<int>(i), f), groups[i].second);
  const std::string opening = units::write_length(units::mm(facts.pose.opening_mm), facts.show);
  const auto line = [&](double up, const std::string& words) {
    text += fmt::format("<text x=\"8\" y=\"{}\" font-family=\"sans-serif\" font-size=\"9\" fill=\"#333333\">{}</text>\n", number(height - up), words);
  };
  line(20, escaped(facts.title) + ", opening " + opening);
  line(8, "grey stands, brown moves, blue turns");
  text += "</svg>\n";
  return text;
}

}  // namespace

base::Result<std::vector<File>> write_picture(const Facts& facts, base::Watcher& watcher) {
  watcher.step("drawing the picture", 0.95);
  auto segments = kernel::hidden_lines(placed_solids(facts), pictorial_view(), deflection_mm, "picture");
  if (!segments) return base::passed_on(std::move(segments.error()));
  return std::vector<File>{{"picture.svg", svg(facts, *segments), "the whole vise, a pictorial view", std::nullopt}};
}

}  // namespace visewright::outputs::papers
