// The presets: nothing fails, all is proved over the whole travel, and no solid has to be asked.
#include <variant>

#include "fitup/fits.h"
#include "fitup/rules.h"
#include "fitup/stood.h"

namespace visewright::fitup {
namespace {

using reasons::Verdict;

Report without_solids(const layout::Plan& plan, const assembly::Assembly& assembly) {
  base::Silence silence;
  auto report = check(plan, assembly, solids::SolidSet{}, silence);
  if (!report) throw std::runtime_error(report.error().front().wrong);
  return std::move(*report);
}

class Presets : public testing::TestWithParam<const char*> {
 protected:
  layout::Plan plan_ = layout::good_plan(text_of(GetParam()));
  assembly::Assembly assembly_ = assembly::assemble(plan_);
  Report report_ = without_solids(plan_, assembly_);
};

TEST_P(Presets, NoFalseAlarm) {
  EXPECT_EQ(failures(report_), "");
  EXPECT_EQ(report_.poses_measured, 0);
  EXPECT_EQ(about(report_, rules::unproved, {}), nullptr);
}

// Law: certified only when the proved stretches cover the whole travel, end to end, each at its limit or better.
TEST_P(Presets, ProvedStretchesCoverTheTravel) {
  int asked = 0;
  for (const Couple& c : report_.couples) {
    if (c.fit && std::holds_alternative<assembly::Meshing>(*c.fit)) continue;
    ++asked;
    ASSERT_TRUE(c.certified);
    double to = 0;
    for (const Stretch& s : c.proved) {
      EXPECT_EQ(s.from_mm, to);
      EXPECT_GE(s.least_mm, c.limit_mm - 1e-6);
      to = s.to_mm;
    }
    EXPECT_EQ(to, assembly_.opening_max_mm);
  }
  EXPECT_GT(asked, 100);
}

// Expected: every declared fit is judged, each kind at least once, and the analytic backlash is met to two micrometres.
TEST_P(Presets, FitsAndMeshes) {
  for (const auto* rule : {&rules::press, &rules::sliding, &rules::threaded, &rules::touching, &rules::bonded, &rules::mesh_gap, &rules::mesh_backlash})
    EXPECT_NE(about(report_, *rule, {}), nullptr) << rule->name;
  ASSERT_EQ(report_.meshes.size(), plan_.train.meshes.size());
  for (std::size_t i = 0; i < report_.meshes.size(); ++i) {
    EXPECT_NEAR(report_.meshes[i].backlash_mm, plan_.train.meshes[i].backlash.mm(), 2e-3);
    EXPECT_NEAR(report_.meshes[i].normal_backlash_mm, plan_.train.meshes[i].normal_backlash.mm(), 2e-3);
  }
}

// The maker's gaps come first, in their order.
TEST_P(Presets, NamedGapsComeFirst) {
  const auto named = named_gaps();
  std::size_t k = 0;
  for (const auto& f : report_.findings) {
    const auto at = static_cast<std::size_t>(std::find(named.begin(), named.end(), f.rule) - named.begin());
    if (at == named.size()) break;
    EXPECT_GE(at, k);
    k = at;
    EXPECT_TRUE(f.certified);
  }
  EXPECT_EQ(report_.findings.front().rule, &rules::jaw_to_bench);
}

// Law: the same input gives the same findings.
TEST_P(Presets, TheSameTwice) {
  const Report again = without_solids(plan_, assembly_);
  ASSERT_EQ(again.findings.size(), report_.findings.size());
  for (std::size_t i = 0; i < again.findings.size(); ++i)
    EXPECT_EQ(say(again.findings[i], units::LengthUnit::millimetre), say(report_.findings[i], units::LengthUnit::millimetre));
}

INSTANTIATE_TEST_SUITE_P(All, Presets, testing::ValuesIn(layout::preset_names));

// Expected: by hand. The bush bore less the rod, and its half as the gap, over the whole travel; the nut's length over the
// rod's diameter.
TEST(Fits, NumbersThatDecide) {
  const layout::Plan plan = layout::good_plan(text_of("joinery-bench"));
  const assembly::Assembly some = only(assembly::assemble(plan), {"lead screw, left", "rear bush, left", "nut block, left"});
  const auto all = stands(some);
  int found = 0;
  for (Couple& c : couples(some, all, 6)) {
    ASSERT_TRUE(prove(c, all, some.opening_max_mm, 6));
    const auto finding = fit_finding(c, all, some);
    if (!finding) continue;
    ++found;
    if (finding->rule == &rules::sliding) {
      EXPECT_NEAR(finding->measured, plan.rear_jaw.bush_bore.mm() - plan.screw.diameter.mm(), 1e-6);
      EXPECT_NEAR(c.gap_mm, finding->measured / 2, 1e-6);
      EXPECT_TRUE(c.exact);
    } else {
      EXPECT_EQ(finding->rule, &rules::threaded);
      EXPECT_NEAR(finding->measured, plan.rear_nut.length.mm() / plan.screw.diameter.mm(), 1e-6);
    }
  }
  EXPECT_EQ(found, 2);
}

}  // namespace
}  // namespace visewright::fitup
