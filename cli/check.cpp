#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_check(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::CheckJob>();
  CLI::App* command = new_command(program, call, "check", "As size, and fit the solids together over the whole travel");
  command->add_option("DESIGN", job->design, "Design file")->required();
  add_show(*command, job->show);
  command->callback([job, &call] {
    call.design = job->design;
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::check(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
