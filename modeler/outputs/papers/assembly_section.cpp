#include "outputs/papers/assembly_section.h"

#include <algorithm>
#include <map>

#include "outputs/data/items.h"
#include "outputs/papers/balloons.h"
#include "outputs/papers/section.h"
#include "outputs/papers/view.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Placement;
using geometry::Point;

/// Not cut lengthwise: rods and pins along the plane, nuts, washers and screws.
bool left_whole(const parts::Body& body) {
  if (body.piece == nullptr) return false;
  if (std::holds_alternative<parts::Rod>(body.piece->stock)) return !body.name.starts_with("bush") && !body.name.ends_with("bush") && body.name.find("spacer") == std::string::npos;
  const auto* bought = std::get_if<parts::Bought>(&body.piece->stock);
  return bought != nullptr && body.name.find("bearing") == std::string::npos && body.name.find("wheel") == std::string::npos;
}

struct CutBody {
  std::string item;
  Region region;
  bool whole = false;
};

std::vector<CutBody> cut_bodies(const Facts& facts, const Placement& plane, const Box& window) {
  std::vector<CutBody> list;
  for (const assembly::Placed& placed : facts.assembly.placed) {
    const parts::Part& part = *facts.assembly.parts[placed.part];
    const std::vector<parts::Body> bodies = parts::bodies(part);
    const std::vector<std::string> items = data::body_items(facts.assembly, placed.part);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      Region region = section(bodies[i], assembly::at(placed, facts.pose), plane);
      if (region.added.empty()) continue;
      // Of the bench only what is near.
      const geometry::Loop near = geometry::rectangle(window.low, window.high);
      const bool existing = part.making == parts::Making::existing;
      if (existing) region.removed.push_back(geometry::region(geometry::rectangle({-1e5, -1e5}, {1e5, 1e5}), {near}));
      list.push_back({i < items.size() ? items[i] : "", std::move(region), left_whole(bodies[i])});
    }
  }
  return list;
}

}  // namespace

Sheet assembly_section(const Facts& facts, Projection projection) {
  const double x = facts.plan.screws.holes.front().at.x;
  const Placement plane{{x, 0, 0}, {0, -1, 0}, {-1, 0, 0}};  // seen from the person's left, out to the right
  const double tail = facts.plan.screw.tail_out.mm() + facts.pose.opening_mm, front = facts.plan.use.projection_shut.mm() + facts.pose.opening_mm;
  const double top = facts.plan.bench.axis_depth.mm();
  const double below = std::max({facts.plan.front_jaw.below.mm(), facts.plan.rear_jaw.below.mm(), facts.plan.wheel.diameter.mm() / 2}) + 20;
  const Box window{{std::min(tail, -facts.plan.screw.length.mm()) - 20, -below}, {front + 40, std::max(top, below) + 20}};
  Sheet drawn;
  const DrawingLayers on(drawn);
  Sheet balloons_from = drawn;
  std::vector<Balloon> balloons;
  std::size_t number = 0;
  for (const CutBody& body : cut_bodies(facts, plane, window)) {
    const std::vector<geometry::Edge> edges = bounds(body.region);
    for (const geometry::Edge& e : edges) drawn.edge(on.visible, e);
    if (!body.whole)
      for (const geometry::Line& line : hatching(body.region, 5 + 1.5 * static_cast<double>(number % 3), (number % 2 == 0 ? 1 : 3) * units::pi / 4)) drawn.edge(on.hatch, line);
    ++number;
    if (body.item.empty() || edges.empty()) continue;
    const bool known = std::any_of(balloons.begin(), balloons.end(), [&](const Balloon& b) { return b.text == body.item; });
    if (!known) balloons.push_back({point_inside(body.region), body.item});
  }
  drawn.line(on.centre, {window.low.x, 0}, {window.high.x, 0});
  const Box b = box(drawn);
  DrawingPage page(facts, Paper::a3);
  const Point room = page.room().high - page.room().low - Point{44, 90};
  const double scale = drawing_scale(b.high - b.low, room);
  const Point middle = 0.5 * (page.room().low + page.room().high) + Point{0, 18}, origin = middle - scale * (0.5 * (b.low + b.high));
  page.put(drawn, scale, origin, "");
  for (Balloon& each : balloons) each.at = scale * each.at + origin;
  const Box around_it{scale * b.low + origin, scale * b.high + origin};
  add_balloons(page.sheet, page.thin, balloons, around_it);
  page.write({page.room().low.x, page.room().high.y - 4}, "Section through the left drive screw, seen from the person's left; out of the bench is to the right. Opening " + length(facts.pose.opening_mm, facts.show) + ".", 3);
  return std::move(page).finished({"section through a drive screw", "", "as the bill", "", "", 1, 1}, scale, projection);
}

}  // namespace visewright::outputs::papers
