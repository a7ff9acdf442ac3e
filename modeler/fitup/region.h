// A region of the plane: one outline less others. Gaps between regions, and whether they share more than a skin.
#pragma once

#include <vector>

#include "fitup/outline.h"

namespace visewright::fitup {

/// A piece of a region's true edge.
struct Piece {
  Curve curve;
  bool to_square = false;  // the material lies where amid(curve).square points
};

class Region {
 public:
  Region(Outline base, std::vector<Outline> removed);

  [[nodiscard]] bool holds(Point) const;
  /// The edge that is left of all outlines: none of it lies in what was taken away.
  [[nodiscard]] const std::vector<Piece>& edge() const { return edge_; }
  [[nodiscard]] const geometry::Box& box() const { return box_; }
  [[nodiscard]] bool empty() const { return edge_.empty(); }
  /// The edge in blocks, each with the box round it, so that far ones are passed over at once.
  struct Block {
    std::size_t from, to;
    geometry::Box box;
  };
  [[nodiscard]] const std::vector<Block>& blocks() const { return blocks_; }

 private:
  void find_edge();
  void find_blocks();

  Outline base_;
  std::vector<Outline> removed_;
  std::vector<Piece> edge_;
  std::vector<Block> blocks_;
  geometry::Box box_;
};

/// Two regions in one plane. `distance`: of their edges, or 0 when one holds the other; less than the truth by no more
/// than `stray`, greater never. `overlap`: they share more than a skin.
struct PlaneGap {
  double distance = 0, stray = 0;
  bool overlap = false;
  Point a, b;
};
/// Looks no further than `within_mm`: regions farther apart give that distance and no points.
[[nodiscard]] PlaneGap plane_gap(const Region& a, const Region& b, double within_mm);

}  // namespace visewright::fitup
