#include "outputs/facets/triangulate.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace visewright::outputs::facets {
namespace {

using geometry::Point;

double turn(Point a, Point b, Point c) { return geometry::cross(b - a, c - a); }

/// Whether two stretches cross or touch.
bool meet(Point a, Point b, Point c, Point d) {
  const double u = turn(a, b, c), v = turn(a, b, d), s = turn(c, d, a), t = turn(c, d, b);
  if (((u > 0 && v < 0) || (u < 0 && v > 0)) && ((s > 0 && t < 0) || (s < 0 && t > 0))) return true;
  const auto on = [](Point p, Point q, Point r, double side) {
    return side == 0 && std::min(p.x, q.x) <= r.x && r.x <= std::max(p.x, q.x) && std::min(p.y, q.y) <= r.y &&
           r.y <= std::max(p.y, q.y);
  };
  return on(a, b, c, u) || on(a, b, d, v) || on(c, d, a, s) || on(c, d, b, t);
}

struct Side {
  std::size_t polygon, index;
  Point a, b;
};

void add_sides(const Polygon& polygon, std::size_t number, std::vector<Side>& sides) {
  for (std::size_t i = 0; i < polygon.size(); ++i)
    sides.push_back({number, i, polygon[i], polygon[(i + 1) % polygon.size()]});
}

/// Whether any two sides for which `counts` meet; swept along x, so that only near ones are compared.
template <class Counts>
bool any_meet(std::vector<Side> sides, Counts counts) {
  const auto low = [](const Side& s) { return std::min(s.a.x, s.b.x); };
  std::sort(sides.begin(), sides.end(), [&](const Side& s, const Side& t) { return low(s) < low(t); });
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const double end = std::max(sides[i].a.x, sides[i].b.x);
    for (std::size_t j = i + 1; j < sides.size() && low(sides[j]) <= end; ++j)
      if (counts(sides[i], sides[j]) && meet(sides[i].a, sides[i].b, sides[j].a, sides[j].b)) return true;
  }
  return false;
}

/// A ring of corners that is cut down ear by ear. A bridge to a hole makes two corners of one point.
class Ring {
 public:
  Ring(const Polygon& outer, std::span<const Polygon> holes) {
    for (const Point p : outer) add_point(p);
    std::vector<std::uint32_t> ring(outer.size());
    for (std::uint32_t i = 0; i < ring.size(); ++i) ring[i] = i;
    std::vector<std::pair<std::uint32_t, std::uint32_t>> ranges;
    for (const Polygon& hole : holes) {
      ranges.emplace_back(points_.size(), points_.size() + hole.size());
      for (const Point p : hole) add_point(p);
    }
    // From the rightmost on, so that a bridge towards +x meets only the outline and holes that are in it already.
    std::sort(ranges.begin(), ranges.end(), [&](const auto& a, const auto& b) {
      return points_[rightmost(a)].x > points_[rightmost(b)].x;
    });
    for (const auto& range : ranges) sound_ = sound_ && bridge(ring, range);
    corners_.resize(ring.size());
    for (std::size_t i = 0; i < ring.size(); ++i)
      corners_[i] = {ring[i], (i + ring.size() - 1) % ring.size(), (i + 1) % ring.size()};
  }

  std::vector<std::array<std::uint32_t, 3>> cut() {
    std::vector<std::array<std::uint32_t, 3>> list;
    std::size_t left = corners_.size(), at = 0, passed = 0;
    while (sound_ && left > 3) {
      if (passed > left) return {};  // no ear is left: the polygons cross
      const Corner c = corners_[at];
      if (!ear(at)) {
        at = c.next;
        ++passed;
        continue;
      }
      list.push_back({corners_[c.before].point, c.point, corners_[c.next].point});
      corners_[c.before].next = c.next;
      corners_[c.next].before = c.before;
      corners_[at].gone = true;
      // Going on two corners ahead keeps the triangles broader than a fan would.
      at = corners_[c.next].next;
      --left;
      passed = 0;
    }
    if (!sound_) return {};
    const Corner c = corners_[at];
    list.push_back({corners_[c.before].point, c.point, corners_[c.next].point});
    return list;
  }

 private:
  struct Corner {
    std::uint32_t point = 0;
    std::size_t before = 0, next = 0;
    bool gone = false;
  };
  using Range = std::pair<std::uint32_t, std::uint32_t>;

  void add_point(Point p) { points_.push_back(p); }
  Point point(std::size_t corner) const { return points_[corners_[corner].point]; }

  std::uint32_t rightmost(const Range& range) const {
    std::uint32_t best = range.first;
    for (std::uint32_t i = range.first; i < range.second; ++i)
      if (points_[i].x > points_[best].x) best = i;
    return best;
  }

  /// From the hole's rightmost point to a corner of the ring that it sees: the nearest one such that the way crosses no
  /// side. The hole is then run backwards between the two.
  bool bridge(std::vector<std::uint32_t>& ring, const Range& range) {
    const std::uint32_t from = rightmost(range);
    const Point m = points_[from];
    std::optional<std::size_t> best;
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < ring.size(); ++i)
      if (points_[ring[i]].x > m.x) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      return geometry::distance(points_[ring[a]], m) < geometry::distance(points_[ring[b]], m);
    });
    for (const std::size_t i : order)
      if (sees(ring, i, m)) {
        best = i;
        break;
      }
    if (!best) return false;
    std::vector<std::uint32_t> way{ring[*best]};
    const std::uint32_t count = range.second - range.first;
    for (std::uint32_t k = 0; k <= count; ++k) way.push_back(range.first + (from - range.first + count - k) % count);
    ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(*best), way.begin(), way.end());
    return true;
  }

  bool sees(const std::vector<std::uint32_t>& ring, std::size_t corner, Point m) const {
    const Point p = points_[ring[corner]];
    const Point before = points_[ring[(corner + ring.size() - 1) % ring.size()]], next = points_[ring[(corner + 1) % ring.size()]];
    // The way must leave the corner into the region.
    const bool bulges = turn(before, p, next) > 0;
    const bool left_of_both = turn(before, p, m) > 0 && turn(p, next, m) > 0,
               left_of_one = turn(before, p, m) > 0 || turn(p, next, m) > 0;
    if (!(bulges ? left_of_both : left_of_one)) return false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = points_[ring[i]], b = points_[ring[(i + 1) % ring.size()]];
      if (a == p || b == p) continue;
      if (meet(a, b, p, m)) return false;
    }
    return true;
  }

  bool ear(std::size_t at) const {
    const Corner& c = corners_[at];
    const Point a = point(c.before), b = point(at), d = point(c.next);
    if (turn(a, b, d) <= 0) return false;
    const double low_x = std::min({a.x, b.x, d.x}), high_x = std::max({a.x, b.x, d.x}), low_y = std::min({a.y, b.y, d.y}),
                 high_y = std::max({a.y, b.y, d.y});
    for (std::size_t i = corners_[c.next].next; i != c.before; i = corners_[i].next) {
      const Point p = point(i);
      if (p.x < low_x || p.x > high_x || p.y < low_y || p.y > high_y || p == a || p == b || p == d) continue;
      if (turn(a, b, p) >= 0 && turn(b, d, p) >= 0 && turn(d, a, p) >= 0) return false;
    }
    return true;
  }

  std::vector<Point> points_;
  std::vector<Corner> corners_;
  bool sound_ = true;
};

}  // namespace

std::vector<std::array<std::uint32_t, 3>> triangles(const Polygon& outer, std::span<const Polygon> holes) {
  return Ring(outer, holes).cut();
}

bool simple(const Polygon& polygon) {
  std::vector<Side> sides;
  add_sides(polygon, 0, sides);
  const std::size_t n = polygon.size();
  return !any_meet(std::move(sides), [n](const Side& s, const Side& t) {
    return (s.index + 1) % n != t.index && (t.index + 1) % n != s.index;
  });
}

bool meet(const Polygon& a, const Polygon& b) {
  std::vector<Side> sides;
  add_sides(a, 0, sides);
  add_sides(b, 1, sides);
  return any_meet(std::move(sides), [](const Side& s, const Side& t) { return s.polygon != t.polygon; });
}

bool inside(const Polygon& polygon, Point p) {
  bool within = false;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) within = !within;
  }
  return within;
}

double area_mm2(const Polygon& polygon) {
  double twice = 0;
  for (std::size_t i = 0; i < polygon.size(); ++i) twice += geometry::cross(polygon[i], polygon[(i + 1) % polygon.size()]);
  return twice / 2;
}

}  // namespace visewright::outputs::facets
