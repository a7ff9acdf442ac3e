// The four kinds of edge an outline is made of: lines, arcs, involutes and trochoids.
#pragma once

#include <variant>

#include "geometry/point.h"

namespace visewright::geometry {

struct Line {
  Point a, b;
};

/// From a to b about the centre; `left` turns anticlockwise. a == b is the full circle.
struct Arc {
  Point a, b, centre;
  bool left = true;
};

/// The involute of a base circle, from roll angle `roll_from_rad` to `roll_to_rad` (either order). At roll angle t the
/// point lies at radius rb·sqrt(1 + t²) and polar angle start ± (t − atan t); `left` takes the plus sign.
/// Source: ISO 21771:2007, involute function.
struct Involute {
  Point centre;
  double base_radius_mm = 0, start_rad = 0, roll_from_rad = 0, roll_to_rad = 0;
  bool left = true;
};

/// The root fillet that the rounded tip of a basic rack leaves on a gear. The pitch line of the rack rolls on the pitch
/// circle (radius rp) without slip; the centre of the rack's tip rounding (radius `tip_radius_mm`) stands `offset_mm`
/// from the pitch line towards the gear. Before turning by `start_rad` and shifting to `centre`, at roll angle t
///   pitch point  P = R(−t)·(rp, 0)
///   tip centre   C = R(−t)·(rp − offset, rp·t)
///   fillet       F = C + tip_radius·(C − P)/|C − P|
/// where R turns anticlockwise. P is the instantaneous centre of the rack, so F is where the rounding touches the curve
/// it leaves. With `left` unset the y of the unturned curve changes sign.
/// At t = 0 the fillet touches the root circle, radius rp − offset − tip_radius, at the angle start_rad. As t grows the
/// curve climbs and, when `left`, turns anticlockwise: fillet and involute of one flank have the same `left`. A rack
/// flank of pressure angle α ends its rounding at t = offset/(rp·tan α); on a gear without undercut the fillet there
/// runs smoothly into the involute at its roll angle tan α − (offset/sin α + tip_radius)/rb. The involute of that flank
/// starts on the base circle at start_rad ± ((offset·tan α + tip_radius/cos α)/rp − (tan α − α)), plus when `left`.
/// REQUIRES: offset > 0, tip_radius ≥ 0. Derived from rolling without slip; the rack is that of ISO 53:1998, whose tip
/// centre stands at offset = (dedendum − tip_radius − x·m) from the pitch line.
struct Trochoid {
  Point centre;
  double pitch_radius_mm = 0, tip_radius_mm = 0, offset_mm = 0, start_rad = 0, roll_from_rad = 0, roll_to_rad = 0;
  bool left = true;
};

using Edge = std::variant<Line, Arc, Involute, Trochoid>;

/// Point of an edge at parameter u, 0 at its start and 1 at its end; on curves u runs evenly in angle or roll.
[[nodiscard]] Point at(const Edge&, double u);
[[nodiscard]] Point start(const Edge&);
[[nodiscard]] Point finish(const Edge&);
/// Rate of change of the point with u, mm.
[[nodiscard]] Point rate(const Edge&, double u);
/// Direction of travel at u, of length 1.
[[nodiscard]] Point direction(const Edge&, double u);
/// The signed angle an arc sweeps, positive anticlockwise; a full circle is ±2π.
[[nodiscard]] double swept_rad(const Arc&);
/// A bound on the distance between the edge from u0 to u1 and the straight chord between those points, mm: the sagitta
/// of an arc, and h²/8 times the largest second derivative for curves.
[[nodiscard]] double strays_mm(const Edge&, double u0, double u1);
/// The same edge run backwards.
[[nodiscard]] Edge reversed(const Edge&);
/// The same edge turned about the origin and then shifted.
[[nodiscard]] Edge moved(const Edge&, double turn_rad, Point by);

}  // namespace visewright::geometry
