#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_explain(CLI::App& program, Call& call) {
  const auto job = std::make_shared<pipeline::ExplainJob>();
  CLI::App* command =
      new_command(program, call, "explain", "Say what a number or a finding means and where it comes from");
  command->add_option("NAME", job->name, "Dotted name, as size and check print it")->required();
  command
      ->add_option_function<std::string>(
          "DESIGN", [job](const std::string& file) { job->design = file; }, "Design whose numbers are put in")
      ->type_name("TEXT");
  add_show(*command, job->show);
  command->callback([job, &call] {
    call.design = job->design.value_or("");
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::explain(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
