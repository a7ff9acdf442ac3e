// What an operation is done to: the piece of stock, or the whole that was built up from pieces.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "assembly/assembly.h"
#include "parts/part.h"

namespace visewright::making {

/// The form that stock has when the work begins; it decides what can hold and reach it.
enum class Form : std::uint8_t { board, sheet, round, bar, bought, printed, offcut, existing };

/// A piece or a built-up whole with the operations done to it there, in the order of the part. Points into the
/// assembly, which must outlive it. `made`: the design says that it is finished.
struct Workpiece {
  const parts::Part* part = nullptr;
  const parts::Piece* piece = nullptr;  // null for a built-up whole
  std::uint32_t of = 0;                 // index of the assembly's part that it is or belongs to
  int count = 0;                        // how many the vise holds
  bool made = false;
  Form form = Form::board;  // of a whole: that of its first member
  const standards::MaterialRow* material = nullptr;
  std::span<const parts::Operation> operations;
  geometry::Vector low_mm{}, high_mm{};  // its box, in its own frame
  std::vector<parts::Extent> boxes;      // of each body

  /// How far it reaches behind a face, along the face's z.
  [[nodiscard]] double through_mm(const parts::Face&) const;
  /// How far the bodies below a point of the face reach: what a hole there has to go through.
  [[nodiscard]] double through_mm(const parts::Face&, geometry::Point) const;
};

/// Every piece and every whole, members before the whole that they are built into, in the order of the assembly. Parts
/// that are placed nowhere are left out. `finished` are names of parts that are made already; a finished whole makes
/// its members finished.
[[nodiscard]] std::vector<Workpiece> workpieces(const assembly::Assembly&, std::span<const std::string> finished);

}  // namespace visewright::making
