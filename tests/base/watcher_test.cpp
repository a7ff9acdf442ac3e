#include "base/watcher.h"

#include <gtest/gtest.h>

namespace visewright::base {
namespace {

TEST(Silence, NeverAsksToStop) {
  Silence silence;
  silence.step("anything", 0.5);
  silence.note("anything");
  EXPECT_FALSE(silence.wants_stop());
}

}  // namespace
}  // namespace visewright::base
