// output_samples/ holds what the demo writes. A change detector, never counted as a check: it says that an output
// changed its shape, not that it is right. Words must be the same; numbers may differ by what other processors round.
#include <gtest/gtest.h>

#include <charconv>
#include <cmath>
#include <fstream>
#include <iterator>
#include <string>

#include "base/watcher.h"
#include "pipeline/front_door.h"
#include "support/scratch_folder.h"

namespace {

using namespace visewright;

std::string bytes_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

bool starts_number(char c) { return (c >= '0' && c <= '9') || c == '-'; }

/// Where two texts first differ by more than rounding; empty when they do not.
std::string difference(const std::string& a, const std::string& b) {
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    double x = 0, y = 0;
    if (starts_number(a[i]) && starts_number(b[j])) {
      const auto p = std::from_chars(a.data() + i, a.data() + a.size(), x), q = std::from_chars(b.data() + j, b.data() + b.size(), y);
      if (p.ec == std::errc() && q.ec == std::errc()) {
        if (std::abs(x - y) > 1e-6 * std::max(1.0, std::abs(x))) return a.substr(i, 60) + " against " + b.substr(j, 60);
        i = static_cast<std::size_t>(p.ptr - a.data());
        j = static_cast<std::size_t>(q.ptr - b.data());
        continue;
      }
    }
    if (a[i] != b[j]) return a.substr(i, 60) + " against " + b.substr(j, 60);
    ++i;
    ++j;
  }
  return i == a.size() && j == b.size() ? "" : "one text is longer";
}

TEST(SamplesSlow, AreWhatTheDemoWrites) {
  const std::string samples = std::string(VISEWRIGHT_SOURCE_DIR) + "/output_samples";
  const support::ScratchFolder scratch;
  base::Silence silence;
  pipeline::MakeJob job;
  job.design = std::string(VISEWRIGHT_SOURCE_DIR) + "/presets/designs/small-instrument-bench.toml";
  job.folder = (scratch.path() / "vise").string();
  const auto made = pipeline::make(job, silence);
  ASSERT_TRUE(made) << made.error().front().wrong;
  for (const std::string name : {"bill_of_materials.csv", "bill_of_materials.md", "bill_of_materials.json", "findings.json", "plan.json", "size.json",
                                 "papers/order-of-work.md", "papers/cut-list.md", "papers/hardware.md", "papers/setting-out.svg",
                                 "papers/templates/cover-back.svg", "papers/templates/cover-back.dxf", "papers/templates/master-hole-pattern.svg",
                                 "papers/drawings/section-through-a-drive-screw-1.svg"}) {
    const std::string kept = bytes_of(samples + "/" + name);
    ASSERT_FALSE(kept.empty()) << name;
    EXPECT_EQ(difference(kept, bytes_of(job.folder + "/" + name)), "") << name;
  }
}

}  // namespace
