// Shop operations: what is done to stock. Each takes away, adds, or changes no shape.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "geometry/loop.h"
#include "geometry/placement.h"
#include "parts/shape.h"
#include "reasons/rule.h"
#include "standards/rows.h"

namespace visewright::parts {

/// A face of a part: a name the person knows it by, and a frame on it whose z points out of the material, at the eye.
struct Face {
  std::string_view name;
  geometry::Placement datum;
};

/// Depth from the face, mm; absent: right through.
using Depth = std::optional<double>;

/// A round hole; `flat` wants a flat floor (hole saws and twist drills leave none). The point that a twist drill leaves
/// below a blind hole is not modelled. A hole that a CutThread follows is modelled at the thread's major diameter: in
/// the shop it is drilled to the tapping size.
struct Drill {
  Face face;
  geometry::Point at;
  double diameter_mm;
  Depth depth;
  bool flat = false;
};
/// A recess or pocket of any outline.
struct Rout {
  Face face;
  geometry::Profile outline;
  Depth depth;
};
/// Cut through along an outline with saw, laser or router: what is inside it falls out.
struct CutOut {
  Face face;
  geometry::Profile outline;
};
/// Cut the part to an outline: what is outside it falls off.
struct CutTo {
  Face face;
  geometry::Profile outline;
};
/// A straight saw cut; what lies on the z side of the plane falls off.
struct SawFlat {
  geometry::Placement plane;
};
/// Turned in the lathe: the half section that is taken away, about `axis`.
struct Turn {
  geometry::Placement axis;
  geometry::Profile half_section;
};
/// Ground flat; what lies on the z side of the plane goes. With `within`, an outline in the plane's x–y, only what
/// stands on that outline: a weld bead is ground flush and the washer beside it is left alone.
struct Grind {
  geometry::Placement plane;
  std::optional<geometry::Profile> within = std::nullopt;
};
/// The sharp edge between a face and an outline broken at 45°, `leg_mm` wide. `inside`: the outline is that of a hole.
/// Lines and arcs only, arcs bulging outwards with a radius above the leg.
struct Ease {
  Face face;
  geometry::Loop along;
  double leg_mm;
  bool inside;
};
/// A thread cut into a hole or on a rod that stands already; changes no shape here.
struct CutThread {
  Face face;
  geometry::Point at;
  std::string designation;
  double length_mm;
};
/// Printed in layers along z of the part's frame: profile, from, to.
struct Layer {
  geometry::Profile profile;
  double from_mm, to_mm;
};
struct Print {
  std::vector<Layer> layers;
};
/// A scratch, centre punch or letter; no change of shape.
struct Mark {
  Face face;
  geometry::Point at;
  std::string text;
};
/// Oil, paint, grease; no change of shape.
struct Treat {
  std::string how;
};

using Work = std::variant<Drill, Rout, CutOut, CutTo, SawFlat, Turn, Grind, Ease, CutThread, Print, Mark, Treat>;

/// One step of work. `pattern` names the shared hole pattern and the hole in it that the step follows, empty if none.
struct Operation {
  std::string name;  // "pocket for gear 3"
  Work work;
  std::string pattern, hole;
  const reasons::Rule* purpose = nullptr;
};

inline constexpr double proud_mm = 1;

/// What an operation takes away. `reach_mm` is the depth that "right through" must cover: the part's greatest extent.
/// Tools stand proud of the face they enter, by `proud_mm`, so that no skin is left.
[[nodiscard]] std::vector<Shape> taken_away(const Operation&, double reach_mm);
/// What an operation adds (printing).
[[nodiscard]] std::vector<Shape> added(const Operation&);

}  // namespace visewright::parts
