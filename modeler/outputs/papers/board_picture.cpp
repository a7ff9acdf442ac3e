#include "outputs/papers/board_picture.h"

#include <algorithm>

#include "outputs/data/stock_words.h"
#include "outputs/papers/legend.h"
#include "outputs/papers/lettering.h"
#include "outputs/papers/svg.h"

namespace visewright::outputs::papers {

std::string board_picture(const Facts& facts, const making::CutStock& stock) {
  constexpr double picture_mm = 240, strip_mm = 12, letters_mm = 2.6;
  const double length = stock.size_mm.empty() ? 1 : stock.size_mm[0];
  const bool strip = stock.size_mm.size() < 2 || (!stock.pieces.empty() && stock.pieces.front().size_mm[1] <= 0);
  const double scale = picture_mm / length, width = strip ? strip_mm : scale * stock.size_mm[1];
  Sheet sheet;
  sheet.title = stock.kind + ", " + stock.material;
  const std::size_t edge = sheet.layer("EDGE", Pen::visible, "edges of the stock"), cut = sheet.layer("CUT", Pen::thin, "pieces");
  sheet.outline(edge, geometry::rectangle({0, 0}, {picture_mm, width}));
  std::vector<std::string> outside;
  for (std::size_t i = 0; i < stock.pieces.size(); ++i) {
    const making::CutPiece& p = stock.pieces[i];
    const geometry::Point low{scale * p.at_mm[0], strip ? 0 : scale * p.at_mm[1]},
        size{scale * p.size_mm[0], strip ? width : scale * p.size_mm[1]};
    sheet.outline(cut, geometry::rectangle(low, low + size));
    std::string words = p.part + ", " + data::cell(p.size_mm[0], facts.show);
    if (!strip) words += " × " + data::cell(p.size_mm[1], facts.show);
    const geometry::Point middle = low + 0.5 * size - geometry::Point{0, 0.9};
    const bool fits = width_mm(words, letters_mm) < size.x - 1 && size.y > 1.5 * letters_mm;
    // Too small for its words: a number, and the words below.
    const std::string number = std::to_string(i + 1);
    sheet.write(cut, middle, fits ? words : number, std::min(letters_mm, 0.9 * std::max(size.y, 1.5)), Anchor::middle);
    if (!fits) outside.push_back(number + ": " + words);
  }
  double y = -6;
  const auto below = [&](const std::string& text) {
    for (const std::string& line : folded(text, letters_mm, picture_mm)) sheet.write(cut, {0, y}, line, letters_mm), y -= 4;
  };
  std::string all;
  for (const std::string& each : outside) all += (all.empty() ? "" : "; ") + each;
  below(all);
  return svg(sheet, whole(sheet, 4));
}

}  // namespace visewright::outputs::papers
