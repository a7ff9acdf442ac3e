#include "outputs/papers/drawing_page.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "outputs/data/notice.h"
#include "outputs/papers/lettering.h"
#include "outputs/papers/view.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Point;

constexpr double filing_margin_mm = 20, margin_mm = 10;  // ISO 5457
constexpr double block_width_mm = 170, block_height_mm = 30, line_height_mm = 3.6;

std::string cut_short(std::string text, double height_mm, double room_mm) {
  if (width_mm(text, height_mm) <= room_mm) return text;
  while (!text.empty() && width_mm(text + " …", height_mm) > room_mm) {
    do text.pop_back();
    while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0) == 0x80);
    if (!text.empty() && static_cast<unsigned char>(text.back()) >= 0xC0) text.pop_back();
  }
  return text + " …";
}

}  // namespace

double drawing_scale(Point size, Point room) {
  static constexpr std::array<double, 10> series{1, 0.5, 0.4, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002};
  for (const double scale : series)
    if (scale * size.x <= room.x && scale * size.y <= room.y) return scale;
  return series.back();
}

std::string scale_words(double scale) { return "1:" + units::write_number(1 / scale, 1); }

DrawingPage::DrawingPage(const Facts& facts, Paper paper) : visible(0), hidden(0), centre(0), thin(0), hatch(0), facts_(facts), size_(size_of(paper).on_its_side()) {
  const DrawingLayers on(sheet);
  visible = on.visible, hidden = on.hidden, centre = on.centre, thin = on.thin, hatch = on.hatch;
  const Box border{{filing_margin_mm, margin_mm}, {size_.width_mm - margin_mm, size_.height_mm - margin_mm}};
  sheet.outline(visible, geometry::rectangle(border.low, border.high));
  room_ = {border.low + Point{4, 4}, border.high - Point{4, 4}};
}

void DrawingPage::put(const Sheet& view, double scale, Point origin, const std::string& caption) {
  if (view.curves.empty()) return;
  sheet.add(view, scale, origin);
  const Box b = box(view);
  double lowest = scale * b.low.y + origin.y;
  for (const Words& words : view.words) {
    Words here = words;
    here.at = scale * words.at + origin;
    lowest = std::min(lowest, box(here).low.y);
  }
  sheet.write(thin, {scale * (b.low.x + b.high.x) / 2 + origin.x, lowest - 5}, caption, 3, Anchor::middle);
}

double DrawingPage::table(const std::vector<std::vector<std::string>>& rows, Point at, double lowest, std::size_t& left_out) {
  constexpr double height = 2.2, pad = 1.2;
  std::vector<double> widths(rows.front().size());
  for (const auto& row : rows)
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], width_mm(row[i], height) + 2 * pad);
  double y = at.y, right = at.x;
  for (const double w : widths) right += w;
  sheet.line(thin, at, {right, y});
  std::size_t shown = 0;
  for (const auto& row : rows) {
    if (y - line_height_mm < lowest) break;
    y -= line_height_mm;
    double x = at.x;
    for (std::size_t i = 0; i < row.size(); ++i) {
      sheet.write(thin, {x + pad, y + 1}, row[i], height);
      x += widths[i];
    }
    sheet.line(thin, {at.x, y}, {right, y});
    ++shown;
  }
  double x = at.x;
  sheet.line(thin, at, {at.x, y});
  for (const double w : widths) {
    x += w;
    sheet.line(thin, {x, at.y}, {x, y});
  }
  left_out = rows.size() - shown;
  return y;
}

void DrawingPage::write(Point at, const std::string& text, double height_mm, Anchor anchor) { sheet.write(thin, at, text, height_mm, anchor); }

/// First angle: seen from the left, the small end of the cone stands to the left of the circles.
void DrawingPage::add_symbol(Point at, Projection projection) {
  const bool first = projection == Projection::first_angle;
  const double circles = at.x + (first ? 14 : 3), cone = at.x + (first ? 0 : 9);
  sheet.circle(thin, {circles, at.y}, 3);
  sheet.circle(thin, {circles, at.y}, 1.5);
  const double a = first ? 3.0 : 1.5, b = first ? 1.5 : 3.0;  // half heights at the left and at the right
  sheet.line(thin, {cone, at.y - a}, {cone, at.y + a});
  sheet.line(thin, {cone + 8, at.y - b}, {cone + 8, at.y + b});
  sheet.line(thin, {cone, at.y + a}, {cone + 8, at.y + b});
  sheet.line(thin, {cone, at.y - a}, {cone + 8, at.y - b});
  sheet.line(centre, {at.x - 1, at.y}, {at.x + 18, at.y});
  sheet.line(centre, {circles, at.y - 4}, {circles, at.y + 4});
}

void DrawingPage::add_block(const TitleBlock& block, double scale) {
  const Point high{size_.width_mm - margin_mm, margin_mm + block_height_mm}, low{high.x - block_width_mm, margin_mm};
  sheet.outline(visible, geometry::rectangle(low, high));
  const auto field = [&](double x, double y, double width, const std::string& name, const std::string& text, double height = 2.5) {
    write({low.x + x + 1, low.y + y + 5.2}, name, 1.8);
    write({low.x + x + 1, low.y + y + 1.4}, cut_short(text, height, width - 2), height);
    sheet.outline(thin, geometry::rectangle({low.x + x, low.y + y}, {low.x + x + width, low.y + y + 7.5}));
  };
  const std::string date;  // left for the person to fill in
  field(0, 22.5, 100, "title", block.title, 3.5);
  field(100, 22.5, 20, "item", block.item);
  field(120, 22.5, 20, "number off", block.count);
  field(140, 22.5, 30, "sheet", std::to_string(block.page) + " of " + std::to_string(block.pages));
  field(0, 15, 70, "material", block.material);
  field(70, 15, 50, "finish", block.finish);
  field(120, 15, 20, "scale", scale == 0 ? "as shown" : scale_words(scale));
  field(140, 15, 30, "projection", "");
  field(0, 7.5, 100, "design", std::string(facts_.title) + ", visewright " + std::string(facts_.program_version));
  field(100, 7.5, 70, "general tolerances", "ISO 2768-1 c on wood, m on metal");
  field(0, 0, 60, "drawn by", date);
  field(60, 0, 50, "date", date);
  field(110, 0, 60, "approved", date);
}

Sheet DrawingPage::finished(const TitleBlock& block, double scale, Projection projection) && {
  add_block(block, scale);
  add_symbol({size_.width_mm - margin_mm - 19.5, margin_mm + 18.8}, projection);
  const std::string unit = facts_.show == units::LengthUnit::inch ? "Lengths in inches." : "Lengths in millimetres.";
  write({filing_margin_mm + 3, margin_mm + 3}, unit + " Do not scale from the drawing.", 2.2);
  if (const std::string notice = data::failing_notice(facts_.findings); !notice.empty())
    write({filing_margin_mm + 3, size_.height_mm - margin_mm + 2}, cut_short(notice, 3, size_.width_mm - 40), 3);
  sheet.title = block.title;
  sheet.layers[thin].meaning = "sizes and words";
  return std::move(sheet);
}

}  // namespace visewright::outputs::papers
