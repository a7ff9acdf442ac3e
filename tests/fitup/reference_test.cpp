// The slow way: solids in the kernel, common volume as the judge of overlap and distance only when it is zero; and, as a
// second opinion, triangles against triangles.
#include <array>
#include <cmath>
#include <random>
#include <set>

#include "fitup/stood.h"
#include "kernel/facets.h"

namespace visewright::fitup {
namespace {

using geometry::Placement;
using kernel::Solid;

struct Told {
  double common_mm3 = 0, distance_mm = 0;
};
Told reference(const Solid& a, const Solid& b) {
  const double common = kernel::common_volume_mm3(a, b, "reference").value();
  return {common, common > overlap_mm3 ? 0 : kernel::distance_mm(a, b, "reference").value()};
}

// Closed forms first: the kernel is believed where it agrees with them.
TEST(Reference, KnownPlaces) {
  const auto cube = [](const geometry::Vector& at) {
    return kernel::prism(geometry::region(geometry::rectangle({-1, -1}, {1, 1})), {at, {1, 0, 0}, {0, 0, 1}}, -1, 1, "cube").value();
  };
  EXPECT_NEAR(reference(cube({0, 0, 0}), cube({5, 6, 14})).distance_mm, 13, 1e-6);
  EXPECT_NEAR(reference(cube({0, 0, 0}), cube({1, 1, 1})).common_mm3, 1, 1e-9);
  EXPECT_NEAR(reference(cube({0, 0, 0}), cube({2, 0, 0})).common_mm3, 0, 1e-9);
}

// Every pair nearer than twice the largest rule, each distinct relative pose once, as the parts stand shut: the same
// verdict, and the same distance to a micrometre wherever it is told as exact; elsewhere never more than the truth.
TEST(ReferenceSlow, SameVerdictAndDistance) {
  const layout::Plan plan = layout::good_plan(text_of("small-instrument-bench"));
  const assembly::Assembly whole = assembly::assemble(plan);
  base::Silence silence;
  const auto solids = solids::SolidSet::of(whole.parts, silence).value();
  const auto all = stands(whole);
  const double range = 2 * whole.moving_to_fixed_mm;
  std::set<std::array<long long, 13>> known;
  int exact = 0, apart = 0, met = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (std::size_t k = i + 1; k < all.size(); ++k) {
      const Stand &a = all[i], &b = all[k];
      if (a.placed == b.placed || gap_mm(a.still_box, b.still_box) > range) continue;
      // Gears that mesh are judged on their outlines.
      if (whole.placed[a.placed].name.starts_with("gear") && whole.placed[b.placed].name.starts_with("gear")) continue;
      const Placement relative = geometry::combined(geometry::inverse(a.at), b.at);
      std::array<long long, 13> key{whole.placed[a.placed].part, a.body, whole.placed[b.placed].part, b.body};
      std::size_t n = 4;
      for (const auto* v : {&relative.origin_mm, &relative.x_axis, &relative.z_axis})
        for (const double value : *v) key[n++] = std::llround(value * 1e6);
      if (!known.insert(key).second) continue;
      const auto& body_a = solids.bodies(whole.placed[a.placed].part)[a.body].solid;
      const auto& body_b = solids.bodies(whole.placed[b.placed].part)[b.body].solid;
      const Told told = reference(body_a, kernel::moved(body_b, relative));
      const Nearness found = as_they_stand(a, b, range);
      const std::string names = whole.placed[a.placed].name + " and " + whole.placed[b.placed].name;
      ++met;
      EXPECT_TRUE(found.overlap || told.common_mm3 <= overlap_mm3) << names;
      if (found.overlap) continue;
      ++apart;
      EXPECT_LE(found.distance, std::min(range, told.distance_mm) + 1e-3) << names;
      if (!found.exact || found.distance >= range) continue;
      ++exact;
      EXPECT_NEAR(found.distance, told.distance_mm, 1e-3) << names;
    }
  }
  EXPECT_GT(met, 60);
  EXPECT_GT(exact, met / 2);
  EXPECT_EQ(apart, met);
}

/// Bodies of real parts that are not gears, each once.
struct Bodies {
  std::vector<std::shared_ptr<const parts::Part>> parts;
  std::vector<Solid> solids;
};
Bodies real_bodies() {
  const assembly::Assembly whole = assembly::assemble(layout::good_plan(text_of("small-instrument-bench")));
  base::Silence silence;
  Bodies result;
  for (const auto& part : whole.parts) {
    if (parts::bodies(*part).size() != 1 || part->making == parts::Making::printed || part->making == parts::Making::existing) continue;
    const auto solids = solids::SolidSet::of(std::vector{part}, silence).value();
    result.parts.push_back(part);
    result.solids.push_back(solids.bodies(0)[0].solid);
  }
  return result;
}

// 300 placements: the second part turned about a random axis of its own or at random, brought to contact along a random
// way by halving on the reference, then shifted by −1 … +1 mm: never a pass where the reference finds overlap.
TEST(ReferenceSlow, RandomPlacements) {
  const Bodies bodies = real_bodies();
  ASSERT_GT(bodies.parts.size(), 10U);
  std::mt19937_64 random(20240501);
  const auto draw = [&](double from, double to) { return from + (to - from) * static_cast<double>(random() >> 11) * 0x1p-53; };
  int overlapping = 0, close = 0, cleared = 0;
  for (int n = 0; n < 300; ++n) {
    const std::size_t i = random() % bodies.parts.size(), k = random() % bodies.parts.size();
    const double angle = draw(0, 2 * units::pi), tilt = n % 3 == 0 ? draw(0, 2 * units::pi) : 0;
    Placement turned{{0, 0, 0}, {std::cos(angle), std::sin(angle), 0}, {0, 0, 1}};
    turned = geometry::combined(turned, {{0, 0, 0}, {1, 0, 0}, {0, -std::sin(tilt), std::cos(tilt)}});
    const double way = draw(0, 2 * units::pi), rise = n % 2 == 0 ? 0 : draw(-0.5, 0.5);
    const geometry::Vector out{std::cos(way) * std::cos(rise), std::sin(way) * std::cos(rise), std::sin(rise)};
    const auto at = [&](double d) { return Placement{geometry::times(d, out), turned.x_axis, turned.z_axis}; };
    const auto apart = [&](double d) { return reference(bodies.solids[i], kernel::moved(bodies.solids[k], at(d))); };
    // Contact: the last distance at which they are apart, from far out; what remains is always nearer than told.
    double d = 1500;
    for (int step = 0; step < 60; ++step) {
      const double left = apart(d).distance_mm;
      if (left < 1e-4 || d < -1500) break;
      d -= left;
    }
    const double shift = n % 5 < 2 ? draw(-1, 0) : n % 5 < 4 ? draw(0, 0.1) : draw(-1, 1);
    const Told told = apart(d + shift);
    Stood s;
    s.assembly.parts = {bodies.parts[i], bodies.parts[k]};
    for (std::uint32_t p = 0; p < 2; ++p) {
      assembly::Placed placed;
      placed.part = p;
      if (p == 1) placed.shut = at(d + shift);
      s.assembly.placed.push_back(placed);
    }
    const Nearness found = near(s, 5);
    overlapping += told.common_mm3 > overlap_mm3;
    close += told.common_mm3 <= overlap_mm3 && told.distance_mm > 0 && told.distance_mm < 0.1;
    cleared += !found.overlap;
    const std::string names = std::to_string(n) + " " + bodies.parts[i]->name + " and " + bodies.parts[k]->name;
    EXPECT_TRUE(found.overlap || told.common_mm3 <= overlap_mm3) << names << " share " << told.common_mm3;
    EXPECT_LE(found.distance, std::min(5.0, told.distance_mm) + 1e-3) << names;
  }
  EXPECT_GE(overlapping, 100);
  EXPECT_GE(close, 100);
  EXPECT_GE(cleared, 50);
}

double to_segment(const geometry::Vector& p, const geometry::Vector& a, const geometry::Vector& b) {
  using namespace geometry;
  const Vector ab = plus(b, times(-1, a)), ap = plus(p, times(-1, a));
  const double t = dot(ab, ab) > 0 ? std::clamp(dot(ap, ab) / dot(ab, ab), 0.0, 1.0) : 0;
  const Vector left = plus(ap, times(-t, ab));
  return std::sqrt(dot(left, left));
}
/// Distance of a point to a triangle: to its plane when it stands over it, else to its sides.
double to_triangle(const geometry::Vector& p, const std::array<geometry::Vector, 3>& t) {
  using namespace geometry;
  Vector n = cross(plus(t[1], times(-1, t[0])), plus(t[2], times(-1, t[0])));
  const double size = std::sqrt(dot(n, n));
  double best = 1e300;
  bool over = size > 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const Vector &a = t[i], &b = t[(i + 1) % 3];
    best = std::min(best, to_segment(p, a, b));
    over = over && dot(cross(n, plus(b, times(-1, a))), plus(p, times(-1, a))) >= 0;
  }
  return over ? std::min(best, std::abs(dot(times(1 / size, n), plus(p, times(-1, t[0]))))) : best;
}

// Every corner of each against every triangle of the other: never nearer than what is proved, less the facets' error.
TEST(Triangles, NeverNearerThanProved) {
  const auto ring = piece("ring", {parts::cylinder(60, 0, 10)}, {parts::cylinder(30, -1, 11)});
  const auto pin = piece("pin", {parts::cylinder(6, 0, 25)});
  base::Silence silence;
  const auto solid = [&](const parts::Part& part) {
    return solids::solid_of(parts::bodies(part).front(), part.name).value().solid;
  };
  const auto facets = [&](const Solid& s) {
    std::vector<std::array<geometry::Vector, 3>> all;
    const kernel::Facets f = kernel::facets(s, 0.01, "facets").value();
    for (const auto& t : f.triangles) {
      std::array<geometry::Vector, 3> corners;
      for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t c = 0; c < 3; ++c) corners[i][c] = f.points[t[i]][c];
      all.push_back(corners);
    }
    return all;
  };
  for (const Placement& at : {Placement{{0, 11.5, -5}, {1, 0, 0}, {0, 0, 1}}, Placement{{34, 0, -4}, {1, 0, 0}, {0, 0, 1}}, Placement{{-12, 4, 13.5}, {0, 0, 1}, {1, 0, 0}}}) {
    const auto a = facets(solid(ring)), b = facets(kernel::moved(solid(pin), at));
    double least = 1e300;
    for (const auto& t : a)
      for (const auto& u : b)
        for (std::size_t i = 0; i < 3; ++i) least = std::min({least, to_triangle(t[i], u), to_triangle(u[i], t)});
    const Nearness found = near(ring, pin, at);
    ASSERT_FALSE(found.overlap);
    EXPECT_LE(found.distance, least + 0.05);
    EXPECT_GE(found.distance, least - 0.3);
  }
}

}  // namespace
}  // namespace visewright::fitup
