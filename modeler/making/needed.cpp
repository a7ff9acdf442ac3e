// The pieces that parts are cut from.
#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "making/cutting.h"
#include "standards/designation.h"
#include "units/text.h"

namespace visewright::making {
namespace {

using layout::StockPiece;

/// Stock is bought to a tenth; sheets vary more.
constexpr double same_mm = 0.1, same_sheet_mm = 0.5;
constexpr int most_layers = 4;

bool near(double a, double b, double within_mm) { return std::abs(a - b) <= within_mm + 1e-9; }

std::string thread_name(const parts::Rod& rod) { return rod.thread->designation + (rod.left_hand ? " left-hand" : ""); }

bool is_rod(std::string_view kind) { return kind == "rod" || kind == "threaded rod"; }

bool same_material(const StockPiece& stock, const NeededPiece& piece) {
  if (!piece.threaded) return standards::name_key(stock.material) == standards::name_key(piece.material);
  const std::string have = standards::designation_key(stock.material),
                    want = standards::designation_key(piece.material);
  return have == want;
}

bool suits_board(const StockPiece& stock, const NeededPiece& piece) {
  const double t = stock.size_mm[2];
  return t >= piece.thickness_mm - same_mm || near(t, piece.planed_mm, same_mm);
}

double size_or_zero(const StockPiece& stock, std::size_t i) { return i < stock.size_mm.size() ? stock.size_mm[i] : 0; }

/// The section of stock bar whose sides are both among the piece's sizes; then the third is its length.
std::optional<double> length_in(const StockPiece& stock, const geometry::Vector& size) {
  for (std::size_t i = 0; i < 3; ++i) {
    const double a = size[(i + 1) % 3], b = size[(i + 2) % 3];
    const double wide = size_or_zero(stock, 1), thin = size_or_zero(stock, 2);
    if ((near(a, wide, same_mm) && near(b, thin, same_mm)) || (near(b, wide, same_mm) && near(a, thin, same_mm)))
      return size[i];
  }
  return std::nullopt;
}

struct Cutter {
  const Workpiece& work;
  const layout::Plan& plan;
  std::vector<NeededPiece>& out;

  NeededPiece named(std::string kind, const standards::MaterialRow& material) const {
    NeededPiece piece;
    piece.part = work.part->name;
    piece.kind = std::move(kind);
    piece.material = material.name;
    return piece;
  }
  void add(const NeededPiece& piece, int layers = 1) const {
    out.insert(out.end(), static_cast<std::size_t>(work.count * layers), piece);
  }

  void operator()(const parts::Board& board) const {
    NeededPiece piece = named("board", *board.wood);
    piece.size_mm = {board.rough_mm[0], board.rough_mm[1]};
    piece.thickness_mm = board.rough_mm[2];
    piece.planed_mm = std::min(board.size_mm[1], board.size_mm[2]);
    piece.grain = true;
    add(piece);
  }
  void operator()(const parts::Sheet& sheet) const {
    NeededPiece piece = named("sheet", *sheet.material);
    const auto thin =
        static_cast<std::size_t>(std::min_element(sheet.size_mm.begin(), sheet.size_mm.end()) - sheet.size_mm.begin());
    const std::size_t along = thin == 0 ? 1 : 0, across = thin == 2 ? 1 : 2;
    piece.size_mm = {sheet.size_mm[along], sheet.size_mm[across]};
    piece.thickness_mm = piece.planed_mm = sheet.size_mm[thin];
    piece.grain = sheet.grain;
    const int layers = layers_of(piece);
    piece.thickness_mm /= layers;
    piece.planed_mm = piece.thickness_mm;
    add(piece, layers);
  }
  /// One sheet of the thickness, else as few equal ones from the rack as make it up.
  int layers_of(const NeededPiece& piece) const {
    for (int layers = 1; layers <= most_layers; ++layers) {
      for (const StockPiece& stock : plan.workshop.stock)
        if (stock.kind == "sheet" && same_material(stock, piece) &&
            near(layers * size_or_zero(stock, 2), piece.thickness_mm, same_sheet_mm))
          return layers;
    }
    return 1;
  }
  void operator()(const parts::Rod& rod) const {
    NeededPiece piece = named("rod", *rod.material);
    piece.threaded = rod.thread != nullptr;
    if (piece.threaded) piece.material = thread_name(rod);
    piece.section_mm = rod.diameter_mm;
    piece.size_mm = {rod.length_mm + metal_cuts.piece_allowance_mm, 0};
    add(piece);
  }
  void operator()(const parts::Bar& bar) const {
    geometry::Vector size = bar.size_mm;
    std::sort(size.begin(), size.end(), std::greater<>());
    NeededPiece piece = named("bar", *bar.material);
    double length = size[0];
    for (const StockPiece& stock : plan.workshop.stock) {
      if (stock.kind != "bar" || !same_material(stock, piece)) continue;
      if (const auto found = length_in(stock, size)) {
        length = *found;
        break;
      }
    }
    const auto at = std::find(size.begin(), size.end(), length);
    std::rotate(size.begin(), at, at + 1);
    piece.section_mm = std::max(size[1], size[2]);
    piece.thickness_mm = std::min(size[1], size[2]);
    piece.size_mm = {length + metal_cuts.piece_allowance_mm, 0};
    add(piece);
  }
  void operator()(const parts::HexBar& bar) const {
    NeededPiece piece = named("hexagon bar", *bar.material);
    piece.section_mm = bar.across_flats_mm;
    piece.size_mm = {bar.length_mm + metal_cuts.piece_allowance_mm, 0};
    add(piece);
  }
  void operator()(const parts::Bought&) const {}
  void operator()(const parts::Printed&) const {}
  void operator()(const parts::Offcut&) const {}
  void operator()(const parts::Existing&) const {}
};

}  // namespace

bool suits(const StockPiece& stock, const NeededPiece& piece) {
  const bool same_kind = piece.kind == "rod" ? is_rod(stock.kind) : stock.kind == piece.kind;
  if (!same_kind || stock.size_mm.empty() || !same_material(stock, piece)) return false;
  if (piece.kind == "board" || piece.kind == "sheet") {
    if (stock.size_mm.size() < 3) return false;
    return piece.kind == "board" ? suits_board(stock, piece)
                                 : near(stock.size_mm[2], piece.thickness_mm, same_sheet_mm);
  }
  if (piece.kind == "bar")
    return near(size_or_zero(stock, 1), piece.section_mm, same_mm) &&
           near(size_or_zero(stock, 2), piece.thickness_mm, same_mm);
  // A threaded rod's diameter is its thread's; other rods must be of the size.
  return piece.threaded || near(size_or_zero(stock, 1), piece.section_mm, same_mm);
}

std::vector<NeededPiece> needed_pieces(const std::vector<Workpiece>& pieces, const layout::Plan& plan) {
  std::vector<NeededPiece> needed;
  for (const Workpiece& work : pieces)
    if (work.piece != nullptr && !work.made) std::visit(Cutter{work, plan, needed}, work.piece->stock);
  return needed;
}

}  // namespace visewright::making
