// How wide, in which colour and dashed how a pen draws.
#pragma once

#include <array>
#include <span>

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

struct Ink {
  double width_mm;
  std::array<double, 3> red_green_blue;  // 0 to 1
  std::span<const double> dashes_mm;     // on, off, …; empty: a full line
};

/// Wide and narrow lines are 2 : 1 as ISO 128-2 asks (0.5 and 0.25).
[[nodiscard]] inline Ink ink(Pen pen) {
  static constexpr std::array<double, 2> dashed{2, 1};
  static constexpr std::array<double, 4> dash_dot{6, 1.2, 0.5, 1.2};
  static constexpr std::array<double, 6> dash_dot_dot{6, 1.2, 0.5, 1.2, 0.5, 1.2};
  switch (pen) {
    case Pen::cut: return {0.35, {0, 0, 0}, {}};
    case Pen::recess: return {0.35, {0.05, 0.3, 0.65}, {}};
    case Pen::hole: return {0.35, {0.65, 0.1, 0.1}, {}};
    case Pen::mark: return {0.18, {0.0, 0.4, 0.15}, {}};
    case Pen::read_only: return {0.18, {0.35, 0.35, 0.35}, dash_dot_dot};
    case Pen::visible: return {0.5, {0, 0, 0}, {}};
    case Pen::hidden: return {0.25, {0, 0, 0}, dashed};
    case Pen::centre: return {0.25, {0.3, 0.3, 0.3}, dash_dot};
    case Pen::thin: return {0.25, {0, 0, 0}, {}};
    case Pen::hatch: return {0.13, {0.35, 0.35, 0.35}, {}};
  }
  return {0.25, {0, 0, 0}, {}};
}

}  // namespace visewright::outputs::papers
