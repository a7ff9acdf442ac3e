#include "readers/step_curves.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace visewright::readers {
namespace {

using Quad = std::array<double, 4>;  // weight times point, weight

/// de Boor's scheme on homogeneous poles.
Quad de_boor(std::size_t degree, const std::vector<double>& knots, const std::vector<Quad>& poles, double u) {
  const auto from = knots.begin() + static_cast<std::ptrdiff_t>(degree);
  const auto to = knots.begin() + static_cast<std::ptrdiff_t>(poles.size());
  const auto above = std::upper_bound(from, to, u);
  const std::size_t span = std::max(degree, static_cast<std::size_t>(above - knots.begin()) - 1);
  std::vector<Quad> d(poles.begin() + static_cast<std::ptrdiff_t>(span - degree),
                      poles.begin() + static_cast<std::ptrdiff_t>(span + 1));
  for (std::size_t r = 1; r <= degree; ++r) {
    for (std::size_t j = degree; j >= r; --j) {
      const double low = knots[span - degree + j], high = knots[span + 1 + j - r];
      const double share = (u - low) / (high - low);
      for (std::size_t k = 0; k < 4; ++k) d[j][k] = (1 - share) * d[j - 1][k] + share * d[j][k];
    }
  }
  return d[degree];
}

double curve_gap(const Curve& curve, double u, const Triple& p) { return distance(curve.at(u).point, p); }

/// The nearest point of a spline: the best of sixteen samples a span, then golden sections round it.
double nearest_on_spline(const Curve& curve, const Triple& p) {
  const Spline& s = curve.spline;
  double best = s.first(), least = curve_gap(curve, best, p), width = 0;
  for (std::size_t i = s.degree; i < s.poles.size(); ++i) {
    const double step = (s.knots[i + 1] - s.knots[i]) / 16;
    if (step <= 0) continue;
    for (int k = 0; k <= 16; ++k) {
      const double u = s.knots[i] + k * step, gap = curve_gap(curve, u, p);
      if (gap < least) least = gap, best = u, width = step;
      if (width == 0) width = step;
    }
  }
  constexpr double golden = 0.61803398874989485;
  double low = std::max(s.first(), best - width), high = std::min(s.last(), best + width);
  for (int round = 0; round < 70; ++round) {
    const double a = high - golden * (high - low), b = low + golden * (high - low);
    (curve_gap(curve, a, p) < curve_gap(curve, b, p) ? high : low) =
        curve_gap(curve, a, p) < curve_gap(curve, b, p) ? b : a;
  }
  const double inner = (low + high) / 2;
  return curve_gap(curve, inner, p) < least ? inner : best;
}

std::vector<double> spread(const Value& multiplicities, const Value& knots) {
  std::vector<double> all;
  for (std::size_t i = 0; i < std::min(multiplicities.items.size(), knots.items.size()); ++i)
    all.insert(all.end(), static_cast<std::size_t>(multiplicities.items[i].number), knots.items[i].number);
  return all;
}

Frame line_frame(const Triple& point, const Triple& along) {
  Frame f;
  f.origin = point;
  f.z = scaled(1 / std::sqrt(dot(along, along)), along);
  return f;
}

}  // namespace

OnCurve at(const Spline& s, double u) {
  u = std::clamp(u, s.first(), s.last());
  std::vector<Quad> poles(s.poles.size()), rates(s.poles.size() - 1);
  for (std::size_t i = 0; i < poles.size(); ++i) {
    const double w = s.weights.empty() ? 1 : s.weights[i];
    poles[i] = {w * s.poles[i][0], w * s.poles[i][1], w * s.poles[i][2], w};
  }
  for (std::size_t i = 0; i < rates.size(); ++i) {
    const double width = s.knots[i + s.degree + 1] - s.knots[i + 1];
    for (std::size_t k = 0; k < 4; ++k)
      rates[i][k] = width > 0 ? static_cast<double>(s.degree) * (poles[i + 1][k] - poles[i][k]) / width : 0;
  }
  const std::vector<double> inner(s.knots.begin() + 1, s.knots.end() - 1);
  const Quad a = de_boor(s.degree, s.knots, poles, u), b = de_boor(s.degree - 1, inner, rates, u);
  OnCurve found;
  for (std::size_t k = 0; k < 3; ++k) {
    found.point[k] = a[k] / a[3];
    found.rate[k] = (b[k] - b[3] * found.point[k]) / a[3];
  }
  return found;
}

std::optional<Spline> spline_of(const StepFile& file, const Instance* instance) {
  const Record* knots = instance == nullptr ? nullptr : instance->find("B_SPLINE_CURVE_WITH_KNOTS");
  if (knots == nullptr) return std::nullopt;
  const Record* inner = instance->find("B_SPLINE_CURVE");
  // In a complex instance the inherited parameters stand in records of their own and the name in yet another.
  const Record* base = inner != nullptr ? inner : knots;
  const std::size_t shift = inner != nullptr ? 0 : 1, own = inner != nullptr ? 0 : 6;
  Spline s;
  s.degree = static_cast<std::size_t>(parameter(base, shift).number);
  for (const Value& pole : parameter(base, shift + 1).items) {
    const auto point = triple_of(file.at(pole));
    if (!point) return std::nullopt;
    s.poles.push_back(*point);
  }
  s.knots = spread(parameter(knots, own), parameter(knots, own + 1));
  for (const Value& weight : parameter(instance->find("RATIONAL_B_SPLINE_CURVE"), 0).items)
    s.weights.push_back(weight.number);
  const bool fits = s.degree > 0 && s.poles.size() > s.degree && s.knots.size() == s.poles.size() + s.degree + 1 &&
                    std::ranges::is_sorted(s.knots) && (s.weights.empty() || s.weights.size() == s.poles.size());
  return fits ? std::optional(std::move(s)) : std::nullopt;
}

OnCurve Curve::at(double u) const {
  if (kind == Kind::line) return {sum(frame.origin, scaled(u, frame.z)), frame.z};
  if (kind == Kind::spline) return readers::at(spline, u);
  const double c = std::cos(u), s = std::sin(u);
  return {sum(frame.origin, sum(scaled(x_radius * c, frame.x), scaled(y_radius * s, frame.y))),
          sum(scaled(-x_radius * s, frame.x), scaled(y_radius * c, frame.y))};
}

double Curve::nearest(const Triple& p) const {
  if (kind == Kind::spline) return nearest_on_spline(*this, p);
  const Triple q = inside(frame, p);
  return kind == Kind::line ? dot(sum(p, scaled(-1, frame.origin)), frame.z)
                            : std::atan2(q[1] / y_radius, q[0] / x_radius);
}

std::optional<Curve> curve_of(const StepFile& file, const Instance* instance) {
  if (instance == nullptr) return std::nullopt;
  for (const char* wrapper : {"SURFACE_CURVE", "SEAM_CURVE", "INTERSECTION_CURVE"})
    if (instance->is(wrapper)) return curve_of(file, file.step(instance, wrapper, 1));
  Curve curve;
  if (instance->is("LINE")) {
    const auto point = triple_of(file.step(instance, "LINE", 1));
    const auto along = triple_of(file.step(file.step(instance, "LINE", 2), "VECTOR", 1));
    if (!point || !along) return std::nullopt;
    curve.frame = line_frame(*point, *along);
    return curve;
  }
  if (auto spline = spline_of(file, instance)) {
    curve.kind = Curve::Kind::spline;
    curve.spline = std::move(*spline);
    return curve;
  }
  const bool round = instance->is("CIRCLE");
  const char* name = round ? "CIRCLE" : "ELLIPSE";
  const auto frame = frame_of(file, file.step(instance, name, 1));
  if (!frame) return std::nullopt;
  curve.kind = round ? Curve::Kind::circle : Curve::Kind::ellipse;
  curve.frame = *frame;
  curve.x_radius = parameter(instance->find(name), 2).number;
  curve.y_radius = round ? curve.x_radius : parameter(instance->find(name), 3).number;
  if (!(curve.x_radius > 0) || !(curve.y_radius > 0)) return std::nullopt;
  return curve;
}

}  // namespace visewright::readers
