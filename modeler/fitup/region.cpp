#include "fitup/region.h"

#include <algorithm>
#include <optional>

namespace visewright::fitup {
namespace {

using geometry::Box;

constexpr std::size_t block_size = 12;

bool meets(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

Box around(const Box& a, const Box& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)}, {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

/// Whether a whole outline's own material lies where amid(…).square points: for a line to its left; for an arc away from
/// its centre, which is left of it when it runs clockwise.
bool material_to_square(const Curve& c) {
  if (c.straight()) return c.left_in;
  const bool anticlockwise = c.right == (c.b.y > c.a.y);
  return c.left_in != anticlockwise;
}

/// A point a skin's depth inside the material behind a piece of edge.
Point behind(const Curve& c, bool to_square) {
  const Amid m = amid(c);
  return m.at + (to_square ? skin_mm : -skin_mm) * m.square;
}

/// Pieces of one region's edge, cut by the other's: does material lie behind any of them in both?
std::optional<Point> shares(const Region& a, const Region& b) {
  std::vector<Point> cuts;
  const Box window = grown(b.box(), skin_mm);
  for (const Region::Block& block : a.blocks()) {
    if (!meets(block.box, window)) continue;
    for (std::size_t i = block.from; i < block.to; ++i) {
      const Piece& piece = a.edge()[i];
      if (!meets(piece.curve.box, window)) continue;
      cuts.clear();
      const Box own = grown(piece.curve.box, skin_mm);
      for (const Region::Block& other : b.blocks()) {
        if (!meets(other.box, own)) continue;
        for (std::size_t j = other.from; j < other.to; ++j) meet(piece.curve, b.edge()[j].curve, cuts);
      }
      for (const Curve& part : pieces(piece.curve, cuts)) {
        const Point in = behind(part, piece.to_square);
        if (b.holds(in) && a.holds(in)) return in;
      }
    }
  }
  return std::nullopt;
}

}  // namespace

Region::Region(Outline base, std::vector<Outline> removed) : base_(std::move(base)) {
  for (Outline& outline : removed)
    if (meets(grown(outline.box, contact_mm), base_.box)) removed_.push_back(std::move(outline));
  find_edge();
  find_blocks();
}

bool Region::holds(Point p) const {
  return base_.holds(p) && std::none_of(removed_.begin(), removed_.end(), [&](const Outline& o) { return o.holds(p); });
}

void Region::find_edge() {
  if (removed_.empty()) {
    for (const Curve& curve : base_.curves) edge_.push_back({curve, material_to_square(curve)});
    return;
  }
  std::vector<const Outline*> all{&base_};
  for (const Outline& o : removed_) all.push_back(&o);
  std::vector<Point> cuts;
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (const Curve& curve : all[i]->curves) {
      if (!meets(grown(curve.box, contact_mm), base_.box)) continue;
      cuts.clear();
      for (std::size_t j = 0; j < all.size(); ++j) {
        if (j == i || !meets(grown(all[j]->box, contact_mm), curve.box)) continue;
        for (const Curve& other : all[j]->curves) meet(curve, other, cuts);
      }
      for (const Curve& part : pieces(curve, cuts)) {
        const bool one = holds(behind(part, true)), other = holds(behind(part, false));
        if (one != other) edge_.push_back({part, one});
      }
    }
  }
}

void Region::find_blocks() {
  for (std::size_t i = 0; i < edge_.size(); i += block_size) {
    Block block{i, std::min(edge_.size(), i + block_size), edge_[i].curve.box};
    for (std::size_t k = block.from; k < block.to; ++k) block.box = around(block.box, edge_[k].curve.box);
    box_ = i == 0 ? block.box : around(box_, block.box);
    blocks_.push_back(block);
  }
}

PlaneGap plane_gap(const Region& a, const Region& b, double within_mm) {
  PlaneGap best{within_mm, 0, false, {}, {}};
  if (a.empty() || b.empty() || apart(a.box(), b.box()) >= within_mm) return best;
  auto common = shares(a, b);
  if (!common) common = shares(b, a);
  if (common) return {0, 0, true, *common, *common};
  bool doubtful = false;
  for (const Region::Block& one : a.blocks()) {
    if (apart(one.box, b.box()) > best.distance) continue;
    for (const Region::Block& two : b.blocks()) {
      if (apart(one.box, two.box) > best.distance) continue;
      for (std::size_t i = one.from; i < one.to; ++i) {
        const Curve& mine = a.edge()[i].curve;
        if (apart(mine.box, two.box) > best.distance) continue;
        for (std::size_t j = two.from; j < two.to; ++j) {
          const Curve& its = b.edge()[j].curve;
          const double stray = mine.stray + its.stray;
          if (apart(mine.box, its.box) - stray > best.distance) continue;
          const Nearest found = nearest(mine, its);
          if (stray > 0 && found.distance <= stray) doubtful = true;
          const double sure = std::max(0.0, found.distance - stray);
          if (sure < best.distance) best = {sure, stray, false, found.a, found.b};
        }
      }
    }
  }
  // Chords may miss a bite no deeper than they stray: such a pair is not called clear.
  best.overlap = doubtful;
  return best;
}

}  // namespace visewright::fitup
