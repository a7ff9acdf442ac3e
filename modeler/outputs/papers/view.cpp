#include "outputs/papers/view.h"

#include <algorithm>
#include <cmath>

#include "geometry/joined.h"
#include "geometry/measure.h"
#include "outputs/papers/region.h"
#include "outputs/papers/section.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Line;
using geometry::Placement;
using geometry::Point;
using geometry::Vector;

constexpr double beyond_mm = 3;

Point flat(const Vector& v) { return {v[0], v[1]}; }

/// The convex outline of points.
std::vector<Point> hull(std::vector<Point> p) {
  std::sort(p.begin(), p.end(), [](Point a, Point b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  std::vector<Point> h;
  for (int pass = 0; pass < 2; ++pass) {
    const std::size_t base = h.size();
    for (const Point q : p) {
      while (h.size() >= base + 2 && cross(h.back() - h[h.size() - 2], q - h.back()) <= 1e-9) h.pop_back();
      h.push_back(q);
    }
    h.pop_back();
    std::reverse(p.begin(), p.end());
  }
  return h;
}

/// What of a polygon lies behind a plane whose normal is n.
std::vector<Point> clipped(const std::vector<Point>& polygon, Point n, double most) {
  std::vector<Point> kept;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
    const double sa = dot(n, a) - most, sb = dot(n, b) - most;
    if (sa <= 1e-9) kept.push_back(a);
    if ((sa > 1e-9 && sb < -1e-9) || (sa < -1e-9 && sb > 1e-9)) kept.push_back(a + (sa / (sa - sb)) * (b - a));
  }
  return kept;
}

class View {
 public:
  View(const Job& job, const Placement& eye) : job_(job), to_eye_(geometry::inverse(eye)), on_(sheet_) {}

  Sheet made() {
    const bool turned = std::any_of(job_.operations.begin(), job_.operations.end(), [](const parts::Operation& o) { return std::holds_alternative<parts::Turn>(o.work); });
    if (turned && std::abs(to_eye_.z_axis[2]) < 1e-9) draw_turned();
    else draw_stock();
    for (const auto& [face, feature] : features(job_)) draw(face, feature);
    draw_cut_outs();
    return std::move(sheet_);
  }

 private:
  std::vector<Point> corners(const parts::Shape& shape) const {
    std::vector<Point> points;
    const parts::Shape here = parts::placed(shape, to_eye_);
    if (const auto* prism = std::get_if<parts::Prism>(&here)) {
      for (const geometry::Loop& loop : prism->profile.outer)
        for (const Point p : geometry::sample(loop, 0.05).points)
          for (const double z : {prism->from_mm, prism->to_mm}) points.push_back(flat(geometry::to_outside(prism->frame, {p.x, p.y, z})));
    } else {
      const parts::Extent e = parts::extent(std::span(&here, 1));
      for (const double x : {e.low_mm[0], e.high_mm[0]})
        for (const double y : {e.low_mm[1], e.high_mm[1]}) points.push_back({x, y});
    }
    return hull(points);
  }

  bool has_outline() const {
    const auto all = features(job_);
    return std::any_of(all.begin(), all.end(), [&](const auto& f) {
      return f.second.kind == Feature::Kind::outline && std::abs(geometry::dot(to_eye(f.first).z_axis, {0, 0, 1})) > 0.999;
    });
  }

  void draw_stock() {
    if (has_outline()) return;
    draw_pieces(*job_.of, {});
  }
  void draw_pieces(const parts::Part& part, const Placement& at) {
    if (const auto* built = std::get_if<parts::BuiltUp>(&part.made)) {
      const std::size_t before = saws_.size();
      for (const parts::Operation& operation : built->after)
        if (const auto* saw = std::get_if<parts::SawFlat>(&operation.work)) saws_.push_back(geometry::combined(at, saw->plane));
      for (const parts::Member& member : built->members) draw_pieces(*member.part, geometry::combined(at, member.at));
      for (const parts::Joint& joint : built->joints)
        for (const parts::Bead& bead : joint.beads) draw_shape(parts::placed(bead.shape, at));
      saws_.resize(before);
      return;
    }
    const auto& piece = std::get<parts::Piece>(part.made);
    for (const parts::Shape& shape : parts::blank(piece.stock).added) draw_shape(parts::placed(shape, at));
    for (const parts::Operation& operation : piece.operations)
      if (const auto* print = std::get_if<parts::Print>(&operation.work); print != nullptr && !print->layers.empty())
        draw_shape(parts::placed(parts::Prism{print->layers.front().profile, {}, print->layers.front().from_mm, print->layers.back().to_mm}, at));
  }

  void draw_shape(const parts::Shape& shape) {
    const parts::Shape here = parts::placed(shape, to_eye_);
    const auto* prism = std::get_if<parts::Prism>(&here);
    if (prism != nullptr && std::abs(prism->frame.z_axis[2]) > 0.999 && round(*prism)) {
      const auto& arc = std::get<geometry::Arc>(prism->profile.outer.front().edges().front());
      const Point centre = flat(geometry::to_outside(prism->frame, {arc.centre.x, arc.centre.y, 0}));
      return circle(on_.visible, centre, geometry::distance(arc.a, arc.centre));
    }
    if (const auto* body = std::get_if<parts::Revolved>(&here); body != nullptr) return draw_revolved(*body);
    std::vector<Point> polygon = corners(shape);
    for (const Placement& saw : saws_) polygon = sawn(polygon, saw);
    if (polygon.size() < 3) return;
    const std::size_t on = behind_another(here) ? on_.hidden : on_.visible;
    for (std::size_t i = 0; i < polygon.size(); ++i) sheet_.line(on, polygon[i], polygon[(i + 1) % polygon.size()]);
  }
  /// Whether a piece of stock stands before all of a shape.
  bool behind_another(const parts::Shape& here) const {
    constexpr double slack_mm = 1e-6;
    const parts::Extent e = parts::extent(std::span(&here, 1));
    return std::any_of(job_.blanks.begin(), job_.blanks.end(), [&](const Blank& blank) {
      const Vector a = geometry::to_outside(to_eye_, blank.extent.low_mm), b = geometry::to_outside(to_eye_, blank.extent.high_mm);
      bool covers = std::min(a[2], b[2]) > e.high_mm[2] - slack_mm;
      for (const std::size_t i : {0u, 1u})
        covers = covers && std::min(a[i], b[i]) < e.low_mm[i] + slack_mm && std::max(a[i], b[i]) > e.high_mm[i] - slack_mm;
      return covers;
    });
  }
  static bool round(const parts::Prism& p) {
    const auto edges = p.profile.outer.front().edges();
    return edges.size() == 1 && std::holds_alternative<geometry::Arc>(edges.front());
  }
  void draw_revolved(const parts::Revolved& body) {
    if (std::abs(body.axis.z_axis[2]) < 0.999) return draw_region(revolved_region(body));
    std::vector<double> radii;
    for (const geometry::Loop& loop : body.half_section.outer)
      for (const geometry::Edge& e : loop.edges()) radii.push_back(geometry::start(e).x);
    std::sort(radii.begin(), radii.end());
    radii.erase(std::unique(radii.begin(), radii.end(), [](double a, double b) { return b - a < 1e-6; }), radii.end());
    for (const double r : radii)
      if (r > 1e-6) circle(on_.visible, flat(body.axis.origin_mm), r);
  }
  Region revolved_region(const parts::Revolved& body) const {
    const double angle = std::atan2(body.axis.z_axis[1], body.axis.z_axis[0]) - units::pi / 2;
    geometry::Profile mirror;
    for (const geometry::Loop& loop : body.half_section.outer) mirror.outer.push_back(geometry::mirrored(loop));
    const Point by = flat(body.axis.origin_mm);
    return {{geometry::moved(body.half_section, angle, by), geometry::moved(mirror, angle, by)}, {}};
  }
  void draw_region(const Region& region) {
    for (const geometry::Edge& e : bounds(region)) sheet_.edge(on_.visible, e);
  }

  /// The plane's own edge, and what it leaves of the polygon, when it is seen edge-on.
  std::vector<Point> sawn(const std::vector<Point>& polygon, const Placement& plane) {
    const Placement here = geometry::combined(to_eye_, plane);
    if (std::abs(here.z_axis[2]) < 1e-9) return clipped(polygon, flat(here.z_axis), geometry::dot(here.z_axis, here.origin_mm));
    // Seen from elsewhere: the line where the plane's x runs along the face it starts from.
    double low = 1e300, high = -1e300;
    for (const Point p : polygon) low = std::min(low, dot(p, flat(here.x_axis))), high = std::max(high, dot(p, flat(here.x_axis)));
    const Point way = flat(here.x_axis), foot = flat(here.origin_mm) - dot(flat(here.origin_mm), way) * way;
    const auto within = [&](Point p) {
      const Box b{polygon_low(polygon), polygon_high(polygon)};
      return p.y > b.low.y - 1e-6 && p.y < b.high.y + 1e-6;
    };
    if (geometry::length(way) > 0.999 && within(foot)) sheet_.line(here.z_axis[2] > 0 ? on_.visible : on_.hidden, foot + low * way, foot + high * way);
    return polygon;
  }
  static Point polygon_low(const std::vector<Point>& p) {
    Point low = p.front();
    for (const Point q : p) low = {std::min(low.x, q.x), std::min(low.y, q.y)};
    return low;
  }
  static Point polygon_high(const std::vector<Point>& p) {
    Point high = p.front();
    for (const Point q : p) high = {std::max(high.x, q.x), std::max(high.y, q.y)};
    return high;
  }

  /// The section through the axis is the outline of what is turned; holes across it are drawn apart.
  void draw_turned() {
    if (job_.piece == nullptr) return;
    const parts::Blank blank = parts::blank(job_.piece->stock);
    parts::Body body{job_.name, nullptr, job_.piece, blank.added, blank.removed, {}};
    const double reach = parts::extent(body.added).diagonal_mm();
    for (const parts::Operation& operation : job_.operations)
      if (std::holds_alternative<parts::Turn>(operation.work))
        for (parts::Shape& shape : parts::taken_away(operation, reach)) body.removed.push_back(std::move(shape));
    Placement plane = geometry::inverse(to_eye_);
    plane.origin_mm = {0, 0, 0};
    draw_region(section(body, {}, plane));
  }

  Placement to_eye(const parts::Face& face) const { return geometry::combined(to_eye_, face.datum); }

  void draw(const parts::Face& face, const Feature& f) {
    const Placement here = to_eye(face);
    const double towards = here.z_axis[2];
    if (std::abs(towards) > 0.999) {
      const parts::Face eye{"", geometry::inverse(to_eye_)};
      const Feature seen = seen_on(f, face, eye);
      const bool hidden = towards < 0 && f.depth.has_value();
      const bool behind = f.from_behind && f.depth.has_value() ? towards > 0 : hidden;
      if (f.kind == Feature::Kind::cut_out) cut_.insert(cut_.end(), seen.profile.outer.begin(), seen.profile.outer.end());
      else if (f.kind == Feature::Kind::outline && f.profile.outer.front().edges().size() > 60) draw_gear(seen);
      else for (const geometry::Loop& loop : seen.profile.outer) sheet_.outline(behind ? on_.hidden : on_.visible, loop);
      if (seen.diameter_mm) centre_lines(seen.centre, *seen.diameter_mm / 2);
      return;
    }
    // How far a hole runs in a bought casting the outline of its stock does not say.
    const bool casting = job_.piece != nullptr && std::holds_alternative<parts::Bought>(job_.piece->stock);
    if (std::abs(towards) < 1e-9 && f.kind != Feature::Kind::outline && !casting) edge_on(here, f);
  }
  /// ISO 2203: the tip circle as a visible line, teeth are not drawn.
  void draw_gear(const Feature& seen) {
    double tip = 0;
    for (const geometry::Edge& e : seen.profile.outer.front().edges()) tip = std::max(tip, geometry::distance(geometry::start(e), seen.centre));
    circle(on_.visible, seen.centre, tip);
  }
  void draw_cut_outs() {
    if (cut_.empty()) return;
    if (const auto all = geometry::joined(cut_)) cut_ = all->outer;
    for (const geometry::Loop& loop : cut_) sheet_.outline(on_.visible, loop);
  }

  /// Seen from its side a hole is a rectangle as deep as it is, inside the wood.
  void edge_on(const Placement& here, const Feature& f) {
    const Box b = geometry::box(f.profile.outer.front());
    const double depth = f.depth ? *f.depth : far_side(here);
    const auto at = [&](double x, double y, double z) { return flat(geometry::to_outside(here, {x, y, -z})); };
    std::vector<Point> points;
    for (const double x : {b.low.x, b.high.x})
      for (const double y : {b.low.y, b.high.y})
        for (const double z : {0.0, depth}) points.push_back(at(x, y, z));
    const std::vector<Point> h = hull(points);
    if (h.size() < 3) return;
    for (std::size_t i = 0; i < h.size(); ++i) sheet_.line(on_.hidden, h[i], h[(i + 1) % h.size()]);
    if (f.diameter_mm) {
      const Point a = at(f.centre.x, f.centre.y, -beyond_mm), c = at(f.centre.x, f.centre.y, depth + beyond_mm);
      sheet_.line(on_.centre, a, c);
    }
  }
  /// How far the stock reaches below a face.
  double far_side(const Placement& here) const {
    double far = 0;
    for (const Blank& blank : job_.blanks)
      for (const Vector& corner : {blank.extent.low_mm, blank.extent.high_mm})
        far = std::max(far, -geometry::to_inside(geometry::combined(geometry::inverse(to_eye_), here), corner)[2]);
    return far;
  }

  void circle(std::size_t layer, Point centre, double radius) {
    sheet_.circle(layer, centre, radius);
    centre_lines(centre, radius);
  }
  void centre_lines(Point centre, double radius) {
    for (const Point p : centred_)
      if (geometry::distance(p, centre) < 1e-6) return;
    centred_.push_back(centre);
    sheet_.cross(on_.centre, centre, radius + beyond_mm);
  }

  const Job& job_;
  Placement to_eye_;
  Sheet sheet_;
  DrawingLayers on_;
  std::vector<geometry::Loop> cut_;
  std::vector<Point> centred_;
  std::vector<Placement> saws_;  // of the wholes that the piece at hand belongs to
};

}  // namespace

DrawingLayers::DrawingLayers(Sheet& sheet)
    : visible(sheet.layer("VISIBLE", Pen::visible, "visible edges")),
      hidden(sheet.layer("HIDDEN", Pen::hidden, "hidden edges")),
      centre(sheet.layer("CENTRE", Pen::centre, "centre lines")),
      thin(sheet.layer("DIMENSION", Pen::thin, "sizes and words")),
      hatch(sheet.layer("HATCH", Pen::hatch, "cut surfaces")) {}

Sheet view(const Job& job, const Placement& eye) { return View(job, eye).made(); }

}  // namespace visewright::outputs::papers
