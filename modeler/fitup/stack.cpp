#include "fitup/stack.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace visewright::fitup {
namespace {

using geometry::dot;

bool along(const Vector& a, const Vector& b) { return std::abs(std::abs(dot(a, b)) - 1) < 1e-12; }

/// A direction of a drum's frame along which it does not change, seen as the frame's z; false when there is none.
struct Standing {
  bool stands = false;
  Outline outline;
  Reach reach;
};
Standing standing(const Drum& d, const Placement& axis) {
  const Vector u = axis.x_axis, v = axis.y_axis();
  const auto flat = [&](const Vector& p) { return Point{dot(p, u), dot(p, v)}; };
  if (along(d.frame.z_axis, axis.z_axis)) {
    const Lay lay{flat(d.frame.origin_mm), flat(d.frame.x_axis), flat(d.frame.y_axis())};
    return {true, outline(*d.edges, lay), reach(d, axis.z_axis)};
  }
  if (!d.block) return {};
  const Vector x = d.frame.x_axis, y = d.frame.y_axis(), z = d.frame.z_axis;
  const double width = d.flat.high.x - d.flat.low.x, height = d.flat.high.y - d.flat.low.y, length = d.to_mm - d.from_mm;
  const Vector corner = geometry::to_outside(d.frame, {d.flat.low.x, d.flat.low.y, d.from_mm});
  if (along(x, axis.z_axis)) return {true, rectangle(flat(corner), height * flat(y), length * flat(z)), reach(d, axis.z_axis)};
  if (along(y, axis.z_axis)) return {true, rectangle(flat(corner), width * flat(x), length * flat(z)), reach(d, axis.z_axis)};
  return {};
}

/// The box round a drum that stands across the axis, one side along the drum.
Standing boxed(const Drum& d, const Placement& axis) {
  Vector x = axis.x_axis, y = axis.y_axis();
  if (std::abs(dot(d.frame.z_axis, axis.z_axis)) < 1e-9) {
    x = d.frame.z_axis;
    y = geometry::cross(axis.z_axis, x);
  }
  const auto flat = [&](const Vector& p) { return Point{dot(p, axis.x_axis), dot(p, axis.y_axis())}; };
  const Reach across = reach(d, x), up = reach(d, y);
  const Point corner = across.from * flat(x) + up.from * flat(y);
  return {true, rectangle(corner, (across.to - across.from) * flat(x), (up.to - up.from) * flat(y)), reach(d, axis.z_axis)};
}

/// A round drum that lies across the axis: cut level it is a strip along its own axis, wider the nearer to the middle.
struct Lying {
  double radius = 0;  // 0: no such drum
  double middle = 0;  // height of its own axis
  Point from, along, across;

  Outline strip(double low, double high) const {
    const double off = low <= middle && middle <= high ? 0 : std::min(std::abs(low - middle), std::abs(high - middle));
    const double half = std::sqrt(std::max(0.0, radius * radius - off * off));
    return rectangle(from + -half * across, along, 2 * half * across);
  }
};
Lying lying(const Drum& d, const Placement& axis) {
  const auto& loops = d.profile->outer;
  if (loops.size() != 1 || loops.front().edges().size() != 1 || std::abs(dot(d.frame.z_axis, axis.z_axis)) > 1e-9) return {};
  const auto* circle = std::get_if<geometry::Arc>(&loops.front().edges().front());
  if (!circle) return {};
  const auto flat = [&](const Vector& p) { return Point{dot(p, axis.x_axis), dot(p, axis.y_axis())}; };
  const Vector start = geometry::to_outside(d.frame, {circle->centre.x, circle->centre.y, d.from_mm});
  const Point way = flat(d.frame.z_axis);
  return {geometry::distance(circle->centre, circle->a), dot(start, axis.z_axis), flat(start), (d.to_mm - d.from_mm) * way, {-way.y, way.x}};
}
/// Strips that a lying drum is cut into, from one side to the other.
constexpr int strips = 16;

/// The axial gap of two slabs over a slide: where it is least, and the stretch that they then share.
struct Axial {
  double gap;     // 0 when they touch or share
  double shared;  // length, at most shifts of the slide
  double first;   // the first shift at which the gap is reached
  double most;    // the shift at which most is shared
};
Axial axial(const Slab& a, const Slab& b, Slide slide) {
  const double enters = b.from - a.to, leaves = b.to - a.from;  // shifts at which they begin and cease to meet
  const double middle = (enters + leaves) / 2;
  const double most = std::clamp(middle, slide.from, slide.to), first = std::clamp(enters, slide.from, slide.to);
  const auto gap_at = [&](double t) { return std::max(enters - t, t - leaves); };
  const double least = gap_at(most);
  const double shared = std::min({-least, a.to - a.from, b.to - b.from});
  if (least > 0) return {least, 0, most, most};
  return {0, shared > skin_mm ? shared : 0, gap_at(first) <= 0 ? first : std::clamp(leaves, slide.from, slide.to), most};
}

Vector point(const Placement& axis, Point flat, double height) { return geometry::to_outside(axis, {flat.x, flat.y, height}); }

}  // namespace

Placement frame_along(const Vector& way) {
  // Canonical sense and cross directions, so that stacks of one direction can be held against each other.
  Vector z = way;
  for (std::size_t i = 0; i < 3; ++i) {
    if (std::abs(z[i]) < 1e-12) z[i] = 0;
  }
  std::size_t least = 0;
  for (std::size_t i = 1; i < 3; ++i)
    if (std::abs(z[i]) < std::abs(z[least]) - 1e-9) least = i;
  Vector help{0, 0, 0};
  help[least] = 1;
  Vector x = geometry::plus(help, geometry::times(-dot(help, z), z));
  x = geometry::times(1 / std::sqrt(dot(x, x)), x);
  return {{0, 0, 0}, x, z};
}

Stack stack(const Element& e, const Placement& axis) {
  Standing base = standing(e.added, axis);
  const bool lies = !base.stands;
  if (lies) base = boxed(e.added, axis);
  const Lying round = lies ? lying(e.added, axis) : Lying{};
  std::vector<Standing> gone;
  std::vector<double> heights{base.reach.from, base.reach.to};
  for (int k = 1; round.radius > 0 && k < strips; ++k) heights.push_back(round.middle - round.radius * std::cos(units::pi * k / strips));
  for (const Drum& r : e.removed) {
    Standing s = standing(r, axis);
    if (!s.stands || s.reach.to <= base.reach.from || s.reach.from >= base.reach.to) continue;
    for (const double h : {s.reach.from, s.reach.to})
      if (h > base.reach.from + contact_mm && h < base.reach.to - contact_mm) heights.push_back(h);
    gone.push_back(std::move(s));
  }
  std::sort(heights.begin(), heights.end());
  Stack result{axis, {}};
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double from = heights[i], to = heights[i + 1], middle = (from + to) / 2;
    if (to - from <= contact_mm) continue;
    std::vector<Outline> taken;
    for (const Standing& s : gone)
      if (s.reach.from < middle && middle < s.reach.to) taken.push_back(s.outline);
    Region region(round.radius > 0 ? round.strip(from, to) : base.outline, std::move(taken));
    if (!region.empty()) result.slabs.push_back({from, to, std::move(region)});
  }
  return result;
}

Approach approach(const Stack& a, const Stack& b, Slide slide, double within_mm) {
  Approach best{within_mm, false, slide.from, 0, {}, {}};
  for (const Slab& one : a.slabs) {
    for (const Slab& two : b.slabs) {
      const Axial along_axis = axial(one, two, slide);
      const double limit = best.distance;
      if (along_axis.gap > limit) continue;
      const double flat_limit = std::sqrt(std::max(0.0, limit * limit - along_axis.gap * along_axis.gap));
      if (apart(one.region.box(), two.region.box()) > flat_limit) continue;
      const PlaneGap flat = plane_gap(one.region, two.region, flat_limit + contact_mm);
      const bool overlap = flat.overlap && along_axis.shared > 0;
      const double distance = along_axis.gap == 0 ? flat.distance : std::hypot(flat.distance, along_axis.gap);
      const bool nearer = overlap ? !best.overlap || along_axis.shared > best.shared_mm : !best.overlap && distance < best.distance;
      if (!nearer) continue;
      const double shift = overlap ? along_axis.most : along_axis.first;
      const double low = std::max(one.from + shift, two.from), high = std::min(one.to + shift, two.to), middle = (low + high) / 2;
      const double up = one.from + shift > two.to ? one.from + shift : one.to + shift < two.from ? one.to + shift : middle;
      const double down = one.from + shift > two.to ? two.to : one.to + shift < two.from ? two.from : middle;
      best = {overlap ? 0 : distance, overlap, shift, overlap ? along_axis.shared : 0, point(a.axis, flat.a, up), point(a.axis, flat.b, down)};
    }
  }
  return best;
}

void Coaxial::take(const Coaxial& other) {
  if (other.play > play + contact_mm) return;
  if (other.play < play - contact_mm) {
    *this = other;
    return;
  }
  facing_first += other.facing_first;
  facing_last += other.facing_last;
}

Coaxial coaxial(const Stack& a, const Stack& b, Slide slide) {
  Coaxial best;
  for (const Slab& one : a.slabs) {
    for (const Slab& two : b.slabs) {
      if (axial(one, two, slide).shared <= 0) continue;
      const auto facing = [&](double t) { return std::max(0.0, std::min(one.to + t, two.to) - std::max(one.from + t, two.from)); };
      Coaxial here;
      for (const Piece& p : one.region.edge()) {
        if (p.curve.straight()) continue;
        for (const Piece& q : two.region.edge()) {
          // amid(…).square points away from an arc's centre: one of the two has its material there, the other does not.
          if (q.curve.straight() || p.to_square == q.to_square) continue;
          if (geometry::distance(p.curve.centre, q.curve.centre) > skin_mm) continue;
          const Curve &bore = p.to_square ? p.curve : q.curve, &shaft = p.to_square ? q.curve : p.curve;
          const double play = 2 * (bore.radius - shaft.radius);
          if (play < -2 * skin_mm) continue;  // the outside of a ring and the bore of what stands in it
          if (play < here.play) here = {play, 2 * shaft.radius, facing(slide.from), facing(slide.to)};
        }
      }
      if (here.play < 1e300) best.take(here);
    }
  }
  return best;
}

}  // namespace visewright::fitup
