#include <memory>

#include "cli/command.h"

namespace visewright::cli {

void add_make(CLI::App& program, Call& call) {
  using pipeline::Grip;
  using pipeline::Paper;
  using pipeline::StepSchema;
  const auto job = std::make_shared<pipeline::MakeJob>();
  CLI::App* command = new_command(program, call, "make", "Write the model, papers, prints and lists into a folder");
  command->add_option("DESIGN", job->design, "Design file")->required();
  command->add_option("-o,--output", job->folder, "Folder: new, empty, or one of earlier outputs, which it replaces")
      ->required()
      ->type_name("DIR");
  add_choice(
      *command, "--schema", {"ap214", "ap242"},
      [job](const std::string& name) { job->schema = name == "ap214" ? StepSchema::ap214 : StepSchema::ap242; },
      "Schema of the STEP files; ap214 when left out");
  command
      ->add_option_function<std::string>(
          "--opening", [job](const std::string& length) { job->opening = length; },
          "Opening that the model stands at, e.g. 40 or \"1-1/2 in\"; shut when left out")
      ->type_name("LENGTH");
  add_choice(
      *command, "--grip", {"folded", "out"},
      [job](const std::string& how) { job->grip = how == "out" ? Grip::out : Grip::folded; },
      "How the wheels' grips stand in the model; folded when left out");
  add_choice(
      *command, "--paper", {"a4", "a3", "letter"},
      [job](const std::string& name) { job->paper = name == "a3" ? Paper::a3 : name == "letter" ? Paper::letter : Paper::a4; },
      "Paper for the full-size sheets; a4 when left out");
  add_show(*command, job->show);
  command->callback([job, &call] {
    call.design = job->design;
    call.job = [job, &call](base::Watcher& watcher) {
      job->json = call.json;
      return pipeline::make(*job, watcher);
    };
  });
}

}  // namespace visewright::cli
