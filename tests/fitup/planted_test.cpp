// Faults planted in a good design, each with its near miss beside it.
#include <cmath>
#include <sstream>

#include "fitup/gaps.h"
#include "fitup/meshes.h"
#include "fitup/rules.h"
#include "fitup/stood.h"

namespace visewright::fitup {
namespace {

using layout::preset_text;
using layout::with;
using reasons::Finding;
using reasons::Verdict;

const std::string small_name = "small-instrument-bench";
const char* const drawer = "[[bench.obstacle]]";

/// A block in the design file: its middle and half sizes as [right, back, down].
std::string obstacle(const std::string& name, const geometry::Vector& middle, const geometry::Vector& half) {
  std::ostringstream text;
  text.precision(12);
  text << "[[bench.obstacle]]\nname = \"" << name << "\"\nfrom = [" << middle[0] - half[0] << ", " << middle[1] - half[1] << ", " << middle[2] - half[2]
       << "]\nto = [" << middle[0] + half[0] << ", " << middle[1] + half[1] << ", " << middle[2] + half[2] << "]\n";
  return text.str();
}
std::string with_obstacle(const std::string& one) { return with(preset_text(small_name), drawer, one + "\n" + drawer); }
/// A block 40 mm square and 2 thick about the right screw's axis, from `back_mm` behind the bench edge.
std::string behind_the_screw(double back_mm) { return with_obstacle(obstacle("ledge", {80, back_mm + 1, 88}, {20, 1, 20})); }

const layout::Plan& plain() {
  static const layout::Plan plan = layout::good_plan(preset_text(small_name));
  return plan;
}
double gap_mm() { return plain().gaps.moving_to_fixed.mm(); }
/// How far the screws reach behind the bench edge at opening 0.
double tail_mm() { return -plain().screw.tail_out.mm(); }

Report beside_the_screw(const std::string& text, std::vector<std::string> names) {
  const layout::Plan plan = layout::good_plan(text);
  names.insert(names.end(), {"lead screw, right", "end-stop pin, right"});
  return checked(plan, only(assembly::assemble(plan), names));
}

void expect_failed(const Finding* found, double measured, double limit) {
  ASSERT_NE(found, nullptr);
  EXPECT_EQ(found->verdict, Verdict::fail);
  EXPECT_NEAR(found->measured, measured, 1e-3);
  EXPECT_NEAR(found->limit, limit, 1e-9);
  EXPECT_TRUE(found->where.has_value());
  EXPECT_FALSE(found->advice.empty());
}

// Expected: the end of the screw is flat and square to its axis, and the block's face is parallel to it, so the gap at
// opening 0 is what the block stands behind it: just above the general gap is good, just below is not, and 0.1 mm short of
// touching is a gap of 0.1.
TEST(Planted, BlockBehindTheTailOfTheScrew) {
  EXPECT_EQ(failures(beside_the_screw(behind_the_screw(tail_mm() + gap_mm() + 0.01), {"ledge", "drawer"})), "");
  for (const double left : {gap_mm() - 0.01, 0.1}) {
    const Report close = beside_the_screw(behind_the_screw(tail_mm() + left), {"ledge"});
    const Finding* found = about(close, rules::gap, {"lead screw, right", "ledge"});
    expect_failed(found, left, gap_mm());
    EXPECT_EQ(found->where->opening_mm, 0);
    expect_failed(about(close, rules::screw_to_obstacle, {"lead screw, right", "ledge"}), left, gap_mm());
    EXPECT_EQ(close.poses_measured, 0);
  }
}

// Expected: a block 2 mm thick stood 10 mm clear of the gap. A screw that reaches 4 mm beyond its face runs right
// through it, with a rod of 16 mm that is whole there (the stop's hole is further in): π/4 · 16² · 2 = 402.124 mm³.
TEST(Planted, LongerScrewRunsIntoABlockThatWasClear) {
  const std::string clear = behind_the_screw(tail_mm() + gap_mm() + 10);
  EXPECT_EQ(failures(beside_the_screw(clear, {"ledge"})), "");
  const double length = layout::good_plan(clear).screw.length.mm() + gap_mm() + 10 + 4;
  const std::string longer = with(clear, "thread = \"M16\" ", "length = " + std::to_string(length) + "\nthread = \"M16\" ");
  const Report report = beside_the_screw(longer, {"ledge"});
  expect_failed(about(report, rules::overlap, {"lead screw, right", "ledge"}), 402.124, overlap_mm3);
  for (const Couple& c : report.couples) EXPECT_EQ(c.common.has_value(), c.common_mm3 > overlap_mm3);
}

// Expected: by hand. An apron that nobody bored, 5 mm of the screw in it: π/4 · 16² · 5 = 1005.31 mm³ at opening 0; with
// its face 3.01 behind the screw's end it is clear.
TEST(Planted, ScrewTooLongForTheApron) {
  const auto apron = [](double back_mm) { return with_obstacle(obstacle("apron board", {80, back_mm + 10, 88}, {40, 10, 40})); };
  const Report through = beside_the_screw(apron(tail_mm() - 5), {"apron board"});
  const Finding* found = about(through, rules::overlap, {"lead screw, right", "apron board"});
  expect_failed(found, 1005.31, overlap_mm3);
  EXPECT_NEAR(found->where->opening_mm, 0, 1e-6);
  EXPECT_EQ(failures(beside_the_screw(apron(tail_mm() + 3.01), {"apron board"})), "");
}

// Expected: by hand. A rim turned in by d stands d nearer to the notch of the bench top behind it; 3.01 is clear, 2.9 too
// near, and 5 mm in the wood it overlaps.
TEST(Planted, WheelAgainstTheBenchTop) {
  const assembly::Assembly whole = assembly::assemble(plain());
  const auto stood = [&](double left) {
    auto some = only(whole, {"hand wheel, right", "bench top"});
    placed(some, "hand wheel, right").shut.origin_mm[1] += plain().wheel.rim_rear_out.mm() + plain().bench.notch_depth.mm() - left;
    return checked(plain(), some);
  };
  EXPECT_EQ(about(stood(3.01), rules::overlap, {}), nullptr);
  const Report good = stood(3.01), near_it = stood(2.9), in_it = stood(-5);
  const Finding* kept = about(good, rules::gap, {"hand wheel, right", "bench top"});
  EXPECT_TRUE(kept == nullptr || kept->verdict == Verdict::pass);
  expect_failed(about(near_it, rules::gap, {"hand wheel, right", "bench top"}), 2.9, gap_mm());
  const Finding* hit = about(in_it, rules::overlap, {"hand wheel, right", "bench top"});
  ASSERT_NE(hit, nullptr);
  EXPECT_GT(hit->measured, 100);
}

/// The small vise's cover and first gear, the cover moved in.
assembly::Assembly cover_moved_in(double by) {
  auto some = only(assembly::assemble(plain()), {"cover", "gear 1"});
  placed(some, "cover").shut.origin_mm[1] += by;
  return some;
}
double cover_gap_mm(double by) {
  const auto some = cover_moved_in(by);
  for (const Finding& f : named_gap_findings(plain(), some, stands(some)))
    if (f.rule == &rules::cover_to_gears) return f.verdict == Verdict::pass ? f.measured : -1;
  return 1e300;
}

// Expected: by hand. A cover moved in by what it has to the gears less 0.1 keeps 0.1; by all of it, it rubs.
TEST(Planted, CoverThatRubs) {
  const double room = cover_gap_mm(0);
  ASSERT_GT(room, 1);
  EXPECT_NEAR(cover_gap_mm(room - 0.1), 0.1, 1e-3);
  EXPECT_EQ(cover_gap_mm(room), -1);
  EXPECT_EQ(cover_gap_mm(room + 0.1), -1);
}
TEST(PlantedSlow, CoverThatRubsOverlapsTheGear) {
  const Report rubs = checked(plain(), cover_moved_in(cover_gap_mm(0) + 0.1));
  EXPECT_NE(about(rubs, rules::overlap, {"cover", "gear 1"}), nullptr) << failures(rubs);
}

// Expected: by hand. A leg 10 mm square and 10 high that a bracket's down leg stands in over its whole thickness; aside by
// half the bracket and 5 it only touches.
TEST(Planted, BracketThroughALeg) {
  const auto& b = plain().bracket;
  const double x = b.x[0].mm(), back = -plain().rear_jaw.rear_out.mm() + b.thickness.mm() / 2, down = plain().bench.top_thickness.mm() + b.down_leg.mm() - 5;
  const auto leg = [&](double aside) {
    const layout::Plan plan = layout::good_plan(with_obstacle(obstacle("leg", {x + aside, back, down}, {5, 5, 5})));
    return checked(plan, only(assembly::assemble(plan), {"bracket 1", "leg"}));
  };
  expect_failed(about(leg(0), rules::overlap, {"bracket 1", "leg"}), 10 * 10 * b.thickness.mm() - 0, overlap_mm3);
  EXPECT_EQ(failures(leg(b.width.mm() / 2 + 5)), "");
}

// Expected: by hand. The end stop sweeps a circle through the corners of its pin, √((l/2)² + r²); in a hole of 40 mm that
// is left 3.01 all round when it is clear, and jams when it passes 20.1.
TEST(Planted, EndStopInTheApronHole) {
  const assembly::Assembly whole = assembly::assemble(plain());
  const double out = plain().screw.stop_out.mm(), r = plain().screw.stop_pin.mm() / 2, x = plain().screws.holes[1].at.x;
  const auto stop = [&](double reach) {
    auto some = only(whole, {"end-stop pin, right"});
    const double length = 2 * std::sqrt(reach * reach - r * r);
    auto& pin = placed(some, "end-stop pin, right");
    const auto middle = geometry::plus(pin.shut.origin_mm, geometry::times(plain().screw.stop_length.mm() / 2, pin.shut.z_axis));
    pin.shut.origin_mm = geometry::plus(middle, geometry::times(-length / 2, pin.shut.z_axis));
    swap_part(some, "end-stop pin, right", piece("end-stop pin", {parts::cylinder(2 * r, 0, length)}));
    assembly::Placed apron;
    apron.part = static_cast<std::uint32_t>(some.parts.size());
    apron.name = "apron";
    apron.shut = {{x, -(out + 20), 0}, {1, 0, 0}, {0, -1, 0}};
    some.parts.push_back(std::make_shared<const parts::Part>(piece("apron", {block({-60, -60, 0}, {60, 60, 25})}, {parts::cylinder(40, -1, 26)})));
    some.placed.push_back(std::move(apron));
    return checked(plain(), some);
  };
  const Report clear = stop(20 - 3.01), close = stop(20 - 0.1), jams = stop(20.1);
  EXPECT_EQ(failures(clear), "");
  const Finding* found = about(close, rules::stop_to_apron, {"apron", "end-stop pin, right"});
  expect_failed(found, 0.1, gap_mm());
  EXPECT_GE(found->where->opening_mm, 20 - r - gap_mm());
  EXPECT_LE(found->where->opening_mm, 45 + r);
  EXPECT_NE(about(jams, rules::overlap, {"apron", "end-stop pin, right"}), nullptr) << failures(jams);
}

// Expected: gears of module 2 with 0.35 mm backlash bear to be 0.35/(2 tan 20°) = 0.48 mm too close: 0.3 mm passes. With
// 0.15 mm backlash that is 0.21, and 0.3 bites by (0.3 · 2 sin 20° − 0.15 cos 20°)/2 = 0.032 on each flank, and a little more
// where tips, 0.15 of the module deeper than a rack of its height cut, come into the fillets.
TEST(Planted, GearsThreeTenthsTooClose) {
  const auto closer = [](const std::string& backlash) {
    return mesh_checks(layout::good_plan(with(preset_text(small_name), "module = 2 ", "centre_distances = [79.7, 80]\nbacklash = " + backlash + "\nmodule = 2 ")));
  };
  const auto find = [](const MeshChecks& checks, const std::string& gear) -> const Finding* {
    for (const Finding& f : checks.findings)
      if (f.rule == &rules::mesh_gap && f.parts.front() == gear) return &f;
    return nullptr;
  };
  EXPECT_EQ(find(closer("0.35"), "gear 1")->verdict, Verdict::pass);
  const MeshChecks tight = closer("0.15");
  ASSERT_NE(find(tight, "gear 1"), nullptr);
  EXPECT_EQ(find(tight, "gear 1")->verdict, Verdict::fail);
  EXPECT_LT(find(tight, "gear 1")->measured, -0.030);
  EXPECT_GT(find(tight, "gear 1")->measured, -0.060);
  EXPECT_EQ(find(tight, "gear 2"), nullptr);
}

}  // namespace
}  // namespace visewright::fitup
