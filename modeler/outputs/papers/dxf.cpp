#include "outputs/papers/dxf.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "geometry/measure.h"
#include "outputs/papers/dxf_tables.h"
#include "outputs/papers/legend.h"
#include "outputs/papers/svg.h"
#include "units/quantity.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Arc;
using geometry::Edge;
using geometry::Line;
using geometry::Point;

/// A corner of a polyline and how the stretch after it bulges: the tangent of a quarter of the angle it sweeps.
struct Corner {
  Point at;
  double bulge = 0;
};

std::vector<Corner> corners(const Curve& curve) {
  std::vector<Corner> list;
  for (const Edge& edge : curve.edges) {
    if (const auto* arc = std::get_if<Arc>(&edge)) {
      list.push_back({arc->a, std::tan(geometry::swept_rad(*arc) / 4)});
    } else if (const auto* line = std::get_if<Line>(&edge)) {
      list.push_back({line->a, 0});
    } else {
      const std::vector<Point> points = geometry::sample(edge, chord_error_mm).points;
      for (std::size_t i = 0; i + 1 < points.size(); ++i) list.push_back({points[i], 0});
    }
  }
  if (!curve.closed) list.push_back({geometry::finish(curve.edges.back()), 0});
  return list;
}

class Entities {
 public:
  Entities(DxfText& out, const Sheet& sheet) : out_(out), sheet_(sheet) {}

  void put(const Curve& curve) {
    const std::string& layer = sheet_.layers[curve.layer].name;
    if (const Arc* circle = as_circle(curve)) return put_circle(layer, *circle);
    if (!curve.closed && curve.edges.size() == 1) {
      if (const auto* line = std::get_if<Line>(&curve.edges.front())) return put_line(layer, *line);
      if (const auto* arc = std::get_if<Arc>(&curve.edges.front())) return put_arc(layer, *arc);
    }
    start("LWPOLYLINE", layer, "AcDbPolyline");
    const std::vector<Corner> list = corners(curve);
    out_.put(90, static_cast<long>(list.size()));
    out_.put(70, curve.closed ? 1L : 0L);
    out_.put(43, 0.0);
    for (const Corner& corner : list) {
      out_.point(10, corner.at, false);
      if (corner.bulge != 0) out_.put(42, corner.bulge);
    }
  }

  void put(const Words& words, const std::string& layer) {
    start("TEXT", layer, "AcDbText");
    out_.point(10, words.at);
    out_.put(40, 0.73 * words.height_mm);  // DXF counts the height of capitals
    out_.put(1, dxf_words(words.text));
    if (words.turn_rad != 0) out_.put(50, words.turn_rad * 180 / units::pi);
    if (words.anchor != Anchor::left) {
      out_.put(72, words.anchor == Anchor::middle ? 1L : 2L);
      out_.point(11, words.at);
    }
    out_.put(100, "AcDbText");
  }

 private:
  void start(std::string_view kind, const std::string& layer, std::string_view marker) {
    out_.put(0, kind);
    out_.put(5, out_.handle());
    out_.put(330, model_space);
    out_.put(100, "AcDbEntity");
    out_.put(8, layer);
    out_.put(100, marker);
  }
  void put_circle(const std::string& layer, const Arc& circle) {
    start("CIRCLE", layer, "AcDbCircle");
    out_.point(10, circle.centre);
    out_.put(40, geometry::distance(circle.centre, circle.a));
  }
  void put_line(const std::string& layer, const Line& line) {
    start("LINE", layer, "AcDbLine");
    out_.point(10, line.a);
    out_.point(11, line.b);
  }
  void put_arc(const std::string& layer, const Arc& arc) {
    start("ARC", layer, "AcDbCircle");
    out_.point(10, arc.centre);
    out_.put(40, geometry::distance(arc.centre, arc.a));
    out_.put(100, "AcDbArc");
    const bool left = geometry::swept_rad(arc) > 0;
    const auto degrees = [&](Point p) {
      const double angle = std::atan2(p.y - arc.centre.y, p.x - arc.centre.x) * 180 / units::pi;
      return angle < 0 ? angle + 360 : angle;
    };
    out_.put(50, degrees(left ? arc.a : arc.b));
    out_.put(51, degrees(left ? arc.b : arc.a));
  }

  DxfText& out_;
  const Sheet& sheet_;
};

/// Points along a curve, to a tenth of a micrometre, by which curves that coincide know each other.
std::vector<std::pair<long, long>> trace(const Curve& curve) {
  std::vector<std::pair<long, long>> points;
  const auto add = [&](Point p) { points.emplace_back(std::lround(p.x * 1e4), std::lround(p.y * 1e4)); };
  for (const Edge& edge : curve.edges) {
    if (const Arc* circle = as_circle(curve)) {
      add(circle->centre);
      add({geometry::distance(circle->centre, circle->a), 1e9});
      break;
    }
    add(geometry::at(edge, 0)), add(geometry::at(edge, 0.5)), add(geometry::at(edge, 1));
  }
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  return points;
}

}  // namespace

std::string dxf(const Sheet& sheet) {
  DxfText out;
  put_header(out, whole(sheet, 0));
  put_tables(out, sheet);
  put_blocks(out);
  out.section("ENTITIES");
  Entities entities(out, sheet);
  std::set<std::pair<std::size_t, std::vector<std::pair<long, long>>>> known;
  for (const Curve& curve : sheet.curves)
    if (known.emplace(curve.layer, trace(curve)).second) entities.put(curve);
  for (const Words& words : sheet.words) entities.put(words, sheet.layers[words.layer].name);
  out.end_section();
  put_objects(out);
  out.put(0, "EOF");
  return out.text();
}

}  // namespace visewright::outputs::papers
