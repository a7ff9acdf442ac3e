// Placing parts one by one.
#pragma once

#include <cstdint>
#include <string>
#include <utility>

#include "assembly/assembly.h"

namespace visewright::assembly {

using Index = std::uint32_t;

/// A frame in the front orientation: x to the person's right, y up, z out of the bench.
[[nodiscard]] inline geometry::Placement front_frame(double x, double out, double z = 0) {
  return {{x, -out, z}, {1, 0, 0}, {0, -1, 0}};
}

/// Collects an assembly; indices stay good while it grows.
class Builder {
 public:
  [[nodiscard]] Index part(parts::Part part) {
    assembly_.parts.push_back(std::make_shared<const parts::Part>(std::move(part)));
    return static_cast<Index>(assembly_.parts.size() - 1);
  }

  Index fixed(Index part, std::string name, const geometry::Placement& where) {
    return add({part, std::move(name), where, Group::fixed, 0, {}, {}});
  }
  Index moving(Index part, std::string name, const geometry::Placement& where) {
    return add({part, std::move(name), where, Group::moving, 0, {}, {}});
  }
  /// Turns about the axis through x at the screw line.
  Index turning(Index part, std::string name, const geometry::Placement& where, double axis_x, double rad_per_mm) {
    return add({part, std::move(name), where, Group::turning, rad_per_mm, {}, {axis_x, 0, 0}});
  }
  void folds_out(Index placed, const geometry::Placement& where) { assembly_.placed[placed].grip_out = where; }

  void fit(Index a, Index b, Fit fit) { assembly_.declared.push_back({a, b, fit}); }

  [[nodiscard]] Assembly& assembly() { return assembly_; }

 private:
  Index add(Placed placed) {
    assembly_.placed.push_back(std::move(placed));
    return static_cast<Index>(assembly_.placed.size() - 1);
  }
  Assembly assembly_;
};

}  // namespace visewright::assembly
