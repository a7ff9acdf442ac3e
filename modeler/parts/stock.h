// What a part is made from, before any work is done to it.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "parts/shape.h"
#include "standards/rows.h"

namespace visewright::parts {

/// A block with its low corner and its size in the part's own frame, mm. `rough_mm` is what to saw before planing, as
/// length, width, thickness. Grain runs along the part's x.
struct Board {
  const standards::MaterialRow* wood;
  geometry::Vector low_mm, size_mm, rough_mm;
};

/// A piece of sheet or panel; the thin side is the smallest size. `grain` says whether it may be turned when cut.
struct Sheet {
  const standards::MaterialRow* material;
  geometry::Vector low_mm, size_mm;
  bool grain;
};

/// Round stock along z from 0. `thread` is set for threaded rod; a drilled centre makes a tube of it.
struct Rod {
  const standards::MaterialRow* material;
  double diameter_mm, length_mm;
  const standards::ThreadRow* thread = nullptr;
  bool left_hand = false;
};

/// Rectangular bar or plate.
struct Bar {
  const standards::MaterialRow* material;
  geometry::Vector low_mm, size_mm;
};

/// Hexagon bar along z from 0, two flats level.
struct HexBar {
  const standards::MaterialRow* material;
  double across_flats_mm, length_mm;
};

/// A bought piece, with the shape that its designation stands for. `share_of` 2: this part is half of one bought piece.
/// `mass_kg` is the catalogue's when it gives one, for this part alone; zero: from the shape.
struct Bought {
  std::string designation;
  std::string standard;
  const standards::MaterialRow* material;
  std::vector<Shape> shape;  // one united body, its pieces added in order
  std::vector<Shape> less;   // taken out of it: bores
  int share_of = 1;
  double mass_kg = 0;
};

/// Nothing there until a Print operation.
struct Printed {
  const standards::MaterialRow* material;
};

/// The piece that a saw cut took off another part; it keeps that part's frame.
struct Offcut {
  std::string of;  // name of the part it was cut from
  const standards::MaterialRow* material;
  Prism shape;
};

/// Stands already: the bench and what is near it. Never in a list to buy.
struct Existing {
  std::string what;
  const standards::MaterialRow* material;
  geometry::Vector low_mm, size_mm;
};

using Stock = std::variant<Board, Sheet, Rod, Bar, HexBar, Bought, Printed, Offcut, Existing>;

/// The body of the stock before work; empty for Printed.
struct Blank {
  std::vector<Shape> added, removed;
};
[[nodiscard]] Blank blank(const Stock&);
[[nodiscard]] const standards::MaterialRow& material(const Stock&);

}  // namespace visewright::parts
