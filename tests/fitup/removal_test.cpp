// Taking vises apart.
#include "fitup/removal.h"

#include <algorithm>

#include "fitup/stood.h"

namespace visewright::fitup {
namespace {

std::vector<std::string> order_of(const assembly::Assembly& a) {
  std::vector<std::string> names;
  for (const TakenOff& t : taken_apart(a, stands(a)).order) names.push_back(a.placed[t.placed].name);
  return names;
}
std::size_t at(const std::vector<std::string>& order, const std::string& name) {
  return static_cast<std::size_t>(std::find(order.begin(), order.end(), name) - order.begin());
}

// Expected: how such a vise is taken apart: the wheel before the cover, the cover before any gear, a gear before the
// collar in it; and nothing is left.
class OfPresets : public testing::TestWithParam<const char*> {};
TEST_P(OfPresets, ComeApart) {
  const assembly::Assembly a = assembly::assemble(layout::good_plan(text_of(GetParam())));
  const Removal removal = taken_apart(a, stands(a));
  std::string stuck;
  for (const auto p : removal.stuck) stuck.append(a.placed[p].name).append("; ");
  EXPECT_EQ(stuck, "");
  const auto order = order_of(a);
  const std::size_t cover = at(order, "cover"), gear = at(order, "gear 1");
  ASSERT_LT(cover, order.size());
  EXPECT_LT(cover, gear);
  EXPECT_LT(gear, at(order, "thrust collar, left"));
  for (const std::string& one : order) {
    if (!one.starts_with("hand wheel")) continue;
    EXPECT_LT(at(order, one), cover);
    std::string lock = "lock screw";
    lock.append(one, 10, std::string::npos);
    EXPECT_LT(at(order, lock), at(order, one));
  }
}
INSTANTIATE_TEST_SUITE_P(All, OfPresets, testing::ValuesIn(layout::preset_names));

// Expected: by hand. A block in a closed case has no way out; in one with a shaft as wide as the block it has; in one
// whose shaft is a hundredth too narrow it has not.
TEST(Removal, BlockInACase) {
  const auto stuck = [](const std::vector<parts::Shape>& hollow) {
    Stood s;
    s.add(piece("case", {block({-10, -10, -10}, {10, 10, 10})}, hollow));
    s.add(piece("block", {block({-2, -2, -2}, {2, 2, 2})}));
    s.assembly.declared.push_back({0, 1, assembly::Sliding{}});
    return taken_apart(s.assembly, stands(s.assembly)).stuck.size();
  };
  EXPECT_EQ(stuck({block({-3, -3, -3}, {3, 3, 3})}), 2U);
  EXPECT_EQ(stuck({block({-3, -3, -3}, {3, 3, 3}), block({-2, -2, 0}, {2, 2, 11})}), 0U);
  EXPECT_EQ(stuck({block({-3, -3, -3}, {3, 3, 3}), block({-1.99, -1.99, 0}, {1.99, 1.99, 11})}), 2U);
}

}  // namespace
}  // namespace visewright::fitup
