// A page of a drawing: border, title block, projection symbol, views to scale with their captions, tables.
#pragma once

#include <string>
#include <vector>

#include "outputs/facts.h"
#include "outputs/papers/paper.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// How views stand to each other: first angle has the view from above below the view from the front, third angle above.
enum class Projection : std::uint8_t { first_angle, third_angle };
inline constexpr Projection usual_projection = Projection::first_angle;

/// What the title block says.
struct TitleBlock {
  std::string title, item, material, finish, count;
  int page = 1, pages = 1;
};

/// The largest scale of ISO 5455, or 1:2.5 between them, at which `size` fits into `room`; 1 means full size.
[[nodiscard]] double drawing_scale(geometry::Point size_mm, geometry::Point room_mm);
[[nodiscard]] std::string scale_words(double scale);

/// An empty page with its border; coordinates are the page's millimetres from its low left corner.
class DrawingPage {
 public:
  DrawingPage(const Facts&, Paper);

  /// Where views and tables may stand.
  [[nodiscard]] geometry::Box room() const { return room_; }
  [[nodiscard]] PaperSize size() const { return size_; }
  /// A view drawn so that its origin comes to `origin`; its caption stands centred below its box.
  void put(const Sheet& view, double scale, geometry::Point origin, const std::string& caption);
  /// A table with its top left corner at `at`; the first row is its heading. Gives the y of its lower edge. Rows that
  /// would go below `lowest` are left out and counted in `left_out`.
  double table(const std::vector<std::vector<std::string>>& rows, geometry::Point at, double lowest, std::size_t& left_out);
  void write(geometry::Point at, const std::string& text, double height_mm = 2.5, Anchor = Anchor::left);
  /// The border, title block, symbol, notice: done last. `scale` 0: as shown under each view.
  [[nodiscard]] Sheet finished(const TitleBlock&, double scale, Projection) &&;

  Sheet sheet;
  std::size_t visible, hidden, centre, thin, hatch;

 private:
  void add_block(const TitleBlock&, double scale);
  void add_symbol(geometry::Point at, Projection);

  const Facts& facts_;
  PaperSize size_;
  geometry::Box room_;
};

}  // namespace visewright::outputs::papers
