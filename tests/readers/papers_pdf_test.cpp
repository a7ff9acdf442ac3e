// Templates as PDF and SVG, rendered by outside programs (poppler, librsvg) at ten pixels to the millimetre.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <regex>

#include "outputs/papers/legend.h"
#include "outputs/papers/template_sheet.h"
#include "outputs/papers/tiles.h"
#include "readers/papers_made.h"

namespace visewright::tests {
namespace {

using geometry::Point;
using outputs::papers::window_on_page;

constexpr double px = 10;  // to the millimetre
constexpr int dark = 160;

/// Rows count from the top.
int row_of(const Picture& p, double y_mm) { return static_cast<int>(std::lround(p.height - px * y_mm)); }

/// The length between the first and last end tick of the bars, mm: across 100, across 4 in, up 100, up 4 in. Only the
/// end ticks are 4 mm high, so they alone show 3.4 mm beside the bar.
std::array<double, 4> bars(const Picture& p) {
  const double left = window_on_page.x, low = window_on_page.y;
  const auto length = [](const std::vector<double>& runs) { return runs.size() < 2 ? 0 : (runs.back() - runs.front()) / px; };
  return {length(dark_runs(p, true, row_of(p, 17 + 3.4), static_cast<int>(px * (left - 2)), static_cast<int>(px * (left + 106)))),
          length(dark_runs(p, true, row_of(p, 10 + 3.4), static_cast<int>(px * (left - 2)), static_cast<int>(px * (left + 106)))),
          length(dark_runs(p, false, static_cast<int>(px * (10 - 3.4)), row_of(p, low + 106), row_of(p, low - 2))),
          length(dark_runs(p, false, static_cast<int>(px * (18 - 3.4)), row_of(p, low + 106), row_of(p, low - 2)))};
}

TEST(PapersPdfSlow, TheBarsAreTrueOnEveryPaper) {
  using outputs::Paper;
  const std::pair<Paper, std::pair<double, double>> papers[] = {{Paper::a4, {210, 297}}, {Paper::a3, {297, 420}}, {Paper::letter, {215.9, 279.4}}};
  for (const auto& [paper, size] : papers) {
    const Papers made(preset("small-instrument-bench"), {paper, {}});
    for (const int page : {1, 2}) {
      const Picture p = made.page("nut-bar-front.pdf", page);
      EXPECT_NEAR(p.width, px * size.first, 1.0);
      EXPECT_NEAR(p.height, px * size.second, 1.0);
      const auto [across, across_inch, up, up_inch] = bars(p);
      EXPECT_NEAR(across, 100, 0.1);
      EXPECT_NEAR(across_inch, 101.6, 0.1);
      EXPECT_NEAR(up, 100, 0.1);
      EXPECT_NEAR(up_inch, 101.6, 0.1);
    }
  }
}

TEST(PapersPdfSlow, ACorrectionStretchesWhatIsDrawn) {
  const Papers made(preset("small-instrument-bench"), {outputs::Paper::a4, {1.02, 0.99}});
  const auto [across, across_inch, up, up_inch] = bars(made.page("nut-bar-front.pdf", 2));
  EXPECT_NEAR(across, 102, 0.1);
  EXPECT_NEAR(across_inch, 1.02 * 101.6, 0.1);
  EXPECT_NEAR(up, 99, 0.1);
  EXPECT_NEAR(up_inch, 0.99 * 101.6, 0.1);
}

/// What a sheet's PDF must show: the content is the SVG's picture without its legend, so tiles are laid out again here
/// from the sheet itself.
struct Laid {
  outputs::papers::Tiling tiles;
  std::vector<Picture> pages;  // row by row
};

Laid laid(const Papers& made, const std::string& name, const geometry::Box& content) {
  Laid l{outputs::papers::tiling(content, outputs::Paper::a4, {}), {}};
  for (int i = 0; i < l.tiles.columns * l.tiles.rows; ++i) l.pages.push_back(made.page(name, i + 2));
  return l;
}

geometry::Box content_of(const outputs::Facts& facts, const std::string& title);

/// Finds the cross that stands nearest to where it must be, by the arms 3 to 4.5 mm off its middle.
Point cross_near(const Picture& p, Point expected_px) {
  const auto nearest = [](const std::vector<double>& runs, double to) {
    double best = -1;
    for (const double r : runs)
      if (best < 0 || std::abs(r - to) < std::abs(best - to)) best = r;
    return best;
  };
  const int reach = 8;
  const int x = static_cast<int>(std::lround(expected_px.x)), y = static_cast<int>(std::lround(expected_px.y));
  return {nearest(dark_runs(p, true, y - 38, x - reach, x + reach, 210), expected_px.x),
          nearest(dark_runs(p, false, x - 38, y - reach, y + reach, 210), expected_px.y)};
}

TEST(PapersPdfSlow, HolesFarApartStandRightAcrossTilesAndNeighboursAgree) {
  const Papers made(preset("joinery-bench"));
  const outputs::Facts facts = made.facts();
  const Laid l = laid(made, "front-jaw-backing-front.pdf", content_of(facts, "front jaw backing, front"));
  ASSERT_GE(l.tiles.columns, 4);
  int found = 0;
  std::vector<Point> read;
  for (const auto* pattern : {&made.plan().screws, &made.plan().axles})
    for (const layout::Hole& hole : pattern->holes) {
      for (int row = 0; row < l.tiles.rows; ++row)
        for (int column = 0; column < l.tiles.columns; ++column) {
          const geometry::Box w = l.tiles.window(column, row);
          const Point inside = hole.at - w.low;
          if (inside.x < 6 || inside.y < 6 || inside.x > w.high.x - w.low.x - 6 || inside.y > w.high.y - w.low.y - 6) continue;
          const Picture& p = l.pages[static_cast<std::size_t>(row * l.tiles.columns + column)];
          const Point expected{px * (window_on_page.x + inside.x), p.height - px * (window_on_page.y + inside.y)};
          const Point at = cross_near(p, expected);
          EXPECT_NEAR(at.x, expected.x, 1.0) << hole.name;
          EXPECT_NEAR(at.y, expected.y, 1.0) << hole.name;
          // Back to the sheet, as the tiles lie on their marks.
          read.push_back({w.low.x + at.x / px - window_on_page.x, w.low.y + (p.height - at.y) / px - window_on_page.y});
          ++found;
        }
    }
  EXPECT_GE(found, 7);
  const auto [least, most] = std::minmax_element(read.begin(), read.end(), [](Point a, Point b) { return a.x < b.x; });
  EXPECT_NEAR(most->x - least->x, made.plan().train.spacing.mm(), 0.1);

  // Two neighbours laid on their marks: the same grey in the band they share, but for the frame at its borders.
  const Picture &a = l.pages[0], &b = l.pages[1];
  const double width = l.tiles.first.high.x - l.tiles.first.low.x;
  const int band = static_cast<int>(px * outputs::papers::overlap_mm);
  const int from_a = static_cast<int>(std::lround(px * (window_on_page.x + width))) - band, from_b = static_cast<int>(px * window_on_page.x);
  int ink = 0, differ = 0;
  for (int y = row_of(a, window_on_page.y + (l.tiles.first.high.y - l.tiles.first.low.y) - 1); y < row_of(a, window_on_page.y + 1); ++y)
    for (int i = 6; i < band - 6; ++i) {
      ink += a.at(from_a + i, y) < dark;
      differ += std::abs(a.at(from_a + i, y) - b.at(from_b + i, y)) > 60;
    }
  EXPECT_GT(ink, 500) << "nothing to compare";
  EXPECT_EQ(differ, 0);
}

TEST(PapersPdfSlow, TheSvgShowsWhatThePdfShows) {
  const Papers made(preset("small-instrument-bench"));
  (void)said_by("xmllint --noout " + made.path("*.svg"));
  (void)said_by("rsvg-convert -f pdf -o " + made.path("svg.pdf") + " " + made.path("nut-bar-front.svg"));
  const Picture from_svg = made.page("svg.pdf", 1), from_pdf = made.page("nut-bar-front.pdf", 2);
  std::smatch box;
  const std::string& svg = made.bytes("nut-bar-front.svg");
  ASSERT_TRUE(std::regex_search(svg, box, std::regex("viewBox=\"(-?[0-9.]+) (-?[0-9.]+) ")));
  const double left = std::stod(box[1]), top = std::stod(box[2]);
  const outputs::papers::Tiling tiles = outputs::papers::tiling(content_of(made.facts(), "nut bar, front"), outputs::Paper::a4, {});
  // The sheet's origin in both pictures.
  const Point in_svg{-px * left, -px * top};
  const Point in_pdf{px * (window_on_page.x - tiles.first.low.x), from_pdf.height - px * (window_on_page.y - tiles.first.low.y)};
  int ink = 0, missing = 0;
  for (int y = -350; y <= 350; ++y)
    for (int x = -600; x <= 600; ++x) {
      const auto pixel = [&](const Picture& p, Point o, int dx, int dy) {
        return p.at(static_cast<int>(std::lround(o.x)) + x + dx, static_cast<int>(std::lround(o.y)) + y + dy);
      };
      if (pixel(from_svg, in_svg, 0, 0) > 120) continue;
      ++ink;
      int nearest = 255;
      for (int dx = -2; dx <= 2; ++dx)
        for (int dy = -2; dy <= 2; ++dy) nearest = std::min(nearest, pixel(from_pdf, in_pdf, dx, dy));
      missing += nearest > 190;
    }
  EXPECT_GT(ink, 3000) << "nothing to compare";
  EXPECT_LT(missing, ink / 200);
}

TEST(PapersPdfSlow, CentresInTheSvgAreThePlans) {
  const Papers made(preset("joinery-bench"));
  const std::string& svg = made.bytes("cover-back.svg");
  std::vector<Point> crosses;
  const std::regex line("d=\"M (-?[0-9.]+) (-?[0-9.]+) L (-?[0-9.]+) (-?[0-9.]+)\"");
  for (std::sregex_iterator at(svg.begin(), svg.end(), line), end; at != end; ++at) {
    const double ax = std::stod((*at)[1]), ay = std::stod((*at)[2]), bx = std::stod((*at)[3]), by = std::stod((*at)[4]);
    if (ay == by && std::abs(bx - ax - 10) < 1e-6) crosses.push_back({(ax + bx) / 2, -ay});
  }
  int compared = 0;
  for (const auto* pattern : {&made.plan().screws, &made.plan().axles, &made.plan().cover_edge})
    for (const layout::Hole& hole : pattern->holes) {
      EXPECT_TRUE(std::any_of(crosses.begin(), crosses.end(), [&](Point p) { return geometry::distance(p, {-hole.at.x, hole.at.y}) < 1e-3; })) << hole.name;
      ++compared;
    }
  EXPECT_EQ(compared, 2 + 5 + 16);
}

TEST(PapersPdfSlow, TheSameDesignGivesTheSameBytes) {
  const std::string design = preset("inch-cabinet-bench");
  const Papers one(design), two(design);
  ASSERT_EQ(one.files.size(), two.files.size());
  for (std::size_t i = 0; i < one.files.size(); ++i) EXPECT_EQ(one.files[i].bytes, two.files[i].bytes) << one.files[i].path;
}

geometry::Box content_of(const outputs::Facts& facts, const std::string& title) {
  using namespace outputs::papers;
  for (std::uint32_t i = 0; i < facts.assembly.parts.size(); ++i)
    for (const Job& job : jobs(*facts.assembly.parts[i], i))
      for (const FaceJob& face : faces(job)) {
        if (!takes_template(job)) continue;
        const Sheet sheet = template_sheet(facts, face);
        if (sheet.title == title) return whole(sheet, 0);
      }
  throw std::runtime_error("no sheet " + title);
}

}  // namespace
}  // namespace visewright::tests
