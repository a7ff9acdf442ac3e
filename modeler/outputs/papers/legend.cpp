#include "outputs/papers/legend.h"

#include "outputs/papers/lettering.h"

namespace visewright::outputs::papers {

Sheet with_legend(Sheet sheet) {
  constexpr double height_mm = 3.5, step_mm = 5.5, least_room_mm = 170;
  const std::size_t on = sheet.layer("READ-ONLY", Pen::read_only, "for reading; nothing is cut along it");
  const geometry::Box all = whole(sheet, 0);
  std::vector<std::string> lines{sheet.title, "Units: millimetres, full size (1:1)."};
  lines.insert(lines.end(), sheet.remarks.begin(), sheet.remarks.end());
  for (const Layer& layer : sheet.layers) lines.push_back(layer.name + ": " + layer.meaning);
  const double room = std::max(least_room_mm, all.high.x - all.low.x);
  geometry::Point at{all.low.x, all.low.y - 4};
  for (const std::string& text : lines)
    for (const std::string& line : folded(text, height_mm, room)) {
      at.y -= step_mm;
      sheet.write(on, at, line, height_mm);
    }
  return sheet;
}

geometry::Box whole(const Sheet& sheet, double margin_mm) {
  geometry::Box all = box(sheet);
  for (const Words& words : sheet.words) all = around(all, box(words));
  const geometry::Point margin{margin_mm, margin_mm};
  return {all.low - margin, all.high + margin};
}

}  // namespace visewright::outputs::papers
