// Faults planted in a good design, and near misses beside them.
#include <algorithm>
#include <map>
#include <sstream>

#include "assembly/assemble.h"
#include "fitup/check.h"
#include "fitup/rules.h"
#include "layout/planning.h"

namespace visewright::fitup {
namespace {

using layout::preset_text;
using layout::with;
using reasons::Finding;
using reasons::Verdict;

const std::string small_name = "small-instrument-bench";
const char* const drawer = "[[bench.obstacle]]";

/// A block 40 mm square about a screw's axis (88 mm below the bench top, 80 mm beside the middle), from `back_mm` behind
/// the bench edge.
std::string block(const std::string& name, double x_mm, double back_mm) {
  std::ostringstream text;
  text.precision(12);
  text << "[[bench.obstacle]]\nname = \"" << name << "\"\nfrom = [" << x_mm - 20 << ", " << back_mm << ", 68]\nto = [" << x_mm + 20 << ", "
       << back_mm + 2 << ", 108]\n";
  return text.str();
}

/// How far the screws reach behind the bench edge at opening 0, and the gap that moving parts must keep.
struct Reach {
  double tail_mm, gap_mm;
};
Reach reach() {
  const layout::Plan plan = layout::good_plan(preset_text(small_name));
  return {-plan.screw.tail_out.mm(), plan.gaps.moving_to_fixed.mm()};
}

/// The assembly with these placed parts alone.
assembly::Assembly only(const assembly::Assembly& whole, const std::vector<std::string>& names) {
  assembly::Assembly some;
  some.opening_max_mm = whole.opening_max_mm;
  some.moving_to_fixed_mm = whole.moving_to_fixed_mm;
  std::map<std::uint32_t, std::uint32_t> index;
  for (std::uint32_t i = 0; i < whole.placed.size(); ++i) {
    if (std::find(names.begin(), names.end(), whole.placed[i].name) == names.end()) continue;
    index[i] = static_cast<std::uint32_t>(some.placed.size());
    some.placed.push_back(whole.placed[i]);
    some.placed.back().part = static_cast<std::uint32_t>(some.parts.size());
    some.parts.push_back(whole.parts[whole.placed[i].part]);
  }
  for (const auto& pair : whole.declared)
    if (index.contains(pair.a) && index.contains(pair.b)) some.declared.push_back({index[pair.a], index[pair.b], pair.fit});
  if (some.placed.size() != names.size()) throw std::runtime_error("a part that is not there");
  return some;
}

std::vector<Finding> checked(const layout::Plan& plan, const assembly::Assembly& assembly) {
  base::Silence silence;
  const auto solids = solids::SolidSet::of(assembly.parts, silence);
  if (!solids) throw std::runtime_error(solids.error().front().wrong);
  auto report = check(plan, assembly, *solids, silence);
  if (!report) throw std::runtime_error(report.error().front().wrong);
  return report->findings;
}

/// The right screw with its stop and what is named, and nothing else.
std::vector<Finding> beside_the_screw(const std::string& text, std::vector<std::string> names) {
  const layout::Plan plan = layout::good_plan(text);
  names.insert(names.end(), {"lead screw, right", "end-stop pin, right"});
  return checked(plan, only(assembly::assemble(plan), names));
}

const Finding* about(const std::vector<Finding>& findings, const reasons::Rule& rule, const std::string& a, const std::string& b) {
  for (const Finding& f : findings) {
    const auto holds = [&](const std::string& name) { return std::find(f.parts.begin(), f.parts.end(), name) != f.parts.end(); };
    if (f.rule == &rule && holds(a) && holds(b)) return &f;
  }
  return nullptr;
}

std::string failures(const std::vector<Finding>& findings) {
  std::string all;
  for (const Finding& f : findings)
    if (f.verdict == Verdict::fail) all += say(f, units::LengthUnit::millimetre) + "\n";
  return all;
}

std::string with_block(double back_mm) {
  return with(preset_text(small_name), drawer, block("ledge", 80, back_mm) + "\n" + drawer);
}

// Expected: the end of the screw is flat and square to its axis, and the block's face is parallel to it, so the gap at
// opening 0 is what the block stands behind it: just above the general gap is good, just below is not.
TEST(Planted, BlockBehindTheTailOfTheScrew) {
  const auto [tail, gap] = reach();
  const auto near_miss = beside_the_screw(with_block(tail + gap + 0.01), {"ledge", "drawer"});
  EXPECT_EQ(failures(near_miss), "");
  const auto close = beside_the_screw(with_block(tail + gap - 0.01), {"ledge"});
  const Finding* found = about(close, rules::gap, "lead screw, right", "ledge");
  ASSERT_NE(found, nullptr);
  EXPECT_EQ(found->verdict, Verdict::fail);
  EXPECT_NEAR(found->measured, gap - 0.01, 1e-5);
  EXPECT_EQ(found->limit, gap);
  ASSERT_TRUE(found->where.has_value());
  EXPECT_EQ(found->where->opening_mm, 0);
  EXPECT_FALSE(found->advice.empty());
}

// Expected: a block 2 mm thick stood 10 mm clear of the gap. A screw that reaches 4 mm beyond its face runs right
// through it, with a rod of 16 mm that is whole there (the stop's hole is further in): π/4 · 16² · 2 = 402.124 mm³.
TEST(Planted, LongerScrewRunsIntoABlockThatWasClear) {
  const auto [tail, gap] = reach();
  const std::string clear = with_block(tail + gap + 10);
  EXPECT_EQ(failures(beside_the_screw(clear, {"ledge"})), "");
  const double length = layout::good_plan(clear).screw.length.mm() + gap + 10 + 4;
  const std::string longer = with(clear, "thread = \"M16\" ", "length = " + std::to_string(length) + "\nthread = \"M16\" ");
  const auto findings = beside_the_screw(longer, {"ledge"});
  const Finding* found = about(findings, rules::overlap, "lead screw, right", "ledge");
  ASSERT_NE(found, nullptr);
  EXPECT_EQ(found->verdict, Verdict::fail);
  EXPECT_NEAR(found->measured, 402.124, 0.01);
}

// Expected: of the whole vise, just what was planted fails. A rod of 16 mm that ends 1.5 mm deep in a block shares
// π/4 · 16² · 1.5 = 301.593 mm³ with it. Gears of module 2 with 0.35 mm backlash bear to be 0.35/(2 tan 20°) = 0.48 mm
// too close: 0.3 mm passes, 0.6 mm bites, tips at least 0.1 mm into roots with 0.5 mm of clearance.
TEST(PlantedSlow, OnlyWhatWasPlantedFailsInTheWholeVise) {
  const auto [tail, gap] = reach();
  std::string text = with(preset_text(small_name), drawer, block("shelf", -80, tail - 1.5) + block("ledge", 80, tail + gap + 0.05) + "\n" + drawer);
  text = with(text, "module = 2 ", "centre_distances = [79.4, 79.7]\nmodule = 2 ");
  const layout::Plan plan = layout::good_plan(text);
  const auto findings = checked(plan, assembly::assemble(plan));
  const Finding* hit = about(findings, rules::overlap, "lead screw, left", "shelf");
  ASSERT_NE(hit, nullptr) << failures(findings);
  EXPECT_EQ(hit->verdict, Verdict::fail);
  EXPECT_NEAR(hit->measured, 301.593, 0.01);
  const Finding* missed = about(findings, rules::gap, "lead screw, right", "ledge");
  EXPECT_TRUE(missed == nullptr || missed->verdict == Verdict::pass);
  const Finding *tight = about(findings, rules::mesh_gap, "gear 1", "gear 2"), *loose = about(findings, rules::mesh_gap, "gear 2", "gear 3");
  ASSERT_TRUE(tight != nullptr && loose != nullptr);
  EXPECT_EQ(tight->verdict, Verdict::fail);
  EXPECT_LT(tight->measured, -0.099);
  EXPECT_GT(tight->measured, -0.5);
  EXPECT_EQ(loose->verdict, Verdict::pass);
  EXPECT_EQ(std::count_if(findings.begin(), findings.end(), [](const Finding& f) { return f.verdict == Verdict::fail; }), 2) << failures(findings);
}

}  // namespace
}  // namespace visewright::fitup
