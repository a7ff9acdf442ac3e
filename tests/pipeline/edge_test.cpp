#include <nlohmann/json.hpp>
#include <stdexcept>

#include "pipeline/disk.h"
#include "pipeline/fault_text.h"
#include "pipeline/last_door.h"
#include "support/scratch_folder.h"

namespace visewright::pipeline {
namespace {

using base::Cause;
using base::Fault;
using base::Place;

TEST(FaultText, GivesOneLineAFaultInLineOrder) {
  const base::Faults faults{{Cause::input, std::nullopt, "design", "is short", ""},
                            {Cause::input, Place{0, 12, 3}, "train.module", "is negative", "give a length above 0"},
                            {Cause::input, Place{1, 2, 1}, "drills", "is no list", "a list of lengths"},
                            {Cause::input, Place{0, 4, 1}, "titel", "is unknown", "did you mean title"}};
  EXPECT_EQ(as_text(faults, "bench.toml"),
            "bench.toml:4:1: titel: is unknown; did you mean title\n"
            "bench.toml:12:3: train.module: is negative; give a length above 0\n"
            "(shop):2:1: drills: is no list; a list of lengths\n"
            "design: is short\n");
}

TEST(FaultText, LetsNothingSteerATerminal) {
  EXPECT_EQ(as_text({{Cause::input, std::nullopt, "a\x1b[31m\nb", "is\rbad", ""}}, ""), "a?[31m?b: is?bad\n");
}

TEST(FaultText, SaysTheSameInJson) {
  const base::Faults faults{{Cause::input, Place{0, 12, 3}, "train.module", "is neg\xFF", "x"},
                            {Cause::output, std::nullopt, "vise", "cannot", "y"}};
  const auto json = nlohmann::json::parse(as_json(faults, "bench.toml"));
  EXPECT_EQ(json["schema"], "visewright.error/1");
  EXPECT_EQ(json["exit"], 3);  // an output that could not be written outweighs an input
  ASSERT_EQ(json["faults"].size(), 2U);
  EXPECT_EQ(json["faults"][0]["file"], "bench.toml");
  EXPECT_EQ(json["faults"][0]["line"], 12);
  EXPECT_EQ(json["faults"][0]["column"], 3);
  EXPECT_EQ(json["faults"][0]["cause"], "input");
  EXPECT_FALSE(json["faults"][1].contains("line"));
}

TEST(LastDoor, TurnsWhatEscapesIntoStatus70) {
  base::Faults told;
  const auto report = [&](const base::Faults& faults) { told = faults; };
  EXPECT_EQ(behind_last_door([] { return 4; }, report), 4);
  EXPECT_TRUE(told.empty());
  EXPECT_EQ(behind_last_door([]() -> int { throw std::out_of_range("index 7"); }, report), 70);
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told.front().cause, Cause::own_mistake);
  EXPECT_THAT(told.front().wrong, testing::HasSubstr("index 7"));
  told.clear();
  EXPECT_EQ(behind_last_door([]() -> int { throw 7; }, report), 70);
  EXPECT_EQ(told.size(), 1U);
}

TEST(LastDoorDeathTest, HoldsWhereTheLanguageWouldAbort) {
  const std::function<void()> throws = [] { throw std::runtime_error("lost"); };
  const auto lets_out = [&]() noexcept { throws(); };
  EXPECT_EXIT((end_on_own_mistake(), lets_out()), testing::ExitedWithCode(70), "mistake in visewright");
}

TEST(Disk, ReadsUpToTheLimitAndSaysWhatIsWrong) {
  const support::ScratchFolder scratch;
  base::Silence silence;
  support::write_file(scratch / "ten", "0123456789");
  EXPECT_EQ(read_text(scratch / "ten", 10, silence), "0123456789");
  const auto wrong = [&](const base::Result<std::string>& read) { return read ? "" : read.error().front().wrong; };
  EXPECT_EQ(wrong(read_text(scratch / "ten", 9, silence)), "is longer than 9 bytes");
  EXPECT_EQ(wrong(read_text("/dev/zero", 1 << 20, silence)), "is longer than 1048576 bytes");
  EXPECT_EQ(wrong(read_text(scratch / "none", 10, silence)), "there is no such file");
  EXPECT_EQ(wrong(read_text(scratch.path(), 10, silence)), "is a folder");
  EXPECT_EQ(wrong(read_text(scratch / "ten/below", 10, silence)), "cannot be read: Not a directory");
}

}  // namespace
}  // namespace visewright::pipeline
