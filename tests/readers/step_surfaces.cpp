#include "readers/step_surfaces.h"

#include <cmath>

namespace visewright::readers {
namespace {

/// Distance from an extruded curve: between the shadows that curve and point throw along the extrusion.
double off_extrusion(const Surface& surface, const Triple& p) {
  const Triple way = scaled(1 / std::sqrt(dot(surface.along, surface.along)), surface.along);
  const auto shadow = [&](const Triple& q) { return sum(q, scaled(-dot(q, way), way)); };
  Curve flat = surface.swept;
  for (Triple& pole : flat.spline.poles) pole = shadow(pole);
  if (flat.kind != Curve::Kind::spline) {
    // Lines and circles square to the extrusion are planes and cylinders and come as such; here they are only shifted.
    const double lift = dot(sum(p, scaled(-1, flat.frame.origin)), way);
    return distance(flat.at(flat.nearest(sum(p, scaled(-lift, way)))).point, sum(p, scaled(-lift, way)));
  }
  return distance(flat.at(flat.nearest(shadow(p))).point, shadow(p));
}

Flow plane_flow(const Surface& s, const Triple& p, const Triple& v, const Triple& d) {
  const double area = p[0] * v[1];
  const double level = dot(d, s.frame.origin) * area + dot(d, s.frame.x) * p[0] * p[0] / 2 * v[1] -
                       dot(d, s.frame.y) * p[1] * p[1] / 2 * v[0];
  return {area, dot(d, s.frame.z) * level};
}

/// Cylinders are cones without slope. With r = R + T·z, A = d·radial and B = d·axis the flux density over angle and z
/// is (A − T·B)·r·(d·origin + r·A + z·B); its integral over z starts at the tip, where a piece may close without rim.
Flow cone_flow(const Surface& s, const Triple& p, const Triple& v, const Triple& d) {
  const double rho2 = p[0] * p[0] + p[1] * p[1], rho = std::sqrt(rho2);
  const double turn = (p[0] * v[1] - p[1] * v[0]) / rho2;
  const double R = s.radius, T = s.slope;
  const double A = (dot(d, s.frame.x) * p[0] + dot(d, s.frame.y) * p[1]) / rho, B = dot(d, s.frame.z);
  const double P = dot(d, s.frame.origin) + R * A, Q = T * A + B;
  const auto flux = [&](double z) {
    return (A - T * B) * (R * P * z + (R * Q + T * P) * z * z / 2 + T * Q * z * z * z / 3);
  };
  const auto area = [&](double z) { return std::sqrt(1 + T * T) * (R * z + T * z * z / 2); };
  const double tip = T == 0 ? 0 : -R / T;
  return {-turn * (area(p[2]) - area(tip)), -turn * (flux(p[2]) - flux(tip))};
}

}  // namespace

double Surface::off_mm(const Triple& point) const {
  if (kind == Kind::extrusion) return off_extrusion(*this, point);
  const Triple p = inside(frame, point);
  const double rho = std::hypot(p[0], p[1]);
  switch (kind) {
    case Kind::plane: return std::abs(p[2]);
    case Kind::cylinder:
    case Kind::cone: return std::abs(rho - radius - slope * p[2]) / std::sqrt(1 + slope * slope);
    case Kind::sphere: return std::abs(std::hypot(rho, p[2]) - radius);
    case Kind::torus: return std::abs(std::hypot(rho - radius, p[2]) - small_radius);
    case Kind::extrusion: break;
  }
  return 0;
}

std::optional<Surface> surface_of(const StepFile& file, const Instance* instance) {
  if (instance == nullptr || instance->records.size() != 1) return std::nullopt;
  const Record& record = instance->records.front();
  Surface s;
  if (record.name == "SURFACE_OF_LINEAR_EXTRUSION") {
    const auto swept = curve_of(file, file.at(parameter(&record, 1)));
    const auto along = triple_of(file.step(file.at(parameter(&record, 2)), "VECTOR", 1));
    if (!swept || !along) return std::nullopt;
    s.kind = Surface::Kind::extrusion;
    s.swept = *swept;
    s.along = *along;
    return s;
  }
  const auto frame = frame_of(file, file.at(parameter(&record, 1)));
  if (!frame) return std::nullopt;
  s.frame = *frame;
  s.radius = parameter(&record, 2).number;
  if (record.name == "PLANE") {
    s.kind = Surface::Kind::plane;
  } else if (record.name == "CYLINDRICAL_SURFACE") {
    s.kind = Surface::Kind::cylinder;
  } else if (record.name == "CONICAL_SURFACE") {
    s.kind = Surface::Kind::cone;
    s.slope = std::tan(parameter(&record, 3).number);
  } else if (record.name == "SPHERICAL_SURFACE") {
    s.kind = Surface::Kind::sphere;
  } else if (record.name == "TOROIDAL_SURFACE") {
    s.kind = Surface::Kind::torus;
    s.small_radius = parameter(&record, 3).number;
  } else {
    return std::nullopt;
  }
  return s;
}

Flow flow(const Surface& s, const OnCurve& rim, const Triple& d) {
  const Triple p = inside(s.frame, rim.point), v = direction_inside(s.frame, rim.rate);
  return s.kind == Surface::Kind::plane ? plane_flow(s, p, v, d) : cone_flow(s, p, v, d);
}

bool carries_flux(const Surface& s, const Triple& d) {
  if (s.kind != Surface::Kind::extrusion) return s.kind <= Surface::Kind::cone;
  const Triple askew = cross(s.along, d);
  return dot(askew, askew) < 1e-20 * dot(s.along, s.along);
}

}  // namespace visewright::readers
