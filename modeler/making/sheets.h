// Boards and sheets cut up by saw cuts from edge to edge.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace visewright::making {

/// `along` runs along the grain where there is one; then the piece is locked: never turned. `from`: the kinds of panel
/// that are thick enough for it; all when empty.
struct PanelWanted {
  double along_mm = 0, across_mm = 0;
  bool locked = false;
  std::vector<std::size_t> from = {};
};
struct PanelStock {
  double along_mm = 0, across_mm = 0;
  int count = 0;  // unlimited when negative
  double weight = 1;
};
/// A piece on a panel: its low corner from the panel's, along and across.
struct PanelPiece {
  std::size_t wanted = 0;
  std::array<double, 2> at_mm{}, size_mm{};
  bool turned = false;
};
struct PanelCut {
  std::size_t stock = 0;
  std::vector<PanelPiece> pieces;
  std::vector<std::array<double, 4>> left_mm;  // along, across of the low corner, then size; largest first
};
struct PanelPlan {
  std::vector<PanelCut> panels;
  std::vector<std::size_t> left_over;  // wanted pieces that no panel was left for
  double weight = 0;                   // of the area of all opened panels, times their weights
  double bound = 0;                    // from the area alone
  bool proved = false;                 // it meets the bound, or every way of placing corner by corner was tried
};

/// Places every piece in a corner of what is left and cuts the rest in two, from edge to edge, trying the ways in turn
/// up to a limit on nodes. Panels lose `trim_mm` at both ends of their length first; cuts take `kerf_mm`. Fewest pieces
/// left over come first, then the smallest ones, then the least weight, then the largest rest in one piece. Decisions
/// on whole micrometres.
[[nodiscard]] PanelPlan cut_panels(std::span<const PanelWanted>, std::span<const PanelStock>, double kerf_mm,
                                   double trim_mm);

}  // namespace visewright::making
