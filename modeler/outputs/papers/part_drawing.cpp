#include "outputs/papers/part_drawing.h"

#include <algorithm>
#include <cmath>

#include "outputs/data/items.h"
#include "outputs/data/stock_words.h"
#include "outputs/papers/gear_table.h"
#include "outputs/papers/hole_table.h"
#include "outputs/papers/labels.h"
#include "outputs/papers/lettering.h"
#include "outputs/papers/view.h"
#include "outputs/papers/words.h"
#include "parts/faces.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Placement;
using geometry::Point;
using geometry::Vector;

constexpr double gap_mm = 22, ordinates_mm = 24, caption_mm = 10, step_mm = 3.1;

std::string caption(const Facts& facts, const Job& job, const Placement& eye) {
  const FaceJob face{&job, {"", eye}, {}, {}, 0};
  const std::string_view way = way_words(in_vise(facts.assembly, face).z_axis);
  if (way == "towards the person") return "as the person sees it";
  if (way == "into the bench") return "from behind, from the bench";
  if (way == "up") return "from above";
  if (way == "down") return "from below";
  if (way == "person's left") return "from the person's left";
  if (way == "person's right") return "from the person's right";
  return "square to the face";
}

/// The box of the part itself: centre lines reach beyond it.
Box edges_box(const Sheet& view) {
  Sheet edges = view;
  const std::size_t visible = DrawingLayers(edges).visible;
  std::erase_if(edges.curves, [&](const Curve& c) { return c.layer != visible; });
  return box(edges.curves.empty() ? view : edges);
}

Placement from_above(const Placement& m) { return {{0, 0, 0}, m.x_axis, m.y_axis()}; }
Placement from_left(const Placement& m) { return {{0, 0, 0}, m.z_axis, geometry::times(-1, m.x_axis)}; }

/// Distances from the datum at the ends of thin lines: along the top for x, along the right for y. Where they crowd they
/// move on, and the line slants.
void add_ordinates(DrawingPage& page, const std::vector<HoleRow>& rows, const Box& view, double scale, Point origin, units::LengthUnit show) {
  const auto along = [&](bool x) {
    std::vector<double> values{0, x ? view.low.x : view.low.y, x ? view.high.x : view.high.y};
    for (const HoleRow& row : rows) values.push_back(x ? row.at.x : row.at.y);
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end(), [](double a, double b) { return b - a < 1e-4; }), values.end());
    return values;
  };
  const double top = scale * view.high.y + origin.y, right = scale * view.high.x + origin.x;
  double free = -1e9;
  for (const double v : along(true)) {
    const double x = scale * v + origin.x, at = std::max(x, free);
    free = at + step_mm;
    page.sheet.line(page.thin, {x, top + 1}, {x, top + 3});
    page.sheet.line(page.thin, {x, top + 3}, {at, top + 6});
    page.sheet.write(page.thin, {at + 0.8, top + 7}, data::cell(v, show), 2.3, Anchor::left, units::pi / 2);
  }
  free = -1e9;
  for (const double v : along(false)) {
    const double y = scale * v + origin.y, at = std::max(y, free);
    free = at + step_mm;
    page.sheet.line(page.thin, {right + 1, y}, {right + 3, y});
    page.sheet.line(page.thin, {right + 3, y}, {right + 6, at});
    page.write({right + 7, at - 0.8}, data::cell(v, show), 2.3);
  }
}

void add_numbers(DrawingPage& page, const std::vector<HoleRow>& rows, double scale, Point origin) {
  std::vector<Label> labels;
  for (const HoleRow& row : rows) {
    const Point at = scale * row.at + origin;
    if (labels.empty() || geometry::distance(labels.back().at, at) > 1e-6) labels.push_back({at, 1.5, {std::to_string(row.number)}});
  }
  place(page.sheet, page.thin, labels, 2.4, page.room());
}

class PartDrawing {
 public:
  PartDrawing(const Facts& facts, const Job& job, Projection projection) : facts_(facts), job_(job), projection_(projection), faces_(faces(job)) {}

  std::vector<Sheet> pages() {
    const Placement main = main_frame();
    add_views(main);
    for (const FaceJob& face : faces_) {
      const bool shown = std::abs(geometry::dot(face.face.datum.z_axis, main.z_axis)) > 0.999;
      if (!shown) add_face(face);
    }
    add_tables();
    std::vector<Sheet> done;
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      TitleBlock block = title_block();
      block.page = static_cast<int>(i) + 1, block.pages = static_cast<int>(pages_.size());
      done.push_back(std::move(pages_[i]).finished(block, scales_[i], projection_));
    }
    return done;
  }

 private:
  TitleBlock title_block() const {
    TitleBlock block;
    block.title = job_.name;
    for (const data::Item& item : data::items(facts_.assembly))
      if (item.part != nullptr && item.part->name == job_.name) block.item = item.number, block.count = std::to_string(item.count);
    if (job_.piece != nullptr) {
      const data::StockWords stock = data::stock_words(job_.piece->stock);
      block.material = stock.material + (stock.size_mm.empty() ? "" : ", " + data::size_cell(stock, facts_.show));
    } else {
      block.material = "built up, see its members";
    }
    for (const parts::Operation& operation : job_.operations)
      if (const auto* treat = std::get_if<parts::Treat>(&operation.work)) block.finish += (block.finish.empty() ? "" : ", ") + treat->how;
    if (block.finish.empty()) block.finish = "as worked, sharp edges off";
    return block;
  }

  /// The first worked face, of wholes the front; turned things lie with their axis along the page.
  Placement main_frame() const {
    const bool turned = std::any_of(job_.operations.begin(), job_.operations.end(), [](const parts::Operation& o) { return std::holds_alternative<parts::Turn>(o.work); });
    if (turned) return {{0, 0, 0}, {0, 0, 1}, {0, 1, 0}};
    return faces_.empty() || job_.piece == nullptr ? Placement{} : faces_.front().face.datum;
  }

  /// Rows of the faces parallel to the main view, in its coordinates; numbers as in the table.
  std::vector<HoleRow> main_rows(const Placement& main) const {
    std::vector<HoleRow> rows;
    int next = 1;
    for (const FaceJob& face : faces_) {
      std::vector<HoleRow> some = hole_rows(facts_, face, next);
      if (!some.empty()) next = some.back().number + 1;
      if (std::abs(geometry::dot(face.face.datum.z_axis, main.z_axis)) < 0.999) continue;
      for (HoleRow& row : some) {
        row.at = parts::on({"", main}, geometry::to_outside(face.face.datum, {row.at.x, row.at.y, 0}));
        rows.push_back(std::move(row));
      }
    }
    return rows;
  }

  void add_views(const Placement& main) {
    Sheet front = view(job_, main);
    if (const double pitch = reference_diameter_mm(facts_, *job_.of); pitch > 0) front.circle(DrawingLayers(front).centre, {0, 0}, pitch / 2);
    const Sheet above = view(job_, from_above(main)), left = view(job_, from_left(main));
    if (front.curves.empty() || above.curves.empty() || left.curves.empty()) return;
    const Box f = edges_box(front), a = edges_box(above), l = edges_box(left);
    const Point size{f.high.x - f.low.x + (l.high.x - l.low.x), f.high.y - f.low.y + (a.high.y - a.low.y)};
    double scale = 0;
    Paper paper = Paper::a4;
    for (const Paper each : {Paper::a4, Paper::a3}) {
      const DrawingPage page(facts_, each);
      const Point room = page.room().high - page.room().low - Point{gap_mm + 2 * ordinates_mm, gap_mm + ordinates_mm + 2 * caption_mm + 30};
      paper = each, scale = drawing_scale(size, room);
      if (scale >= 0.5) break;
    }
    DrawingPage page(facts_, paper);
    const bool first = projection_ == Projection::first_angle;
    const double width_left = scale * (l.high.x - l.low.x), height_above = scale * (a.high.y - a.low.y);
    // The main view stands at the top, or below the view from above in third angle.
    Point origin{page.room().low.x - scale * f.low.x + 4, page.room().high.y - ordinates_mm - scale * f.high.y};
    if (!first) origin = origin + Point{width_left + gap_mm, -(height_above + gap_mm)};
    page.put(front, scale, origin, caption(facts_, job_, main));
    const double below = scale * f.low.y + origin.y - caption_mm - gap_mm / 2 - scale * a.high.y;
    const double over = scale * f.high.y + origin.y + ordinates_mm + caption_mm - scale * a.low.y;
    page.put(above, scale, {origin.x, first ? below : over}, caption(facts_, job_, from_above(main)));
    const double beside = scale * f.high.x + origin.x + ordinates_mm + gap_mm / 2 - scale * l.low.x;
    const double before = scale * f.low.x + origin.x - gap_mm - scale * l.high.x;
    page.put(left, scale, {first ? beside : before, origin.y}, caption(facts_, job_, from_left(main)));
    const std::vector<HoleRow> rows = main_rows(main);
    add_ordinates(page, rows, f, scale, origin, facts_.show);
    add_numbers(page, rows, scale, origin);
    pages_.push_back(std::move(page));
    scales_.push_back(scale);
  }

  void add_face(const FaceJob& face) {
    const Sheet seen = view(job_, face.face.datum);
    if (seen.curves.empty()) return;
    const Box b = edges_box(seen);
    Paper paper = Paper::a4;
    double scale = 0;
    for (const Paper each : {Paper::a4, Paper::a3}) {
      const DrawingPage page(facts_, each);
      paper = each, scale = drawing_scale(b.high - b.low, page.room().high - page.room().low - Point{2 * ordinates_mm, ordinates_mm + 60});
      if (scale >= 0.5) break;
    }
    DrawingPage page(facts_, paper);
    const Point origin{page.room().low.x + 4 - scale * b.low.x, page.room().high.y - ordinates_mm - scale * b.high.y};
    page.put(seen, scale, origin, caption(facts_, job_, face.face.datum));
    std::vector<HoleRow> rows;
    int next = 1;
    for (const FaceJob& each : faces_) {
      std::vector<HoleRow> some = hole_rows(facts_, each, next);
      if (!some.empty()) next = some.back().number + 1;
      if (&each == &face) rows = std::move(some);
    }
    add_ordinates(page, rows, b, scale, origin, facts_.show);
    add_numbers(page, rows, scale, origin);
    pages_.push_back(std::move(page));
    scales_.push_back(scale);
  }

  void add_tables() {
    std::vector<std::vector<std::string>> rows;
    int next = 1;
    for (const FaceJob& face : faces_) {
      const std::vector<HoleRow> some = hole_rows(facts_, face, next);
      if (some.empty()) continue;
      next = some.back().number + 1;
      auto words = as_words(some, facts_.show);
      words.front().front() = std::string(face.face.name);
      rows.insert(rows.end(), words.begin(), words.end());
    }
    std::vector<std::vector<std::string>> gear = gear_rows(facts_, *job_.of);
    std::vector<std::string> others;
    for (const parts::Operation& operation : job_.operations) {
      const bool drawn = std::holds_alternative<parts::Drill>(operation.work) || std::holds_alternative<parts::Rout>(operation.work) || std::holds_alternative<parts::CutOut>(operation.work);
      if (!drawn) others.push_back(operation.name);
    }
    while (!rows.empty() || !gear.empty() || !others.empty()) {
      DrawingPage page(facts_, Paper::a4);
      double y = page.room().high.y;
      std::size_t left_out = 0;
      if (!rows.empty()) {
        page.write({page.room().low.x, y - 3}, "Holes, from the datum of the face they are entered from (x to the right, y up, as one looks at it)", 3);
        y = page.table(rows, {page.room().low.x, y - 6}, 46, left_out) - 8;
        rows.erase(rows.begin(), rows.end() - static_cast<std::ptrdiff_t>(left_out));
      }
      if (rows.empty() && !gear.empty() && y > 46 + 3.6 * static_cast<double>(gear.size())) {
        page.write({page.room().low.x, y - 3}, "Gear data", 3);
        y = page.table(gear, {page.room().low.x, y - 6}, 46, left_out) - 8;
        gear.clear();
      }
      if (rows.empty() && gear.empty() && !others.empty()) {
        std::string text = "Other work: ";
        for (const std::string& each : others) text += (&each == &others.front() ? "" : "; ") + each;
        for (const std::string& line : folded(text + ".", 2.5, page.room().high.x - page.room().low.x)) page.write({page.room().low.x, y - 3}, line), y -= 4;
        others.clear();
      }
      pages_.push_back(std::move(page));
      scales_.push_back(0);
    }
  }

  const Facts& facts_;
  const Job& job_;
  Projection projection_;
  std::vector<FaceJob> faces_;
  std::vector<DrawingPage> pages_;
  std::vector<double> scales_;
};

}  // namespace

std::vector<Sheet> part_drawing(const Facts& facts, const Job& job, Projection projection) { return PartDrawing(facts, job, projection).pages(); }

}  // namespace visewright::outputs::papers
