#include "fitup/outline.h"

#include <algorithm>
#include <cmath>

#include "geometry/measure.h"
#include "units/quantity.h"

namespace visewright::fitup {
namespace {

using geometry::Box;
using geometry::cross;
using geometry::distance;
using geometry::dot;

Box box_of(Point a, Point b) { return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}}; }

/// Whether a point of the circle belongs to the piece of it, ends included.
bool on_arc(const Curve& c, Point p) {
  const double side = c.right ? p.x - c.centre.x : c.centre.x - p.x;
  return side >= -contact_mm && p.y >= c.box.low.y - contact_mm && p.y <= c.box.high.y + contact_mm;
}

bool on_line(const Curve& c, Point p) {
  const Point way = c.b - c.a;
  const double squared = dot(way, way), t = dot(p - c.a, way);
  const double slack = contact_mm * std::sqrt(squared);
  return t >= -slack && t <= squared + slack;
}

bool on_curve(const Curve& c, Point p) { return c.straight() ? on_line(c, p) : on_arc(c, p); }

/// Points common to the carriers of two curves: lines, circles. Those that just touch within contact_mm count.
void crossings(const Curve& a, const Curve& b, std::vector<Point>& at) {
  if (a.straight() && b.straight()) {
    const Point u = a.b - a.a, v = b.b - b.a;
    const double turn = cross(u, v);
    if (std::abs(turn) < 1e-12 * std::sqrt(dot(u, u) * dot(v, v))) return;
    at.push_back(a.a + (cross(b.a - a.a, v) / turn) * u);
    return;
  }
  if (a.straight()) {
    const Point u = a.b - a.a;
    const double length = std::sqrt(dot(u, u));
    if (length == 0) return;
    const Point way = (1 / length) * u;
    const double along = dot(b.centre - a.a, way), off = cross(way, b.centre - a.a);
    const double inside = b.radius * b.radius - off * off;
    if (inside < -2 * b.radius * contact_mm) return;
    const double half = std::sqrt(std::max(0.0, inside));
    at.push_back(a.a + (along - half) * way);
    at.push_back(a.a + (along + half) * way);
    return;
  }
  if (b.straight()) return crossings(b, a, at);
  const Point way = b.centre - a.centre;
  const double d = std::sqrt(dot(way, way));
  if (d < contact_mm) return;
  const double along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2 * d);
  const double inside = a.radius * a.radius - along * along;
  if (inside < -2 * a.radius * contact_mm) return;
  const Point u = (1 / d) * way, v{-u.y, u.x};
  const double half = std::sqrt(std::max(0.0, inside));
  at.push_back(a.centre + along * u + half * v);
  at.push_back(a.centre + along * u - half * v);
}

struct Best {
  Nearest found{1e300, {}, {}};
  void offer(Point a, Point b) {
    const double d = distance(a, b);
    if (d < found.distance) found = {d, a, b};
  }
};

/// The point of a curve nearest to p.
Point foot(Point p, const Curve& c) {
  if (c.straight()) {
    const Point way = c.b - c.a;
    const double squared = dot(way, way);
    return squared > 0 ? c.a + std::clamp(dot(p - c.a, way) / squared, 0.0, 1.0) * way : c.a;
  }
  const Point out = p - c.centre;
  const double far = std::sqrt(dot(out, out));
  if (far > 0) {
    const Point on = c.centre + (c.radius / far) * out;
    if (on_arc(c, on)) return on;
  }
  return distance(p, c.a) <= distance(p, c.b) ? c.a : c.b;
}

void add_arc(const Chain::Link& given, const Lay& lay, bool left_in, std::vector<Curve>& to) {
  const Point centre = lay.of(given.centre), a = lay.of(given.a), b = lay.of(given.b);
  const double r = given.radius;
  const bool left = (given.swept_rad > 0) == (cross(lay.x, lay.y) > 0);
  const Point top{centre.x, centre.y + r}, bottom{centre.x, centre.y - r};
  const double from = std::atan2(a.y - centre.y, a.x - centre.x);
  const double swept = std::abs(given.swept_rad);
  const double pi = units::pi;
  // Cuts at the top and the bottom of the circle, in the order in which the arc meets them.
  std::vector<std::pair<double, Point>> stops{{0, a}};
  for (int k = -2; k <= 2; ++k) {
    const double to_top = left ? pi / 2 + 2 * pi * k - from : from - pi / 2 - 2 * pi * k;
    const double to_bottom = left ? -pi / 2 + 2 * pi * k - from : from + pi / 2 - 2 * pi * k;
    for (const auto& [angle, point] : {std::pair{to_top, top}, std::pair{to_bottom, bottom}})
      if (angle > 1e-12 && angle < swept - 1e-12) stops.push_back({angle, point});
  }
  std::sort(stops.begin(), stops.end(), [](const auto& p, const auto& q) { return p.first < q.first; });
  stops.push_back({swept, b});
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    const double middle = from + (left ? 1 : -1) * (stops[i].first + stops[i + 1].first) / 2;
    to.push_back(arc(stops[i].second, stops[i + 1].second, centre, r, std::cos(middle) > 0, left_in));
  }
}

std::size_t level_of(const Box& box, std::size_t count, double y) {
  const double part = (y - box.low.y) / (box.high.y - box.low.y) * static_cast<double>(count);
  return std::min(count - 1, static_cast<std::size_t>(std::max(0.0, part)));
}

/// Whether a ray from p to the right crosses the curve.
bool crosses_right_of(const Curve& c, Point p) {
  if (p.y < c.box.low.y || p.y >= c.box.high.y || p.x > c.box.high.x) return false;
  if (c.straight()) return c.a.x + (c.b.x - c.a.x) * ((p.y - c.a.y) / (c.b.y - c.a.y)) > p.x;
  const double up = p.y - c.centre.y, across = std::sqrt(std::max(0.0, c.radius * c.radius - up * up));
  return (c.right ? c.centre.x + across : c.centre.x - across) > p.x;
}

/// Outlines of more curves than this are worth sorting by height.
constexpr std::size_t short_outline = 48;

void close_box(Outline& o) {
  o.box = o.curves.empty() ? Box{} : o.curves.front().box;
  for (const Curve& c : o.curves) {
    o.box.low = {std::min(o.box.low.x, c.box.low.x), std::min(o.box.low.y, c.box.low.y)};
    o.box.high = {std::max(o.box.high.x, c.box.high.x), std::max(o.box.high.y, c.box.high.y)};
  }
  if (o.curves.size() <= short_outline) return;
  o.levels.resize(o.curves.size() / 4);
  for (std::uint32_t i = 0; i < o.curves.size(); ++i) {
    const Box& b = o.curves[i].box;
    const std::size_t last = level_of(o.box, o.levels.size(), b.high.y);
    for (std::size_t k = level_of(o.box, o.levels.size(), b.low.y); k <= last; ++k) o.levels[k].push_back(i);
  }
}

/// What an involute or trochoid winds about: its radius from there grows or shrinks all the way.
Point centre_of(const geometry::Edge& edge) {
  if (const auto* involute = std::get_if<geometry::Involute>(&edge)) return involute->centre;
  if (const auto* trochoid = std::get_if<geometry::Trochoid>(&edge)) return trochoid->centre;
  return {};
}

void add_links(const geometry::Loop& loop, bool outer, double chord_mm, std::vector<Chain::Link>& to) {
  for (const geometry::Edge& edge : loop.edges()) {
    if (const auto* straight = std::get_if<geometry::Line>(&edge)) {
      to.push_back({straight->a, straight->b, {}, 0, 0, 0, outer});
    } else if (const auto* round = std::get_if<geometry::Arc>(&edge)) {
      to.push_back({round->a, round->b, round->centre, distance(round->centre, round->a), geometry::swept_rad(*round), 0, outer});
    } else {
      const geometry::Sampled sampled = geometry::sample(edge, chord_mm);
      for (std::size_t i = 0; i + 1 < sampled.points.size(); ++i)
        to.push_back({sampled.points[i], sampled.points[i + 1], centre_of(edge), 0, 0, sampled.error_mm, outer});
    }
  }
}

}  // namespace

Curve line(Point a, Point b, double stray, bool left_in) { return {a, b, {}, 0, false, left_in, stray, box_of(a, b)}; }

Curve arc(Point a, Point b, Point centre, double radius, bool right, bool left_in) {
  Curve c{a, b, centre, radius, right, left_in, 0, box_of(a, b)};
  const double low = c.box.low.y, high = c.box.high.y;
  if (low <= centre.y && centre.y <= high) {
    if (right) c.box.high.x = std::max(c.box.high.x, centre.x + radius);
    else c.box.low.x = std::min(c.box.low.x, centre.x - radius);
  }
  return c;
}

Amid amid(const Curve& c) {
  if (c.straight()) {
    const Point way = c.b - c.a;
    const double length = geometry::length(way);
    return {0.5 * (c.a + c.b), length > 0 ? Point{-way.y / length, way.x / length} : Point{0, 1}};
  }
  const Point u = c.a - c.centre, v = c.b - c.centre;
  Point half = u + v;
  const double length = geometry::length(half);
  // Ends that lie opposite each other: the middle of a whole half circle.
  half = length > 1e-9 * c.radius ? (1 / length) * half : Point{c.right ? 1.0 : -1.0, 0};
  return {c.centre + c.radius * half, half};
}

Nearest nearest(Point p, const Curve& c) {
  const Point on = foot(p, c);
  return {distance(p, on), p, on};
}

Nearest nearest(const Curve& a, const Curve& b) {
  Best best;
  for (const Point p : {a.a, a.b}) best.offer(p, foot(p, b));
  for (const Point p : {b.a, b.b}) best.offer(foot(p, a), p);
  if (apart(a.box, b.box) <= contact_mm) {
    std::vector<Point> common;
    crossings(a, b, common);
    for (const Point p : common)
      if (on_curve(a, p) && on_curve(b, p)) return {0, p, p};
  }
  if (!a.straight() && !b.straight()) {
    const Point way = b.centre - a.centre;
    const double d = geometry::length(way);
    if (d > contact_mm) {
      const Point u = (1 / d) * way;
      for (const double s : {-a.radius, a.radius})
        for (const double t : {-b.radius, b.radius}) {
          const Point p = a.centre + s * u, q = b.centre + t * u;
          if (on_arc(a, p) && on_arc(b, q)) best.offer(p, q);
        }
    }
  } else if (a.straight() != b.straight()) {
    const Curve &straight = a.straight() ? a : b, &round = a.straight() ? b : a;
    const Point p = foot(round.centre, straight), way = p - round.centre;
    const double d = geometry::length(way);
    if (d > 0) {
      for (const double s : {-round.radius, round.radius}) {
        const Point q = round.centre + (s / d) * way;
        if (!on_arc(round, q)) continue;
        if (a.straight()) best.offer(p, q);
        else best.offer(q, p);
      }
    }
  }
  return best.found;
}

void meet(const Curve& cut, const Curve& other, std::vector<Point>& at) {
  if (apart(cut.box, other.box) > contact_mm) return;
  std::vector<Point> common;
  crossings(cut, other, common);
  for (const Point p : common)
    if (on_curve(cut, p) && on_curve(other, p)) at.push_back(p);
  for (const Point p : {other.a, other.b})
    if (nearest(p, cut).distance <= contact_mm) at.push_back(p);
}

std::vector<Curve> pieces(const Curve& c, std::vector<Point> at) {
  const Point way = c.b - c.a;
  const double rise = c.straight() ? 0 : c.b.y - c.a.y;
  // Along an arc the height orders the points, except near its top and bottom, where the chord does.
  const auto along = [&](Point p) { return c.straight() ? dot(p - c.a, way) : (p.y - c.a.y) * rise + 1e-3 * dot(p - c.a, way); };
  std::sort(at.begin(), at.end(), [&](Point p, Point q) { return along(p) < along(q); });
  std::vector<Curve> result;
  Point from = c.a;
  at.push_back(c.b);
  for (std::size_t i = 0; i < at.size(); ++i) {
    const bool last = i + 1 == at.size();
    if (distance(from, at[i]) <= contact_mm || (!last && distance(at[i], c.b) <= contact_mm)) continue;
    result.push_back(c.straight() ? line(from, at[i], c.stray, c.left_in) : arc(from, at[i], c.centre, c.radius, c.right, c.left_in));
    from = at[i];
  }
  return result;
}

double apart(const Box& a, const Box& b) {
  const double dx = std::max({0.0, a.low.x - b.high.x, b.low.x - a.high.x});
  const double dy = std::max({0.0, a.low.y - b.high.y, b.low.y - a.high.y});
  return dx == 0 ? dy : dy == 0 ? dx : std::hypot(dx, dy);
}

Box grown(const Box& b, double by_mm) { return {{b.low.x - by_mm, b.low.y - by_mm}, {b.high.x + by_mm, b.high.y + by_mm}}; }

bool Outline::holds(Point p) const {
  if (p.x < box.low.x || p.x > box.high.x || p.y < box.low.y || p.y > box.high.y) return false;
  bool inside = false;
  if (levels.empty()) {
    for (const Curve& c : curves) inside ^= crosses_right_of(c, p);
  } else {
    for (const std::uint32_t i : levels[level_of(box, levels.size(), p.y)]) inside ^= crosses_right_of(curves[i], p);
  }
  return inside;
}

double Outline::distance_to_edge(Point p) const {
  double best = 1e300;
  for (const Curve& c : curves) best = std::min(best, nearest(p, c).distance);
  return best;
}

Chain chain(const geometry::Profile& profile, double chord_mm) {
  Chain result;
  for (const geometry::Loop& loop : profile.outer) add_links(loop, true, chord_mm, result.links);
  for (const geometry::Loop& loop : profile.holes) add_links(loop, false, chord_mm, result.links);
  return result;
}

Outline outline(const Chain& links, const Lay& lay) {
  Outline result;
  const bool mirrored = cross(lay.x, lay.y) < 0;
  for (const Chain::Link& link : links.links) {
    const bool left_in = link.outer != mirrored;
    if (link.radius > 0) {
      add_arc(link, lay, left_in, result.curves);
      continue;
    }
    result.curves.push_back(line(lay.of(link.a), lay.of(link.b), link.stray, left_in));
    if (link.stray > 0) result.curves.back().centre = lay.of(link.centre);
  }
  close_box(result);
  return result;
}

Outline rectangle(Point corner, Point side, Point other) {
  Outline result;
  const Point b = corner + side, c = b + other, d = corner + other;
  const bool left_in = cross(side, other) > 0;
  result.curves = {line(corner, b, 0, left_in), line(b, c, 0, left_in), line(c, d, 0, left_in), line(d, corner, 0, left_in)};
  close_box(result);
  return result;
}

Outline ring(Point centre, double inner_mm, double outer_mm) {
  Outline result;
  for (const double r : {outer_mm, inner_mm}) {
    if (r <= 0) continue;
    const Point top{centre.x, centre.y + r}, bottom{centre.x, centre.y - r};
    result.curves.push_back(arc(bottom, top, centre, r, true, r == outer_mm));
    result.curves.push_back(arc(top, bottom, centre, r, false, r == outer_mm));
  }
  close_box(result);
  return result;
}

}  // namespace visewright::fitup
