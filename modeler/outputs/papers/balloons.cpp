#include "outputs/papers/balloons.h"

#include <algorithm>
#include <cmath>

#include "outputs/papers/lettering.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Point;

constexpr double radius_mm = 4.2, step_mm = 9.4, off_mm = 12;

void add_row(Sheet& sheet, std::size_t layer, std::vector<Balloon> row, const geometry::Box& around, double y) {
  if (row.empty()) return;
  std::sort(row.begin(), row.end(), [](const Balloon& a, const Balloon& b) { return a.at.x < b.at.x; });
  // Forward so that they stand apart, then back as far as they stick out at the end.
  std::vector<double> xs;
  for (const Balloon& each : row) xs.push_back(xs.empty() ? each.at.x : std::max(each.at.x, xs.back() + step_mm));
  double most = around.high.x + 20;
  for (std::size_t i = xs.size(); i-- > 0;) {
    xs[i] = std::min(xs[i], most);
    most = xs[i] - step_mm;
  }
  for (std::size_t i = 0; i < row.size(); ++i) {
    const Point centre{xs[i], y}, to = row[i].at;
    const Point way = (1 / geometry::distance(centre, to)) * (to - centre);
    sheet.circle(layer, centre, radius_mm);
    sheet.line(layer, centre + radius_mm * way, to);
    sheet.circle(layer, to, 0.4);
    sheet.write(layer, centre - Point{0, 0.9}, row[i].text, width_mm(row[i].text, 3) > 7 ? 2.3 : 3, Anchor::middle);
  }
}

}  // namespace

void add_balloons(Sheet& sheet, std::size_t layer, const std::vector<Balloon>& balloons, const geometry::Box& around) {
  std::vector<Balloon> above, below;
  const double middle = (around.low.y + around.high.y) / 2;
  for (const Balloon& each : balloons) (each.at.y >= middle ? above : below).push_back(each);
  // A row holds as many as fit; the rest goes to the other side.
  const auto room = static_cast<std::size_t>((around.high.x - around.low.x + 30) / step_mm);
  const auto level = [&](std::vector<Balloon>& from, std::vector<Balloon>& to) {
    while (from.size() > room && to.size() < room) {
      to.push_back(from.back());
      from.pop_back();
    }
  };
  level(above, below);
  level(below, above);
  add_row(sheet, layer, above, around, around.high.y + off_mm);
  add_row(sheet, layer, below, around, around.low.y - off_mm);
}

Point point_inside(const Region& region) {
  geometry::Line widest{};
  for (const double step : {3.0, 0.7})
    for (const geometry::Line& line : hatching(region, step, 0)) {
      if (geometry::distance(line.a, line.b) > geometry::distance(widest.a, widest.b)) widest = line;
    }
  return 0.5 * (widest.a + widest.b);
}

}  // namespace visewright::outputs::papers
