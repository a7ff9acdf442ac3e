#include "parts/stock.h"

namespace visewright::parts {
namespace {

Blank box(const geometry::Vector& low, const geometry::Vector& size) {
  const geometry::Loop outline = geometry::rectangle({low[0], low[1]}, {low[0] + size[0], low[1] + size[1]});
  return {{Prism{geometry::region(outline), {}, low[2], low[2] + size[2]}}, {}};
}

struct BlankOf {
  Blank operator()(const Board& s) const { return box(s.low_mm, s.size_mm); }
  Blank operator()(const Sheet& s) const { return box(s.low_mm, s.size_mm); }
  Blank operator()(const Bar& s) const { return box(s.low_mm, s.size_mm); }
  Blank operator()(const Existing& s) const { return box(s.low_mm, s.size_mm); }
  Blank operator()(const Rod& s) const {
    return {{Prism{geometry::region(geometry::circle({0, 0}, s.diameter_mm / 2)), {}, 0, s.length_mm}}, {}};
  }
  Blank operator()(const HexBar& s) const {
    return {{Prism{geometry::region(geometry::hexagon({0, 0}, s.across_flats_mm, 0)), {}, 0, s.length_mm}}, {}};
  }
  Blank operator()(const Bought& s) const { return {s.shape, s.less}; }
  Blank operator()(const Printed&) const { return {}; }
  Blank operator()(const Offcut& s) const { return {{s.shape}, {}}; }
};

struct MaterialOf {
  const standards::MaterialRow* operator()(const Board& s) const { return s.wood; }
  template <class Kind>
  const standards::MaterialRow* operator()(const Kind& s) const {
    return s.material;
  }
};

}  // namespace

Blank blank(const Stock& stock) { return std::visit(BlankOf{}, stock); }

const standards::MaterialRow& material(const Stock& stock) { return *std::visit(MaterialOf{}, stock); }

}  // namespace visewright::parts
