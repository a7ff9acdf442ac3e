#include "readers/step_frames.h"

#include <cmath>

namespace visewright::readers {
namespace {

Triple unit(const Triple& a) { return scaled(1 / std::sqrt(dot(a, a)), a); }

Triple turned(const Frame& f, const Triple& v) {
  Triple out{};
  for (std::size_t i = 0; i < 3; ++i) out[i] = v[0] * f.x[i] + v[1] * f.y[i] + v[2] * f.z[i];
  return out;
}

}  // namespace

double dot(const Triple& a, const Triple& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
Triple cross(const Triple& a, const Triple& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}
Triple sum(const Triple& a, const Triple& b) { return {a[0] + b[0], a[1] + b[1], a[2] + b[2]}; }
Triple scaled(double k, const Triple& a) { return {k * a[0], k * a[1], k * a[2]}; }
double distance(const Triple& a, const Triple& b) {
  const Triple gap = sum(a, scaled(-1, b));
  return std::sqrt(dot(gap, gap));
}

Triple inside(const Frame& f, const Triple& outside) { return direction_inside(f, sum(outside, scaled(-1, f.origin))); }
Triple direction_inside(const Frame& f, const Triple& v) { return {dot(v, f.x), dot(v, f.y), dot(v, f.z)}; }

Triple outside(const Frame& f, const Triple& inside) {
  Triple out = turned(f, inside);
  for (std::size_t i = 0; i < 3; ++i) out[i] += f.origin[i];
  return out;
}

Frame combined(const Frame& outer, const Frame& inner) {
  return {outside(outer, inner.origin), turned(outer, inner.x), turned(outer, inner.y), turned(outer, inner.z)};
}

Frame inverse(const Frame& f) {
  const Frame back{{0, 0, 0}, {f.x[0], f.y[0], f.z[0]}, {f.x[1], f.y[1], f.z[1]}, {f.x[2], f.y[2], f.z[2]}};
  Frame out = back;
  const Triple moved = turned(back, f.origin);
  out.origin = {-moved[0], -moved[1], -moved[2]};
  return out;
}

std::optional<Triple> triple_of(const Instance* instance) {
  if (instance == nullptr || instance->records.empty()) return std::nullopt;
  const Record& record = instance->records.front();
  const auto& items = parameter(&record, 1).items;
  if ((record.name != "CARTESIAN_POINT" && record.name != "DIRECTION") || items.size() != 3) return std::nullopt;
  return Triple{items[0].number, items[1].number, items[2].number};
}

std::optional<Frame> frame_of(const StepFile& file, const Instance* placement) {
  const auto origin = triple_of(file.step(placement, "AXIS2_PLACEMENT_3D", 1));
  if (!origin) return std::nullopt;
  const Triple z = unit(triple_of(file.step(placement, "AXIS2_PLACEMENT_3D", 2)).value_or(Triple{0, 0, 1}));
  Triple x = triple_of(file.step(placement, "AXIS2_PLACEMENT_3D", 3)).value_or(Triple{1, 0, 0});
  const double along = dot(x, z);
  for (std::size_t i = 0; i < 3; ++i) x[i] -= along * z[i];
  x = unit(x);
  return Frame{*origin, x, cross(z, x), z};
}

}  // namespace visewright::readers
