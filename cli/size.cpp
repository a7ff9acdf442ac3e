#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_size(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::SizeJob>();
  CLI::App* command = new_command(program, call, "size", "Fix every number and judge the design, without solids");
  command->add_option("DESIGN", job->design, "Design file")->required();
  add_show(*command, job->show);
  command->callback([job, &call] {
    call.design = job->design;
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::size(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
