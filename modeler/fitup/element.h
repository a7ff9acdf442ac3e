// Bodies for gaps: drums standing in the model, less drums, each ready to be cut square to any axis along which it
// does not change.
#pragma once

#include <memory>
#include <vector>

#include "fitup/outline.h"
#include "geometry/placement.h"
#include "parts/part.h"

namespace visewright::fitup {

using geometry::Placement;
using geometry::Vector;

struct Box3 {
  Vector low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
  void include(const Vector&);
  void include(const Box3&);
};
[[nodiscard]] Box3 grown(Box3, double by_mm);
[[nodiscard]] double gap_mm(const Box3&, const Box3&);

/// A profile drawn out along z of a frame; `block`: the profile is one rectangle along the frame's x and y, so the drum
/// may be cut along any of the three axes. `bound`: it stands for something smaller (when added) or larger (when taken
/// away), which it holds (or lies in).
struct Drum {
  std::shared_ptr<const geometry::Profile> profile;
  std::shared_ptr<const Chain> edges;  // of the profile
  Placement frame;
  double from_mm = 0, to_mm = 0;
  bool block = false, bound = false;
  geometry::Box flat;  // box of the profile
};
[[nodiscard]] Drum drum(geometry::Profile, const Placement&, double from_mm, double to_mm, bool bound = false);
/// A ring about z of the frame.
[[nodiscard]] Drum ring_drum(const Placement& axis, double inner_mm, double outer_mm, double from_mm, double to_mm, bool bound = false);
[[nodiscard]] Box3 box(const Drum&);
/// From where to where it reaches along a direction.
struct Reach {
  double from, to;
};
[[nodiscard]] Reach reach(const Drum&, const Vector& way);

/// Drums that together hold an added shape, and drums that a removed shape holds.
[[nodiscard]] std::vector<Drum> outer_drums(const parts::Shape&);
[[nodiscard]] std::vector<Drum> inner_drums(const parts::Shape&);

/// One drum of a body less what is taken away from it.
struct Element {
  Drum added;
  std::vector<Drum> removed;
  Box3 box;
};

/// A body as the union of elements, in the part's frame. Nothing of the body lies outside them.
[[nodiscard]] std::vector<Element> elements(const parts::Body&);
/// The same elements standing at a placement.
[[nodiscard]] std::vector<Element> placed(std::vector<Element>, const Placement& at);

/// All that the elements pass through in a full turn about an axis, as rings about it. `axis` has its z along the axis.
[[nodiscard]] std::vector<Element> swept(const std::vector<Element>&, const Placement& axis);

/// The true shapes of a body, ready to be asked about points.
struct Witness {
  struct Known {
    parts::Shape shape;
    Outline outline;  // of its profile or half section
  };
  std::vector<Known> added, removed;
  explicit Witness(const parts::Body&);
  /// Whether a point, in the part's frame, belongs to the body, its skin included.
  [[nodiscard]] bool holds(const Vector& point_in_part) const;
};

}  // namespace visewright::fitup
