#include "parts/compose.h"

namespace visewright::parts {

const reasons::Rule* why(const layout::Plan& plan, const reasons::Size& size) {
  return size.id < plan.ledger.numbers().size() ? plan.ledger.number(size.id).rule : nullptr;
}

Operation drill(std::string name, const Face& face, geometry::Point at, double diameter_mm, Depth depth) {
  return {std::move(name), Drill{face, at, diameter_mm, depth, false}, {}, {}};
}

Operation recess(std::string name, const Face& face, geometry::Point at, double diameter_mm, double depth_mm) {
  return {std::move(name), Drill{face, at, diameter_mm, depth_mm, true}, {}, {}};
}

Operation cut_out(std::string name, const Face& face, geometry::Loop outline) {
  return {std::move(name), CutOut{face, geometry::region(std::move(outline))}, {}, {}};
}

Operation turned_away(std::string name, double inner_mm, double outer_mm, double low_mm, double high_mm) {
  const geometry::Loop section = geometry::rectangle({inner_mm, low_mm}, {outer_mm + proud_mm, high_mm});
  return {std::move(name), Turn{{}, geometry::region(section)}, {}, {}};
}

Operation follows(Operation operation, const layout::Pattern& pattern, const layout::Hole& hole) {
  operation.pattern = pattern.name;
  operation.hole = hole.name;
  return operation;
}

Operation because(Operation operation, const layout::Plan& plan, const reasons::Size& size) {
  operation.purpose = why(plan, size);
  return operation;
}

Part made_of(std::string name, Stock stock, std::vector<Operation> operations, Making making) {
  return {std::move(name), Piece{std::move(stock), std::move(operations)}, making};
}

Part bought(std::string name, Bought stock) { return made_of(std::move(name), std::move(stock), {}, Making::bought); }

Member member(Part part, const geometry::Placement& at) { return {std::make_shared<const Part>(std::move(part)), at}; }

geometry::Placement raised(double z_mm) { return {{0, 0, z_mm}, {1, 0, 0}, {0, 0, 1}}; }

Prism cylinder(double diameter_mm, double from_mm, double to_mm) {
  return {geometry::region(geometry::circle({0, 0}, diameter_mm / 2)), {}, from_mm, to_mm};
}

Revolved turned_body(std::vector<geometry::Point> half_section) {
  return {geometry::region(geometry::polygon(half_section)), {}};
}

Prism along_x(std::vector<geometry::Point> y_and_z, double from_mm, double to_mm) {
  return {geometry::region(geometry::polygon(y_and_z)), {{0, 0, 0}, {0, 1, 0}, {1, 0, 0}}, from_mm, to_mm};
}

const standards::MaterialRow* steel(const layout::Plan& plan) { return plan.screw.material; }

geometry::Vector rough(double length_mm, double width_mm, double thickness_mm) {
  return {length_mm + 20, width_mm + 6, thickness_mm + 4};
}

std::string of_side(std::size_t side, bool differ) {
  if (!differ) return {};
  return side == 0 ? ", left" : ", right";
}

}  // namespace visewright::parts
