#include <sys/stat.h>

#include <csignal>
#include <nlohmann/json.hpp>

#include "cli/program_run.h"
#include "support/scratch_folder.h"

namespace visewright::cli_tests {
namespace {

using support::everything_below;
using support::read_file;
using support::ScratchFolder;
using support::write_file;
using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

const std::vector<std::string> commands{"start", "size", "check", "make", "catalogue", "explain", "verify"};

/// The name of a preset that is built in.
std::string some_preset() {
  const auto json = nlohmann::json::parse(run_program({"catalogue", "presets", "--json"}).out);
  return json.at("kinds").at("presets").at(0).at("name");
}

TEST(Program, HelpsAndGivesItsVersionOnStandardOutput) {
  const Ran help = run_program({"--help"});
  EXPECT_EQ(help.status, 0);
  EXPECT_THAT(help.err, IsEmpty());
  for (const std::string& command : commands) {
    EXPECT_THAT(help.out, HasSubstr("\n  " + command + " "));
    EXPECT_EQ(run_program({command, "--help"}).status, 0);
    EXPECT_THAT(run_program({command, "--help"}).out, HasSubstr("--json"));
  }
  const Ran version = run_program({"--version"});
  EXPECT_EQ(version.status, 0);
  EXPECT_THAT(version.out, testing::MatchesRegex("visewright [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

// The option library has statuses of its own, 100 and more; the program has one for a wrong call.
TEST(Program, EndsWith2OnAnyWrongCall) {
  const std::vector<std::vector<std::string>> calls{{},
                                                    {"siez"},
                                                    {"--frob"},
                                                    {"size"},
                                                    {"size", "a", "b"},
                                                    {"size", "a", "--frob"},
                                                    {"size", "a", "--show", "ell"},
                                                    {"size", "a", "--show"},
                                                    {"make", "a"},
                                                    {"make", "a", "-o"},
                                                    {"make", "a", "-o", "b", "--schema", "ap203"},
                                                    {"make", "a", "-o", "b", "--grip", "up"},
                                                    {"start"},
                                                    {"start", "no such preset"},
                                                    {"catalogue", "no such kind"},
                                                    {"verify"},
                                                    {"verify", "no such folder"},
                                                    {"size", "--json=maybe", "a"}};
  for (const std::vector<std::string>& call : calls) {
    const Ran ran = run_program(call);
    EXPECT_EQ(ran.status, 2) << testing::PrintToString(call);
    EXPECT_THAT(ran.out, IsEmpty());
    EXPECT_THAT(ran.err, Not(IsEmpty())) << testing::PrintToString(call);
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
  }
}

TEST(Program, NamesTheCommandThatWasMeant) {
  EXPECT_EQ(run_program({"siez"}).err,
            "there is no command \"siez\"; did you mean \"size\"? `visewright --help` lists all\n");
  EXPECT_THAT(run_program({"verfy", "x"}).err, HasSubstr("\"verify\""));
}

TEST(Program, SaysAFaultAsJsonWhenAsked) {
  for (const std::vector<std::string>& call :
       {std::vector<std::string>{"--json", "siez"}, {"siez", "--json"}, {"verify", "none", "--json"}}) {
    const Ran ran = run_program(call);
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, IsEmpty());
    const auto json = nlohmann::json::parse(ran.out);
    EXPECT_EQ(json["schema"], "visewright.error/1");
    EXPECT_EQ(json["exit"], 2);
    EXPECT_EQ(json["faults"].size(), 1U);
  }
}

TEST(Program, RefusesADesignThatCannotBeRead) {
  const ScratchFolder scratch;
  write_file(scratch / "long.toml", std::string((1U << 20U) + 1, '#'));
  for (const char* command : {"size", "check"}) {
    EXPECT_THAT(run_program({command, (scratch / "none.toml").string()}).err,
                HasSubstr("none.toml: there is no such file"));
    EXPECT_EQ(run_program({command, (scratch / "none.toml").string()}).status, 2);
    EXPECT_THAT(run_program({command, scratch.path().string()}).err, HasSubstr("is a folder"));
    EXPECT_EQ(run_program({command, scratch.path().string()}).status, 2);
    EXPECT_EQ(run_program({command, (scratch / "long.toml").string()}).status, 2);
    EXPECT_EQ(run_program({command, ""}).status, 2);
  }
}

TEST(Start, WritesAPresetAndNeverOverwrites) {
  const ScratchFolder scratch;
  const std::string preset = some_preset();
  const Ran first = run_program({"start", preset}, {.folder = scratch.path()});
  EXPECT_EQ(first.status, 0);
  EXPECT_EQ(first.out, preset + ".toml\n");
  const std::string text = read_file(scratch / (preset + ".toml"));
  EXPECT_EQ(text, read_file(std::filesystem::path(VISEWRIGHT_SOURCE_DIR) / "presets/designs" / (preset + ".toml")));
  write_file(scratch / (preset + ".toml"), "mine");
  const Ran second = run_program({"start", preset}, {.folder = scratch.path()});
  EXPECT_EQ(second.status, 3);
  EXPECT_THAT(second.err, HasSubstr("exists already"));
  EXPECT_EQ(read_file(scratch / (preset + ".toml")), "mine");
  EXPECT_EQ(run_program({"start", preset, "-o", "other.toml"}, {.folder = scratch.path()}).status, 0);
  EXPECT_EQ(read_file(scratch / "other.toml"), text);
}

TEST(Start, SaysWhereItCannotWrite) {
  for (const char* file : {"/proc/bench.toml", "/no/such/folder/bench.toml", "/"}) {
    const Ran ran = run_program({"start", some_preset(), "-o", file});
    EXPECT_EQ(ran.status, 3) << file;
    EXPECT_THAT(ran.err, StartsWith(std::string(file) + ": "));
  }
}

TEST(Make, RefusesAFolderThatIsNotItsOwn) {
  const ScratchFolder scratch;
  ASSERT_EQ(run_program({"start", some_preset(), "-o", (scratch / "bench.toml").string()}).status, 0);
  write_file(scratch / "photos/bench.jpg", "mine");
  const auto before = everything_below(scratch.path());
  for (const std::string& folder : {(scratch / "photos").string(), std::string("/proc/vise")}) {
    const Ran ran = run_program({"make", (scratch / "bench.toml").string(), "-o", folder});
    EXPECT_EQ(ran.status, 3) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr(folder));
  }
  EXPECT_EQ(everything_below(scratch.path()), before);
}

TEST(Catalogue, GivesEachRowOfAStandardItsSource) {
  const Ran ran = run_program({"catalogue", "--json"});
  ASSERT_EQ(ran.status, 0);
  const auto json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["schema"], "visewright.catalogue/1");
  std::size_t rows = 0;
  for (const auto& [kind, list] : json["kinds"].items()) {
    EXPECT_FALSE(list.empty()) << kind;
    for (const auto& row : list) {
      EXPECT_FALSE(row.at("name").get<std::string>().empty());
      ++rows;
      if (kind == "presets" || kind == "keys" || kind == "shops") continue;  // our own
      EXPECT_FALSE(row.at("source").get<std::string>().empty()) << row;
      EXPECT_FALSE(row.at("known").get<std::string>().empty()) << row;
    }
  }
  EXPECT_GE(rows, 50U);
  const Ran text = run_program({"catalogue", "threads"});
  EXPECT_THAT(text.out, AllOf(HasSubstr("M20 "), HasSubstr("pitch 2.5 mm")));
}

TEST(Program, SaysWhenStandardOutputTakesNoMore) {
  const Ran ran = run_program({"catalogue"}, {.out_file = "/dev/full"});
  EXPECT_EQ(ran.status, 3);
  EXPECT_THAT(ran.err, HasSubstr("standard output: cannot be written"));
}

TEST(Program, ColoursOnlyATerminalThatWantsIt) {
  const std::string escape = "\x1b[";
  const std::string kind = "TERM=xterm";
  EXPECT_THAT(run_program({"siez"}, {.environment = {kind, "NO_COLOR="}, .terminal = true}).err, HasSubstr(escape));
  EXPECT_THAT(run_program({"siez"}, {.environment = {kind, "NO_COLOR=1"}, .terminal = true}).err,
              Not(HasSubstr(escape)));
  EXPECT_THAT(run_program({"siez"}, {.environment = {kind, "NO_COLOR="}}).err, Not(HasSubstr(escape)));
}

TEST(Program, EndsWith130WhenInterrupted) {
  for (const int signal : {SIGINT, SIGTERM}) {
    const ScratchFolder scratch;
    const std::filesystem::path pipe = scratch / "manifest.json";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const Ran ran = run_and_interrupt({"verify", scratch.path().string()}, pipe, signal);
    EXPECT_EQ(ran.status, 130);
    EXPECT_THAT(ran.out, IsEmpty());
    EXPECT_THAT(ran.err, HasSubstr("stopped"));
  }
}

}  // namespace
}  // namespace visewright::cli_tests
