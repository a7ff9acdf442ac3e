// The table of published figures: what a source prints, beside what this program computes from the same inputs.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace visewright::published {

/// How a figure is known. `sighted`: read in a stored page of the source. `from_memory`: remembered of the source, and
/// reproduced to the digits shown. `computed`: worked out from the stated formula by a separate script; that is formula
/// against formula, not published, and guards only against slips.
enum class Known : std::uint8_t { sighted, from_memory, computed };

struct Figure {
  std::string source;  // document and table or example
  std::string inputs;
  std::string what;  // with its unit
  double printed;
  int decimals;  // as printed, negative for rounded tens; the figure holds to half of the last one
  Known known;
  double computed;
  /// Wider than half of the last decimal only where the source rounds before it goes on; the source then says so.
  double allowed = 0;
};

[[nodiscard]] std::vector<Figure> gear_figures();
[[nodiscard]] std::vector<Figure> mesh_figures();
[[nodiscard]] std::vector<Figure> train_figures();
[[nodiscard]] std::vector<Figure> thread_figures();
[[nodiscard]] std::vector<Figure> screw_figures();
[[nodiscard]] std::vector<Figure> strength_figures();
[[nodiscard]] std::vector<Figure> beam_figures();
[[nodiscard]] std::vector<Figure> wood_figures();
[[nodiscard]] std::vector<Figure> trial_figures();

}  // namespace visewright::published
