#include "kernel/step_document.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>
#include <thread>

#include "kernel/flanks.h"

namespace visewright {
namespace {

using kernel::Schema;
using kernel::StepDocument;

StepDocument sample() {
  StepDocument document(
      {"vise.step", {"first line", "second, with ü and 'quotes'"}, "2024-05-01T00:00:00", "visewright 0.1.0"});
  const auto plate =
      kernel::prism(geometry::region(geometry::rectangle({0, 0}, {80, 50}), {geometry::circle({20, 20}, 5)}), {}, 0, 12,
                    "plate")
          .value();
  const auto tooth = kernel::prism(geometry::region(kernel_tests::tooth().outline()), {}, 0, 20, "tooth").value();
  const auto root = document.add_assembly("0", "Bench vise");
  const auto group = document.add_assembly("1", "Moving");
  const auto a = document.add_product("1.1", "Plate Ø10 \\ \"wide\" 木", plate, {0.8F, 0.6F, 0.4F}, "beech");
  const auto b = document.add_product("1.2", "Tooth", tooth, {0.2F, 0.6F, 0.9F}, "cast polyamide");
  // The same body a second time: still a product of its own.
  const auto c = document.add_product("1.3", "Plate", plate, {0.8F, 0.6F, 0.4F}, "");
  document.place(root, group, {{0, 0, 5}, {1, 0, 0}, {0, 0, 1}}, "moving");
  for (int i = 0; i < 9; ++i)
    document.place(group, b, {{10.0 * i, 0, 0}, {0, 1, 0}, {1, 0, 0}}, "tooth " + std::to_string(i + 1));
  document.place(group, a, {}, "front plate");
  document.place(root, c, {{0, 100, 0}, {0.6, 0.8, 0}, {0, 0, 1}}, "rear plate");
  return document;
}

TEST(StepDocument, IsTheSameTwiceInOneProcess) {
  const std::string once = sample().to_bytes(Schema::ap214).value();
  EXPECT_EQ(once, sample().to_bytes(Schema::ap214).value());
  EXPECT_NE(once, sample().to_bytes(Schema::ap242).value());
  EXPECT_EQ(once, sample().to_bytes(Schema::ap214).value());
}

constexpr const char* place_to_write = "VISEWRIGHT_TEST_STEP_FILE";

// Addresses differ between processes, which is what upsets the order of the kernel's own colours.
TEST(StepDocument, IsTheSameInTwoProcesses) {
  if (const char* path = std::getenv(place_to_write)) {  // this is one of the two
    std::ofstream(path, std::ios::binary) << sample().to_bytes(Schema::ap214).value();
    return;
  }
  const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe");
  const std::string here = sample().to_bytes(Schema::ap214).value();
  for (int run = 0; run < 2; ++run) {
    const std::filesystem::path file = std::filesystem::path(testing::TempDir()) /
                                       ("step_process_" + std::to_string(::getpid()) + "_" + std::to_string(run));
    const std::string command = std::string(place_to_write) + "='" + file.string() + "' '" + program.string() +
                                "' --gtest_filter=StepDocument.IsTheSameInTwoProcesses >/dev/null 2>&1";
    ASSERT_EQ(std::system(command.c_str()), 0);
    std::stringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    std::filesystem::remove(file);
    EXPECT_EQ(bytes.str(), here);
  }
}

TEST(StepDocument, CanBeWrittenFromSeveralThreads) {
  const std::string expected = sample().to_bytes(Schema::ap214).value();
  std::vector<std::string> written(4);
  {
    std::vector<std::jthread> threads;
    for (std::string& out : written) threads.emplace_back([&out] { out = sample().to_bytes(Schema::ap214).value(); });
  }
  for (const std::string& out : written) EXPECT_EQ(out, expected);
}

TEST(StepDocument, SaysNothingOnStandardOutput) {
  testing::internal::CaptureStdout();
  EXPECT_TRUE(sample().to_bytes(Schema::ap214).has_value());
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
}

TEST(StepDocument, RefusesWhatItCannotSay) {
  const auto box = kernel::prism(geometry::region(geometry::rectangle({0, 0}, {1, 1})), {}, 0, 1, "box").value();
  StepDocument twice({});
  twice.add_product("1", "a", box, {}, "");
  twice.add_product("1", "b", box, {}, "");
  EXPECT_FALSE(twice.to_bytes(Schema::ap214).has_value());
  StepDocument hollow({});
  hollow.add_assembly("1", "a");
  EXPECT_FALSE(hollow.to_bytes(Schema::ap214).has_value());
  EXPECT_FALSE(StepDocument({}).to_bytes(Schema::ap214).has_value());
  StepDocument alone({});
  alone.add_product("1", "a", box, {}, "");
  EXPECT_TRUE(alone.to_bytes(Schema::ap214).has_value());
}

}  // namespace
}  // namespace visewright
