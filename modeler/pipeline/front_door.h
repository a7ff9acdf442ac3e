// What the program can be asked to do, one function a command. Everything behind it is values; nothing here talks to a
// terminal.
#pragma once

#include <optional>
#include <string>

#include "base/fault.h"
#include "base/watcher.h"
#include "units/text.h"

namespace visewright::pipeline {

/// What goes to standard output, and the exit status: 0 all well, 1 a finding fails or a folder does not match.
struct Answer {
  std::string out;
  int exit = 0;
};

/// In every job `json` asks for the same facts by a named schema; `show` is the unit of lengths for reading, the
/// design's own when absent.

struct StartJob {
  std::string preset;
  std::optional<std::string> file;  // absent: PRESET.toml in the current folder
  bool json = false;
};
/// Writes a preset as a commented design file; a file that exists is never touched (Cause::output). An unknown preset
/// is Cause::input and names the nearest.
[[nodiscard]] base::Result<Answer> start(const StartJob&, base::Watcher&);

struct SizeJob {
  std::string design;
  std::optional<units::LengthUnit> show;
  bool json = false;
};
/// Fixes every number and judges the design without solids.
[[nodiscard]] base::Result<Answer> size(const SizeJob&, base::Watcher&);

struct CheckJob {
  std::string design;
  std::optional<units::LengthUnit> show;
  bool json = false;
};
/// As size, and fits the solids together over the whole travel.
[[nodiscard]] base::Result<Answer> check(const CheckJob&, base::Watcher&);

enum class StepSchema { ap214, ap242 };
enum class Grip { folded, out };

/// What full-size sheets are printed on.
enum class Paper : std::uint8_t { a4, a3, letter };

struct MakeJob {
  std::string design, folder;
  StepSchema schema = StepSchema::ap214;
  std::optional<std::string> opening;  // as typed; a bare number is in the design's unit
  Grip grip = Grip::folded;
  Paper paper = Paper::a4;
  std::optional<units::LengthUnit> show;
  bool json = false;
};
/// As check, and publishes the folder of outputs, failing findings or not.
[[nodiscard]] base::Result<Answer> make(const MakeJob&, base::Watcher&);

struct CatalogueJob {
  std::string kind;  // empty: all
  bool json = false;
};
/// Lists what is known, each row with its source. An unknown kind is Cause::input and names the nearest.
[[nodiscard]] base::Result<Answer> catalogue(const CatalogueJob&, base::Watcher&);

struct ExplainJob {
  std::string name;
  std::optional<std::string> design;
  std::optional<units::LengthUnit> show;
  bool json = false;
};
/// Meaning, formula, source and remedy of a number or a finding; with a design, its numbers put in.
[[nodiscard]] base::Result<Answer> explain(const ExplainJob&, base::Watcher&);

struct VerifyJob {
  std::string folder;
  bool json = false;
};
/// Holds a folder against its manifest: missing, altered and extra files, a line each, exit 1 if there is one. A folder
/// without a manifest of ours: Cause::input.
[[nodiscard]] base::Result<Answer> verify(const VerifyJob&, base::Watcher&);

}  // namespace visewright::pipeline
