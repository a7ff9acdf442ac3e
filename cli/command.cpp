#include "cli/command.h"

namespace visewright::cli {

CLI::App* new_command(CLI::App& program, Call& call, const std::string& name, const std::string& purpose) {
  CLI::App* command = program.add_subcommand(name, purpose);
  command->add_flag("--json", call.json, "The same facts for programs");
  return command;
}

void add_choice(CLI::App& command, const std::string& name, const std::vector<std::string>& words,
                const std::function<void(const std::string&)>& chosen, const std::string& purpose) {
  CLI::Option* option = command.add_option_function<std::string>(name, chosen, purpose);
  option->check(CLI::IsMember(words).description(""))->type_name(CLI::detail::join(words, "|"));
}

void add_show(CLI::App& command, std::optional<units::LengthUnit>& show) {
  add_choice(
      command, "--show", {"mm", "in"},
      [&show](const std::string& unit) {
        show = unit == "in" ? units::LengthUnit::inch : units::LengthUnit::millimetre;
      },
      "Unit of lengths on screen and paper; the design's own when left out");
}

}  // namespace visewright::cli
