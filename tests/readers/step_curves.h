// Curves of a STEP file, evaluated without a kernel.
#pragma once

#include <optional>
#include <vector>

#include "readers/step_frames.h"

namespace visewright::readers {

/// A B-spline curve; rational when it has weights. `knots` holds each knot as often as its multiplicity says.
struct Spline {
  std::size_t degree = 0;
  std::vector<Triple> poles;
  std::vector<double> weights, knots;

  [[nodiscard]] double first() const { return knots[degree]; }
  [[nodiscard]] double last() const { return knots[poles.size()]; }
};
/// Point and rate of change at a parameter, after de Boor (1972).
struct OnCurve {
  Triple point{}, rate{};
};
[[nodiscard]] OnCurve at(const Spline&, double u);
/// A B-spline curve in space, plain or rational; nothing when the instance is another kind or its numbers do not fit.
[[nodiscard]] std::optional<Spline> spline_of(const StepFile&, const Instance*);

struct Curve {
  enum class Kind { line, circle, ellipse, spline };
  Kind kind = Kind::line;
  /// A line runs along z of the frame; circle and ellipse lie in its x–y plane, at the angle that is their parameter.
  Frame frame;
  double x_radius = 0, y_radius = 0;
  Spline spline;

  [[nodiscard]] OnCurve at(double u) const;
  /// Parameter of the nearest point. For ellipses exact only for points on them.
  [[nodiscard]] double nearest(const Triple&) const;
};
/// The curve in space of a LINE, CIRCLE, ELLIPSE or B-spline, or of a curve on surfaces that carries one.
[[nodiscard]] std::optional<Curve> curve_of(const StepFile&, const Instance*);

}  // namespace visewright::readers
