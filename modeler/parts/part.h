// A part is stock and the operations done to it; a built-up part is members, joints, and the operations after them.
#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "parts/operation.h"
#include "parts/stock.h"

namespace visewright::parts {

struct Part;

struct Piece {
  Stock stock;
  std::vector<Operation> operations;
};

/// A member of a built-up part, and where its frame stands in the whole's.
struct Member {
  std::shared_ptr<const Part> part;
  geometry::Placement at;
};

/// Weld metal as a solid, in the frame of the whole.
struct Bead {
  std::string name;
  Prism shape;
};

struct Joint {
  enum class Kind : std::uint8_t { glued, welded, pressed, pinned, screwed } kind;
  std::vector<Bead> beads;  // welded only
};

struct BuiltUp {
  std::vector<Member> members;
  std::vector<Joint> joints;
  std::vector<Operation> after;  // done to the whole
};

/// How a part comes to be, for the bill.
enum class Making : std::uint8_t { made, bought, printed, existing };

struct Part {
  std::string name;  // as in the bill: "drive gear"
  std::variant<Piece, BuiltUp> made;
  Making making = Making::made;
};

/// One solid of a part, flattened: a piece or a bead with everything that is done to it, alone or in the whole, in the
/// part's frame. Members that stay separate solids (glued layers, welded nut and washer) are bodies of one part.
struct Body {
  std::string name;  // the member's own name; the part's name when it is one piece
  const standards::MaterialRow* material = nullptr;
  const Piece* piece = nullptr;  // null for a weld bead
  std::vector<Shape> added, removed;
  geometry::Placement at;  // where the piece's own frame stands in the part's
};

/// All bodies of a part in a fixed order: members first, depth first, then beads. They point into the part, which must
/// outlive them. A bead is of the material of the first member.
[[nodiscard]] std::vector<Body> bodies(const Part&);

/// Volume of a body, mm³, kernel-free: areas of slices exactly, summed exactly where they do not change along the
/// depth and by Gauss's rule where they do, to 1e-8 of the body's box. The body is sliced along that axis of the part's
/// frame along which fewest shapes change. REQUIRES: prisms stand along or square to that axis, and turned shapes
/// along it; not a number when there is no such axis.
[[nodiscard]] double volume_mm3(const Body&);
[[nodiscard]] double volume_mm3(const Part&);
/// From volume and density, or the catalogue's mass; threaded rod by the mean diameter of its thread.
[[nodiscard]] double mass_kg(const Body&);
[[nodiscard]] double mass_kg(const Part&);

}  // namespace visewright::parts
