#include "fitup/element.h"

#include <algorithm>
#include <cmath>

#include "geometry/measure.h"

namespace visewright::fitup {
namespace {

using geometry::dot;

/// Farther than any part reaches, mm.
constexpr double everywhere_mm = 4000;
/// How finely what is not drum-like is cut into drums that hold it.
constexpr int bands = 24;
/// Chords of involutes and trochoids stray no more than this, mm.
constexpr double chord_mm = 8e-4;  // so that gaps on them come out to a micrometre

geometry::Box box_of(const geometry::Profile& profile) {
  geometry::Box all = geometry::box(profile.outer.front());
  for (const geometry::Loop& loop : profile.outer) {
    const geometry::Box one = geometry::box(loop);
    all = {{std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y)}, {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y)}};
  }
  return all;
}

/// A rectangle stands along its own first side: the frame and profile with that side along x.
bool as_block(const geometry::Profile& profile, Placement& frame, geometry::Box& flat) {
  if (profile.outer.size() != 1 || !profile.holes.empty() || profile.outer.front().edges().size() != 4) return false;
  std::array<Point, 4> corner;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto* side = std::get_if<geometry::Line>(&profile.outer.front().edges()[i]);
    if (!side) return false;
    corner[i] = side->a;
  }
  const Point u = corner[1] - corner[0], v = corner[3] - corner[0];
  const double length = geometry::length(u), width = geometry::length(v);
  if (std::abs(geometry::dot(u, v)) > 1e-9 * length * width || geometry::distance(corner[0] + u + v, corner[2]) > 1e-9) return false;
  const Vector x = geometry::plus(geometry::times(u.x / length, frame.x_axis), geometry::times(u.y / length, frame.y_axis()));
  frame.origin_mm = geometry::to_outside(frame, {corner[0].x, corner[0].y, 0});
  frame.x_axis = x;
  flat = {{0, 0}, {length, width}};
  return true;
}

struct Band {
  double inner, outer, from, to;
  bool exact;
};

/// The two ends of a stretch of an outline between two heights, where it runs from one to the other.
struct Side {
  double low_r, high_r;  // least and greatest radius on the stretch
  double mid_r;
};

double radius_at(const Curve& c, double h) {
  if (c.straight()) return c.a.x + (c.b.x - c.a.x) * ((h - c.a.y) / (c.b.y - c.a.y));
  const double up = h - c.centre.y, across = std::sqrt(std::max(0.0, c.radius * c.radius - up * up));
  return c.right ? c.centre.x + across : c.centre.x - across;
}

Side side_between(const Curve& c, double low, double high) {
  double least = std::min(radius_at(c, low), radius_at(c, high)), most = std::max(radius_at(c, low), radius_at(c, high));
  if (!c.straight() && low < c.centre.y && c.centre.y < high) {
    if (c.right) most = c.centre.x + c.radius;
    else least = c.centre.x - c.radius;
  }
  return {least, most, radius_at(c, (low + high) / 2)};
}

/// A half section as rings, each holding its stretch (`outwards`) or held by it.
std::vector<Band> rings_of(const geometry::Profile& half_section, bool outwards) {
  const Outline section = outline(half_section, {{0, 0}, {1, 0}, {0, 1}}, chord_mm);
  std::vector<double> heights;
  for (const Curve& c : section.curves) {
    heights.insert(heights.end(), {c.a.y, c.b.y});
    if (std::abs(c.a.x - c.b.x) < contact_mm || std::abs(c.a.y - c.b.y) < contact_mm) continue;
    for (int k = 1; k < bands; ++k) heights.push_back(c.a.y + (c.b.y - c.a.y) * k / bands);
  }
  std::sort(heights.begin(), heights.end());
  std::vector<Band> result;
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double low = heights[i], high = heights[i + 1];
    if (high - low < contact_mm) continue;
    std::vector<Side> sides;
    for (const Curve& c : section.curves)
      if (c.box.low.y <= low + contact_mm && c.box.high.y >= high - contact_mm && c.box.high.y - c.box.low.y > contact_mm)
        sides.push_back(side_between(c, std::max(low, c.box.low.y), std::min(high, c.box.high.y)));
    std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) { return a.mid_r < b.mid_r; });
    for (std::size_t k = 0; k + 1 < sides.size(); k += 2) {
      const double inner = outwards ? sides[k].low_r : sides[k].high_r, outer = outwards ? sides[k + 1].high_r : sides[k + 1].low_r;
      const bool exact = sides[k].high_r - sides[k].low_r < contact_mm && sides[k + 1].high_r - sides[k + 1].low_r < contact_mm;
      if (outer - inner > contact_mm) result.push_back({std::max(0.0, inner), outer, low, high, exact});
    }
  }
  return result;
}

/// Rings that follow each other with the same radii are one ring.
std::vector<Drum> joined_rings(std::vector<Band> rings, const Placement& axis) {
  std::vector<Drum> result;
  std::vector<bool> used(rings.size());
  for (std::size_t i = 0; i < rings.size(); ++i) {
    if (used[i]) continue;
    Band one = rings[i];
    for (std::size_t k = i + 1; k < rings.size(); ++k) {
      if (used[k] || rings[k].from != one.to || std::abs(rings[k].inner - one.inner) > contact_mm || std::abs(rings[k].outer - one.outer) > contact_mm) continue;
      one.to = rings[k].to;
      used[k] = true;
    }
    result.push_back(ring_drum(axis, one.inner < contact_mm ? 0 : one.inner, one.outer, one.from, one.to, !one.exact));
  }
  return result;
}

Drum half_space(const parts::HalfSpace& half) {
  return drum(geometry::region(geometry::rectangle({-everywhere_mm, -everywhere_mm}, {everywhere_mm, everywhere_mm})), half.plane, 0, everywhere_mm);
}

bool share(const Box3& a, const Box3& b) { return gap_mm(a, b) <= contact_mm; }

double turn_between(const Vector& a, const Vector& b) { return geometry::length(Point{0, std::sqrt(dot(geometry::cross(a, b), geometry::cross(a, b)))}); }

/// Where a drum's outline lies in the plane square to an axis; the drum stands along that axis.
Outline seen_along(const Drum& d, const Placement& axis) {
  const Vector o = geometry::to_inside(axis, d.frame.origin_mm), y = d.frame.y_axis(), v = axis.y_axis();
  return outline(*d.edges, {{o[0], o[1]}, {dot(d.frame.x_axis, axis.x_axis), dot(d.frame.x_axis, v)}, {dot(y, axis.x_axis), dot(y, v)}});
}

/// The radii that a full turn of an outline about the origin reaches, and those that it covers wholly.
struct Radii {
  double least, most;          // reached by some of it
  double all_from, all_to;     // every point at these radii belongs to it, at every angle; from == to: none
};
Radii radii_of(const Outline& o) {
  Radii r{1e300, 0, 0, 0};
  double covered_hole = 0, covered_to = 1e300;
  for (const Curve& c : o.curves) {
    double near = nearest(Point{0, 0}, c).distance, far = std::max(geometry::length(c.a), geometry::length(c.b));
    if (!c.straight()) {
      const double centre = geometry::length(c.centre);
      const Point out = centre > contact_mm ? c.centre + (c.radius / centre) * c.centre : c.a;
      if (nearest(out, c).distance <= contact_mm) far = std::max(far, centre + c.radius);
    }
    // Along a curve that winds about the axis the radius is greatest and least at its ends.
    if (c.stray > 0 && geometry::length(c.centre) > contact_mm) far += c.stray, near -= c.stray;
    r.least = std::min(r.least, near);
    r.most = std::max(r.most, far);
  }
  if (o.holds({0, 0})) {
    r.all_to = std::max(0.0, r.least);
    r.least = 0;
    return r;
  }
  // A ring about the origin covers what lies between its hole's farthest and its outside's nearest point.
  for (const Curve& c : o.curves) {
    const double near = nearest(Point{0, 0}, c).distance;
    const double far = std::max({geometry::length(c.a), geometry::length(c.b), geometry::length(amid(c).at)});
    if (far - near > contact_mm) return r;
    if (near < r.most - contact_mm) covered_hole = std::max(covered_hole, far);
    else covered_to = std::min(covered_to, near);
  }
  if (covered_hole > 0 && covered_to < 1e300) r.all_from = covered_hole, r.all_to = covered_to;
  return r;
}

/// The ring that a drum passes through about the axis; a drum that stands across is taken as the box round it.
Drum passed_through(const Drum& d, const Placement& axis) {
  const Reach along = reach(d, axis.z_axis);
  const double base = dot(axis.origin_mm, axis.z_axis);
  if (turn_between(d.frame.z_axis, axis.z_axis) < 1e-9) {
    const Radii r = radii_of(seen_along(d, axis));
    return ring_drum(axis, r.least < contact_mm ? 0 : r.least, r.most, along.from - base, along.to - base, d.bound);
  }
  // Each face of the box round it seen along the axis; the farthest corner, the nearest side.
  const Vector across = d.frame.z_axis;
  const bool square = std::abs(dot(across, axis.z_axis)) < 1e-9;
  Placement local = axis;
  if (square) local.x_axis = across;
  const Reach u = reach(d, local.x_axis), v = reach(d, local.y_axis());
  const double ou = dot(axis.origin_mm, local.x_axis), ov = dot(axis.origin_mm, local.y_axis());
  const Outline flat = rectangle({u.from - ou, v.from - ov}, {u.to - u.from, 0}, {0, v.to - v.from});
  const Radii r = radii_of(flat);
  return ring_drum(axis, r.least < contact_mm ? 0 : r.least, r.most, along.from - base, along.to - base, true);
}

}  // namespace

void Box3::include(const Vector& p) {
  for (std::size_t i = 0; i < 3; ++i) {
    low[i] = std::min(low[i], p[i]);
    high[i] = std::max(high[i], p[i]);
  }
}
void Box3::include(const Box3& b) {
  include(b.low);
  include(b.high);
}
Box3 grown(Box3 b, double by_mm) {
  for (std::size_t i = 0; i < 3; ++i) b.low[i] -= by_mm, b.high[i] += by_mm;
  return b;
}
double gap_mm(const Box3& a, const Box3& b) {
  double squared = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const double between = std::max({0.0, a.low[i] - b.high[i], b.low[i] - a.high[i]});
    squared += between * between;
  }
  return std::sqrt(squared);
}

Drum drum(geometry::Profile profile, const Placement& frame, double from_mm, double to_mm, bool bound) {
  Drum d{nullptr, nullptr, frame, from_mm, to_mm, false, bound, {}};
  d.block = as_block(profile, d.frame, d.flat);
  if (d.block) profile = geometry::region(geometry::rectangle(d.flat.low, d.flat.high));
  else d.flat = box_of(profile);
  d.edges = std::make_shared<const Chain>(chain(profile, chord_mm));
  d.profile = std::make_shared<const geometry::Profile>(std::move(profile));
  return d;
}

Drum ring_drum(const Placement& axis, double inner_mm, double outer_mm, double from_mm, double to_mm, bool bound) {
  std::vector<geometry::Loop> hole;
  if (inner_mm > 0) hole.push_back(geometry::circle({0, 0}, inner_mm));
  return drum(geometry::region(geometry::circle({0, 0}, outer_mm), std::move(hole)), axis, from_mm, to_mm, bound);
}

Box3 box(const Drum& d) {
  Box3 b;
  const Reach x = reach(d, {1, 0, 0}), y = reach(d, {0, 1, 0}), z = reach(d, {0, 0, 1});
  b.include(Vector{x.from, y.from, z.from});
  b.include(Vector{x.to, y.to, z.to});
  return b;
}

Reach reach(const Drum& d, const Vector& way) {
  const double o = dot(d.frame.origin_mm, way), x = dot(d.frame.x_axis, way), y = dot(d.frame.y_axis(), way), z = dot(d.frame.z_axis, way);
  double low = 0, high = 0;
  const geometry::Edge& first = d.profile->outer.front().edges().front();
  const auto* round = std::get_if<geometry::Arc>(&first);
  if (round && d.profile->outer.size() == 1 && d.profile->outer.front().edges().size() == 1) {
    const double r = geometry::distance(round->centre, round->a), tilt = std::hypot(x, y);
    low = x * round->centre.x + y * round->centre.y - r * tilt;
    high = low + 2 * r * tilt;
  } else {
    const auto lesser = [](double k, double a, double b) { return std::min(k * a, k * b); };
    const auto greater = [](double k, double a, double b) { return std::max(k * a, k * b); };
    low = lesser(x, d.flat.low.x, d.flat.high.x) + lesser(y, d.flat.low.y, d.flat.high.y);
    high = greater(x, d.flat.low.x, d.flat.high.x) + greater(y, d.flat.low.y, d.flat.high.y);
  }
  return {o + low + std::min(z * d.from_mm, z * d.to_mm), o + high + std::max(z * d.from_mm, z * d.to_mm)};
}

std::vector<Drum> outer_drums(const parts::Shape& shape) {
  if (const auto* prism = std::get_if<parts::Prism>(&shape)) return {drum(prism->profile, prism->frame, prism->from_mm, prism->to_mm)};
  if (const auto* turned = std::get_if<parts::Revolved>(&shape)) {
    auto rings = joined_rings(rings_of(turned->half_section, true), turned->axis);
    for (Drum& ring : rings) ring.bound = ring.bound || !turned->all_round();
    return rings;
  }
  return {half_space(std::get<parts::HalfSpace>(shape))};
}

std::vector<Drum> inner_drums(const parts::Shape& shape) {
  if (const auto* prism = std::get_if<parts::Prism>(&shape)) return {drum(prism->profile, prism->frame, prism->from_mm, prism->to_mm)};
  if (const auto* turned = std::get_if<parts::Revolved>(&shape)) {
    if (!turned->all_round()) return {};
    return joined_rings(rings_of(turned->half_section, false), turned->axis);
  }
  return {half_space(std::get<parts::HalfSpace>(shape))};
}

std::vector<Element> elements(const parts::Body& body) {
  std::vector<Drum> removed;
  for (const parts::Shape& shape : body.removed)
    for (Drum& d : inner_drums(shape)) removed.push_back(std::move(d));
  std::vector<Element> result;
  for (const parts::Shape& shape : body.added)
    for (Drum& d : outer_drums(shape)) {
      Element e{std::move(d), {}, {}};
      e.box = box(e.added);
      for (const Drum& r : removed)
        if (share(box(r), e.box)) e.removed.push_back(r);
      result.push_back(std::move(e));
    }
  return result;
}

std::vector<Element> placed(std::vector<Element> all, const Placement& at) {
  for (Element& e : all) {
    e.added.frame = geometry::combined(at, e.added.frame);
    e.box = box(e.added);
    for (Drum& r : e.removed) r.frame = geometry::combined(at, r.frame);
  }
  return all;
}

std::vector<Element> swept(const std::vector<Element>& standing, const Placement& axis) {
  const double base = dot(axis.origin_mm, axis.z_axis);
  std::vector<Element> result;
  for (const Element& e : standing) {
    Element turned{passed_through(e.added, axis), {}, {}};
    turned.box = box(turned.added);
    for (const Drum& r : e.removed) {
      if (turn_between(r.frame.z_axis, axis.z_axis) > 1e-9) continue;
      const Radii radii = radii_of(seen_along(r, axis));
      if (radii.all_to - radii.all_from <= contact_mm) continue;
      const Reach along = reach(r, axis.z_axis);
      turned.removed.push_back(ring_drum(axis, radii.all_from < contact_mm ? 0 : radii.all_from, radii.all_to, along.from - base, along.to - base, r.bound));
    }
    result.push_back(std::move(turned));
  }
  return result;
}

namespace {

constexpr double witness_mm = 2e-6;

/// Inside by more than a skin (deep), or at least not outside by more than one.
struct Lies {
  const Outline& outline;
  Vector p;
  bool deep;

  bool level(double value, double from, double to) const {
    return deep ? value > from + witness_mm && value < to - witness_mm : value >= from - witness_mm && value <= to + witness_mm;
  }
  bool in(Point q) const {
    const bool inside = outline.holds(q);
    if (inside != deep && (deep || q.x < outline.box.low.x - witness_mm || q.x > outline.box.high.x + witness_mm ||
                           q.y < outline.box.low.y - witness_mm || q.y > outline.box.high.y + witness_mm)) return false;
    if (inside && !deep) return true;
    const double to_edge = outline.distance_to_edge(q);
    return deep ? to_edge > witness_mm : to_edge <= witness_mm;
  }
  bool operator()(const parts::Prism& s) const {
    const Vector q = geometry::to_inside(s.frame, p);
    return level(q[2], s.from_mm, s.to_mm) && in({q[0], q[1]});
  }
  bool operator()(const parts::Revolved& s) const {
    const Vector q = geometry::to_inside(s.axis, p);
    double angle = std::atan2(q[1], q[0]);
    while (angle < s.from_rad) angle += 2 * units::pi;
    if (!s.all_round() && angle > s.to_rad) return false;
    return in({std::hypot(q[0], q[1]), q[2]});
  }
  bool operator()(const parts::HalfSpace& s) const { return level(geometry::to_inside(s.plane, p)[2], 0, everywhere_mm); }
};

Outline outline_of(const parts::Shape& shape) {
  const Lay plain{{0, 0}, {1, 0}, {0, 1}};
  if (const auto* prism = std::get_if<parts::Prism>(&shape)) return outline(prism->profile, plain, chord_mm);
  if (const auto* turned = std::get_if<parts::Revolved>(&shape)) return outline(turned->half_section, plain, chord_mm);
  return {};
}

}  // namespace

Witness::Witness(const parts::Body& body) {
  for (const parts::Shape& s : body.added) added.push_back({s, outline_of(s)});
  for (const parts::Shape& s : body.removed) removed.push_back({s, outline_of(s)});
}

bool Witness::holds(const Vector& p) const {
  const auto lies = [&](const std::vector<Known>& shapes, bool deep) {
    return std::any_of(shapes.begin(), shapes.end(), [&](const Known& k) { return std::visit(Lies{k.outline, p, deep}, k.shape); });
  };
  return lies(added, false) && !lies(removed, true);
}

}  // namespace visewright::fitup
