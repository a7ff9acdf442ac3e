#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_catalogue(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::CatalogueJob>();
  CLI::App* command = new_command(program, call, "catalogue", "List what is known, each row with its source");
  command->add_option("KIND", job->kind, "One kind; everything when left out");
  command->callback([job, &call] {
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::catalogue(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
