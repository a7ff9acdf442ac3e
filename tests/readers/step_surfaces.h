// Surfaces of a STEP file: how far a point is off, and what flows through a piece of one, from its rim alone.
#pragma once

#include <optional>

#include "readers/step_curves.h"

namespace visewright::readers {

struct Surface {
  enum class Kind { plane, cylinder, cone, sphere, torus, extrusion };
  Kind kind = Kind::plane;
  Frame frame;              // axis z; not used by extrusions
  double radius = 0;        // at the frame's origin; of a torus, to the middle of the ring
  double small_radius = 0;  // of the ring of a torus
  double slope = 0;         // of a cone: the tangent of its half angle
  Curve swept;              // of an extrusion
  Triple along{0, 0, 0};    // of an extrusion

  [[nodiscard]] double off_mm(const Triple&) const;
};
/// Nothing for the kinds not listed.
[[nodiscard]] std::optional<Surface> surface_of(const StepFile&, const Instance*);

/// What a point on a rim adds, per unit of the rim's parameter, to two integrals over the piece of surface on the left
/// of the rim: its area, and the flux of the field F(r) = (d·r) d along the surface's own normal. The divergence of F
/// is 1, so the flux out of a closed skin is the volume inside. By Green's theorem in the surface's own coordinates.
struct Flow {
  double area = 0, flux = 0;
};
/// Planes, cylinders and cones, any d; for others see carries_flux.
[[nodiscard]] Flow flow(const Surface&, const OnCurve& rim, const Triple& d);
/// Whether the flux through the surface is known: planes, cylinders, cones; extrusions along d, through which nothing
/// flows.
[[nodiscard]] bool carries_flux(const Surface&, const Triple& d);

}  // namespace visewright::readers
