// Solids: made from 2-D profiles, cut, joined and measured. The geometry kernel stays behind this header.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string_view>

#include "base/fault.h"
#include "geometry/loop.h"
#include "geometry/placement.h"
#include "units/quantity.h"

namespace visewright::kernel {

/// A body in space, mm; of one piece or of several. Copies share what is inside, and nothing changes it after it is
/// made.
class Solid {
 public:
  struct Impl;
  explicit Solid(std::shared_ptr<const Impl> impl) : impl_(std::move(impl)) {}
  [[nodiscard]] const Impl& impl() const { return *impl_; }

 private:
  std::shared_ptr<const Impl> impl_;
};

// Every function below takes a `label` that says what the caller is making ("gear 1: bore"). When the kernel fails, the
// fault has Cause::geometry and the label as its key; no exception leaves this folder.

/// The profile in the x–y plane of `frame`, drawn out along z from `from_mm` to `to_mm`. Lines and arcs are exact;
/// involutes and trochoids become splines through points at equal roll steps that stray less than a micrometre.
/// Several outer outlines give a solid of several pieces. A fault when from ≥ to, when a number is not finite, when
/// there is no outer outline, or when a hole lies in no outer outline.
/// Law: volume = area of the profile × (to − from).
[[nodiscard]] base::Result<Solid> prism(const geometry::Profile&, const geometry::Placement& frame, double from_mm,
                                        double to_mm, std::string_view label);

/// From where to where a section is turned, anticlockwise from the x axis of its frame; all the way round by itself.
struct Sweep {
  double from_rad = 0, to_rad = 2 * units::pi;
};

/// The half section turned about z of `axis`: profile x is the radius, y the height along z. A fault when a point has a
/// negative radius. Law: volume = swept angle × the profile's area × the radius of its centroid (Pappus).
[[nodiscard]] base::Result<Solid> revolution(const geometry::Profile& half_section_r_z,
                                             const geometry::Placement& axis, Sweep, std::string_view label);
[[nodiscard]] inline base::Result<Solid> revolution(const geometry::Profile& half_section_r_z,
                                                    const geometry::Placement& axis, std::string_view label) {
  return revolution(half_section_r_z, axis, Sweep{}, label);
}

/// A box on the z side of a plane, to cut with: it reaches `reach_mm` from the plane's origin to every side.
[[nodiscard]] base::Result<Solid> behind(const geometry::Placement& plane, double reach_mm, std::string_view label);

/// `from` less all the tools, in one operation. None of the inputs changes. A fault when nothing is left. Whether the
/// rest fell into pieces is in measures().solids.
[[nodiscard]] base::Result<Solid> cut(const Solid& from, std::span<const Solid> tools, std::string_view label);

/// The union, in one operation. Pieces that do not touch stay separate pieces. A fault when there are no pieces.
[[nodiscard]] base::Result<Solid> fused(std::span<const Solid> pieces, std::string_view label);

/// What two solids share; nothing when they are apart or only touch.
[[nodiscard]] base::Result<std::optional<Solid>> common(const Solid& a, const Solid& b, std::string_view label);

/// The volume two solids share: the judge of whether they overlap. Touching solids share exactly 0.
[[nodiscard]] base::Result<double> common_volume_mm3(const Solid& a, const Solid& b, std::string_view label);

/// The least distance between two solids. Trust it only when their common volume is zero: for solids that cross, the
/// kernel is known to give a distance above zero at times. Slow on gears.
[[nodiscard]] base::Result<double> distance_mm(const Solid& a, const Solid& b, std::string_view label);

/// The solid carried rigidly: what stood in the world's frame now stands in `to`. Shares the shape.
/// REQUIRES: axes of length 1, square to each other.
[[nodiscard]] Solid moved(const Solid&, const geometry::Placement& to);

/// An upright box around a body, mm.
struct Box3 {
  geometry::Vector low{}, high{};
};
/// The tight box, from surfaces and curves and not from facets; larger by up to 1e-6 mm.
[[nodiscard]] base::Result<Box3> box(const Solid&, std::string_view label);

/// What there is to know about a finished solid. Volume and area are within a millionth on plane and round faces, and
/// within a hundred-thousandth on bodies with splines, such as gears.
struct Measures {
  double volume_mm3 = 0;
  double area_mm2 = 0;
  /// The largest gap the kernel had to bridge between faces, edges and corners. Good solids stay near 1e-7.
  double worst_tolerance_mm = 0;
  int solids = 0;
  /// The kernel's own check of the solid's make-up; it does not look for faces that cross each other.
  bool valid = false;
  /// Every edge has a face on both sides.
  bool closed = false;
};
[[nodiscard]] base::Result<Measures> measures(const Solid&, std::string_view label);

}  // namespace visewright::kernel
