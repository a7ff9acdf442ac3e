#include "base/nearest.h"

#include <gtest/gtest.h>

#include <array>

namespace visewright::base {
namespace {

TEST(EditsBetween, CountedByHand) {
  EXPECT_EQ(edits_between("", ""), 0U);
  EXPECT_EQ(edits_between("", "jaw"), 3U);
  EXPECT_EQ(edits_between("jaw", "jaw"), 0U);
  EXPECT_EQ(edits_between("jaw", "law"), 1U);
  EXPECT_EQ(edits_between("screw", "crew"), 1U);
  // k→s, e→i, +g: the usual textbook pair.
  EXPECT_EQ(edits_between("kitten", "sitting"), 3U);
  EXPECT_EQ(edits_between("ab", "ba"), 2U) << "a swap is two edits here";
}

TEST(EditsBetween, IsADistance) {
  const std::array<std::string_view, 6> words{"", "jaw", "jaws", "gear", "rear", "screws"};
  for (const std::string_view a : words) {
    for (const std::string_view b : words) {
      EXPECT_EQ(edits_between(a, b), edits_between(b, a));
      for (const std::string_view c : words) EXPECT_LE(edits_between(a, c), edits_between(a, b) + edits_between(b, c));
    }
  }
}

TEST(NearestName, FindsTheMistypedKeyAndTheFirstOfEquals) {
  const std::array<std::string_view, 4> keys{"backlash", "face_width", "module", "teeth"};
  EXPECT_EQ(nearest_name("modul", keys), "module");
  EXPECT_EQ(nearest_name("facewidth", keys), "face_width");
  EXPECT_EQ(nearest_name("teath", keys), "teeth");
  const std::array<std::string_view, 2> equals{"cat", "bat"};
  EXPECT_EQ(nearest_name("rat", equals), "cat");
  EXPECT_EQ(nearest_name("rat", {}), "");
}

}  // namespace
}  // namespace visewright::base
