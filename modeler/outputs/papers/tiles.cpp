#include "outputs/papers/tiles.h"

#include <algorithm>
#include <cmath>

#include "outputs/papers/check_bars.h"
#include "outputs/papers/lettering.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Point;

constexpr double margin_mm = 8, head_mm = 10;
constexpr double breathing_mm = 6;  // round what is drawn

/// How much of a sheet goes on a page, in the sheet's millimetres.
Point room(PaperSize page, const Correction& correction) {
  return {(page.width_mm - window_on_page.x - margin_mm) / correction.across,
          (page.height_mm - window_on_page.y - margin_mm - head_mm) / correction.up};
}

int pieces(double length, double room_mm) {
  return length <= room_mm ? 1 : static_cast<int>(std::ceil((length - overlap_mm) / (room_mm - overlap_mm) - 1e-9));
}

/// Crosses amid the bands that neighbours share, a third and two thirds along each tile.
void add_match_marks(Sheet& sheet, const Tiling& tiles) {
  const std::size_t on = sheet.layer("MATCH", Pen::thin, "marks to lay neighbouring tiles on each other");
  const auto mark = [&](Point at, const std::string& name) {
    sheet.cross(on, at, 6);
    sheet.circle(on, at, 2);
    sheet.write(on, at + Point{-7.2, 2.8}, name, 2.2);
  };
  for (int column = 0; column < tiles.columns; ++column) {
    for (int row = 0; row < tiles.rows; ++row) {
      const Box w = tiles.window(column, row);
      const Point size = w.high - w.low;
      const std::string here = Tiling::name(column, row);
      for (const double share : {1.0 / 3, 2.0 / 3}) {
        if (column + 1 < tiles.columns)
          mark({w.high.x - overlap_mm / 2, w.low.y + share * size.y}, here + Tiling::name(column + 1, row));
        if (row + 1 < tiles.rows)
          mark({w.low.x + share * size.x, w.low.y + overlap_mm / 2}, here + Tiling::name(column, row + 1));
      }
    }
  }
}

/// Furniture of a page, in the page's millimetres; what stands at (x, y) is drawn there whatever the correction is.
class Furniture {
 public:
  Furniture(PaperSize page, const Correction& correction, const PageWords& words)
      : page_(page), correction_(correction), words_(words) {
    on_ = sheet_.layer("PAGE", Pen::thin, "");
    add_check_bars(sheet_, on_, at({margin_mm + 2, window_on_page.y}), at({window_on_page.x, margin_mm + 2}));
    write({window_on_page.x, 27}, words.notice.empty() ? words.title : words.title + ". " + words.notice, 3);
    write({window_on_page.x, 22.8},
          "Print at 100 % (no fitting to the page). Measure the bars both ways before cutting.", 2.5);
  }

  Point at(Point p) const { return {p.x / correction_.across, p.y / correction_.up}; }
  void write(Point p, const std::string& text, double height, Anchor anchor = Anchor::left) {
    sheet_.write(on_, at(p), text, height, anchor);
  }
  void frame(Point low, Point high) { sheet_.outline(on_, geometry::rectangle(at(low), at(high))); }
  Sheet& sheet() { return sheet_; }
  double top() const { return page_.height_mm - margin_mm; }
  double right() const { return page_.width_mm - margin_mm; }

  Pane pane() && {
    const Point far = at({page_.width_mm, page_.height_mm});
    write({right(), 27}, words_.foot, 2, Anchor::right);
    return {std::make_shared<const Sheet>(std::move(sheet_)), {{0, 0}, far}, {0, 0}};
  }

 private:
  PaperSize page_;
  Correction correction_;
  const PageWords& words_;
  Sheet sheet_;
  std::size_t on_ = 0;
};

/// A small picture of the sheet with the tiles on it, in a box of the page.
void add_map(Furniture& f, const Sheet& sheet, const Tiling& tiles, const Box& place) {
  Box all = tiles.window(0, 0);
  all = around(all, tiles.window(tiles.columns - 1, tiles.rows - 1));
  const Point size = all.high - all.low, room_mm = place.high - place.low;
  const double scale = std::min({room_mm.x / size.x, room_mm.y / size.y, 1.0});
  const Point shift = place.low - scale * all.low;
  Sheet picture = sheet;
  picture.words.clear();
  f.sheet().add(picture, scale, shift);
  const std::size_t on = f.sheet().layer("TILES", Pen::read_only, "");
  for (int column = 0; column < tiles.columns; ++column) {
    for (int row = 0; row < tiles.rows; ++row) {
      const Box w = tiles.window(column, row);
      const Point low = scale * w.low + shift, high = scale * w.high + shift;
      f.sheet().outline(on, geometry::rectangle(low, high));
      f.sheet().write(on, low + Point{1.2, 1.2}, Tiling::name(column, row), 3);
    }
  }
}

Page overview(const Sheet& sheet, const Tiling& tiles, const PageWords& words, const Correction& correction) {
  Furniture f(tiles.page, correction, words);
  double y = f.top() - 6;
  const double room_mm = f.right() - window_on_page.x;
  const auto lines = [&](const std::string& text, double height) {
    for (const std::string& line : folded(text, height, room_mm)) {
      f.write({window_on_page.x, y}, line, height);
      y -= 1.5 * height;
    }
  };
  lines(sheet.title, 5);
  if (!words.notice.empty()) lines(words.notice, 3.5);
  for (const std::string& remark : sheet.remarks) lines(remark, 3);
  y -= 2;
  for (const Layer& layer : sheet.layers)
    if (!layer.meaning.empty()) lines(layer.name + ": " + layer.meaning, 2.5);
  const int count = tiles.columns * tiles.rows;
  lines(count == 1 ? "One sheet of paper, A1." : std::to_string(count) + " sheets of paper; cut each along its frame and lay the match marks on each other. Dry glue does not stretch the paper.", 2.5);
  if (correction.across != 1 || correction.up != 1)
    lines("Drawn larger or smaller on purpose, for a printer that does not print to size: the bars must still measure 100 mm and 4 in on paper.", 2.5);
  add_map(f, sheet, tiles, {f.at({window_on_page.x, window_on_page.y + 4}), f.at({f.right(), std::max(y, 80.0)})});
  Page page{tiles.page, {}};
  page.panes.push_back(std::move(f).pane());
  return page;
}

Page tile(const std::shared_ptr<const Sheet>& sheet, const Tiling& tiles, int column, int row, const PageWords& words,
          const Correction& correction) {
  Furniture f(tiles.page, correction, words);
  const Box window = tiles.window(column, row);
  const Point far = window_on_page + Point{correction.across * (window.high.x - window.low.x),
                                           correction.up * (window.high.y - window.low.y)};
  f.frame(window_on_page, far);
  std::string text = "Tile " + Tiling::name(column, row);
  if (column > 0) text += ", left of it " + Tiling::name(column - 1, row);
  if (column + 1 < tiles.columns) text += ", right of it " + Tiling::name(column + 1, row);
  if (row > 0) text += ", above it " + Tiling::name(column, row - 1);
  if (row + 1 < tiles.rows) text += ", below it " + Tiling::name(column, row + 1);
  f.write({window_on_page.x, far.y + 3}, text, 3.5);
  Page page{tiles.page, {}};
  page.panes.push_back({sheet, window, window_on_page});
  page.panes.push_back(std::move(f).pane());
  return page;
}

}  // namespace

Box Tiling::window(int column, int row) const {
  const Point size = first.high - first.low;
  const Point by{column * (size.x - overlap_mm), -row * (size.y - overlap_mm)};
  return {first.low + by, first.high + by};
}

std::string Tiling::name(int column, int row) {
  std::string letters(1, static_cast<char>('A' + column % 26));
  if (column >= 26) letters.insert(letters.begin(), static_cast<char>('A' + column / 26 - 1));
  return letters + std::to_string(row + 1);
}

Tiling tiling(const Box& content, Paper paper, const Correction& correction) {
  const Point breathing{breathing_mm, breathing_mm};
  const Box all{content.low - breathing, content.high + breathing};
  const Point size = all.high - all.low;
  Tiling best;
  for (const PaperSize page : {size_of(paper), size_of(paper).on_its_side()}) {
    const Point window = room(page, correction);
    Tiling t{page, pieces(size.x, window.x), pieces(size.y, window.y), {}};
    // The spare is shared out evenly on both sides.
    const double spare_x = t.columns * (window.x - overlap_mm) + overlap_mm - size.x,
                 spare_y = t.rows * (window.y - overlap_mm) + overlap_mm - size.y;
    const Point high_left{all.low.x - spare_x / 2, all.high.y + spare_y / 2};
    t.first = {{high_left.x, high_left.y - window.y}, {high_left.x + window.x, high_left.y}};
    if (best.first.high == best.first.low || t.columns * t.rows < best.columns * best.rows) best = t;
  }
  return best;
}

std::vector<Page> full_size_pages(const Sheet& sheet, const PageWords& words, Paper paper, const Correction& correction) {
  Box content = box(sheet);
  for (const Words& each : sheet.words) content = around(content, box(each));
  const Tiling tiles = tiling(content, paper, correction);
  std::vector<Page> pages{overview(sheet, tiles, words, correction)};
  Sheet marked = sheet;
  add_match_marks(marked, tiles);
  const auto shared = std::make_shared<const Sheet>(std::move(marked));
  for (int row = 0; row < tiles.rows; ++row)
    for (int column = 0; column < tiles.columns; ++column)
      pages.push_back(tile(shared, tiles, column, row, words, correction));
  return pages;
}

}  // namespace visewright::outputs::papers
