#include "outputs/papers/sheet.h"

#include <algorithm>
#include <cmath>

#include "outputs/papers/lettering.h"

namespace visewright::outputs::papers {

using geometry::Arc;
using geometry::Box;
using geometry::Edge;
using geometry::Line;
using geometry::Point;

std::size_t Sheet::layer(std::string_view name, Pen pen, std::string_view meaning) {
  const auto found = std::find_if(layers.begin(), layers.end(), [&](const Layer& l) { return l.name == name; });
  if (found != layers.end()) return static_cast<std::size_t>(found - layers.begin());
  layers.push_back({std::string(name), pen, std::string(meaning)});
  return layers.size() - 1;
}

void Sheet::line(std::size_t on, Point a, Point b) { curves.push_back({on, {Line{a, b}}, false, Waste::none}); }

void Sheet::edge(std::size_t on, const Edge& e) {
  const auto* arc = std::get_if<Arc>(&e);
  curves.push_back({on, {e}, arc != nullptr && arc->a == arc->b, Waste::none});
}

void Sheet::outline(std::size_t on, const geometry::Loop& loop, Waste waste) {
  curves.push_back({on, {loop.edges().begin(), loop.edges().end()}, true, waste});
}

void Sheet::circle(std::size_t on, Point centre, double radius_mm, Waste waste) {
  const Point start = centre + Point{radius_mm, 0};
  curves.push_back({on, {Arc{start, start, centre, true}}, true, waste});
}

void Sheet::cross(std::size_t on, Point at, double arm_mm) {
  line(on, at - Point{arm_mm, 0}, at + Point{arm_mm, 0});
  line(on, at - Point{0, arm_mm}, at + Point{0, arm_mm});
}

void Sheet::write(std::size_t on, Point at, std::string text, double height_mm, Anchor anchor, double turn_rad) {
  words.push_back({on, at, std::move(text), height_mm, anchor, turn_rad});
}

void Sheet::add(const Sheet& other, double scale, Point shift) {
  std::vector<std::size_t> here;
  for (const Layer& l : other.layers) here.push_back(layer(l.name, l.pen, l.meaning));
  for (Curve curve : other.curves) {
    curve.layer = here[curve.layer];
    for (Edge& e : curve.edges) e = scaled(e, scale, shift);
    curves.push_back(std::move(curve));
  }
  for (Words each : other.words) {
    each.layer = here[each.layer];
    each.at = scale * each.at + shift;
    words.push_back(std::move(each));
  }
}

Box around(const Box& a, const Box& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

Box box(const Sheet& sheet) {
  Box all = geometry::box(sheet.curves.front().edges.front());
  for (const Curve& curve : sheet.curves)
    for (const Edge& e : curve.edges) all = around(all, geometry::box(e));
  return all;
}

Box box(const Words& words) {
  const double width = width_mm(words.text, words.height_mm), up = 0.8 * words.height_mm, down = 0.24 * words.height_mm;
  const double left = words.anchor == Anchor::left ? 0 : words.anchor == Anchor::middle ? -width / 2 : -width;
  Box all{words.at, words.at};
  for (const Point corner : {Point{left, -down}, {left + width, -down}, {left, up}, {left + width, up}}) {
    const Point p = words.at + geometry::turned(corner, words.turn_rad);
    all = around(all, {p, p});
  }
  return all;
}

Edge scaled(const Edge& edge, double k, Point shift) {
  Edge e = edge;
  const auto put = [&](Point& p) { p = k * p + shift; };
  if (auto* line = std::get_if<Line>(&e)) {
    put(line->a), put(line->b);
  } else if (auto* arc = std::get_if<Arc>(&e)) {
    put(arc->a), put(arc->b), put(arc->centre);
  } else if (auto* involute = std::get_if<geometry::Involute>(&e)) {
    put(involute->centre);
    involute->base_radius_mm *= k;
  } else if (auto* trochoid = std::get_if<geometry::Trochoid>(&e)) {
    put(trochoid->centre);
    trochoid->pitch_radius_mm *= k, trochoid->tip_radius_mm *= k, trochoid->offset_mm *= k;
  }
  return e;
}

const Arc* as_circle(const Curve& curve) {
  if (!curve.closed || curve.edges.size() != 1) return nullptr;
  return std::get_if<Arc>(&curve.edges.front());
}

}  // namespace visewright::outputs::papers
