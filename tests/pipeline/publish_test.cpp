#include "pipeline/publish.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <functional>

#include "pipeline/exchange.h"
#include "pipeline/stop.h"
#include "support/scratch_folder.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;
using base::Cause;
using support::everything_below;
using support::read_file;
using support::ScratchFolder;
using support::write_file;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Key;
using testing::Pair;

const std::vector<outputs::File> earlier{{"bench.step", "solid", "the model", {}},
                                         {"papers/old.pdf", "old", "a drawing", {}}};
const std::vector<outputs::File> later{{"bench.step", "another solid", "the model", {}},
                                       {"papers/deep/new.pdf", "new", "a drawing", {}}};

/// Does something at each step, and asks to stop at the n-th question.
class Meddler final : public base::Watcher {
 public:
  explicit Meddler(
      int stop_at, std::function<void()> at_step = [] {})
      : left_(stop_at), at_step_(std::move(at_step)) {}
  void step(std::string_view, double) override { at_step_(); }
  void note(std::string_view) override {}
  [[nodiscard]] bool wants_stop() const noexcept override { return left_ <= 0 || --left_ <= 0; }

 private:
  mutable int left_;
  std::function<void()> at_step_;
};

base::Result<void> put(std::span<const outputs::File> files, const fs::path& folder) {
  base::Silence silence;
  return publish(files, folder, silence);
}

Cause cause(const base::Result<void>& result) { return result.error().front().cause; }
std::string key(const base::Result<void>& result) { return result.error().front().key; }

TEST(Publish, WritesAFolderThatWasNotThere) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  EXPECT_THAT(everything_below(scratch.path()),
              ElementsAre(Pair("vise", "(folder)"), Pair("vise/bench.step", "solid"), Key("vise/manifest.json"),
                          Pair("vise/papers", "(folder)"), Pair("vise/papers/old.pdf", "old")));
}

// An outside program works the digest out again.
TEST(Publish, ListsDigestsThatAnotherProgramFinds) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  FILE* pipe = ::popen(("sha256sum '" + (scratch / "vise/papers/old.pdf").string() + "'").c_str(), "r");
  ASSERT_NE(pipe, nullptr);
  std::string said(64, '\0');
  ASSERT_EQ(std::fread(said.data(), 1, said.size(), pipe), said.size());
  ::pclose(pipe);
  EXPECT_THAT(read_file(scratch / "vise/manifest.json"), HasSubstr("\"sha256\": \"" + said + "\""));
}

TEST(Publish, FillsAnEmptyFolderAndReplacesEarlierOutputs) {
  const ScratchFolder scratch;
  fs::create_directory(scratch / "vise");
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  ASSERT_TRUE(put(later, scratch / "vise/"));
  EXPECT_THAT(everything_below(scratch.path()),
              ElementsAre(Pair("vise", "(folder)"), Pair("vise/bench.step", "another solid"), Key("vise/manifest.json"),
                          Key("vise/papers"), Key("vise/papers/deep"), Pair("vise/papers/deep/new.pdf", "new")));
}

TEST(Publish, GivesTheSameBytesInAnyFolder) {
  const ScratchFolder one, other;
  ASSERT_TRUE(put(later, one / "a"));
  ASSERT_TRUE(put(later, other / "somewhere"));
  EXPECT_EQ(everything_below(one / "a"), everything_below(other / "somewhere"));
}

TEST(Publish, FollowsALinkToAFolder) {
  const ScratchFolder scratch;
  fs::create_directory(scratch / "real");
  fs::create_directory_symlink("real", scratch / "link");
  ASSERT_TRUE(put(earlier, scratch / "link"));
  EXPECT_TRUE(fs::is_symlink(scratch / "link"));
  EXPECT_EQ(read_file(scratch / "real/bench.step"), "solid");
}

struct Foreign {
  const char* name;
  std::function<void(const fs::path& folder)> plant;
  const char* first;
};

// Each state is planted into a folder that would be replaced without it (the test above is the near miss).
TEST(Publish, RefusesAFolderWithAnythingForeign) {
  const std::vector<Foreign> states{
      {"a file", [](const fs::path& f) { write_file(f / "notes.txt", "mine"); }, "notes.txt"},
      {"two files", [](const fs::path& f) { write_file(f / "z", ""), write_file(f / "papers/a", ""); }, "papers/a"},
      {"a hidden file", [](const fs::path& f) { write_file(f / ".plan", "mine"); }, ".plan"},
      {"an empty folder", [](const fs::path& f) { fs::create_directory(f / "photos"); }, "photos/"},
      {"a link in place of an output",
       [](const fs::path& f) { fs::remove(f / "bench.step"), fs::create_symlink("/etc/hostname", f / "bench.step"); },
       "bench.step"},
      {"no manifest", [](const fs::path& f) { fs::remove(f / "manifest.json"); }, "bench.step"},
      {"another's manifest", [](const fs::path& f) { write_file(f / "manifest.json", "{\"name\": \"app\"}"); },
       "bench.step"},
      {"only another's manifest",
       [](const fs::path& f) {
         fs::remove_all(f / "papers"), fs::remove(f / "bench.step"), write_file(f / "manifest.json", "{}");
       },
       "manifest.json"},
  };
  for (const Foreign& state : states) {
    SCOPED_TRACE(state.name);
    const ScratchFolder scratch;
    ASSERT_TRUE(put(earlier, scratch / "vise"));
    state.plant(scratch / "vise");
    const auto before = everything_below(scratch.path());
    const base::Result<void> refused = put(later, scratch / "vise");
    ASSERT_FALSE(refused);
    EXPECT_EQ(cause(refused), Cause::output);
    EXPECT_EQ(key(refused), (scratch / "vise" / state.first).string());
    EXPECT_EQ(everything_below(scratch.path()), before);
    base::Silence silence;
    EXPECT_FALSE(may_replace(scratch / "vise", silence));
  }
}

TEST(Publish, RefusesAPlaceThatIsNoFolder) {
  const ScratchFolder scratch;
  write_file(scratch / "file", "mine");
  fs::create_symlink("nowhere", scratch / "dangling");
  const auto before = everything_below(scratch.path());
  for (const fs::path& place : {scratch / "file", scratch / "file/vise", scratch / "none/vise", scratch / "dangling",
                                fs::path("/"), fs::path(""), fs::path("/proc/vise")}) {
    const base::Result<void> refused = put(later, place);
    ASSERT_FALSE(refused) << place;
    EXPECT_EQ(cause(refused), Cause::output);
    base::Silence silence;
    EXPECT_FALSE(may_replace(place, silence)) << place;
  }
  base::Silence silence;
  EXPECT_TRUE(may_replace(scratch / "new", silence));
  EXPECT_EQ(everything_below(scratch.path()), before);
}

TEST(Publish, RefusesTheFolderItWasStartedIn) {
  const ScratchFolder scratch;
  fs::create_directories(scratch / "vise/below");
  const fs::path home = fs::current_path();
  fs::remove(scratch / "vise/below");
  fs::current_path(scratch / "vise");
  const base::Result<void> refused = put(later, ".");
  const base::Result<void> beside = put(later, "../other");
  fs::current_path(home);
  ASSERT_FALSE(refused);
  EXPECT_EQ(cause(refused), Cause::output);
  EXPECT_TRUE(beside);
}

TEST(Publish, TakesPathsThatLeadOutOrCollideForOurOwnMistake) {
  const ScratchFolder scratch;
  const std::vector<std::vector<std::string>> wrong{{"../a"},          {"/a"},     {""},         {"a/../b"},
                                                    {"manifest.json"}, {"a", "a"}, {"a/b", "a"}, {"a", "a/b/c"}};
  for (const std::vector<std::string>& paths : wrong) {
    std::vector<outputs::File> files;
    for (const std::string& path : paths) files.push_back({path, "x", "", {}});
    const base::Result<void> refused = put(files, scratch / "vise");
    ASSERT_FALSE(refused) << paths.back();
    EXPECT_EQ(cause(refused), Cause::own_mistake);
  }
  EXPECT_TRUE(everything_below(scratch.path()).empty());
}

// Stopped at the first question, at the second, … until a run gets through: at every one the earlier folder stands as
// it was and nothing lies beside it.
TEST(Publish, LeavesTheEarlierFolderWhereverItIsStopped) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  const auto before = everything_below(scratch.path());
  int stops = 0;
  for (int question = 1;; ++question) {
    Meddler stopper(question);
    const base::Result<void> result = publish(later, scratch / "vise", stopper);
    if (result) break;
    ++stops;
    ASSERT_LT(stops, 1000);
    EXPECT_EQ(cause(result), Cause::interrupted) << question;
    ASSERT_EQ(everything_below(scratch.path()), before) << question;
  }
  EXPECT_GE(stops, 5);  // one before each file, one in each, and one before the exchange
  EXPECT_EQ(read_file(scratch / "vise/bench.step"), "another solid");
}

TEST(Publish, SeesAFileThatComesInWhileItWrites) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  Meddler meddler(1000, [&] { write_file(scratch / "vise/notes.txt", "just now"); });
  const base::Result<void> refused = publish(later, scratch / "vise", meddler);
  ASSERT_FALSE(refused);
  EXPECT_EQ(key(refused), (scratch / "vise/notes.txt").string());
  EXPECT_EQ(read_file(scratch / "vise/notes.txt"), "just now");
  EXPECT_EQ(read_file(scratch / "vise/bench.step"), "solid");
}

/// Runs `job` in a process of its own; its exit status, or minus the signal that ended it.
int in_child(const std::function<int()>& job) {
  const pid_t child = ::fork();
  if (child == 0) ::_exit(job());
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

class HeedsSignals final : public base::Watcher {
 public:
  explicit HeedsSignals(int sent) : sent_(sent) {}
  void step(std::string_view, double) override {
    if (++steps_ == 2) std::raise(sent_);
  }
  void note(std::string_view) override {}
  [[nodiscard]] bool wants_stop() const noexcept override { return stop_was_asked(); }

 private:
  int sent_, steps_ = 0;
};

TEST(Publish, HeedsRealSignalsAndSurvivesAKill) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  const auto before = everything_below(scratch / "vise");
  for (const int sent : {SIGINT, SIGTERM, SIGHUP, SIGKILL}) {
    const int ended = in_child([&] {
      heed_stop_signals();
      HeedsSignals watcher(sent);
      const base::Result<void> result = publish(later, scratch / "vise", watcher);
      return result ? 0 : base::exit_status(cause(result));
    });
    EXPECT_EQ(ended, sent == SIGKILL ? -SIGKILL : 130);
    EXPECT_EQ(everything_below(scratch / "vise"), before);
    if (sent != SIGKILL) {
      EXPECT_EQ(everything_below(scratch.path()).size(), before.size() + 1) << "something lies beside";
    }
  }
  EXPECT_TRUE(put(later, scratch / "vise")) << "what a kill left behind is in the way";
}

// A limit on the length of files stands for the full disk.
TEST(Publish, LeavesTheEarlierFolderWhenTheDiskTakesNoMore) {
  const ScratchFolder scratch;
  ASSERT_TRUE(put(earlier, scratch / "vise"));
  const auto before = everything_below(scratch.path());
  const std::vector<outputs::File> large{{"small", "x", "", {}}, {"sub/large", std::string(300'000, 'x'), "", {}}};
  const int ended = in_child([&] {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{100'000, 100'000};
    if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 1;
    const base::Result<void> result = put(large, scratch / "vise");
    return result || key(result) != (scratch / "vise/sub/large").string() ? 1 : base::exit_status(cause(result));
  });
  EXPECT_EQ(ended, 3);
  EXPECT_EQ(everything_below(scratch.path()), before);
  EXPECT_TRUE(put(large, scratch / "vise"));
}

TEST(Exchange, TradesPlacesInOneStepAndInTwo) {
  const ScratchFolder scratch;
  write_file(scratch / "a/one", "1");
  write_file(scratch / "b/two", "2");
  Exchanged how{};
  ASSERT_FALSE(trade_places(scratch / "a", scratch / "b", how));
  EXPECT_EQ(read_file(scratch / "a/two"), "2");
  ASSERT_FALSE(trade_places_by_renaming(scratch / "a", scratch / "b"));
  EXPECT_THAT(everything_below(scratch.path()), ElementsAre(Key("a"), Key("a/one"), Key("b"), Key("b/two")));
}

TEST(Exchange, TakesTheFirstRenameBackWhenTheSecondFails) {
  const ScratchFolder scratch;
  write_file(scratch / "b/two", "2");
  EXPECT_TRUE(trade_places_by_renaming(scratch / "a", scratch / "b"));
  EXPECT_THAT(everything_below(scratch.path()), ElementsAre(Key("b"), Key("b/two")));
}

TEST(Exchange, NeverLandsOnSomething) {
  const ScratchFolder scratch;
  write_file(scratch / "a/one", "1");
  write_file(scratch / "b/two", "2");
  EXPECT_TRUE(move_into(scratch / "a", scratch / "b"));
  EXPECT_EQ(read_file(scratch / "b/two"), "2");
  EXPECT_EQ(read_file(scratch / "a/one"), "1");
}

}  // namespace
}  // namespace visewright::pipeline
