// Files for the printer, read by a program that repairs facets for a living (admesh) and by a zip and XML reader of our
// own. Volumes are worked out here from the numbers of the design.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <sstream>

#include "readers/handoff_made.h"
#include "units/quantity.h"

namespace visewright::tests {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using units::pi;

double involute(double angle_rad) { return std::tan(angle_rad) - angle_rad; }

/// Half the angle of a tooth space at a radius, for a gear as a basic rack of ISO 53 profile A cuts it (pressure angle
/// 20°, dedendum 1.25 m, tip rounding 0.38 m), unshifted, its tooth thinned by `thinning` on the reference circle. On the
/// flank from the involute; below it the widest that the rounding of the rack's tip sweeps while it rolls: its centre,
/// `aside` from the middle of the space, stands at R(−t)·(rp − offset, aside + rp·t).
double half_space_rad(double r, int teeth, double m, double thinning) {
  const double alpha = 20 * pi / 180, rp = m * teeth / 2, rb = rp * std::cos(alpha), rho = 0.38 * m, offset = 1.25 * m - rho;
  const double space = pi * m / 2 + thinning, aside = space / 2 - offset * std::tan(alpha) - rho / std::cos(alpha);
  double half = 0;
  for (int i = 0; i <= 4000; ++i) {
    const double t = -0.3 + 0.6 * i / 4000, x = rp - offset, y = aside + rp * t, distance = std::hypot(x, y);
    const double cosine = (distance * distance + r * r - rho * rho) / (2 * distance * r);
    if (cosine < 1) half = std::max(half, std::atan2(y, x) - t + std::acos(std::max(-1.0, cosine)));
  }
  // Where the rack's flank is straight, down to this depth, it cuts the involute; below that the rounding alone cuts.
  const double depth = 1.25 * m - rho * (1 - std::sin(alpha));
  if (r < std::hypot(rp - depth, depth / std::tan(alpha))) return half;
  const double flank = space / (2 * rp) - involute(alpha) + involute(std::acos(rb / r));
  return std::max(half, flank);
}

/// Area of the whole gear without holes: rings between root and tip circle, summed by the midpoint rule.
double gear_area_mm2(int teeth, double m, double thinning) {
  const double root = m * (teeth / 2.0 - 1.25), tip = m * (teeth / 2.0 + 1);
  constexpr int rings = 800;
  double area = pi * root * root;
  for (int i = 0; i < rings; ++i) {
    const double r = root + (tip - root) * (i + 0.5) / rings;
    area += (tip - root) / rings * r * 2 * teeth * std::max(0.0, pi / teeth - half_space_rad(r, teeth, m, thinning));
  }
  return area;
}

/// The figure behind a name in what admesh says, the one after its check.
double figure(const std::string& said, const std::string& name) {
  const std::size_t at = said.find(name);
  if (at == std::string::npos) throw std::runtime_error("admesh does not say " + name);
  std::istringstream after(said.substr(said.find(':', at) + 1));
  double value = NAN;
  after >> value;
  return value;
}

TEST(HandoffPrintSlow, FacetsAreClosedForAdmesh) {
  int read = 0;
  for (const std::string& name : small_bench().named("printer/", ".stl")) {
    const std::string said = said_by("admesh " + small_bench().path(name) + " 2>&1");
    for (const char* fault : {"Total disconnected facets", "Degenerate facets", "Facets reversed", "Backwards edges", "Normals fixed", "Edges fixed", "Facets removed", "Facets added"})
      EXPECT_EQ(figure(said, fault), 0) << name << ": " << fault;
    EXPECT_EQ(figure(said, "Number of parts"), 1) << name;
    EXPECT_GT(figure(said, "Volume"), 0) << name;
    ++read;
  }
  EXPECT_EQ(read, 3);  // two kinds of gear and the test piece
}

// The preset: 40 teeth of module 2, 0.35 of backlash, half of it to each gear; faces 20 wide; idlers on bearings of 22
// outside, 7 wide, amid the face, held by a lip of the outer ring's land. Holes are printed 0.2 larger. The edge on the
// bed is broken by a tenth of the module: a ring of a half square.
TEST(HandoffPrintSlow, TheIdlerHasItsVolume) {
  const layout::Plan& plan = small_bench().plan();
  const double face = 20, seat = (face + 7) / 2, land = plan.axle.bearing.outer_land.mm(), leg = 0.2;
  ASSERT_NEAR(plan.train.face_width.mm(), face, 1e-9);
  const double area = gear_area_mm2(40, 2, 0.35 / 2);
  // The broken edge at the bed, along an outline of about the tooth's two flanks and two lands each.
  const double rim = 40 * (2 * 4.6 + 3.2) * leg * leg / 2 + pi * 22.2 * leg * leg / 2;
  const double expected = area * face - pi / 4 * (22.2 * 22.2 * seat + (land + 0.2) * (land + 0.2) * (face - seat)) - rim;
  const auto files = small_bench().named("printer/", "idler-gear.stl");
  ASSERT_EQ(files.size(), 1u);
  const double volume = figure(said_by("admesh " + small_bench().path(files[0]) + " 2>&1"), "Volume");
  EXPECT_NEAR(volume / expected, 1, 1e-3);
}

TEST(HandoffPrintSlow, ThreeMfHasUnitNameMaterialAndPairedEdges) {
  for (const auto& [ending, name] : {std::pair("drive-gear.3mf", "drive gear"), std::pair("idler-gear.3mf", "idler gear"), std::pair("test-piece.3mf", "test piece")}) {
    const auto files = small_bench().named("printer/", ending);
    ASSERT_EQ(files.size(), 1u) << ending;
    const json found = small_bench().read("3mf", files[0]);
    EXPECT_EQ(found["unit"], "millimeter");
    EXPECT_EQ(found["name"], name);
    EXPECT_EQ(found["material"], "PETG");
    EXPECT_EQ(found["unpaired"], 0);
    EXPECT_GT(found["triangles"], 500);
    EXPECT_GT(found["volume"], 0);
    EXPECT_EQ(found["low"][2], 0);  // stands on the bed
    EXPECT_THAT(found["texts"][1].get<std::string>(), HasSubstr("0.2 mm"));
  }
}

// Points of the finished skin against the true flank: distance along the tangent of the base circle. Chords between
// points on the flank stray inwards from it; middles of the chords are tried too.
TEST(HandoffPrintSlow, FlanksStayWithinFiveMicrometres) {
  const json found = small_bench().read("3mf", small_bench().named("printer/", "idler-gear.3mf").at(0));
  std::vector<std::array<double, 2>> top;
  for (const json& p : found["points"])
    if (p[2].get<double>() == 20.0) top.push_back({p[0], p[1]});
  const double alpha = 20 * pi / 180, rb = 40 * std::cos(alpha), half = (pi - 0.35 / 2) / 80 + involute(alpha);
  const auto off = [&](double x, double y) {
    const double pitch = 2 * pi / 40, angle = std::atan2(y, x), r = std::hypot(x, y);
    return rb * std::abs(half - involute(std::acos(rb / r)) - std::abs(angle - pitch * std::round(angle / pitch)));
  };
  int compared = 0;
  for (std::size_t i = 0; i + 1 < top.size(); ++i) {
    const double a = std::hypot(top[i][0], top[i][1]), b = std::hypot(top[i + 1][0], top[i + 1][1]);
    if (std::min(a, b) < 38.6 || std::max(a, b) > 41.999 || std::abs(a - b) < 0.05) continue;
    EXPECT_LT(off(top[i][0], top[i][1]), 1e-4);
    EXPECT_LT(off((top[i][0] + top[i + 1][0]) / 2, (top[i][1] + top[i + 1][1]) / 2), 5e-3);
    ++compared;
  }
  EXPECT_GE(compared, 80 * 3);
}

TEST(HandoffPrintSlow, HolesAreLargerThanInTheSolid) {
  const auto files = small_bench().named("printer/", "idler-gear.3mf");
  const json found = small_bench().read("3mf", files.at(0));
  // The nominal solid's bore is that of the bearing, 22; the print's is 0.2 wider.
  double nearest = 1e9;
  for (const json& p : found["points"])
    if (p[2].get<double>() == 13.5) nearest = std::min(nearest, std::abs(std::hypot(p[0].get<double>(), p[1].get<double>()) - 11.1));
  EXPECT_LT(nearest, 1e-6);
  double solid = 0;
  for (std::uint32_t i = 0; i < small_bench().vise().parts.size(); ++i)
    if (small_bench().vise().parts[i]->name == "idler gear") solid = small_bench().study().solids->bodies(i)[0].measures.volume_mm3;
  const double land = small_bench().plan().axle.bearing.outer_land.mm();
  const double taken = pi / 4 * ((22.2 * 22.2 - 22 * 22) * 13.5 + ((land + 0.2) * (land + 0.2) - land * land) * 6.5);
  EXPECT_NEAR(solid - found["volume"].get<double>(), taken, 30);  // the edge on the bed takes some 10 to 20 mm³ more
  const std::string& list = small_bench().bytes("printer/print-list.md");
  EXPECT_THAT(list, HasSubstr("| idler gear | round | 0 mm to 13.5 mm | 22 mm | 22.2 mm |"));
}

TEST(HandoffPrintSlow, TheTestPieceHasTheFitsOfTheGears) {
  const json found = small_bench().read("3mf", small_bench().named("printer/", "test-piece.3mf").at(0));
  const std::string& list = small_bench().bytes("printer/print-list.md");
  EXPECT_THAT(list, HasSubstr("| test piece | round | 0 mm to 8 mm | 22 mm | 22.2 mm |"));
  EXPECT_THAT(list, HasSubstr("| test piece | hexagon, across flats |"));
  // Two teeth of the first gear at ±half a pitch: the farthest points from its axis stand on its tip circle, 42.
  double tip = 0;
  int left = 0, right = 0;
  for (const json& p : found["points"]) {
    const double r = std::hypot(p[0].get<double>(), p[1].get<double>());
    if (p[0].get<double>() > 0) tip = std::max(tip, r);
    if (p[0].get<double>() > 0 && std::abs(r - 42) < 1e-4) (p[1].get<double>() > 0 ? left : right)++;
  }
  EXPECT_NEAR(tip, 42, 1e-4);
  EXPECT_GE(left, 4);
  EXPECT_EQ(left, right);
}

TEST(HandoffPrintSlow, WhatIsLeftOutOrTooLargeIsSaid) {
  const Handoff plain(std::string(uneven_design) + "[shop]\nprint_bed = [70, 70, 70]\n");
  const std::string& list = plain.bytes("printer/print-list.md");
  EXPECT_THAT(list, HasSubstr("The design names no plastic"));
  EXPECT_THAT(list, HasSubstr("does not say how the gears are made"));
  EXPECT_THAT(list, HasSubstr("larger than the bed"));
  EXPECT_THAT(list, testing::Not(HasSubstr("is too wide")));
  const std::string& small = small_bench().bytes("printer/print-list.md");
  EXPECT_THAT(small, testing::Not(HasSubstr("Caution")));
}

}  // namespace
}  // namespace visewright::tests
