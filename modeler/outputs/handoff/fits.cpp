#include "outputs/handoff/fits.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>

namespace visewright::outputs::handoff {
namespace {

using geometry::Placement;
using geometry::Vector;

struct StepOf {
  double up_to_mm, it7_um, it9_um, it11_um;
};
constexpr std::array<StepOf, 13> iso_286{{{3, 10, 25, 60},
                                          {6, 12, 30, 75},
                                          {10, 15, 36, 90},
                                          {18, 18, 43, 110},
                                          {30, 21, 52, 130},
                                          {50, 25, 62, 160},
                                          {80, 30, 74, 190},
                                          {120, 35, 87, 220},
                                          {180, 40, 100, 250},
                                          {250, 46, 115, 290},
                                          {315, 52, 130, 320},
                                          {400, 57, 140, 360},
                                          {500, 63, 155, 400}}};
struct GeneralStep {
  double up_to_mm, half_mm;
};
constexpr std::array<GeneralStep, 5> iso_2768_m{{{6, 0.1}, {30, 0.2}, {120, 0.3}, {400, 0.5}, {1000, 0.8}}};

template <class Steps>
const auto& step(const Steps& steps, double size_mm) {
  for (const auto& s : steps)
    if (size_mm <= s.up_to_mm + 1e-9) return s;
  return steps.back();
}

/// A hole about the z axis of `axis`, from its origin down.
struct Hole {
  Placement axis;  // in the model's axes
  double diameter_mm = 0, depth_mm = 0;
};

bool on_axis(const Hole& hole, const Placement& other) {
  if (std::abs(std::abs(geometry::dot(hole.axis.z_axis, other.z_axis)) - 1) > 1e-9) return false;
  const Vector inside = geometry::to_inside(hole.axis, other.origin_mm);
  return std::hypot(inside[0], inside[1]) <= 1e-6;
}

/// Whether a body of a part placed on the axis reaches into the hole.
bool reaches_in(const Hole& hole, const Placement& at, const parts::Extent& box) {
  constexpr double least_mm = 0.1;
  const double a = geometry::to_inside(hole.axis, geometry::to_outside(at, {0, 0, box.low_mm[2]}))[2],
               b = geometry::to_inside(hole.axis, geometry::to_outside(at, {0, 0, box.high_mm[2]}))[2];
  return std::min(std::max(a, b), 0.0) - std::max(std::min(a, b), -hole.depth_mm) > least_mm;
}

/// The outside of the body of a part that comes nearest to the hole's diameter, if it goes in or nearly.
std::optional<double> outside_in(const Hole& hole, const Placement& at, const parts::Part& part) {
  constexpr double most_larger = 0.3, most_smaller = 3;
  std::optional<double> best;
  for (const parts::Body& body : parts::bodies(part)) {
    // Each shape by itself: a screw is a head and a shank.
    for (const parts::Shape& shape : body.added) {
      if (std::holds_alternative<parts::HalfSpace>(shape)) continue;
      const parts::Extent box = parts::extent({&shape, 1});
      const double width = box.high_mm[0] - box.low_mm[0], height = box.high_mm[1] - box.low_mm[1];
      if (std::abs(width - height) > 1e-6 || width > hole.diameter_mm + most_larger || width < hole.diameter_mm - most_smaller) continue;
      if (!reaches_in(hole, at, box)) continue;
      if (!best || std::abs(width - hole.diameter_mm) < std::abs(*best - hole.diameter_mm)) best = width;
    }
  }
  return best;
}

/// Play from which on nothing is guided any more, mm.
constexpr double free_mm = 0.5;

Grade grade_of(const assembly::Fit& fit, double play_mm) {
  if (play_mm >= free_mm - 1e-9) return Grade::it11;
  if (std::holds_alternative<assembly::Press>(fit)) return Grade::it7;
  return std::holds_alternative<assembly::Sliding>(fit) ? Grade::it9 : Grade::it11;
}

}  // namespace

double tolerance_mm(Grade grade, double size_mm) {
  switch (grade) {
    case Grade::it7: return step(iso_286, size_mm).it7_um / 1000;
    case Grade::it9: return step(iso_286, size_mm).it9_um / 1000;
    case Grade::it11: return step(iso_286, size_mm).it11_um / 1000;
    case Grade::general: break;
  }
  return step(iso_2768_m, size_mm).half_mm;
}

HoleFit hole_fit(const Facts& facts, std::uint32_t of, const Placement& axis, double diameter_mm, double depth_mm) {
  const auto& placed = facts.assembly.placed;
  const assembly::Pair* best = nullptr;
  std::string_view with;
  double nearest = 1e9, play = 0;
  for (const assembly::Pair& pair : facts.assembly.declared) {
    for (const auto& [own, other] : {std::pair(pair.a, pair.b), std::pair(pair.b, pair.a)}) {
      if (placed[own].part != of || placed[other].part == of) continue;
      const Hole hole{geometry::combined(placed[own].shut, axis), diameter_mm, depth_mm};
      if (!on_axis(hole, placed[other].shut)) continue;
      const parts::Part& partner = *facts.assembly.parts[placed[other].part];
      const auto outside = outside_in(hole, placed[other].shut, partner);
      if (!outside || std::abs(*outside - diameter_mm) >= nearest - 1e-9) continue;
      nearest = std::abs(*outside - diameter_mm);
      play = diameter_mm - *outside;
      best = &pair;
      with = partner.name;
    }
  }
  if (best == nullptr) {
    const double half = tolerance_mm(Grade::general, diameter_mm);
    return {"", "", -half, half};
  }
  const std::string fit(play >= free_mm - 1e-9 ? "clear" : assembly::word(best->fit));
  return {std::string(with), fit, 0, tolerance_mm(grade_of(best->fit, play), diameter_mm)};
}

}  // namespace visewright::outputs::handoff
