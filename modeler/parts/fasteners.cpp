#include "parts/fasteners.h"

#include "parts/compose.h"
#include "units/text.h"

namespace visewright::parts {
namespace {

/// Heads of round-head screws are about this much of the shank high; common practice, no source.
constexpr double head_height = 0.6, head_width = 1.9;

Revolved screw_body(double shank, double head, double length) {
  const double r = shank / 2, height = head_height * shank;
  return turned_body({{0, -length}, {r, -length}, {r, 0}, {head / 2, 0}, {head / 2, height}, {0, height}});
}

}  // namespace

Part wood_screw(const standards::WoodScrewRow& row, const standards::MaterialRow& metal) {
  Bought bought{row.designation, row.source.standard, &metal,
                {screw_body(units::in_mm(row.shank), units::in_mm(row.head), units::in_mm(row.length))}, {}, 1, 0};
  return {row.designation, Piece{std::move(bought), {}}, Making::bought};
}

double cover_screw_reach(const layout::Plan& plan) { return plan.axle.tap_depth.mm() - 2; }

Part cover_screw(const layout::Plan& plan) {
  const double d = plan.axle.tap.mm();
  const double under_head = plan.cover.thickness.mm() + plan.cover.rear_out.mm() - plan.axle.front_out.mm() + cover_screw_reach(plan);
  const std::string name = "machine screw M" + units::write_number(d, 1) + " x " + units::write_number(under_head, 0);
  Bought bought{name, "ISO 7045, from memory", plan.axle.material, {screw_body(d, head_width * d, under_head)}, {}, 1, 0};
  return {"cover screw", Piece{std::move(bought), {}}, Making::bought};
}

}  // namespace visewright::parts
