#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_verify(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::VerifyJob>();
  CLI::App* command = new_command(program, call, "verify", "Hold a folder of outputs against its manifest");
  command->add_option("DIR", job->folder, "Folder that make wrote")->required();
  command->callback([job, &call] {
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::verify(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
