#include "outputs/papers/pdf.h"

#include <cairo-ft.h>
#include <cairo-pdf.h>

#include <cmath>

#include "geometry/measure.h"
#include "outputs/papers/ink.h"
#include "outputs/papers/lettering.h"
#include "outputs/papers/svg.h"
#include "units/quantity.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Point;

constexpr double points_per_mm = 72 / 25.4;

cairo_status_t append(void* to, const unsigned char* bytes, unsigned int count) {
  static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(bytes), count);
  return CAIRO_STATUS_SUCCESS;
}

struct Free {
  void operator()(cairo_surface_t* s) const { cairo_surface_destroy(s); }
  void operator()(cairo_t* c) const { cairo_destroy(c); }
  void operator()(cairo_font_face_t* f) const { cairo_font_face_destroy(f); }
};

/// A cairo context whose unit is the millimetre, y down from the top of the page.
class Canvas {
 public:
  Canvas(cairo_t* to, const Page& page, const Correction& correction)
      : c_(to), height_(page.size.height_mm), correction_(correction) {}

  void draw(const Pane& pane) {
    pane_ = &pane;
    cairo_save(c_);
    const Point low = on_page(pane.window.low), high = on_page(pane.window.high);
    cairo_rectangle(c_, low.x, high.y, high.x - low.x, low.y - high.y);
    cairo_clip(c_);
    for (std::size_t i = 0; i < pane.sheet->layers.size(); ++i) draw_layer(i);
    cairo_restore(c_);
  }

 private:
  Point on_page(Point p) const {
    const Point from_low = p - pane_->window.low;
    return {pane_->at.x + correction_.across * from_low.x, height_ - pane_->at.y - correction_.up * from_low.y};
  }

  void draw_layer(std::size_t layer) {
    const Ink with = ink(pane_->sheet->layers[layer].pen);
    const auto& [red, green, blue] = with.red_green_blue;
    cairo_set_source_rgb(c_, red, green, blue);
    cairo_set_line_width(c_, with.width_mm);
    cairo_set_dash(c_, with.dashes_mm.data(), static_cast<int>(with.dashes_mm.size()), 0);
    for (const Curve& curve : pane_->sheet->curves)
      if (curve.layer == layer) stroke(curve);
    for (const Words& words : pane_->sheet->words)
      if (words.layer == layer) write(words);
  }

  void stroke(const Curve& curve) {
    cairo_new_path(c_);
    const Point start = on_page(geometry::start(curve.edges.front()));
    cairo_move_to(c_, start.x, start.y);
    for (const geometry::Edge& edge : curve.edges) follow(edge);
    if (curve.closed) cairo_close_path(c_);
    cairo_stroke(c_);
  }

  void follow(const geometry::Edge& edge) {
    if (const auto* arc = std::get_if<geometry::Arc>(&edge)) return follow(*arc);
    if (const auto* line = std::get_if<geometry::Line>(&edge)) return to(line->b);
    const std::vector<Point> points = geometry::sample(edge, chord_error_mm).points;
    for (std::size_t i = 1; i < points.size(); ++i) to(points[i]);
  }
  void to(Point sheet_point) {
    const Point p = on_page(sheet_point);
    cairo_line_to(c_, p.x, p.y);
  }
  void follow(const geometry::Arc& arc) {
    const Point from = arc.a - arc.centre;
    const double start = std::atan2(from.y, from.x), sweep = geometry::swept_rad(arc);
    const Point centre = on_page(arc.centre);
    cairo_save(c_);
    cairo_translate(c_, centre.x, centre.y);
    cairo_scale(c_, correction_.across, -correction_.up);
    const double r = geometry::length(from);
    if (sweep > 0) cairo_arc(c_, 0, 0, r, start, start + sweep);
    else cairo_arc_negative(c_, 0, 0, r, start, start + sweep);
    cairo_restore(c_);
  }

  void write(const Words& words) {
    const double width = width_mm(words.text, words.height_mm);
    const Point at = on_page(words.at);
    cairo_save(c_);
    cairo_translate(c_, at.x, at.y);
    cairo_rotate(c_, -words.turn_rad);
    cairo_set_font_size(c_, words.height_mm);
    cairo_move_to(c_, words.anchor == Anchor::left ? 0 : words.anchor == Anchor::middle ? -width / 2 : -width, 0);
    cairo_show_text(c_, words.text.c_str());
    cairo_restore(c_);
  }

  cairo_t* c_;
  double height_;
  Correction correction_;
  const Pane* pane_ = nullptr;
};

void put_head(cairo_surface_t* surface, const PdfHead& head) {
  cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_5);
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, head.title.c_str());
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, head.author.c_str());
  // Without it the clock goes into the file.
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, (head.time + "Z").c_str());
}

}  // namespace

base::Result<std::string> pdf(const std::vector<Page>& pages, const PdfHead& head, const Correction& correction) {
  const auto letters = font();
  if (!letters) return base::passed_on(letters.error());
  std::string bytes;
  const std::unique_ptr<cairo_surface_t, Free> surface(cairo_pdf_surface_create_for_stream(append, &bytes, 10, 10));
  put_head(surface.get(), head);
  const std::unique_ptr<cairo_font_face_t, Free> face(cairo_ft_font_face_create_for_ft_face(*letters, 0));
  for (const Page& page : pages) {
    cairo_pdf_surface_set_size(surface.get(), page.size.width_mm * points_per_mm, page.size.height_mm * points_per_mm);
    const std::unique_ptr<cairo_t, Free> context(cairo_create(surface.get()));
    cairo_scale(context.get(), points_per_mm, points_per_mm);
    cairo_set_font_face(context.get(), face.get());
    Canvas canvas(context.get(), page, correction);
    for (const Pane& pane : page.panes) canvas.draw(pane);
    cairo_show_page(context.get());
  }
  cairo_surface_finish(surface.get());
  if (const cairo_status_t status = cairo_surface_status(surface.get()); status != CAIRO_STATUS_SUCCESS)
    return base::fault(base::Cause::own_mistake, head.title, cairo_status_to_string(status), "a report of this");
  return bytes;
}

}  // namespace visewright::outputs::papers
