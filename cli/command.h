// What a command's file adds to the program: its words, and the job to do when they were said.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pipeline/front_door.h"

namespace visewright::cli {

/// What was asked for. Options write into the job that the command keeps; `job` is set once its command was chosen.
struct Call {
  bool json = false;
  std::string design;  // for the places in faults
  std::function<base::Result<pipeline::Answer>(base::Watcher&)> job;
};

void add_start(CLI::App&, Call&);
void add_size(CLI::App&, Call&);
void add_check(CLI::App&, Call&);
void add_make(CLI::App&, Call&);
void add_catalogue(CLI::App&, Call&);
void add_explain(CLI::App&, Call&);
void add_verify(CLI::App&, Call&);

/// A command with the option --json, which every command has.
CLI::App* new_command(CLI::App&, Call&, const std::string& name, const std::string& purpose);

/// An option that takes one of a few words.
void add_choice(CLI::App& command, const std::string& name, const std::vector<std::string>& words,
                const std::function<void(const std::string&)>& chosen, const std::string& purpose);

/// --show mm|in.
void add_show(CLI::App& command, std::optional<units::LengthUnit>& show);

}  // namespace visewright::cli
