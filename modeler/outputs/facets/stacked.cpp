#include "outputs/facets/stacked.h"

#include <algorithm>
#include <cmath>

#include "geometry/measure.h"

namespace visewright::outputs::facets {
namespace {

using geometry::Point;

constexpr double same_corner_mm = 1e-3;

/// The points of one polygon at one height, numbered from `first` on.
struct RingAt {
  std::uint32_t first = 0, count = 0;
};

class Builder {
 public:
  RingAt ring(const Polygon& polygon, double z) {
    const RingAt made{static_cast<std::uint32_t>(mesh_.points.size()), static_cast<std::uint32_t>(polygon.size())};
    for (const Point p : polygon) mesh_.points.push_back({p.x, p.y, z});
    return made;
  }

  /// Between two rings of one polygon; `out`: the material is inside of it.
  void wall(RingAt low, RingAt high, bool out) {
    for (std::uint32_t i = 0; i < low.count; ++i) {
      const std::uint32_t j = (i + 1) % low.count;
      add(low.first + i, low.first + j, high.first + j, out);
      add(low.first + i, high.first + j, high.first + i, out);
    }
  }

  /// A level face between an outline and holes; false when they cross.
  bool level(const Polygon& outer, RingAt outer_ring, std::span<const Polygon> holes, std::span<const RingAt> hole_rings, bool up) {
    std::vector<std::uint32_t> numbers;
    const auto note = [&](RingAt ring) {
      for (std::uint32_t i = 0; i < ring.count; ++i) numbers.push_back(ring.first + i);
    };
    note(outer_ring);
    for (const RingAt& ring : hole_rings) note(ring);
    const auto list = triangles(outer, holes);
    for (const auto& t : list) add(numbers[t[0]], numbers[t[1]], numbers[t[2]], up);
    return !list.empty();
  }

  Mesh take() { return std::move(mesh_); }

 private:
  void add(std::uint32_t a, std::uint32_t b, std::uint32_t c, bool as_given) {
    if (as_given) mesh_.triangles.push_back({a, b, c});
    else mesh_.triangles.push_back({a, c, b});
  }
  Mesh mesh_;
};

std::vector<Polygon> grown(std::span<const Polygon> holes, double by_mm) {
  std::vector<Polygon> list;
  for (const Polygon& hole : holes) list.push_back(shifted_out(hole, by_mm));
  return list;
}

/// Whether the holes lie apart from each other and inside the outline.
bool apart(const Polygon& outer, std::span<const Polygon> holes) {
  if (!simple(outer)) return false;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    if (!simple(holes[i]) || meet(outer, holes[i]) || !inside(outer, holes[i].front())) return false;
    for (std::size_t j = 0; j < i; ++j)
      if (meet(holes[i], holes[j]) || inside(holes[j], holes[i].front()) || inside(holes[i], holes[j].front())) return false;
  }
  return true;
}

/// Whether every side of a shifted polygon still runs the way it did.
bool runs_alike(const Polygon& before, const Polygon& after) {
  const std::size_t n = before.size();
  for (std::size_t i = 0; i < n; ++i)
    if (geometry::dot(before[(i + 1) % n] - before[i], after[(i + 1) % n] - after[i]) <= 0) return false;
  return true;
}

bool equal(const Polygon& a, const Polygon& b) {
  return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](Point p, Point q) { return geometry::distance(p, q) < 1e-9; });
}

/// The ledge where a hole changes its size from one slab to the next.
bool ledge(Builder& build, const Polygon& below, RingAt below_ring, const Polygon& above, RingAt above_ring) {
  if (meet(below, above)) return false;
  const bool looks_down = inside(below, above.front());  // the upper hole is the smaller one
  if (!looks_down && !inside(above, below.front())) return false;
  const Polygon& wide = looks_down ? below : above;
  const Polygon& narrow = looks_down ? above : below;
  const RingAt wide_ring = looks_down ? below_ring : above_ring, narrow_ring = looks_down ? above_ring : below_ring;
  return build.level(wide, wide_ring, {&narrow, 1}, {&narrow_ring, 1}, !looks_down);
}

bool sound(std::span<const Slab> slabs) {
  if (slabs.empty()) return false;
  for (std::size_t i = 0; i < slabs.size(); ++i) {
    if (slabs[i].to_mm <= slabs[i].from_mm || slabs[i].holes.size() != slabs[0].holes.size()) return false;
    if (i > 0 && std::abs(slabs[i].from_mm - slabs[i - 1].to_mm) > 1e-9) return false;
  }
  return true;
}

}  // namespace

Polygon polygon(const geometry::Loop& loop, double error_mm) {
  Polygon points;
  for (const Point p : geometry::sample(loop, error_mm).points)
    if (points.empty() || geometry::distance(points.back(), p) > same_corner_mm) points.push_back(p);
  while (points.size() > 3 && geometry::distance(points.back(), points.front()) <= same_corner_mm) points.pop_back();
  return points;
}

Polygon shifted_out(const Polygon& polygon, double by_mm) {
  Polygon result;
  const std::size_t n = polygon.size();
  const auto normal = [&](std::size_t i) {
    const Point along = polygon[(i + 1) % n] - polygon[i];
    return 1 / geometry::length(along) * Point{along.y, -along.x};
  };
  for (std::size_t i = 0; i < n; ++i) {
    const Point before = normal((i + n - 1) % n), after = normal(i);
    result.push_back(polygon[i] + by_mm / (1 + geometry::dot(before, after)) * (before + after));
  }
  return result;
}

Polygon enlarged_hole(const geometry::Loop& loop, double by_mm, double error_mm) {
  const auto edges = loop.edges();
  if (const auto* arc = edges.size() == 1 ? std::get_if<geometry::Arc>(&edges.front()) : nullptr)
    return polygon(geometry::circle(arc->centre, geometry::distance(arc->centre, arc->a) + by_mm / 2), error_mm);
  return shifted_out(polygon(loop, error_mm), by_mm / 2);
}

base::Result<Skin> stacked(const Polygon& outer, std::span<const Slab> slabs, double chamfer_mm, const std::string& label) {
  const auto refuse = [&](std::string what) {
    return base::fault(base::Cause::geometry, label, std::move(what), "holes inside the outline, one above the other");
  };
  if (!sound(slabs)) return refuse("the layers do not stand on each other");
  for (const Slab& slab : slabs)
    if (!apart(outer, slab.holes)) return refuse("holes cross each other or the outline");
  const double base_mm = slabs.front().from_mm;
  const auto z = [&](double height) { return height - base_mm; };

  Polygon foot = shifted_out(outer, -chamfer_mm);
  std::vector<Polygon> foot_holes = grown(slabs.front().holes, chamfer_mm);
  if (chamfer_mm >= slabs.front().to_mm - base_mm || !runs_alike(outer, foot) || !apart(foot, foot_holes)) chamfer_mm = 0;
  if (chamfer_mm <= 0) foot = outer, foot_holes = slabs.front().holes;

  Builder build;
  const RingAt foot_ring = build.ring(foot, 0);
  RingAt low = foot_ring;
  std::vector<RingAt> hole_rings;
  for (const Polygon& hole : foot_holes) hole_rings.push_back(build.ring(hole, 0));
  if (!build.level(foot, foot_ring, foot_holes, hole_rings, false)) return refuse("the lowest face cannot be filled");
  if (chamfer_mm > 0) {
    low = build.ring(outer, chamfer_mm);
    build.wall(foot_ring, low, true);
    for (std::size_t i = 0; i < hole_rings.size(); ++i) {
      const RingAt above = build.ring(slabs.front().holes[i], chamfer_mm);
      build.wall(hole_rings[i], above, false);
      hole_rings[i] = above;
    }
  }
  for (std::size_t k = 0; k < slabs.size(); ++k)
    for (std::size_t i = 0; i < hole_rings.size(); ++i) {
      const Polygon& hole = slabs[k].holes[i];
      // Where a hole goes on as it is, its wall goes on too.
      if (k + 1 < slabs.size() && equal(hole, slabs[k + 1].holes[i])) continue;
      const RingAt upper = build.ring(hole, z(slabs[k].to_mm));
      build.wall(hole_rings[i], upper, false);
      hole_rings[i] = upper;
      if (k + 1 == slabs.size()) continue;
      const Polygon& next = slabs[k + 1].holes[i];
      const RingAt next_ring = build.ring(next, z(slabs[k].to_mm));
      if (!ledge(build, hole, upper, next, next_ring)) return refuse("the holes of two layers cross");
      hole_rings[i] = next_ring;
    }
  const RingAt top = build.ring(outer, z(slabs.back().to_mm));
  build.wall(low, top, true);
  if (!build.level(outer, top, slabs.back().holes, hole_rings, true)) return refuse("the highest face cannot be filled");
  return Skin{build.take(), chamfer_mm};
}

}  // namespace visewright::outputs::facets
