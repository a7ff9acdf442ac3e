#include <nlohmann/json.hpp>

#include "pipeline/front_door.h"
#include "pipeline/publish.h"
#include "support/scratch_folder.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;
using support::ScratchFolder;
using support::write_file;

const std::vector<outputs::File> files{{"bench.step", "solid", "the model", {}},
                                       {"papers/plan.pdf", "plan", "a drawing", {}}};

class Verify : public testing::Test {
 protected:
  void SetUp() override { ASSERT_TRUE(publish(files, folder_, silence_)); }
  base::Result<Answer> verified(bool json = false) { return verify({folder_.string(), json}, silence_); }

  ScratchFolder scratch_;
  fs::path folder_ = scratch_ / "vise";
  base::Silence silence_;
};

TEST_F(Verify, FindsAWholeFolderWell) {
  const base::Result<Answer> answer = verified();
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->exit, 0);
  EXPECT_EQ(answer->out, "2 files, all as listed\n");
}

TEST_F(Verify, NamesMissingAlteredAndExtraFiles) {
  fs::remove(folder_ / "bench.step");
  write_file(folder_ / "papers/plan.pdf", "plam");  // as long as before
  write_file(folder_ / "notes.txt", "");
  const base::Result<Answer> answer = verified();
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->exit, 1);
  EXPECT_EQ(answer->out,
            "missing  bench.step\naltered  papers/plan.pdf\nextra    notes.txt\n"
            "2 files listed: 1 missing, 1 altered, 1 extra\n");
}

TEST_F(Verify, DoesNotTakeALinkForAFile) {
  fs::rename(folder_ / "bench.step", scratch_ / "elsewhere");
  fs::create_symlink(scratch_ / "elsewhere", folder_ / "bench.step");
  const base::Result<Answer> answer = verified();
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->exit, 1);
}

TEST_F(Verify, SaysTheSameInJson) {
  write_file(folder_ / "papers/plan.pdf", "longer than before");
  const base::Result<Answer> answer = verified(true);
  ASSERT_TRUE(answer);
  const auto json = nlohmann::json::parse(answer->out);
  EXPECT_EQ(json["schema"], "visewright.verify/1");
  EXPECT_EQ(json["matches"], false);
  EXPECT_EQ(json["files"], 2);
  EXPECT_EQ(json["altered"], nlohmann::json({"papers/plan.pdf"}));
  EXPECT_EQ(json["missing"], nlohmann::json::array());
  EXPECT_EQ(json["extra"], nlohmann::json::array());
}

TEST_F(Verify, WantsAFolderOfOurs) {
  write_file(scratch_ / "file", "");
  write_file(scratch_ / "bare/x", "");
  write_file(scratch_ / "other/manifest.json", "{}");
  fs::create_directories(scratch_ / "odd/manifest.json");
  for (const char* name : {"none", "file", "bare", "other", "odd"}) {
    const base::Result<Answer> answer = verify({(scratch_ / name).string(), false}, silence_);
    ASSERT_FALSE(answer) << name;
    EXPECT_EQ(answer.error().front().cause, base::Cause::input) << name;
  }
}

}  // namespace
}  // namespace visewright::pipeline
