// Which pieces of stock the parts are cut from, what is left over and what must be bought.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "layout/plan.h"
#include "making/workpiece.h"
#include "reasons/finding.h"

namespace visewright::making {

/// What the saw takes, and what is cut off first: common practice, no source. A metal piece is sawn longer, to be faced
/// at both ends; boards have their allowance in the rough size.
struct SawCuts {
  double kerf_mm, end_trim_mm, piece_allowance_mm;
};
inline constexpr SawCuts wood_cuts{3.2, 20, 0};  // cracks at both ends of a board, together
inline constexpr SawCuts sheet_cuts{3.2, 0, 0};
inline constexpr SawCuts metal_cuts{1.5, 0, 2};

/// One piece that a part needs, in the sizes to saw.
struct NeededPiece {
  std::string part;                 // "front jaw backing"
  std::string kind, material;       // "board", "beech"; a threaded rod goes by its thread
  std::array<double, 2> size_mm{};  // length along the grain or the bar, width; the width of rods and bars is 0
  double thickness_mm = 0;          // board, sheet: to saw; bar: the thinner side; rod, hexagon bar: 0
  double section_mm = 0;            // rod: diameter; hexagon bar: across flats; bar: the wider side
  double planed_mm = 0;             // board: its finished thickness; stock of just this is planed already
  bool grain = false;               // never turned
  bool threaded = false;
};

struct CutPiece {
  std::size_t piece = 0;  // index into Cutting::pieces
  std::string part;
  std::array<double, 2> at_mm{}, size_mm{};  // along, across
  bool turned = false;
};
/// One piece of stock that is cut up, on the rack or to be bought.
struct CutStock {
  std::string kind, material;
  std::vector<double> size_mm;         // longest first, as in the design's table of stock
  std::optional<std::size_t> on_hand;  // index into plan.workshop.stock; absent: to be bought
  int number = 1;                      // which of several equal ones
  std::vector<CutPiece> pieces;
  std::vector<std::vector<double>> left_mm;  // size of each usable rest, largest first
  double used_share = 0;                     // of its length or area that becomes parts
};
/// A line of what must be bought; hardware too, by its designation.
struct Purchase {
  std::string kind, material;
  std::vector<double> size_mm;
  int count = 0;
  std::vector<std::string> parts;
};
/// How near the plan comes to wasting nothing, for each material and section. `proved`: no plan opens less stock.
struct CutBound {
  std::string kind, material;
  double thickness_mm = 0, section_mm = 0;
  int pieces = 0, from_stock = 0;  // needed, and cut from what is on hand
  double opened = 0, least = 0;    // opened stock, and what the pieces alone take: mm of length, or mm² of area
  bool proved = false;
};

struct Cutting {
  std::vector<NeededPiece> pieces;
  std::vector<CutStock> stock;
  std::vector<Purchase> to_buy;
  std::vector<CutBound> bounds;
  std::vector<reasons::Finding> findings;
};

/// Pieces that are finished, bought whole, printed, offcuts of others or stand already are not cut. Where the stock on
/// hand does not reach, what is missing is bought: rods and bars in lengths as they are sold, boards
/// and sheets as one piece of each thickness that holds the missing ones.
[[nodiscard]] Cutting cut_stock(const std::vector<Workpiece>&, const layout::Plan&);

/// The pieces alone, every copy by itself. A panel thicker than the sheets on hand is glued from two to four of them,
/// each a piece.
[[nodiscard]] std::vector<NeededPiece> needed_pieces(const std::vector<Workpiece>&, const layout::Plan&);
/// Whether this kind of stock is right for the piece but for its length and width: material, thickness, section.
[[nodiscard]] bool suits(const layout::StockPiece&, const NeededPiece&);

}  // namespace visewright::making
