#include "geometry/meetings.h"

#include <algorithm>

#include "geometry/loop.h"
#include "units/quantity.h"

namespace visewright::geometry {
namespace {

constexpr double just_touching_mm = 1e-10;

/// The two points at ±h along `along` from `foot`.
struct Pair {
  bool any = false;
  Point foot, along;
  double h = 0;
};

double parameter_of(const Line& e, Point p) { return dot(p - e.a, e.b - e.a) / dot(e.b - e.a, e.b - e.a); }

double parameter_of(const Arc& e, Point p) {
  const double sweep = swept_rad(e);
  const Point from = e.a - e.centre, to = p - e.centre;
  double angle = std::atan2(cross(from, to), dot(from, to));
  const double full = sweep < 0 ? -2 * units::pi : 2 * units::pi;
  if (angle * full < 0) angle += full;
  // Just before the start is nearer to the start than a whole turn on.
  if (std::abs(angle) > (std::abs(sweep) + std::abs(full)) / 2) angle -= full;
  return sweep == 0 ? 0 : angle / sweep;
}

double extent(const Line& e) { return distance(e.a, e.b); }
double extent(const Arc& e) { return distance(e.centre, e.a) * std::abs(swept_rad(e)); }

double off_track(const Line& e, Point p) { return std::abs(cross(p - e.a, e.b - e.a)) / distance(e.a, e.b); }
double off_track(const Arc& e, Point p) { return std::abs(distance(e.centre, p) - distance(e.centre, e.a)); }

template <class Kind>
bool within_ends(const Kind& e, Point p) {
  const double u = parameter_of(e, p), slack = same_point_mm / extent(e);
  return u >= -slack && u <= 1 + slack;
}

template <class Kind>
bool lies_on(const Kind& e, Point p) {
  if (distance(p, e.a) <= same_point_mm || distance(p, e.b) <= same_point_mm) return true;
  return off_track(e, p) <= same_point_mm && within_ends(e, p);
}

Pair crossing(const Line& a, const Line& b) {
  const Point da = a.b - a.a, db = b.b - b.a;
  const double sine = cross(da, db);
  if (std::abs(sine) <= 1e-12 * length(da) * length(db)) return {};
  return {true, a.a + (cross(b.a - a.a, db) / sine) * da, {}, 0};
}

Pair crossing(const Line& a, const Arc& b) {
  const double l = distance(a.a, a.b), r = distance(b.centre, b.a);
  const Point along = (1 / l) * (a.b - a.a);
  const double off = cross(along, b.centre - a.a);
  const double over = std::abs(off) - r;
  if (over > just_touching_mm) return {};
  const Point foot = a.a + dot(b.centre - a.a, along) * along;
  const double h = over > -just_touching_mm ? 0 : std::sqrt((r - off) * (r + off));
  return {true, foot, along, h};
}

Pair crossing(const Arc& a, const Line& b) { return crossing(b, a); }

Pair crossing(const Arc& a, const Arc& b) {
  const double ra = distance(a.centre, a.a), rb = distance(b.centre, b.a), d = distance(a.centre, b.centre);
  if (d < just_touching_mm || d + std::abs(ra - rb) <= same_point_mm) return {};
  const double apart = d - (ra + rb), nested = std::abs(ra - rb) - d;
  if (apart > just_touching_mm || nested > just_touching_mm) return {};
  const Point towards = (1 / d) * (b.centre - a.centre);
  const double reach = (d + (ra - rb) * (ra + rb) / d) / 2;
  const bool touching = apart > -just_touching_mm || nested > -just_touching_mm;
  const double h = touching ? 0 : std::sqrt(std::max(0.0, (ra - reach) * (ra + reach)));
  return {true, a.centre + reach * towards, {-towards.y, towards.x}, h};
}

struct Meet {
  std::vector<Point>& found;

  template <class A, class B>
  void operator()(const A& a, const B& b) const {
    for (const Point p : {b.a, b.b}) {
      if (lies_on(a, p)) found.push_back(p);
    }
    for (const Point p : {a.a, a.b}) {
      if (lies_on(b, p)) found.push_back(p);
    }
    const Pair pair = crossing(a, b);
    if (!pair.any) return;
    add(a, b, pair.foot + pair.h * pair.along);
    if (pair.h > 0) add(a, b, pair.foot - pair.h * pair.along);
  }

  template <class A, class B>
  void add(const A& a, const B& b, Point p) const {
    if (within_ends(a, p) && within_ends(b, p)) found.push_back(p);
  }
};

}  // namespace

std::vector<Point> meetings(const Edge& a, const Edge& b) {
  std::vector<Point> found;
  const Meet meet{found};
  const auto *line_a = std::get_if<Line>(&a), *line_b = std::get_if<Line>(&b);
  if (line_a && line_b) {
    meet(*line_a, *line_b);
  } else if (line_a) {
    meet(*line_a, std::get<Arc>(b));
  } else if (line_b) {
    meet(std::get<Arc>(a), *line_b);
  } else {
    meet(std::get<Arc>(a), std::get<Arc>(b));
  }
  return found;
}

double parameter(const Edge& edge, Point on_it) {
  if (const auto* line = std::get_if<Line>(&edge)) return parameter_of(*line, on_it);
  return parameter_of(std::get<Arc>(edge), on_it);
}

}  // namespace visewright::geometry
