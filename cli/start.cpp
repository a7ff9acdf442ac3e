#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_start(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::StartJob>();
  CLI::App* command = new_command(program, call, "start", "Write a commented design file to begin with");
  command->add_option("PRESET", job->preset, "One of `visewright catalogue presets`")->required();
  command
      ->add_option_function<std::string>(
          "-o,--output", [job](const std::string& file) { job->file = file; },
          "File to write; PRESET.toml when left out; never overwritten")
      ->type_name("FILE");
  command->callback([job, &call] {
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::start(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
