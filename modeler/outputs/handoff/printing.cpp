#include "outputs/handoff/printing.h"

#include <algorithm>
#include <cmath>

namespace visewright::outputs::handoff {
namespace {

using facets::Polygon;
using facets::Slab;
using geometry::Loop;
using geometry::Point;

/// Twice the distance from the middle to the nearest side: the diameter of a circle, the width of a hexagon.
PrintedHole measured(const Loop& loop, double allowance_mm, double from_mm, double to_mm) {
  const auto edges = loop.edges();
  if (const auto* arc = edges.size() == 1 ? std::get_if<geometry::Arc>(&edges.front()) : nullptr) {
    const double diameter = 2 * geometry::distance(arc->centre, arc->a);
    return {true, diameter, diameter + allowance_mm, from_mm, to_mm};
  }
  const geometry::Box box = geometry::box(loop);
  const double width = std::min(box.high.x - box.low.x, box.high.y - box.low.y);
  return {false, width, width + allowance_mm, from_mm, to_mm};
}

/// The part of a gear's outline from the middle of one tooth space to the middle of the next but one: two whole teeth,
/// with the space between them on +x. The outline has a tooth's centre there.
Polygon two_teeth(const layout::Gear& gear) {
  const double pitch = 2 * units::pi / gear.teeth.value;
  const Polygon all = facets::polygon(geometry::moved(*gear.outline, pitch / 2, {0, 0}));
  const auto angle = [](Point p) { return std::atan2(p.y, p.x); };
  // Between the ends, flanks of undercut teeth may go back in angle; the ends stand on the root, where they do not.
  const auto nearest = [&](double wanted) {
    std::size_t best = 0;
    for (std::size_t i = 0; i < all.size(); ++i)
      if (std::abs(angle(all[i]) - wanted) < std::abs(angle(all[best]) - wanted)) best = i;
    return best;
  };
  Polygon teeth;
  const std::size_t last = nearest(pitch);
  for (std::size_t i = nearest(-pitch); i != last; i = (i + 1) % all.size()) teeth.push_back(all[i]);
  teeth.push_back(all[last]);
  return teeth;
}

}  // namespace

double first_layer_chamfer_mm(double module_mm) { return std::min(0.3, 0.1 * module_mm); }

base::Result<PrintedBody> printed_body(const parts::Print& print, double allowance_mm, double chamfer_mm, const std::string& label, double error_mm) {
  const auto refuse = [&](std::string what) {
    return base::fault(base::Cause::geometry, label, std::move(what), "layers with one common outline");
  };
  if (print.layers.empty() || print.layers.front().profile.outer.size() != 1) return refuse("it has no single outline");
  const Polygon outer = facets::polygon(print.layers.front().profile.outer.front(), error_mm);
  PrintedBody body;
  std::vector<Slab> slabs;
  for (const parts::Layer& layer : print.layers) {
    if (layer.profile.outer.size() != 1 || facets::polygon(layer.profile.outer.front(), error_mm) != outer)
      return refuse("its layers have different outlines");
    Slab slab{{}, layer.from_mm, layer.to_mm};
    for (const Loop& hole : layer.profile.holes) {
      slab.holes.push_back(facets::enlarged_hole(hole, allowance_mm, error_mm));
      body.holes.push_back(measured(hole, allowance_mm, layer.from_mm, layer.to_mm));
    }
    slabs.push_back(std::move(slab));
  }
  auto skin = facets::stacked(outer, slabs, chamfer_mm, label);
  if (!skin) return base::passed_on(std::move(skin.error()));
  body.skin = std::move(*skin);
  return body;
}

base::Result<PrintedBody> test_piece(const layout::Plan& plan, double chamfer_mm) {
  constexpr double rim = 5;
  const double allowance = plan.accuracy.hole_allowance.mm(), height = std::min(8.0, plan.train.face_width.mm());
  const bool has_idler = std::any_of(plan.train.gears.begin(), plan.train.gears.end(), [](const layout::Gear& g) { return !g.drive; });
  const double bore = (has_idler ? plan.axle.bearing.outside : plan.collar.front_bore).mm(), flats = plan.collar.hexagon.mm(),
               corners = 2 * flats / std::sqrt(3.0);
  Polygon outer = two_teeth(plan.train.gears.front());
  const double face_x = std::min(outer.front().x, outer.back().x);
  const double half = std::max({bore, flats, 2 * std::abs(outer.front().y)}) / 2 + rim, length = corners + bore + 3 * rim;
  for (const Point p : {Point{face_x, half}, Point{face_x - length, half}, Point{face_x - length, -half}, Point{face_x, -half}})
    outer.push_back(p);
  const double hexagon_x = face_x - rim - corners / 2, bore_x = hexagon_x - corners / 2 - rim - bore / 2;
  const Loop hexagon = geometry::hexagon({hexagon_x, 0}, flats, 0), round = geometry::circle({bore_x, 0}, bore / 2);
  PrintedBody body;
  Slab slab{{}, 0, height};
  for (const Loop* hole : {&hexagon, &round}) {
    slab.holes.push_back(facets::enlarged_hole(*hole, allowance));
    body.holes.push_back(measured(*hole, allowance, 0, height));
  }
  auto skin = facets::stacked(outer, {&slab, 1}, chamfer_mm, "test piece");
  if (!skin) return base::passed_on(std::move(skin.error()));
  body.skin = std::move(*skin);
  return body;
}

}  // namespace visewright::outputs::handoff
