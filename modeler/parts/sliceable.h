// A shape made ready for level slices.
#pragma once

#include <cstdint>
#include <vector>

#include "geometry/loop.h"
#include "parts/shape.h"

namespace visewright::parts {

/// A shape given in a frame whose z stands along the slicing axis, ready to be cut level.
class Sliceable {
 public:
  explicit Sliceable(Shape shape);

  /// Whether its slices are made of lines and arcs: see volume_mm3.
  [[nodiscard]] bool possible() const { return way_ != Way::askew; }
  /// Heights at which its slices start, end, or change their law.
  [[nodiscard]] const std::vector<double>& breaks() const { return breaks_; }
  /// Whether its slices differ anywhere strictly between two neighbouring breaks.
  [[nodiscard]] bool changes(double low, double high) const;
  [[nodiscard]] bool changes() const;
  /// Of a slanting half space: the heights at which its edge passes over corners of straight outlines of another shape,
  /// and whether its edge reaches a box anywhere between two heights.
  [[nodiscard]] std::vector<double> passes_over(const Sliceable& other) const;
  [[nodiscard]] bool reaches(const geometry::Box&, double low, double high) const;
  /// The slice at a height that is no break. `window` bounds what matters of shapes without end.
  [[nodiscard]] std::vector<geometry::Profile> slice(double z, const geometry::Box& window) const;
  /// Whether all its slices are the same.
  [[nodiscard]] bool drum() const { return way_ == Way::drum; }

 private:
  enum class Way : std::uint8_t { drum, across, turned, half, askew };

  void look_at(const Prism&);
  void look_at(const Revolved&);
  void look_at(const HalfSpace&);
  void break_at_edges(const geometry::Profile&, geometry::Point up, double base_mm);

  Shape shape_;
  Way way_ = Way::askew;
  geometry::Profile drum_;    // of a drum: its slice
  geometry::Point up_{0, 1};  // the profile's direction that points up
  double base_mm_ = 0;        // height of the profile's origin
  std::vector<double> breaks_;
};

}  // namespace visewright::parts
