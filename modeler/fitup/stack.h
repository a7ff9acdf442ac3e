// An element cut square to an axis into slabs, each with one region all through; and how two stacks stand to each other
// while one of them slides along the axis.
#pragma once

#include "fitup/element.h"
#include "fitup/region.h"

namespace visewright::fitup {

struct Slab {
  double from, to;  // along the axis
  Region region;
};

struct Stack {
  Placement axis;  // of the cut: z along it; x and y span the plane
  std::vector<Slab> slabs;
};

/// The frame that all stacks along one direction share: origin of the model, x and y fixed by the direction.
[[nodiscard]] Placement frame_along(const Vector& way);

/// What does not stand along the axis is taken as the box round it when added, and passed over when removed: the stack
/// holds the element. REQUIRES: axis from frame_along.
[[nodiscard]] Stack stack(const Element&, const Placement& axis);

/// Shifts of the first stack along the axis, from ≤ to.
struct Slide {
  double from = 0, to = 0;
};

/// How near two stacks come at any shift of a slide. `distance`: least, never above the truth for the elements;
/// `overlap`: they share more than a skin at some shift, `shared_mm` of length at `at_shift`. The points are where they
/// are nearest, in the model, the first one shifted.
struct Approach {
  double distance = 0;
  bool overlap = false;
  double at_shift = 0;
  double shared_mm = 0;
  Vector a{}, b{};
};
[[nodiscard]] Approach approach(const Stack& a, const Stack& b, Slide, double within_mm);

/// Round surfaces about one line that look at each other: the bore less the shaft, in diameter, where that is least, and
/// how long they face each other there at the start and at the end of the slide.
struct Coaxial {
  double play = 1e300;
  double shaft = 0;  // diameter
  double facing_first = 0, facing_last = 0;
  void take(const Coaxial&);
};
[[nodiscard]] Coaxial coaxial(const Stack& a, const Stack& b, Slide);

}  // namespace visewright::fitup
