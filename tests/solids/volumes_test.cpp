// The kernel's volumes of finished parts against closed forms of the Plan's numbers, and solids that must be refused.
#include <cmath>
#include <memory>

#include "geometry/measure.h"
#include "layout/planning.h"
#include "parts/compose.h"
#include "parts/list.h"
#include "solids/solid_set.h"

namespace visewright::solids {
namespace {

using parts::Part;

const layout::Plan& small() {
  static const layout::Plan plan = layout::good_plan(layout::preset_text("small-instrument-bench"));
  return plan;
}

/// The one body of a part.
BodySolid made(const Part& part) {
  const auto bodies = parts::bodies(part);
  EXPECT_EQ(bodies.size(), 1U) << part.name;
  auto result = solid_of(bodies.front(), part.name);
  if (!result) throw std::runtime_error(result.error().front().key + ": " + result.error().front().wrong);
  return *result;
}

void expect_volume(const Part& part, double want_mm3, double share = 1e-6) {
  const BodySolid body = made(part);
  EXPECT_NEAR(body.measures.volume_mm3, want_mm3, share * want_mm3) << part.name;
  EXPECT_EQ(body.measures.solids, 1) << part.name;
  EXPECT_TRUE(body.measures.valid && body.measures.closed) << part.name;
}

double disc(double diameter) { return units::pi / 4 * diameter * diameter; }
double tube(double outside, double bore, double length) { return (disc(outside) - disc(bore)) * length; }

// Expected: π/4 (D² − d²) L.
TEST(Volumes, Tubes) {
  const auto& jaw = small().front_jaw;
  expect_volume(parts::front_bush(small()), tube(jaw.bush_outside.mm(), jaw.bush_bore.mm(), jaw.bush_length.mm()));
  const auto& rear = small().rear_jaw;
  expect_volume(parts::rear_bush(small()), tube(rear.bush_outside.mm(), rear.bush_bore.mm(), rear.thickness.mm()));
  const auto& collar = small().collar;
  expect_volume(parts::thrust_washer(small()),
                tube(collar.thrust_outside.mm(), units::in_mm(collar.thrust->bore), collar.thrust_thickness.mm()));
  const auto& axle = small().axle;  // spacers slide on the axle with 0.2 mm of play
  const double bore = axle.diameter.mm() + 0.2;
  expect_volume(parts::rear_spacer(small()), tube(axle.spacer_outside.mm(), bore, axle.spacer_rear.mm()));
  expect_volume(parts::front_spacer(small()), tube(axle.spacer_outside.mm(), bore, axle.spacer_front.mm()));
}

// Expected: a tube, less what is turned off outside the relief diameter over the relief depth.
TEST(Volumes, KeeperRing) {
  const auto& k = small().keeper;
  expect_volume(parts::keeper_ring(small()), tube(k.outside.mm(), k.bore.mm(), k.thickness.mm()) -
                                                 tube(k.outside.mm(), k.relief_diameter.mm(), k.relief_depth.mm()));
}

// Expected: π/4 D² L, less the blind hole for the cover's screw.
TEST(Volumes, AxleAndPins) {
  const auto& a = small().axle;
  const double length = a.hole_depth.mm() + a.front_out.mm() - small().front_jaw.joint_out.mm();
  expect_volume(parts::axle(small()), disc(a.diameter.mm()) * length - disc(a.tap.mm()) * a.tap_depth.mm());
  expect_volume(parts::collar_pin(small()), disc(small().collar.pin.mm()) * small().collar.pin_length.mm());
  expect_volume(parts::end_stop_pin(small()), disc(small().screw.stop_pin.mm()) * small().screw.stop_length.mm());
}

// Expected: a box less two round holes.
TEST(Volumes, Linings) {
  const double thickness = small().lining.thickness.mm(), holes = 2 * disc(small().lining.hole.mm());
  const auto lining = [&](const auto& jaw) { return (jaw.length.mm() * (jaw.above.mm() + jaw.below.mm()) - holes) * thickness; };
  expect_volume(parts::front_lining(small()), lining(small().front_jaw));
  expect_volume(parts::rear_lining(small()), lining(small().rear_jaw));
}

/// Area of an outline by the shoelace formula on points that stray less than 0.1 µm from it: at most 1e-5 of the area.
double polygon_area(const geometry::Loop& outline) {
  const auto points = geometry::sample(outline, 1e-4).points;
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) twice += geometry::cross(points[i], points[(i + 1) % points.size()]);
  return twice / 2;
}

// Expected: teeth by polygon; a hexagon of width s across flats has √3/2 s². Three layers, rear face first.
TEST(VolumesSlow, DriveGear) {
  const auto& c = small().collar;
  const auto& gear = small().train.gears.front();
  const double face = small().train.face_width.mm(), recess = c.flange_recess_depth.mm(), floor = recess + c.hexagon_depth.mm();
  ASSERT_GE(recess, 0);
  const double hexagon = std::sqrt(3.0) / 2 * c.hexagon.mm() * c.hexagon.mm();
  expect_volume(parts::drive_gear(small(), 0),
                polygon_area(*gear.outline) * face - disc(c.flange_recess.mm()) * recess - hexagon * c.hexagon_depth.mm() -
                    disc(c.front_bore.mm()) * (face - floor),
                2e-5);
}

// Expected: teeth by polygon; the bearing's seat is open at the rear and reaches (face + bearing)/2 deep, so that the
// bearing sits in the middle; beyond it a bore of the outer ring's land.
TEST(VolumesSlow, IdlerGear) {
  const auto& bearing = small().axle.bearing;
  const double face = small().train.face_width.mm(), seat = (face + bearing.width.mm()) / 2;
  expect_volume(parts::idler_gear(small(), 1),
                polygon_area(*small().train.gears[1].outline) * face - disc(bearing.outside.mm()) * seat -
                    disc(bearing.outer_land.mm()) * (face - seat),
                2e-5);
}

// Expected: bodies of a vise are whole, closed and as large as worked out without the kernel (to a hundred-thousandth).
TEST(VolumesSlow, EveryBodyOfAViseIsOneClosedSolid) {
  std::vector<std::shared_ptr<const Part>> vise;
  for (auto make : {parts::bench_top_part, parts::rear_jaw, parts::rear_lining, parts::bracket, parts::mounting_screw, parts::nut_block_screw,
                    parts::front_jaw, parts::front_lining, parts::cover, parts::hand_wheel, parts::grip, parts::lock_screw})
    vise.push_back(std::make_shared<const Part>(make(small())));
  for (auto make : {parts::nut_block, parts::lead_screw, parts::thrust_collar, parts::gear})
    for (const std::size_t side : {0U, 1U}) vise.push_back(std::make_shared<const Part>(make(small(), side)));
  base::Silence silence;
  const auto set = SolidSet::of(vise, silence);
  ASSERT_TRUE(set.has_value()) << set.error().front().wrong;
  ASSERT_EQ(set->size(), vise.size());
  for (std::size_t i = 0; i < set->size(); ++i) {
    ASSERT_EQ(set->bodies(i).size(), parts::bodies(*vise[i]).size()) << vise[i]->name;
    for (const BodySolid& body : set->bodies(i)) {
      EXPECT_TRUE(body.measures.valid && body.measures.closed && body.measures.solids == 1) << body.name;
      EXPECT_LT(body.measures.worst_tolerance_mm, 1e-3) << body.name;
      EXPECT_NEAR(body.measures.volume_mm3, body.own_volume_mm3, 1e-5 * body.own_volume_mm3) << body.name;
      EXPECT_NE(body.material, nullptr) << body.name;
    }
  }
}

/// A strip of 100 × 10 × 5 mm with a hole of this diameter in its middle.
Part strip(double hole_mm) {
  const auto* steel = small().screw.material;
  return parts::made_of("strip", parts::Bar{steel, {-50, -5, 0}, {100, 10, 5}}, {parts::drill("hole", parts::front(5), {0, 0}, hole_mm)});
}

base::Fault refusal(const Part& part) {
  const auto bodies = parts::bodies(part);
  const auto result = solid_of(bodies.front(), part.name);
  return result ? base::Fault{} : result.error().front();
}

// Expected: by hand. A hole of 9.8 mm leaves a web of 0.1 mm at both edges of a strip of 10 mm, one of 10.2 mm none.
TEST(Refused, HoleThatCutsAPartInTwo) {
  expect_volume(strip(9.8), (100 * 10 - disc(9.8)) * 5);
  const base::Fault fault = refusal(strip(10.2));
  EXPECT_EQ(fault.cause, base::Cause::geometry);
  EXPECT_EQ(fault.key, "strip");
  EXPECT_THAT(fault.wrong, ::testing::HasSubstr("2 pieces"));
  EXPECT_FALSE(fault.right.empty());
}

// Expected: a bore as wide as the rod leaves nothing to be a part.
TEST(Refused, BoreThatLeavesNothing) {
  const Part part = parts::made_of("sleeve", parts::Rod{small().screw.material, 12, 30}, {parts::drill("bore", parts::front(30), {0, 0}, 14)});
  const base::Fault fault = refusal(part);
  EXPECT_EQ(fault.cause, base::Cause::geometry);
  EXPECT_THAT(fault.key, ::testing::HasSubstr("sleeve"));
}

// Expected: an outline that crosses itself bounds no body. Its two lobes, 5 and 20 mm² of opposite sense, are no solid
// of one piece and one volume.
TEST(Refused, BlankThatCrossesItself) {
  const std::vector<geometry::Point> corners{{0, 0}, {10, 10}, {10, 0}, {0, 5}};
  std::vector<geometry::Edge> edges;
  for (std::size_t i = 0; i < corners.size(); ++i) edges.push_back(geometry::Line{corners[i], corners[(i + 1) % corners.size()]});
  parts::Bought blank{"bow", "", small().screw.material, {parts::Prism{geometry::region(geometry::trusted(edges)), {}, 0, 4}}, {}};
  const base::Fault fault = refusal(parts::bought("bow", std::move(blank)));
  EXPECT_EQ(fault.cause, base::Cause::geometry);
  EXPECT_THAT(fault.key, ::testing::HasSubstr("bow"));
}

}  // namespace
}  // namespace visewright::solids
