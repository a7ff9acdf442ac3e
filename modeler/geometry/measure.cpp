#include "geometry/measure.h"

#include <algorithm>
#include <array>
#include <utility>

#include "units/quantity.h"

namespace visewright::geometry {
namespace {

/// Gauss–Legendre quadrature, five points a panel (nodes and weights: roots of the fifth Legendre polynomial). The
/// integrands here have their nearest singularity where the arm of the trochoid vanishes, at imaginary roll offset/rp;
/// panels of a quarter of that leave a relative error near 1e-12.
template <class Function>
double integral_over_roll(const Trochoid& c, Function f) {
  constexpr std::array<std::pair<double, double>, 3> rule{std::pair{0.0, 128.0 / 225.0},
                                                          std::pair{0.5384693101056831, 0.4786286704993665},
                                                          std::pair{0.9061798459386640, 0.2369268850561891}};
  const double range = std::abs(c.roll_to_rad - c.roll_from_rad);
  const double wanted = std::ceil(range * c.pitch_radius_mm / c.offset_mm * 4);
  const int panels = static_cast<int>(std::clamp(wanted, 1.0, 10000.0));
  const double half = 0.5 / panels;
  double sum = 0;
  for (int i = 0; i < panels; ++i) {
    const double middle = (2 * i + 1) * half;
    for (const auto& [node, weight] : rule) {
      sum += weight * half * f(middle + node * half);
      if (node > 0) sum += weight * half * f(middle - node * half);
    }
  }
  return sum;
}

struct SweptArea {
  Point hub;
  double operator()(const Line& e) const { return cross(e.a - hub, e.b - hub) / 2; }
  double operator()(const Arc& e) const {
    const double r = distance(e.centre, e.a);
    return (r * r * swept_rad(e) + cross(e.centre - hub, e.b - e.a)) / 2;
  }
  double operator()(const Involute& e) const {
    // About its own centre an involute sweeps rb²/2 ∫ t² dt.
    const double t0 = e.roll_from_rad, t1 = e.roll_to_rad, rb = e.base_radius_mm;
    const double own = rb * rb * (t1 * t1 * t1 - t0 * t0 * t0) / 6;
    return (e.left ? own : -own) + cross(e.centre - hub, finish(e) - start(e)) / 2;
  }
  double operator()(const Trochoid& e) const {
    return integral_over_roll(e, [&](double u) { return cross(at(e, u) - hub, rate(e, u)) / 2; });
  }
};

struct Length {
  double operator()(const Line& e) const { return distance(e.a, e.b); }
  double operator()(const Arc& e) const { return distance(e.centre, e.a) * std::abs(swept_rad(e)); }
  double operator()(const Involute& e) const {
    const double t0 = e.roll_from_rad, t1 = e.roll_to_rad;
    return e.base_radius_mm / 2 * std::abs(t1 * std::abs(t1) - t0 * std::abs(t0));
  }
  double operator()(const Trochoid& e) const {
    return integral_over_roll(e, [&](double u) { return length(rate(e, u)); });
  }
};

/// Whether p is left of the chord from a to b. A point on a level chord counts as above it, as it does for the crossing
/// count below; on any other chord either answer will do, for the count and the arc's segment then change together.
bool left_of(Point a, Point b, Point p) {
  const double side = cross(b - a, p - a);
  return side != 0 ? side > 0 : b.x > a.x;
}

/// Signed crossings of a chord with the ray from p towards +x.
int crossings(Point a, Point b, Point p) {
  if (a.y <= p.y && b.y > p.y) return left_of(a, b, p) ? 1 : 0;
  if (b.y <= p.y && a.y > p.y) return left_of(a, b, p) ? 0 : -1;
  return 0;
}

double distance_to_segment(Point p, Point a, Point b) {
  const Point along = b - a;
  const double square = dot(along, along);
  const double u = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0.0;
  return distance(p, a + u * along);
}

/// Signed crossings of the ray from p with an edge from a to b: those of its chord, and one more when p lies between
/// the two. The ends come from outside: neighbours must agree on them to the last digit, or a ray slips between.
struct Winding {
  Point p, a, b;
  int operator()(const Line&) const { return crossings(a, b, p); }
  int operator()(const Arc& e) const {
    const int chord = crossings(a, b, p), one = e.left ? 1 : -1;
    const Point from_centre = p - e.centre, radius = e.a - e.centre;
    if (dot(from_centre, from_centre) >= dot(radius, radius)) return chord;
    if (e.a == e.b) return one;
    return left_of(a, b, p) == e.left ? chord : chord + one;
  }
  template <class Curve>
  int operator()(const Curve& e) const {
    return halved(e, 0, a, 1, b);
  }
  int halved(const Edge& e, double u0, Point from, double u1, Point to) const {
    const double strays = strays_mm(e, u0, u1);
    if (strays < 1e-10 || distance_to_segment(p, from, to) > strays + 2 * same_point_mm) return crossings(from, to, p);
    const double half = (u0 + u1) / 2;
    const Point middle = at(e, half);
    return halved(e, u0, from, half, middle) + halved(e, half, middle, u1, to);
  }
};

void add_chords(Sampled& to, const Arc& arc, double error_mm) {
  const double r = distance(arc.centre, arc.a), sweep = std::abs(swept_rad(arc));
  const double widest = 4 * std::asin(std::min(1.0, std::sqrt(error_mm / (2 * r))));
  int chords = static_cast<int>(std::ceil(std::max(sweep / widest, 12 * sweep / (2 * units::pi) - 1e-9)));
  chords = std::max(chords, 1);
  // Rounding may leave the sagitta a hair above.
  while (strays_mm(arc, 0, 1.0 / chords) > error_mm) ++chords;
  to.error_mm = std::max(to.error_mm, strays_mm(arc, 0, 1.0 / chords));
  for (int i = 1; i <= chords; ++i) to.points.push_back(at(arc, i == chords ? 1 : static_cast<double>(i) / chords));
}

void add_halved(Sampled& to, const Edge& e, double u0, double u1, double error_mm) {
  const double strays = strays_mm(e, u0, u1);
  if (strays <= error_mm || u1 - u0 < 1e-9) {
    to.error_mm = std::max(to.error_mm, strays);
    to.points.push_back(at(e, u1));
    return;
  }
  const double half = (u0 + u1) / 2;
  add_halved(to, e, u0, half, error_mm);
  add_halved(to, e, half, u1, error_mm);
}

/// Adds all samples of an edge after its start.
void add_edge(Sampled& to, const Edge& e, double error_mm) {
  if (const auto* arc = std::get_if<Arc>(&e)) {
    add_chords(to, *arc, error_mm);
  } else {
    add_halved(to, e, 0, 1, error_mm);
  }
}

}  // namespace

double swept_area_mm2(const Edge& edge, Point hub) { return std::visit(SweptArea{hub}, edge); }

double area_mm2(const Loop& loop) {
  const Point hub = start(loop.edges().front());
  double area = 0;
  for (const Edge& e : loop.edges()) area += swept_area_mm2(e, hub);
  return area;
}

double area_mm2(const Profile& profile) {
  double area = 0;
  for (const Loop& l : profile.outer) area += area_mm2(l);
  for (const Loop& l : profile.holes) area -= area_mm2(l);
  return area;
}

double length_mm(const Edge& edge) { return std::visit(Length{}, edge); }

double perimeter_mm(const Loop& loop) {
  double sum = 0;
  for (const Edge& e : loop.edges()) sum += length_mm(e);
  return sum;
}

bool contains(const Loop& loop, Point p) {
  int winding = 0;
  const std::span<const Edge> edges = loop.edges();
  const Point first = start(edges.front());
  Point a = first;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const Point b = i + 1 < edges.size() ? start(edges[i + 1]) : first;
    winding += std::visit(Winding{p, a, b}, edges[i]);
    a = b;
  }
  return winding > 0;
}

bool contains(const Profile& profile, Point p) {
  const auto around = [p](const Loop& l) { return contains(l, p); };
  return std::any_of(profile.outer.begin(), profile.outer.end(), around) &&
         std::none_of(profile.holes.begin(), profile.holes.end(), around);
}

Sampled sample(const Edge& edge, double error_mm) {
  Sampled result{{start(edge)}, 0};
  add_edge(result, edge, error_mm);
  return result;
}

Sampled sample(const Loop& loop, double error_mm) {
  Sampled result;
  for (const Edge& e : loop.edges()) add_edge(result, e, error_mm);
  // Each edge gave its end; the last end is the first start.
  std::rotate(result.points.begin(), result.points.end() - 1, result.points.end());
  return result;
}

}  // namespace visewright::geometry
