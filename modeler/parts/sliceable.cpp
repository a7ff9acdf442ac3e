#include "parts/sliceable.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>
#include <utility>

#include "geometry/measure.h"

namespace visewright::parts {
namespace {

using geometry::Arc;
using geometry::Box;
using geometry::Edge;
using geometry::Line;
using geometry::Loop;
using geometry::Placement;
using geometry::Point;
using geometry::Profile;
using geometry::Vector;

constexpr double square_enough = 1e-12;
constexpr double chord_error_mm = 1e-6;

Point flat(const Vector& v) { return {v[0], v[1]}; }

/// A profile of a level frame, as seen from above.
Profile seen_from_above(const Profile& profile, const Placement& frame) {
  const Point x = flat(frame.x_axis), by = flat(frame.origin_mm);
  if (frame.z_axis[2] > 0) return geometry::moved(profile, std::atan2(x.y, x.x), by);
  // From behind: mirrored about y, so that −x then points where the frame's x does.
  Profile mirror;
  for (const Loop& l : profile.outer) mirror.outer.push_back(geometry::mirrored(l));
  for (const Loop& l : profile.holes) mirror.holes.push_back(geometry::mirrored(l));
  return geometry::moved(mirror, std::atan2(-x.y, -x.x), by);
}

/// Where a level line meets edges, as distances along it.
struct Crossings {
  Point up, along;
  double level;
  std::vector<double>& found;

  void operator()(const Line& e) const {
    const double a = dot(e.a, up) - level, b = dot(e.b, up) - level;
    if ((a > 0) == (b > 0)) return;
    const double t = a / (a - b);
    found.push_back((1 - t) * dot(e.a, along) + t * dot(e.b, along));
  }
  void operator()(const Arc& e) const {
    const double r = geometry::distance(e.centre, e.a), height = level - dot(e.centre, up);
    if (std::abs(height) >= r) return;
    const double half = std::sqrt(r * r - height * height);
    const double sweep = geometry::swept_rad(e);
    for (const double side : {-half, half}) {
      const Point from_centre = height * up + side * along;
      const Point start = e.a - e.centre;
      double turn = std::atan2(cross(start, from_centre), dot(start, from_centre));
      if (sweep > 0 && turn < 0) turn += 2 * units::pi;
      if (sweep < 0 && turn > 0) turn -= 2 * units::pi;
      if (std::abs(turn) <= std::abs(sweep)) found.push_back(dot(e.centre, along) + side);
    }
  }
  template <class Curve>
  void operator()(const Curve& e) const {
    const std::vector<Point> points = geometry::sample(Edge(e), chord_error_mm).points;
    for (std::size_t i = 1; i < points.size(); ++i) (*this)(Line{points[i - 1], points[i]});
  }
};

/// The stretches of the line dot(p, up) = level that lie in a profile, measured along up turned clockwise.
std::vector<std::pair<double, double>> stretches(const Profile& profile, Point up, double level) {
  std::vector<double> found;
  const Crossings crossings{up, {up.y, -up.x}, level, found};
  for (const auto* loops : {&profile.outer, &profile.holes})
    for (const Loop& loop : *loops)
      for (const Edge& edge : loop.edges()) std::visit(crossings, edge);
  std::sort(found.begin(), found.end());
  std::vector<std::pair<double, double>> result;
  for (std::size_t i = 0; i + 1 < found.size(); i += 2)
    if (found[i + 1] - found[i] > geometry::same_point_mm) result.emplace_back(found[i], found[i + 1]);
  return result;
}

std::vector<Profile> slice_across(const Prism& prism, Point up, double level) {
  const Placement& f = prism.frame;
  const Point along{up.y, -up.x}, x = flat(f.x_axis), y = flat(f.y_axis()), out = flat(f.z_axis);
  const Point way = along.x * x + along.y * y;
  // The height of the profile's own points does not matter here: only their place along the level line does.
  const Point origin = flat(f.origin_mm) + level * (up.x * x + up.y * y);
  std::vector<Profile> result;
  for (const auto& [from, to] : stretches(prism.profile, up, level)) {
    const std::array<Point, 4> corners{origin + from * way + prism.from_mm * out,
                                       origin + to * way + prism.from_mm * out, origin + to * way + prism.to_mm * out,
                                       origin + from * way + prism.to_mm * out};
    result.push_back(geometry::region(geometry::polygon(corners)));
  }
  return result;
}

Loop sector(Point centre, double inner, double outer, double from_rad, double to_rad) {
  const Point a = geometry::polar(1, from_rad), b = geometry::polar(1, to_rad);
  const Point outer_a = centre + outer * a, outer_b = centre + outer * b;
  if (inner <= geometry::same_point_mm)
    return geometry::trusted({Line{centre, outer_a}, Arc{outer_a, outer_b, centre, true}, Line{outer_b, centre}});
  const Point inner_a = centre + inner * a, inner_b = centre + inner * b;
  return geometry::trusted({Line{inner_a, outer_a}, Arc{outer_a, outer_b, centre, true}, Line{outer_b, inner_b},
                            Arc{inner_b, inner_a, centre, false}});
}

std::vector<Profile> slice_turned(const Revolved& turned, Point up, double level) {
  const Placement& f = turned.axis;
  const Point centre = flat(f.origin_mm);
  double from = turned.from_rad, to = turned.to_rad;
  const double x_at = std::atan2(f.x_axis[1], f.x_axis[0]);
  if (f.z_axis[2] > 0) {
    from += x_at;
    to += x_at;
  } else {
    std::tie(from, to) = std::pair{x_at - to, x_at - from};
  }
  std::vector<Profile> result;
  for (auto [inner, outer] : stretches(turned.half_section, up, level)) {
    // Seen with up = −y the radius runs the other way.
    if (up.y < 0) std::tie(inner, outer) = std::pair{-outer, -inner};
    if (!turned.all_round()) {
      result.push_back(geometry::region(sector(centre, inner, outer, from, to)));
    } else if (inner <= geometry::same_point_mm) {
      result.push_back(geometry::region(geometry::circle(centre, outer)));
    } else {
      result.push_back(geometry::region(geometry::circle(centre, outer), {geometry::circle(centre, inner)}));
    }
  }
  return result;
}

/// The part of a box on the side n·p ≥ least; at most one profile.
std::vector<Profile> half_of(const Box& window, Point n, double least) {
  const std::array<Point, 4> corners{window.low, Point{window.high.x, window.low.y}, window.high,
                                     Point{window.low.x, window.high.y}};
  std::vector<Point> kept;
  for (std::size_t i = 0; i < 4; ++i) {
    const Point a = corners[i], b = corners[(i + 1) % 4];
    const double sa = dot(n, a) - least, sb = dot(n, b) - least;
    if (sa >= 0) kept.push_back(a);
    if ((sa > 0 && sb < 0) || (sa < 0 && sb > 0)) kept.push_back(a + (sa / (sa - sb)) * (b - a));
  }
  if (kept.size() < 3) return {};
  const Loop loop = geometry::polygon(kept);
  if (geometry::area_mm2(loop) < 1e-9) return {};
  return {geometry::region(loop)};
}

}  // namespace

Sliceable::Sliceable(Shape shape) : shape_(std::move(shape)) {
  std::visit([this](const auto& s) { look_at(s); }, shape_);
}

void Sliceable::look_at(const Prism& prism) {
  const double upright = prism.frame.z_axis[2];
  base_mm_ = prism.frame.origin_mm[2];
  if (std::abs(upright) > 1 - square_enough) {
    way_ = Way::drum;
    drum_ = seen_from_above(prism.profile, prism.frame);
    breaks_ = {base_mm_ + upright * prism.from_mm, base_mm_ + upright * prism.to_mm};
    std::sort(breaks_.begin(), breaks_.end());
  } else if (std::abs(upright) < square_enough) {
    way_ = Way::across;
    up_ = {prism.frame.x_axis[2], prism.frame.y_axis()[2]};
    break_at_edges(prism.profile, up_, base_mm_);
  }
}

void Sliceable::look_at(const Revolved& turned) {
  const double upright = turned.axis.z_axis[2];
  if (std::abs(upright) < 1 - square_enough) return;
  way_ = Way::turned;
  up_ = {0, upright > 0 ? 1.0 : -1.0};
  base_mm_ = turned.axis.origin_mm[2];
  break_at_edges(turned.half_section, up_, base_mm_);
}

void Sliceable::look_at(const HalfSpace& half) {
  way_ = Way::half;
  base_mm_ = half.plane.origin_mm[2];
  if (std::abs(half.plane.z_axis[2]) > 1 - square_enough) breaks_ = {base_mm_};
}

void Sliceable::break_at_edges(const Profile& profile, Point up, double base_mm) {
  for (const auto* loops : {&profile.outer, &profile.holes})
    for (const Loop& loop : *loops)
      for (const Edge& edge : loop.edges()) {
        breaks_.push_back(base_mm + dot(geometry::start(edge), up));
        if (const auto* arc = std::get_if<Arc>(&edge)) {
          const double middle = base_mm + dot(arc->centre, up), r = geometry::distance(arc->centre, arc->a);
          breaks_.insert(breaks_.end(), {middle - r, middle, middle + r});
        }
      }
}

bool Sliceable::changes(double low, double high) const {
  if (way_ == Way::drum || way_ == Way::askew) return false;
  if (const auto* half = std::get_if<HalfSpace>(&shape_)) {
    const double upright = std::abs(half->plane.z_axis[2]);
    return upright > square_enough && upright < 1 - square_enough;
  }
  const auto* prism = std::get_if<Prism>(&shape_);
  const Profile& profile = prism ? prism->profile : std::get<Revolved>(shape_).half_section;
  const auto slants = [&](const Edge& edge) {
    const Box box = geometry::box(edge);
    const std::array<double, 4> heights{dot(box.low, up_), dot(box.high, up_), dot({box.low.x, box.high.y}, up_),
                                        dot({box.high.x, box.low.y}, up_)};
    const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
    if (base_mm_ + *most <= low + 1e-9 || base_mm_ + *least >= high - 1e-9) return false;
    const auto* line = std::get_if<Line>(&edge);
    return !line || std::abs(cross(line->b - line->a, up_)) > 1e-9;
  };
  for (const auto* loops : {&profile.outer, &profile.holes})
    for (const Loop& loop : *loops)
      if (std::any_of(loop.edges().begin(), loop.edges().end(), slants)) return true;
  return false;
}

bool Sliceable::changes() const { return changes(-1e9, 1e9); }

std::vector<Profile> Sliceable::slice(double z, const Box& window) const {
  switch (way_) {
    case Way::drum:
      if (z <= breaks_.front() || z >= breaks_.back()) return {};
      return {drum_};
    case Way::across: return slice_across(std::get<Prism>(shape_), up_, z - base_mm_);
    case Way::turned: return slice_turned(std::get<Revolved>(shape_), up_, z - base_mm_);
    case Way::half: {
      const Placement& plane = std::get<HalfSpace>(shape_).plane;
      const Vector& n = plane.z_axis;
      return half_of(window, flat(n), geometry::dot(n, plane.origin_mm) - n[2] * z);
    }
    case Way::askew: break;
  }
  return {};
}

std::vector<double> Sliceable::passes_over(const Sliceable& other) const {
  std::vector<double> result;
  const auto* half = std::get_if<HalfSpace>(&shape_);
  if (!half || !breaks_.empty() || other.way_ != Way::drum) return result;
  const Vector& n = half->plane.z_axis;
  if (std::abs(n[2]) <= square_enough) return result;
  for (const Loop& loop : other.drum_.outer)
    for (const Edge& edge : loop.edges())
      if (std::holds_alternative<Line>(edge))
        result.push_back((geometry::dot(n, half->plane.origin_mm) - dot(flat(n), geometry::start(edge))) / n[2]);
  return result;
}

bool Sliceable::reaches(const Box& box, double low, double high) const {
  const auto* half = std::get_if<HalfSpace>(&shape_);
  if (!half) return true;
  for (const double z : {low, high})
    for (const double x : {box.low.x, box.high.x})
      for (const double y : {box.low.y, box.high.y})
        if (geometry::to_inside(half->plane, {x, y, z})[2] > 1e-9) return true;
  return false;
}

}  // namespace visewright::parts
