// Parts flattened to bodies.
#include <utility>

#include "parts/part.h"

namespace visewright::parts {
namespace {

double reach_of(const std::vector<Shape>& added) { return added.empty() ? 0.0 : extent(added).diagonal_mm(); }

Body body_of(const Part& part, const Piece& piece) {
  Blank start = blank(piece.stock);
  Body body{part.name, &material(piece.stock), &piece, std::move(start.added), std::move(start.removed), {}};
  for (const Operation& operation : piece.operations)
    for (Shape& shape : added(operation)) body.added.push_back(std::move(shape));
  const double reach = reach_of(body.added);
  for (const Operation& operation : piece.operations)
    for (Shape& shape : taken_away(operation, reach)) body.removed.push_back(std::move(shape));
  return body;
}

Body moved(Body body, const geometry::Placement& at) {
  for (Shape& shape : body.added) shape = placed(shape, at);
  for (Shape& shape : body.removed) shape = placed(shape, at);
  body.at = geometry::combined(at, body.at);
  return body;
}

void work_on(std::vector<Body>& whole, const std::vector<Operation>& operations) {
  std::vector<Shape> all;
  for (const Body& body : whole) all.insert(all.end(), body.added.begin(), body.added.end());
  const double reach = reach_of(all);
  for (const Operation& operation : operations)
    for (const Shape& shape : taken_away(operation, reach))
      for (Body& body : whole) body.removed.push_back(shape);
}

std::vector<Body> bodies_of(const BuiltUp& built) {
  std::vector<Body> result;
  for (const Member& member : built.members)
    for (Body& body : bodies(*member.part)) result.push_back(moved(std::move(body), member.at));
  const standards::MaterialRow* weld_metal = result.empty() ? nullptr : result.front().material;
  for (const Joint& joint : built.joints)
    for (const Bead& bead : joint.beads) result.push_back({bead.name, weld_metal, nullptr, {bead.shape}, {}, {}});
  work_on(result, built.after);
  return result;
}

}  // namespace

std::vector<Body> bodies(const Part& part) {
  if (const auto* piece = std::get_if<Piece>(&part.made)) return {body_of(part, *piece)};
  return bodies_of(std::get<BuiltUp>(part.made));
}

}  // namespace visewright::parts
