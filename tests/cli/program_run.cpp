#include "cli/program_run.h"

#include <fcntl.h>
#include <pty.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <stdexcept>
#include <thread>

#include "support/scratch_folder.h"

namespace visewright::cli_tests {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void become_program(const std::vector<std::string>& words, const Surroundings& around,
                                 const std::string& out, int error) {
  if (::chdir(around.folder.c_str()) != 0) ::_exit(120);
  const int output = ::open(out.c_str(), O_WRONLY | O_CREAT, 0666);
  const int input = ::open("/dev/null", O_RDONLY);
  ::dup2(input, STDIN_FILENO);
  ::dup2(output, STDOUT_FILENO);
  ::dup2(error, STDERR_FILENO);
  for (const std::string& variable : around.environment) {
    const std::size_t equals = variable.find('=');
    ::setenv(variable.substr(0, equals).c_str(), variable.substr(equals + 1).c_str(), 1);
  }
  std::vector<char*> arguments{const_cast<char*>(VISEWRIGHT_PROGRAM)};
  for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  ::execv(VISEWRIGHT_PROGRAM, arguments.data());
  ::_exit(121);
}

int status_of(int waited) { return WIFEXITED(waited) ? WEXITSTATUS(waited) : -WTERMSIG(waited); }

/// Everything that comes out of a descriptor until its other ends are closed.
std::string drain(int descriptor) {
  std::string all, piece(4096, '\0');
  for (;;) {
    const ssize_t got = ::read(descriptor, piece.data(), piece.size());
    if (got <= 0) return all;  // a terminal's other end gone is an error there, not an end
    all.append(piece, 0, static_cast<std::size_t>(got));
  }
}

struct Ends {
  int read = -1, write = -1;
};
Ends error_channel(bool terminal) {
  int ends[2];
  const bool made = terminal ? ::openpty(&ends[0], &ends[1], nullptr, nullptr, nullptr) == 0 : ::pipe(ends) == 0;
  if (!made) throw std::runtime_error("no channel for standard error");
  return {ends[0], ends[1]};
}

/// Waits until somebody has the pipe open for reading; gives the writing end.
int wait_for_reader(const fs::path& pipe) {
  for (int tries = 0; tries < 3000; ++tries) {
    const int end = ::open(pipe.c_str(), O_WRONLY | O_NONBLOCK);
    if (end >= 0) return end;
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  throw std::runtime_error("nobody reads " + pipe.string());
}

}  // namespace

Ran run_program(const std::vector<std::string>& words, const Surroundings& around) {
  const support::ScratchFolder scratch;
  const std::string out = around.out_file.empty() ? (scratch / "out").string() : around.out_file;
  const Ends error = error_channel(around.terminal);
  const pid_t child = ::fork();
  if (child == 0) become_program(words, around, out, error.write);
  ::close(error.write);
  Ran ran;
  ran.err = drain(error.read);
  ::close(error.read);
  int waited = 0;
  ::waitpid(child, &waited, 0);
  ran.status = status_of(waited);
  if (around.out_file.empty()) ran.out = support::read_file(out);
  return ran;
}

Ran run_and_interrupt(const std::vector<std::string>& words, const fs::path& pipe, int signal) {
  const support::ScratchFolder scratch;
  const Ends error = error_channel(false);
  const pid_t child = ::fork();
  if (child == 0) become_program(words, {}, (scratch / "out").string(), error.write);
  ::close(error.write);
  const int writer = wait_for_reader(pipe);
  int waited = 0;
  // Sent again and again: the first may arrive just before the program starts to wait.
  while (::waitpid(child, &waited, WNOHANG) == 0) {
    ::kill(child, signal);
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
  }
  ::close(writer);
  Ran ran{status_of(waited), support::read_file(scratch / "out"), drain(error.read)};
  ::close(error.read);
  return ran;
}

}  // namespace visewright::cli_tests
