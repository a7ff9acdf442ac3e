#include "geometry/edge.h"

#include <algorithm>
#include <type_traits>

#include "units/quantity.h"

namespace visewright::geometry {
namespace {

constexpr double full_turn = 2 * units::pi;

Point square_left(Point a) { return {-a.y, a.x}; }

template <class Curve>
double roll_at(const Curve& c, double u) {
  // Both ends come out exactly as they were given.
  return (1 - u) * c.roll_from_rad + u * c.roll_to_rad;
}

/// From the frame a curve is defined in (start direction along x, left) to the plane.
template <class Curve>
Point outward(const Curve& c, Point local) {
  return turned(c.left ? local : Point{local.x, -local.y}, c.start_rad);
}

Point local_point(const Involute& c, double t) {
  const double cs = std::cos(t), sn = std::sin(t);
  return c.base_radius_mm * Point{cs + t * sn, sn - t * cs};
}

Point local_rate(const Involute& c, double t) { return polar(c.base_radius_mm * t, t); }

/// Distance from the pitch point to the tip centre.
double arm(const Trochoid& c, double t) { return std::hypot(c.offset_mm, c.pitch_radius_mm * t); }

Point outward_normal(const Trochoid& c, double t) {
  return turned((1 / arm(c, t)) * Point{-c.offset_mm, c.pitch_radius_mm * t}, -t);
}

Point local_point(const Trochoid& c, double t) {
  const Point tip_centre = turned({c.pitch_radius_mm - c.offset_mm, c.pitch_radius_mm * t}, -t);
  return tip_centre + c.tip_radius_mm * outward_normal(c, t);
}

/// The tip centre moves square to the arm at the arm's length a radian; the normal turns at −1 − offset·rp/arm².
Point local_rate(const Trochoid& c, double t) {
  const double d = arm(c, t);
  const double speed = d + c.tip_radius_mm * (1 + c.offset_mm * c.pitch_radius_mm / (d * d));
  return -speed * square_left(outward_normal(c, t));
}

double largest_roll(double t0, double t1) { return std::max(std::abs(t0), std::abs(t1)); }

double largest_second_rate(const Involute& c, double t0, double t1) {
  return c.base_radius_mm * std::hypot(1.0, largest_roll(t0, t1));
}

double largest_second_rate(const Trochoid& c, double t0, double t1) {
  const double rp = c.pitch_radius_mm, far = largest_roll(t0, t1);
  const double near = (t0 < 0) != (t1 < 0) ? 0 : std::min(std::abs(t0), std::abs(t1));
  const double least = arm(c, near), most = arm(c, far);
  const double turning = 1 + c.offset_mm * rp / (least * least);
  const double arm_rate = std::min(rp, rp * rp * far / least);
  const double speed = most + c.tip_radius_mm * turning;
  const double speed_rate = arm_rate * std::max(1.0, 2 * c.tip_radius_mm * c.offset_mm * rp / (least * least * least));
  return speed_rate + speed * turning;
}

struct PointAt {
  double u;
  Point operator()(const Line& e) const { return u == 1 ? e.b : e.a + u * (e.b - e.a); }
  Point operator()(const Arc& e) const {
    if (u == 0) return e.a;
    if (u == 1) return e.b;
    return e.centre + turned(e.a - e.centre, u * swept_rad(e));
  }
  template <class Curve>
  Point operator()(const Curve& e) const {
    return e.centre + outward(e, local_point(e, roll_at(e, u)));
  }
};

struct RateAt {
  double u;
  Point operator()(const Line& e) const { return e.b - e.a; }
  Point operator()(const Arc& e) const {
    const double sweep = swept_rad(e);
    return sweep * square_left(turned(e.a - e.centre, u * sweep));
  }
  template <class Curve>
  Point operator()(const Curve& e) const {
    return outward(e, (e.roll_to_rad - e.roll_from_rad) * local_rate(e, roll_at(e, u)));
  }
};

struct Strays {
  double u0, u1;
  double operator()(const Line&) const { return 0; }
  double operator()(const Arc& e) const {
    // r·(1 − cos h), written without cancellation; past half a turn the far side of the circle is what strays.
    const double r = distance(e.centre, e.a), quarter = std::abs((u1 - u0) * swept_rad(e)) / 4;
    return 2 * r * std::sin(quarter) * std::sin(quarter);
  }
  template <class Curve>
  double operator()(const Curve& e) const {
    const double t0 = roll_at(e, u0), t1 = roll_at(e, u1);
    return (t1 - t0) * (t1 - t0) / 8 * largest_second_rate(e, t0, t1);
  }
};

}  // namespace

Point at(const Edge& edge, double u) { return std::visit(PointAt{u}, edge); }
Point start(const Edge& edge) { return at(edge, 0); }
Point finish(const Edge& edge) { return at(edge, 1); }
Point rate(const Edge& edge, double u) { return std::visit(RateAt{u}, edge); }
double strays_mm(const Edge& edge, double u0, double u1) { return std::visit(Strays{u0, u1}, edge); }

Point direction(const Edge& edge, double u) {
  const Point r = rate(edge, u);
  const double l = length(r);
  if (l > 0) return (1 / l) * r;
  // An involute stands still where it leaves its base circle; take the direction just inside.
  const double inside = u < 0.5 ? u + 1e-9 : u - 1e-9;
  const Point near = rate(edge, inside);
  const double near_length = length(near);
  return near_length > 0 ? (1 / near_length) * near : Point{1, 0};
}

double swept_rad(const Arc& arc) {
  if (arc.a == arc.b) return arc.left ? full_turn : -full_turn;
  const Point from = arc.a - arc.centre, to = arc.b - arc.centre;
  const double angle = std::atan2(cross(from, to), dot(from, to));
  if (arc.left) return angle < 0 ? angle + full_turn : angle;
  return angle > 0 ? angle - full_turn : angle;
}

Edge reversed(const Edge& edge) {
  return std::visit(
      [](auto e) -> Edge {
        using Kind = decltype(e);
        if constexpr (std::is_same_v<Kind, Line>) {
          std::swap(e.a, e.b);
        } else if constexpr (std::is_same_v<Kind, Arc>) {
          std::swap(e.a, e.b);
          e.left = !e.left;
        } else {
          std::swap(e.roll_from_rad, e.roll_to_rad);
        }
        return e;
      },
      edge);
}

Edge moved(const Edge& edge, double turn_rad, Point by) {
  const auto place = [&](Point p) { return (turn_rad == 0 ? p : turned(p, turn_rad)) + by; };
  return std::visit(
      [&](auto e) -> Edge {
        using Kind = decltype(e);
        if constexpr (std::is_same_v<Kind, Line>) {
          return Line{place(e.a), place(e.b)};
        } else if constexpr (std::is_same_v<Kind, Arc>) {
          return Arc{place(e.a), place(e.b), place(e.centre), e.left};
        } else {
          e.centre = place(e.centre);
          e.start_rad += turn_rad;
          return e;
        }
      },
      edge);
}

}  // namespace visewright::geometry
