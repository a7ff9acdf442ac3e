// Inside corners and beds. Radii and sizes are the fixtures' own.
#include <array>
#include <cmath>

#include "making/outlines.h"
#include "making/working.h"

namespace visewright::making {
namespace {

using geometry::Point;

TEST(Corners, AreSharpRoundedOrNone) {
  const auto square = geometry::region(geometry::rectangle({0, 0}, {40, 20}));
  const auto rounded = geometry::region(geometry::rounded_rectangle({0, 0}, {40, 20}, 5));
  const std::array<Point, 6> bend{Point{0, 0}, {30, 0}, {30, 10}, {10, 10}, {10, 30}, {0, 30}};
  const auto angle = geometry::region(geometry::polygon(bend));
  EXPECT_EQ(smallest_inside_radius_mm(square, true), 0);
  EXPECT_EQ(smallest_inside_radius_mm(rounded, true), 5);
  EXPECT_EQ(smallest_inside_radius_mm(square, false), std::nullopt)
      << "from outside a rectangle has outer corners only";
  EXPECT_EQ(smallest_inside_radius_mm(rounded, false), std::nullopt);
  EXPECT_EQ(smallest_inside_radius_mm(angle, false), 0) << "an angle has one inner corner from outside";
  EXPECT_EQ(smallest_inside_radius_mm(geometry::region(geometry::circle({0, 0}, 7)), true), 7);
}

// An island in a pocket: the cutter runs round it from outside.
TEST(Corners, OfAnIslandAreThoseFromOutside) {
  const std::array<Point, 6> bend{Point{10, 10}, {30, 10}, {30, 15}, {15, 15}, {15, 30}, {10, 30}};
  const auto outer = geometry::circle({20, 20}, 40);
  EXPECT_EQ(smallest_inside_radius_mm(geometry::region(outer, {geometry::rectangle({10, 10}, {30, 30})}), true), 40);
  EXPECT_EQ(smallest_inside_radius_mm(geometry::region(outer, {geometry::polygon(bend)}), true), 0);
}

TEST(Corners, ASlotTakesACutterOfItsWidth) {
  const auto slot = geometry::region(geometry::slot({0, 0}, {10, 0}, 5));
  EXPECT_NEAR(largest_cutter_mm(slot, true), 5, 1e-9);
  EXPECT_NEAR(as_circle(geometry::region(geometry::circle({3, 4}, 6)))->radius_mm, 6, 1e-12);
  EXPECT_FALSE(as_circle(slot).has_value());
}

/// A vise whose cover is replaced by a sheet with one planted recess.
Work with_recess(const Made& made, geometry::Profile outline) {
  static layout::Plan plan;  // outlives the work that is handed out
  static assembly::Assembly planted;
  plan = made.plan;
  planted = made.assembly;
  const auto* sheet = standards::known().material("polycarbonate");
  const parts::Face face{"front", {{0, 0, 8}, {1, 0, 0}, {0, 0, 1}}};
  const parts::Part part{"planted", parts::Piece{parts::Sheet{sheet, {0, 0, 0}, {100, 60, 8}, false},
                                                 {{"recess", parts::Rout{face, std::move(outline), 4.0}, {}, {}}}}};
  planted.parts = {std::make_shared<const parts::Part>(part)};
  planted.placed = {{0, "planted", {}, assembly::Group::moving, 0, {}, {}}};
  planted.declared.clear();
  return work(plan, planted, standards::known());
}

TEST(Corners, ASharpOneIsReportedAndItsNearMissIsNot) {
  const Made made(layout::five_gears + "[accuracy]\ncutter = 6\n");
  const auto verdict = [&](const geometry::Loop& loop) {
    return findings(with_recess(made, geometry::region(loop)), "making.inside_corner").at(0)->verdict;
  };
  EXPECT_EQ(verdict(geometry::rounded_rectangle({10, 10}, {60, 40}, 3)), reasons::Verdict::pass);
  EXPECT_EQ(verdict(geometry::rounded_rectangle({10, 10}, {60, 40}, 2.99)), reasons::Verdict::caution);
  const Work sharp = with_recess(made, geometry::region(geometry::rectangle({10, 10}, {60, 40})));
  const auto* finding = findings(sharp, "making.inside_corner").at(0);
  EXPECT_EQ(finding->measured, 0);
  EXPECT_EQ(finding->limit, 3);
  EXPECT_THAT(finding->advice, testing::AllOf(testing::HasSubstr("recess"), testing::HasSubstr("chisel")));
}

// By hand: 100 × 60 into 200 × 120 twice over; straight where it is wide enough; a long thin strip goes in askew,
// nearly as long as the diagonal: a 100 × 100 bed holds a strip without width of 141.4.
TEST(Beds, LargestScale) {
  EXPECT_NEAR(largest_scale(100, 60, 200, 120), 2, 1e-9);
  EXPECT_NEAR(largest_scale(60, 100, 200, 120), 2, 1e-9);
  EXPECT_NEAR(largest_scale(100, 100, 100, 100), 1, 1e-9);
  EXPECT_NEAR(largest_scale(141.4, 1e-3, 100, 100), std::sqrt(2) * 100 / 141.4, 1e-4);
  EXPECT_LT(largest_scale(120, 80, 100, 100), 1);
}

/// A rectangle in a rectangle by trying angles: what it measures across and up must fit.
double by_angles(double p, double q, double a, double b) {
  double best = 0;
  for (int i = 0; i <= 90000; ++i) {
    const double t = units::pi / 2 * i / 90000, c = std::cos(t), s = std::sin(t);
    best = std::max(best, std::min(a / (p * c + q * s), b / (p * s + q * c)));
  }
  return best;
}

TEST(Beds, LargestScaleEqualsTryingAngles) {
  for (const auto& [p, q, a, b] : {std::array{120.0, 10.0, 100.0, 80.0},
                                   {110.0, 30.0, 100.0, 80.0},
                                   {300.0, 20.0, 220.0, 220.0},
                                   {90.0, 70.0, 100.0, 80.0},
                                   {250.0, 3.0, 250.0, 60.0}})
    EXPECT_NEAR(largest_scale(p, q, a, b), by_angles(p, q, a, b), 1e-5) << p << " x " << q;
}

// Gears of 96 mm tip circle and 24 mm face: round, so that no turning helps on a bed of 90 × 200.
TEST(Beds, APrintedGearNeedsItsTipCircle) {
  const auto scale = [](const std::string& bed) {
    const Made made(layout::five_gears + "[shop]\nprint_bed = " + bed + "\n");
    return std::make_pair(findings(made.work, "making.print_bed").at(0)->verdict, made.work.beds.at(0).scale);
  };
  EXPECT_EQ(scale("[96.1, 200]").first, reasons::Verdict::pass);
  EXPECT_EQ(scale("[95, 200]").first, reasons::Verdict::caution);
  EXPECT_NEAR(scale("[48, 200]").second, 0.5, 0.005);
  EXPECT_EQ(scale("[200, 200, 23]").first, reasons::Verdict::caution) << "the face is 24 high";
}

TEST(Beds, OnlyWhatALaserCutsIsHeldAgainstItsBed) {
  const std::string design = layout::five_gears + "[shop]\nlaser_bed = [300, 200]\n[cover]\nmaterial = ";
  const Made acrylic(design + "\"acrylic\"\n"), polycarbonate(design + "\"polycarbonate\"\n");
  const auto covers = [](const Made& made) {
    return std::count_if(made.work.beds.begin(), made.work.beds.end(),
                         [](const OnBed& b) { return b.part == "cover"; });
  };
  EXPECT_EQ(covers(acrylic), 1);
  EXPECT_EQ(covers(polycarbonate), 0);
}

}  // namespace
}  // namespace visewright::making
