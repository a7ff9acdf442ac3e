// Level slices through a whole body.
#pragma once

#include <cstddef>
#include <map>
#include <utility>
#include <vector>

#include "parts/sliceable.h"

namespace visewright::parts {

/// The level slices of a body.
class Slices {
 public:
  Slices(std::vector<Sliceable> added, std::vector<Sliceable> removed)
      : added_(std::move(added)), removed_(std::move(removed)) {}

  [[nodiscard]] bool possible() const;
  /// How many shapes change along the axis.
  [[nodiscard]] std::ptrdiff_t changing() const;
  /// Heights, rising, between which nothing starts or ends; the first and last are those of the body.
  [[nodiscard]] std::vector<double> breaks() const;
  [[nodiscard]] bool changes(double low, double high) const;
  /// Area of what the added shapes cover and the removed ones do not, at a height that is no break.
  [[nodiscard]] double area_mm2(double z) const;

 private:
  /// A region of a slice; regions of one number are the same at every height, 0 is no number.
  struct Region {
    geometry::Profile profile;
    std::size_t number;
  };
  [[nodiscard]] double united(const std::vector<Region>&) const;
  [[nodiscard]] double shared(const std::vector<Region>& there, std::vector<Region> gone) const;

  std::vector<Sliceable> added_, removed_;
  mutable std::map<std::vector<std::size_t>, double> known_;  // areas of unions of regions that stay the same
};

}  // namespace visewright::parts
