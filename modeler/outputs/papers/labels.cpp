#include "outputs/papers/labels.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/measure.h"
#include "outputs/papers/lettering.h"
#include "units/quantity.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Point;

constexpr double line_step = 1.3, gap_mm = 0.6;

bool holds(const Box& b, Point p) { return p.x > b.low.x && p.x < b.high.x && p.y > b.low.y && p.y < b.high.y; }

/// Points about a millimetre apart on all curves, in order of x, to count what a box would cover.
class Ink {
 public:
  explicit Ink(const Sheet& sheet) {
    for (const Curve& curve : sheet.curves)
      for (const geometry::Edge& edge : curve.edges) add(edge);
    std::sort(points_.begin(), points_.end(), [](Point a, Point b) { return a.x < b.x; });
  }
  [[nodiscard]] int inside(const Box& b) const {
    const auto from = std::lower_bound(points_.begin(), points_.end(), b.low.x, [](Point p, double x) { return p.x < x; });
    int count = 0;
    for (auto p = from; p != points_.end() && p->x < b.high.x; ++p) count += p->y > b.low.y && p->y < b.high.y;
    return count;
  }

 private:
  void add(const geometry::Edge& edge) {
    const int steps = std::clamp(static_cast<int>(geometry::length_mm(edge) / 0.8), 1, 4000);
    for (int i = 0; i <= steps; ++i) points_.push_back(geometry::at(edge, static_cast<double>(i) / steps));
  }
  std::vector<Point> points_;
};

struct Spot {
  Box box;
  double cost = 1e300;
};

class Placer {
 public:
  Placer(Sheet& sheet, std::size_t layer, double height_mm, const Box& room)
      : sheet_(sheet), layer_(layer), height_(height_mm), room_(room), ink_(sheet) {
    for (const Words& words : sheet.words) taken_.push_back(box(words));
  }

  void put(const Label& label) {
    Point size{0, line_step * height_ * static_cast<double>(label.lines.size())};
    for (const std::string& line : label.lines) size.x = std::max(size.x, width_mm(line, height_));
    const Spot spot = best(label, size);
    double y = spot.box.high.y - 0.85 * height_;
    for (const std::string& line : label.lines) {
      sheet_.write(layer_, {spot.box.low.x, y}, line, height_);
      y -= line_step * height_;
    }
    taken_.push_back(spot.box);
    const Point near{std::clamp(label.at.x, spot.box.low.x, spot.box.high.x),
                     std::clamp(label.at.y, spot.box.low.y, spot.box.high.y)};
    const double far = geometry::distance(near, label.at);
    if (far > std::max(4.0, label.clear_mm + 2.5)) sheet_.line(layer_, label.at + (std::min(label.clear_mm, far - 1) / far) * (near - label.at), near);
  }

 private:
  Spot best(const Label& label, Point size) const {
    Spot best;
    for (const double distance : {1.5, 3.0, label.clear_mm + 1.2, label.clear_mm + 4, label.clear_mm + 8, label.clear_mm + 14,
                                  label.clear_mm + 22, label.clear_mm + 34, label.clear_mm + 50, label.clear_mm + 80}) {
      for (int i = 0; i < 24; ++i) {
        const double angle = units::pi / 4 + 2 * units::pi * i / 24;
        const Spot spot = tried(label, size, distance, angle);
        if (spot.cost + (i == 0 ? 0 : 0.3) < best.cost) best = spot;
      }
      if (best.cost < distance) break;  // nothing further out can be cheaper
    }
    return best;
  }

  Spot tried(const Label& label, Point size, double distance, double angle) const {
    // The corner or side of the box that looks at the point stands at the distance.
    const Point way = geometry::polar(1, angle), at = label.at + distance * way;
    const auto low = [](double w, double a, double length) { return w > 0.4 ? a : w < -0.4 ? a - length : a - length * (0.5 - w / 0.8); };
    Spot spot;
    spot.box.low = {low(way.x, at.x, size.x), low(way.y, at.y, size.y)};
    spot.box.high = spot.box.low + size;
    const Box grown{spot.box.low - Point{gap_mm, gap_mm}, spot.box.high + Point{gap_mm, gap_mm}};
    spot.cost = 0.35 * distance + 1.5 * ink_.inside(spot.box);
    for (const Box& other : taken_)
      if (geometry::overlap(grown, other)) spot.cost += 1e6;
    if (holds(grown, label.at)) spot.cost += 1e4;
    if (!holds(room_, spot.box.low) || !holds(room_, spot.box.high)) spot.cost += 200;
    return spot;
  }

  Sheet& sheet_;
  std::size_t layer_;
  double height_;
  Box room_;
  Ink ink_;
  std::vector<Box> taken_;
};

}  // namespace

void place(Sheet& sheet, std::size_t layer, const std::vector<Label>& labels, double height_mm, const Box& room) {
  if (labels.empty()) return;
  Placer placer(sheet, layer, height_mm, room);
  for (const Label& label : labels) placer.put(label);
}

}  // namespace visewright::outputs::papers
