// Files written through the kernel, read back by a reader that shares no line with it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "geometry/measure.h"
#include "kernel/flanks.h"
#include "kernel/step_document.h"
#include "readers/step_bodies.h"
#include "readers/step_curves.h"
#include "readers/step_products.h"
#include "units/quantity.h"

namespace visewright {
namespace {

using kernel::Schema;
using kernel::Solid;
using kernel::StepDocument;
using readers::Body;
using testing::IsEmpty;
using units::pi;

constexpr geometry::Placement aslant{{3, -5, 7}, {0, 0.6, 0.8}, {1, 0, 0}};

readers::StepFile file_with(const Solid& solid, Schema schema = Schema::ap214) {
  StepDocument document({"one.step", {"one"}, "2024-05-01T00:00:00", "visewright"});
  document.add_product("1", "one", solid, {0.5F, 0.5F, 0.5F}, "beech");
  readers::StepFile file = readers::read_step(document.to_bytes(schema).value());
  EXPECT_THAT(file.problems, IsEmpty());
  EXPECT_THAT(readers::read_products(file).problems, IsEmpty());
  return file;
}

Body body_of(const Solid& solid) {
  const auto bodies = readers::read_bodies(file_with(solid));
  EXPECT_EQ(bodies.size(), 1u);
  EXPECT_THAT(bodies.at(0).problems, IsEmpty());
  EXPECT_LT(bodies.at(0).worst_edge_mm, 1e-6);
  return bodies.at(0);
}

Solid plate() {
  const Solid plain =
      kernel::prism(geometry::region(geometry::rectangle({0, 0}, {100, 50})), aslant, 0, 20, "").value();
  std::vector<Solid> tools;
  for (const double x : {20.0, 50.0, 80.0})
    tools.push_back(kernel::prism(geometry::region(geometry::circle({x, 25}, 5)), aslant, -1, 21, "").value());
  const std::vector<geometry::Point> countersink{{0, 15}, {5, 15}, {11, 21}, {0, 21}};
  tools.push_back(kernel::revolution(geometry::region(geometry::polygon(countersink)),
                                     geometry::combined(aslant, {{20, 25, 0}, {1, 0, 0}, {0, 0, 1}}), "")
                      .value());
  return kernel::cut(plain, tools, "plate").value();
}

// Three bores of radius 5; one widens from radius 5 at depth 5 to radius 10 at the top, a frustum of height 5.
TEST(KernelFiles, OfAPlateWithHoles) {
  const Body body = body_of(plate());
  const double frustum = pi * 5 / 3 * (25 + 50 + 100);
  EXPECT_NEAR(body.volume_mm3.value(), 100 * 50 * 20 - 3 * pi * 25 * 20 - (frustum - pi * 25 * 5), 1e-6);
  EXPECT_LT(body.spread_mm3, 1e-6);
  EXPECT_EQ(body.holes(), 3);
  EXPECT_EQ(body.faces_of.at("PLANE"), 6u);
  EXPECT_EQ(body.faces_of.at("CYLINDRICAL_SURFACE"), 3u);
  EXPECT_EQ(body.faces_of.at("CONICAL_SURFACE"), 1u);
}

TEST(KernelFiles, OfTurnedBodies) {
  const auto turned = [](geometry::Loop section) {
    return body_of(kernel::revolution(geometry::region(std::move(section)), aslant, "turned").value());
  };
  const std::vector<geometry::Point> cone{{0, 0}, {6, 0}, {0, 10}}, cup{{3, 0}, {8, 0}, {6, 10}, {3, 10}};
  EXPECT_NEAR(turned(geometry::polygon(cone)).volume_mm3.value(), pi * 36 * 10 / 3, 1e-6);
  EXPECT_EQ(turned(geometry::polygon(cone)).holes(), 0);
  EXPECT_NEAR(turned(geometry::polygon(cup)).volume_mm3.value(), pi * 10 / 3 * (64 + 48 + 36) - pi * 9 * 10, 1e-6);
  EXPECT_EQ(turned(geometry::polygon(cup)).holes(), 1);
  EXPECT_EQ(turned(geometry::circle({20, 1}, 3)).holes(), 1);
  EXPECT_EQ(turned(geometry::trusted({geometry::Arc{{0, -5}, {0, 5}, {0, 0}, true}, geometry::Line{{0, 5}, {0, -5}}}))
                .holes(),
            0);
}

// A bore across a rod leaves no elementary edge; the reader still sees a closed skin.
TEST(KernelFiles, OfARodWithACrossHole) {
  const Solid rod = kernel::prism(geometry::region(geometry::circle({0, 0}, 10)), {}, 0, 60, "").value();
  const Solid drill =
      kernel::prism(geometry::region(geometry::circle({0, 0}, 3)), {{-20, 0, 30}, {0, 1, 0}, {1, 0, 0}}, 0, 40, "")
          .value();
  const auto bodies = readers::read_bodies(file_with(kernel::cut(rod, std::vector{drill}, "rod").value()));
  ASSERT_EQ(bodies.size(), 1u);
  EXPECT_THAT(bodies[0].problems, IsEmpty());
  EXPECT_EQ(bodies[0].holes(), 1);
  // The volume of two round rods that cross has no closed form in school functions; the slice at height z has the
  // width 2·√(9 − z²) and, averaged over it, the length of the chord: summed here by the midpoint rule.
  double shared = 0;
  constexpr int steps = 2000;
  for (int i = 0; i < steps; ++i) {
    const double y = -3 + 6 * (i + 0.5) / steps;
    shared += 6.0 / steps * 2 * std::sqrt(9 - y * y) * 2 * std::sqrt(100 - y * y);
  }
  EXPECT_NEAR(bodies[0].volume_mm3.value(), pi * 100 * 60 - shared, 0.05);
  EXPECT_LT(bodies[0].spread_mm3, 1e-3);
}

/// Distance of a point from an involute about the origin that turns left (or right) and leaves its base circle at
/// start: along the tangent of the base circle it is the base radius times the lag in angle.
double off_involute(const geometry::Involute& flank, double x, double y) {
  const double rho = std::hypot(x, y), rb = flank.base_radius_mm;
  const double t = std::sqrt(rho * rho / (rb * rb) - 1);
  const double angle = (flank.left ? 1 : -1) * (std::atan2(y, x) - flank.start_rad);
  return rb * std::abs(angle - (t - std::atan(t)));
}

// Between the points of the spline nothing is exact by construction: a hundred places a span on both flanks.
TEST(KernelFiles, KeepInvolutesWithinAMicrometre) {
  for (const double foot : {0.05, 0.0}) {
    kernel_tests::Tooth tooth = kernel_tests::tooth();
    tooth.foot_roll_rad = foot;
    const readers::StepFile file =
        file_with(kernel::prism(geometry::region(tooth.outline()), {}, 0, 20, "tooth").value());
    int flanks = 0, places = 0;
    for (const readers::Instance* edge : file.all("EDGE_CURVE")) {
      const auto curve = readers::curve_of(file, file.step(edge, "EDGE_CURVE", 3));
      ASSERT_TRUE(curve.has_value());
      if (curve->kind != readers::Curve::Kind::spline) continue;
      ++flanks;
      std::vector<double> knots = curve->spline.knots;
      knots.erase(std::unique(knots.begin(), knots.end()), knots.end());
      ASSERT_GE(knots.size(), 9u);
      for (std::size_t k = 0; k + 1 < knots.size(); ++k) {
        for (int i = 1; i < 100; ++i, ++places) {
          const auto p = curve->at(knots[k] + i * (knots[k + 1] - knots[k]) / 100).point;
          const geometry::Involute flank = p[1] < 0 ? tooth.right() : tooth.left();
          ASSERT_LT(off_involute(flank, p[0], p[1]), 0.5e-3);
        }
      }
    }
    EXPECT_EQ(flanks, 4);  // two flanks, at the top and at the bottom
    EXPECT_GE(places, 4 * 8 * 99);
  }
}

// The area of the tooth by Green's theorem on the true curves, without kernel and without splines.
TEST(KernelFiles, OfAToothHaveItsVolume) {
  const geometry::Loop outline = kernel_tests::tooth().outline();
  const Body body =
      body_of(kernel::prism(geometry::region(outline, {geometry::circle({60, 0}, 2)}), aslant, 0, 20, "tooth").value());
  EXPECT_NEAR(body.volume_mm3.value() / 20, geometry::area_mm2(outline) - 4 * pi, 2 * 10 * 2e-4);
  EXPECT_EQ(body.holes(), 1);
  EXPECT_EQ(body.faces_of.at("SURFACE_OF_LINEAR_EXTRUSION"), 2u);
}

// Rim, bore, and every root a trochoid that runs into an involute: a whole gear as the parts build it.
TEST(KernelFiles, OfATrochoidKeepTheCurve) {
  // The fillet of a rack tip of radius 1.5 whose centre stands 4.5 from the pitch line, pitch radius 60.
  const geometry::Trochoid fillet{{0, 0}, 60, 1.5, 4.5, 0.1, 0, 0.2, true};
  const geometry::Edge edge = fillet;
  const geometry::Point a = geometry::start(edge), b = geometry::finish(edge);
  const auto outline = geometry::trusted({edge, geometry::Line{b, {30, 30}}, geometry::Line{{30, 30}, a}});
  const readers::StepFile file = file_with(kernel::prism(geometry::region(outline), {}, 0, 5, "root").value());
  double worst = 0;
  int splines = 0;
  for (const readers::Instance* instance : file.all("EDGE_CURVE")) {
    const auto curve = readers::curve_of(file, file.step(instance, "EDGE_CURVE", 3)).value();
    if (curve.kind != readers::Curve::Kind::spline) continue;
    ++splines;
    // True points at places that are no points of the spline, against the spline.
    for (int i = 0; i < 500; ++i) {
      const geometry::Point p = geometry::at(edge, (i + 0.37) / 500);
      const double z = curve.at(curve.spline.first()).point[2];
      worst = std::max(worst, readers::distance(curve.at(curve.nearest({p.x, p.y, z})).point, {p.x, p.y, z}));
    }
  }
  EXPECT_EQ(splines, 2);
  EXPECT_LT(worst, 0.5e-3);
}

TEST(KernelFiles, SayWhoHoldsWhomAndWhere) {
  const Solid box = kernel::prism(geometry::region(geometry::rectangle({0, 0}, {1, 2})), {}, 0, 4, "").value();
  StepDocument document({"nest.step", {"first", "second line with ü"}, "2024-05-01T00:00:00", "visewright 0.1.0"});
  const auto root = document.add_assembly("0", "Vise");
  const auto group = document.add_assembly("1", "Moving part");
  const auto a = document.add_product("1.1", "Plate Ø10 \\ 木's", box, {0.8F, 0.6F, 0.4F}, "beech");
  const auto b = document.add_product("1.2", "Second", box, {0.1F, 0.2F, 0.9F}, "");
  const geometry::Placement turned{{0, 100, 0}, {0.6, 0.8, 0}, {0, 0, 1}};
  document.place(root, group, turned, "moving");
  document.place(group, a, aslant, "left");
  document.place(group, a, {}, "right");
  document.place(root, b, aslant, "fixed");
  for (const Schema schema : {Schema::ap214, Schema::ap242}) {
    const readers::StepFile file = readers::read_step(document.to_bytes(schema).value());
    EXPECT_THAT(file.problems, IsEmpty());
    EXPECT_EQ(file.schema(),
              schema == Schema::ap214 ? "AUTOMOTIVE_DESIGN" : "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF");
    const auto* name = file.head("FILE_NAME");
    EXPECT_EQ(readers::parameter(name, 0).text, "nest.step");
    EXPECT_EQ(readers::parameter(name, 1).text, "2024-05-01T00:00:00");
    EXPECT_EQ(readers::parameter(name, 2).items.at(0).text, "");
    EXPECT_EQ(readers::parameter(name, 5).text, "visewright 0.1.0");
    EXPECT_EQ(readers::parameter(file.head("FILE_DESCRIPTION"), 0).items.at(1).text, "second line with ü");

    const readers::Products found = readers::read_products(file);
    EXPECT_THAT(found.problems, IsEmpty());
    ASSERT_EQ(found.products.size(), 4u);
    ASSERT_EQ(found.uses.size(), 4u);
    EXPECT_EQ(found.roots(), std::vector{found.by_id("0").value()});
    const readers::Product& plate = found.products[found.by_id("1.1").value()];
    EXPECT_EQ(plate.name, "Plate Ø10 \\ 木's");
    EXPECT_EQ(plate.material, "beech");
    EXPECT_EQ(plate.solids.size(), 1u);
    ASSERT_TRUE(plate.colour.has_value());
    EXPECT_LT(readers::distance(*plate.colour, {0.8, 0.6, 0.4}), 1e-6);
    EXPECT_LT(readers::distance(found.products[found.by_id("1.2").value()].colour.value(), {0.1, 0.2, 0.9}), 1e-6);

    const auto places = found.everywhere(found.by_id("1.1").value());
    ASSERT_EQ(places.size(), 2u);
    const std::vector<geometry::Placement> expected{geometry::combined(turned, aslant), turned};
    for (std::size_t i = 0; i < 2; ++i)
      for (const geometry::Vector& v : {geometry::Vector{0, 0, 0}, geometry::Vector{1, 2, 4}})
        EXPECT_LT(readers::distance(readers::outside(places[i], v), geometry::to_outside(expected[i], v)), 1e-9);
    std::vector<std::string> ids, names;
    for (const readers::Use& use : found.uses) ids.push_back(use.id), names.push_back(use.name);
    EXPECT_THAT(ids, testing::UnorderedElementsAre("1", "2", "3", "4"));
    EXPECT_THAT(names, testing::UnorderedElementsAre("moving", "left", "right", "fixed"));
  }
}

}  // namespace
}  // namespace visewright
