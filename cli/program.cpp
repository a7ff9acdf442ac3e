#include "cli/program.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/nearest.h"
#include "cli/command.h"
#include "cli/screen.h"
#include "pipeline/fault_text.h"
#include "pipeline/last_door.h"
#include "pipeline/stop.h"

namespace visewright::cli {
namespace {

using base::Cause;
using base::Result;
using pipeline::Answer;

constexpr const char* purpose =
    "visewright lays out a bench vise with two screws tied together by a train of gears: every size with its reason,\n"
    "every check with its limit, and a folder of drawings, lists and models to build it from.";

constexpr const char* ending =
    "Exit status: 0 all well, 1 a finding fails, 2 the input or the call is wrong, 3 an output could not be written,\n"
    "4 the geometry failed, 70 a mistake in visewright itself, 130 interrupted.\n"
    "Figures on loads, welding and machines are for planning. Local codes, the makers' data sheets and licensed\n"
    "practice come first.";

void describe(CLI::App& program, Call& call) {
  program.name("visewright");
  program.footer(ending);
  program.set_version_flag("--version", std::string("visewright ") + VISEWRIGHT_VERSION);
  program.add_flag("--json", call.json, "The same facts for programs");
  program.require_subcommand(1);
  add_start(program, call);
  add_size(program, call);
  add_check(program, call);
  add_make(program, call);
  add_catalogue(program, call);
  add_explain(program, call);
  add_verify(program, call);
}

std::vector<std::string> command_names(const CLI::App& program) {
  std::vector<std::string> names;
  for (const CLI::App* command : program.get_subcommands({})) names.push_back(command->get_name());
  return names;
}

/// The first word that is not an option, if it is no command: most calls that fail are mistyped there.
std::optional<std::string> unknown_command(const std::vector<std::string>& names,
                                           const std::vector<std::string>& words) {
  const auto word = std::find_if(words.begin(), words.end(), [](const std::string& w) { return !w.starts_with('-'); });
  if (word == words.end() || std::find(names.begin(), names.end(), *word) != names.end()) return std::nullopt;
  return *word;
}

tl::unexpected<base::Faults> wrong_call(const CLI::App& program, const std::vector<std::string>& words,
                                        const CLI::ParseError& error) {
  const auto wrong = [](std::string what, std::string right) {
    return base::fault(Cause::input, "", std::move(what), std::move(right));
  };
  const std::vector<std::string> names = command_names(program);
  if (const std::optional<std::string> word = unknown_command(names, words)) {
    const std::vector<std::string_view> known(names.begin(), names.end());
    return wrong(
        "there is no command \"" + *word + "\"",
        "did you mean \"" + std::string(base::nearest_name(*word, known)) + "\"? `visewright --help` lists all");
  }
  if (program.get_subcommands().empty() && words.empty())
    return wrong("a command is wanted", "`visewright --help` lists all");
  std::string what = error.what();
  std::replace(what.begin(), what.end(), '\n', ' ');
  const std::string command =
      program.get_subcommands().empty() ? "" : program.get_subcommands().front()->get_name() + " ";
  return wrong(what, "`visewright " + command + "--help` shows what can be said");
}

/// What the words ask for; help and version are answers too.
Result<Answer> answer(const std::vector<std::string>& words, Call& call, Screen& screen) {
  CLI::App program(purpose);
  describe(program, call);
  try {
    program.parse(std::vector<std::string>(words.rbegin(), words.rend()));
  } catch (const CLI::CallForHelp&) {
    return Answer{program.help()};
  } catch (const CLI::CallForVersion& version) {
    return Answer{std::string(version.what()) + "\n"};
  } catch (const CLI::ParseError& error) {
    return wrong_call(program, words, error);
  }
  return call.job(screen);
}

bool print(std::string_view text) {
  return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
}

int finish(const Result<Answer>& answer, const Call& call, Screen& screen) {
  if (!answer) {
    if (call.json)
      print(pipeline::as_json(answer.error(), call.design));
    else
      screen.complain(pipeline::as_text(answer.error(), call.design));
    return pipeline::exit_status(answer.error());
  }
  if (print(answer->out)) return answer->exit;
  if (errno == EPIPE) return base::exit_status(Cause::output);  // whoever read us has seen enough
  const base::Faults unwritten{{Cause::output, std::nullopt, "standard output",
                                std::string("cannot be written: ") + std::strerror(errno),
                                "a place that takes the text"}};
  screen.complain(pipeline::as_text(unwritten, call.design));
  return pipeline::exit_status(unwritten);
}

}  // namespace

int run(int count, char** words) {
  pipeline::end_on_own_mistake();
  pipeline::heed_stop_signals();
  const std::vector<std::string> said(words + std::min(count, 1), words + count);
  Call call;
  // A call too wrong to be read may still have asked for JSON.
  call.json = std::find(said.begin(), said.end(), "--json") != said.end();
  Screen screen;
  return pipeline::behind_last_door(
      [&] { return finish(answer(said, call, screen), call, screen); },
      [&](const base::Faults& faults) { (void)finish(tl::unexpected(faults), call, screen); });
}

}  // namespace visewright::cli
