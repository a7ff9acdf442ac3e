#include "outputs/papers/hole_table.h"

#include <algorithm>

#include "outputs/data/stock_words.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {

std::vector<HoleRow> hole_rows(const Facts& facts, const FaceJob& face, int first) {
  std::vector<HoleRow> rows;
  for (const Feature& f : face.features) {
    const bool from_here = !f.from_behind;
    if (f.kind == Feature::Kind::outline || !from_here) continue;
    std::string size = size_words(f, face.thickness_mm, facts.show);
    if (!f.diameter_mm) {
      const geometry::Box b = geometry::box(f.profile.outer.front());
      size = length(b.high.x - b.low.x, facts.show) + " × " + length(b.high.y - b.low.y, facts.show) + ", " + size;
    }
    rows.push_back({0, f.centre, name_of(f, facts.plan), size, std::string(tool_words(f, facts.plan.workshop.owned)), std::string(face.face.name)});
  }
  std::stable_sort(rows.begin(), rows.end(), [](const HoleRow& a, const HoleRow& b) {
    return a.at.x < b.at.x - 1e-6 || (a.at.x < b.at.x + 1e-6 && a.at.y > b.at.y + 1e-6);
  });
  int number = first - 1;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const bool same = i > 0 && geometry::distance(rows[i].at, rows[i - 1].at) < 1e-6;
    rows[i].number = same ? number : ++number;
  }
  return rows;
}

std::vector<std::vector<std::string>> as_words(const std::vector<HoleRow>& rows, units::LengthUnit show) {
  const std::string unit(data::unit_word(show));
  std::vector<std::vector<std::string>> table{{"no.", "x, " + unit, "y, " + unit, "hole", "size and depth", "tool"}};
  for (const HoleRow& row : rows)
    table.push_back({std::to_string(row.number), data::cell(row.at.x, show), data::cell(row.at.y, show), row.name, row.size, row.tool});
  return table;
}

}  // namespace visewright::outputs::papers
