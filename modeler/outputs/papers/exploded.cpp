#include "outputs/papers/exploded.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "kernel/hidden_lines.h"
#include "outputs/data/items.h"
#include "outputs/papers/balloons.h"
#include "outputs/papers/drawings.h"
#include "outputs/papers/view.h"
#include "solids/solid_set.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Placement;
using geometry::Point;
using geometry::Vector;

constexpr double deflection_mm = 1.5, apart_mm = 55;

Placement eye() {
  const auto unit = [](const Vector& v) { return geometry::times(1 / std::sqrt(geometry::dot(v, v)), v); };
  const Vector towards = unit({0.75, -0.55, 0.45});
  return {{0, 0, 0}, unit(geometry::cross({0, 0, 1}, towards)), towards};
}

/// Out of the bench: the middle of a placed part along the screws.
double out_of(const parts::Part& part, const Placement& at) {
  std::vector<parts::Shape> shapes;
  for (const parts::Body& body : parts::bodies(part))
    for (const parts::Shape& shape : body.added) shapes.push_back(parts::placed(shape, at));
  const parts::Extent e = parts::extent(shapes);
  return -(e.low_mm[1] + e.high_mm[1]) / 2;
}

struct Drawn {
  std::vector<kernel::PlacedSolid> solids;
  std::vector<std::string> items;  // of each solid
};

/// Parts in order of their place along the screws; those at the same place move by the same step.
Drawn pulled_apart(const Facts& facts) {
  std::vector<std::pair<double, const assembly::Placed*>> order;
  for (const assembly::Placed& placed : facts.assembly.placed)
    if (facts.assembly.parts[placed.part]->making != parts::Making::existing)
      order.emplace_back(out_of(*facts.assembly.parts[placed.part], placed.shut), &placed);
  std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) { return a.first < b.first - 1e-6; });
  Drawn drawn;
  double last = -1e9, moved = -apart_mm;
  for (const auto& [out, placed] : order) {
    if (out > last + 0.5) moved += apart_mm;
    last = out;
    const Placement at = geometry::shifted(placed->shut, {0, -moved, 0});
    const auto bodies = facts.solids->bodies(placed->part);
    for (const solids::BodySolid& body : bodies) {
      drawn.solids.push_back({body.solid, at, static_cast<int>(placed->group)});
      drawn.items.push_back(data::part_item(facts.assembly, placed->part));
    }
  }
  return drawn;
}

}  // namespace

base::Result<std::vector<File>> write_exploded(const Facts& facts, base::Watcher& watcher) {
  watcher.step("drawing the exploded view", 0.96);
  const Drawn drawn = pulled_apart(facts);
  const auto segments = kernel::hidden_lines(drawn.solids, eye(), deflection_mm, "exploded view");
  if (!segments) return base::passed_on(segments.error());
  if (segments->empty()) return std::vector<File>{};
  Sheet sheet;
  const DrawingLayers on(sheet);
  std::map<std::string, Point> where;  // a visible point of each item
  std::size_t last = drawn.solids.size();
  for (const kernel::Segment& s : *segments) {
    // Stretches that follow on from each other are one curve.
    const bool follows = s.of == last && geometry::distance(geometry::finish(sheet.curves.back().edges.back()), s.a) < 1e-6;
    if (follows) sheet.curves.back().edges.emplace_back(geometry::Line{s.a, s.b});
    else sheet.line(on.thin, s.a, s.b);
    last = s.of;
    where.try_emplace(drawn.items[s.of], 0.5 * (s.a + s.b));
  }
  const geometry::Box b = box(sheet);
  DrawingPage page(facts, Paper::a3);
  const Point room = page.room().high - page.room().low - Point{20, 90}, size = b.high - b.low;
  // A picture: as large as it goes, no scale is named.
  const double scale = std::min(room.x / size.x, room.y / size.y);
  const Point origin = 0.5 * (page.room().low + page.room().high) + Point{0, 14} - 0.5 * scale * (b.low + b.high);
  page.put(sheet, scale, origin, "");
  std::vector<Balloon> balloons;
  for (const auto& [item, at] : where)
    if (!item.empty()) balloons.push_back({scale * at + origin, item});
  add_balloons(page.sheet, page.thin, balloons, {scale * b.low + origin, scale * b.high + origin});
  page.write({page.room().low.x, page.room().high.y - 4}, "From the person's right, above and before the vise. Numbers are the items of the bill. Not to scale.", 3);
  return as_files(facts, "exploded view", {std::move(page).finished({"exploded view", "", "as the bill", "", "", 1, 1}, 0, usual_projection)}, std::nullopt);
}

}  // namespace visewright::outputs::papers
