// Two neighbouring gears of a train, each at its phase: the gap between them on both sides of a tooth.
#include <cmath>

#include "geometry/measure.h"
#include "layout/planning.h"

namespace visewright::layout {
namespace {

using geometry::Point;

double to_segment(Point p, Point a, Point b) {
  const double dx = b.x - a.x, dy = b.y - a.y;
  const double t = std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
  return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/// The flanks of one side of a gear's teeth near the mesh: `lower` are those that face clockwise about the own axis.
struct Flanks {
  std::vector<std::vector<Point>> lower, upper;
};

Flanks flanks_near(const Gear& g, double turn, double toward_x) {
  Flanks found;
  const geometry::Loop placed = geometry::moved(*g.outline, turn, {g.centre_x.mm(), 0});
  for (std::size_t i = 0; i < placed.edges().size(); ++i) {
    const geometry::Edge& edge = placed.edges()[i];
    if (!std::holds_alternative<geometry::Involute>(edge)) continue;
    const Point middle = geometry::at(edge, 0.5);
    if ((middle.x - g.centre_x.mm()) * (toward_x - g.centre_x.mm()) < 0 || std::abs(middle.y) > 25) continue;
    const bool outward = geometry::length({geometry::finish(edge).x - g.centre_x.mm(), geometry::finish(edge).y}) >
                         geometry::length({geometry::start(edge).x - g.centre_x.mm(), geometry::start(edge).y});
    (outward ? found.lower : found.upper).push_back(geometry::sample(edge, 1e-5).points);
  }
  return found;
}

double gap(const std::vector<std::vector<Point>>& some, const std::vector<std::vector<Point>>& others) {
  double least = 1e9;
  for (const auto& one : some) {
    for (const auto& other : others) {
      for (const Point p : one)
        for (std::size_t i = 0; i + 1 < other.size(); ++i)
          least = std::min(least, to_segment(p, other[i], other[i + 1]));
      for (const Point p : other)
        for (std::size_t i = 0; i + 1 < one.size(); ++i) least = std::min(least, to_segment(p, one[i], one[i + 1]));
    }
  }
  return least;
}

/// Turns the first gear by `angle` and all others with it, as they mesh, and compares the gaps of every mesh.
void expect_even_gaps(const Plan& p, double angle) {
  const auto& gears = p.train.gears;
  for (std::size_t i = 0; i + 1 < gears.size(); ++i) {
    const Gear &a = gears[i], &b = gears[i + 1];
    const auto turned = [&](const Gear& g) {
      return g.phase.rad() + angle * g.sense * gears.front().teeth.value / g.teeth.value;
    };
    const Flanks left = flanks_near(a, turned(a), b.centre_x.mm()), right = flanks_near(b, turned(b), a.centre_x.mm());
    // Flanks that face each other face the same way about their own axes, as the gears turn opposite ways.
    const double one = gap(left.lower, right.lower), other = gap(left.upper, right.upper);
    EXPECT_NEAR(one, other, 0.003) << "mesh " << i + 1 << " turned by " << angle;
    EXPECT_NEAR(one, p.train.meshes[i].normal_backlash.mm() / 2, 0.003) << "mesh " << i + 1 << " turned by " << angle;
  }
}

Plan train(const std::string& teeth, const std::string& more = "") {
  return good_plan("train = { module = 3, teeth = " + teeth + more + " }\nscrew = { thread = \"M20\" }\n");
}

// Expected: at the phases of the Plan every mesh stands in the middle of its play, so that each flank has half of the
// normal backlash, ISO 21771: j_bn = cos a · m ((z1 + z2)(inv a_w - inv a) - 2 (x1 + x2) tan a) + thinning · cos a.
TEST(MeshGap, EqualGears) { expect_even_gaps(train("[30, 30, 30]"), 0); }
TEST(MeshGap, OddTeeth) { expect_even_gaps(train("[29, 29, 29, 29]"), 0); }
TEST(MeshGap, UnequalGears) { expect_even_gaps(train("[30, 25, 36, 30]"), 0); }
TEST(MeshGap, SpreadCentres) {
  const Plan p = train("[30, 30, 30]", ", centre_distances = [90.4, 90.15]");
  // Worked by hand: cos a_w = 90 cos 20/90.4 gives inv a_w - inv a = 0.001653; ·cos 20·3·60 = 0.2797, + 0.45 cos 20.
  EXPECT_NEAR(p.train.meshes[0].normal_backlash.mm(), 0.2797 + 0.4229, 0.002);
  expect_even_gaps(p, 0);
}
TEST(MeshGap, ShiftedGears) { expect_even_gaps(train("[30, 14, 30]", ", profile_shift = [0, 0.3, 0]"), 0); }
// 25 degrees leaves 0.20 modules of half tip, less than the 0.24 that the usual rounding needs.
TEST(MeshGap, SteepTeeth) { expect_even_gaps(train("[30, 30, 30]", ", pressure_angle = 25"), 0); }
TEST(MeshGap, StaysEvenAsTheTrainTurns) {
  for (const double angle : {0.02, 0.07, 0.13}) expect_even_gaps(train("[30, 25, 36, 30]"), angle);
}

}  // namespace
}  // namespace visewright::layout
