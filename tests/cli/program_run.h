// The built program run as a person's shell would run it.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace visewright::cli_tests {

struct Ran {
  int status = -1;  // exit status; minus the signal that ended it
  std::string out, err;
};

struct Surroundings {
  std::filesystem::path folder = ".";
  std::vector<std::string> environment{};  // "NAME=value", on top of the test's own
  bool terminal = false;                   // standard error is a terminal
  std::string out_file{};                  // where standard output goes instead of being caught
};

[[nodiscard]] Ran run_program(const std::vector<std::string>& words, const Surroundings& = {});

/// Starts the program with words that make it read from the pipe at `pipe`, waits until it does, and sends `signal`
/// until it has ended.
[[nodiscard]] Ran run_and_interrupt(const std::vector<std::string>& words, const std::filesystem::path& pipe,
                                    int signal);

}  // namespace visewright::cli_tests
