#include "outputs/papers/check_bars.h"

#include <string>

#include "units/quantity.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Point;

struct Bar {
  int steps;
  double step_mm;
  int long_every;
  const char* text;
};

void add(Sheet& sheet, std::size_t layer, const Bar& bar, Point from, Point way) {
  const Point aside{-way.y, way.x};
  sheet.line(layer, from, from + bar.steps * bar.step_mm * way);
  for (int i = 0; i <= bar.steps; ++i) {
    const Point at = from + i * bar.step_mm * way;
    const double length = i == 0 || i == bar.steps ? 4 : i % bar.long_every == 0 ? 2.5 : 1.5;
    sheet.line(layer, at, at + length * aside);
  }
  const double turn = way.y > 0 ? units::pi / 2 : 0;
  const double middle = bar.steps * bar.step_mm / 2;
  sheet.write(layer, from + middle * way - 2.6 * aside, bar.text, 2.2, Anchor::middle, turn);
}

constexpr Bar metric{10, 10, 5, "100 mm"}, inch{16, 6.35, 4, "4 in"};

}  // namespace

void add_check_bars(Sheet& sheet, std::size_t layer, Point up, Point across) {
  add(sheet, layer, metric, up + Point{0, 0}, {0, 1});
  add(sheet, layer, inch, up + Point{8, 0}, {0, 1});
  add(sheet, layer, metric, across + Point{0, 7}, {1, 0});
  add(sheet, layer, inch, across, {1, 0});
}

}  // namespace visewright::outputs::papers
