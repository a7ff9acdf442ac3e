#include "base/fault.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace visewright::base {
namespace {

using testing::ElementsAre;

TEST(Fault, EachCauseHasTheExitStatusThatTheManualLists) {
  EXPECT_EQ(exit_status(Cause::input), 2);
  EXPECT_EQ(exit_status(Cause::output), 3);
  EXPECT_EQ(exit_status(Cause::geometry), 4);
  EXPECT_EQ(exit_status(Cause::interrupted), 130);
  EXPECT_EQ(exit_status(Cause::own_mistake), 70);
}

TEST(Fault, SortsByTextLineAndColumnAndPutsPlacelessOnesLast) {
  const auto at = [](std::string key, std::optional<Place> place) { return Fault{Cause::input, place, key, "", ""}; };
  Faults faults{at("none a", std::nullopt),           at("text 1", Place{1, 1, 1}),    at("line 9", Place{0, 9, 1}),
                at("column 5", Place{0, 3, 5}),       at("column 2", Place{0, 3, 2}),  at("none b", std::nullopt),
                at("column 5 again", Place{0, 3, 5}), at("whole text", Place{0, 0, 0})};
  in_line_order(faults);
  std::vector<std::string> keys;
  for (const Fault& f : faults) keys.push_back(f.key);
  EXPECT_THAT(keys, ElementsAre("whole text", "column 2", "column 5", "column 5 again", "line 9", "text 1", "none a",
                                "none b"));
}

TEST(Fault, ResultsCarryEveryFaultOn) {
  const Result<int> failed = fault(Cause::geometry, "jaw", "too thin", "at least 30 mm", Place{0, 4, 2});
  ASSERT_FALSE(failed.has_value());
  const Result<double> passed = passed_on(failed.error());
  ASSERT_EQ(passed.error().size(), 1U);
  EXPECT_EQ(passed.error()[0].cause, Cause::geometry);
  EXPECT_EQ(passed.error()[0].key, "jaw");
  EXPECT_EQ(passed.error()[0].wrong, "too thin");
  EXPECT_EQ(passed.error()[0].right, "at least 30 mm");
  EXPECT_EQ(passed.error()[0].place, (Place{0, 4, 2}));
}

}  // namespace
}  // namespace visewright::base
