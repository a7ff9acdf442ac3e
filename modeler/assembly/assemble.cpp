#include "assembly/assemble.h"

#include <optional>
#include <vector>

#include "assembly/builder.h"
#include "parts/list.h"
#include "units/quantity.h"

namespace visewright::assembly {
namespace {

using geometry::Placement;
using layout::Plan;

/// Left and right screw, and the shaft in the middle.
constexpr std::string_view sides[] = {", left", ", right", ", centre"};
constexpr std::size_t centre = 2;

std::string named(std::string_view name, std::size_t side) { return std::string(name) + std::string(sides[side]); }
std::string numbered(std::string_view name, std::size_t index) { return std::string(name) + " " + std::to_string(index + 1); }

/// A part for each screw; one part placed twice where both screws take the same.
template <class Make>
std::array<Index, 2> for_both(Builder& b, bool differ, Make make) {
  const Index left = b.part(make(0));
  return {left, differ ? b.part(make(1)) : left};
}

/// What the later steps need to declare fits.
struct Indices {
  Index top = 0, rear_jaw = 0, rear_lining = 0, front_jaw = 0, front_lining = 0, cover = 0;
  std::array<Index, 2> nut_block{}, rear_bush{}, front_bush{}, stop{}, thrust{};
  std::array<Index, 3> rod{}, collar{};  // the screws and the shaft
  std::vector<Index> gears, outer_rings;  // of the bearings in the cover
};

class Assembler {
 public:
  explicit Assembler(const Plan& plan) : plan_(plan) {}

  Assembly run() {
    place_bench();
    place_rear();
    place_front();
    place_gears();
    for (std::size_t side = 0; side < 2; ++side) place_screw(side);
    if (plan_.wheel.on_centre) place_shaft();
    place_wheels();
    place_cover();
    declare_travel();
    auto& assembly = b_.assembly();
    assembly.opening_max_mm = plan_.use.opening_max.mm();
    for (const auto& part : assembly.parts) assembly.mass_kg.push_back(parts::mass_kg(*part));
    assembly.moving_to_fixed_mm = plan_.gaps.moving_to_fixed.mm();
    return std::move(assembly);
  }

 private:
  std::size_t gear_on(std::size_t side) const {
    const std::size_t last = plan_.train.gears.size() - 1;
    return side == centre ? last / 2 : side == 0 ? 0 : last;
  }
  double axis_x(std::size_t side) const { return plan_.train.gears[gear_on(side)].centre_x.mm(); }
  double phase(std::size_t side) const { return plan_.train.gears[gear_on(side)].phase.rad(); }
  /// Opening a millimetre turns right-hand screws anticlockwise, left-hand screws clockwise; the train turns the rest.
  double rate_of_gear(std::size_t k) const {
    const auto& gears = plan_.train.gears;
    const double full = 2 * units::pi / units::in_mm(plan_.screw.thread->lead);
    return (plan_.screw.left_hand[0] ? -full : full) * gears[k].sense * gears.front().teeth.value / gears[k].teeth.value;
  }
  double rate(std::size_t side) const { return rate_of_gear(gear_on(side)); }
  bool hands_differ() const { return plan_.screw.left_hand[0] != plan_.screw.left_hand[1]; }

  void place_bench() {
    i_.top = b_.fixed(b_.part(parts::bench_top_part(plan_)), "bench top", {});
    if (plan_.bench.has_apron) {
      const Index apron = b_.fixed(b_.part(parts::apron(plan_)), "apron", {});
      b_.fit(i_.top, apron, Bonded{});
      if (plan_.bench.has_doubler) b_.fit(apron, b_.fixed(b_.part(parts::doubler(plan_)), "apron doubler", {}), Bonded{});
    }
    for (parts::Part& obstacle : parts::obstacles(plan_)) {
      const std::string name = obstacle.name;
      b_.fixed(b_.part(std::move(obstacle)), name, {});
    }
  }

  void place_rear() {
    const double rear = plan_.rear_jaw.rear_out.mm();
    i_.rear_jaw = b_.fixed(b_.part(parts::rear_jaw(plan_)), "rear jaw", front_frame(0, rear));
    i_.rear_lining = b_.fixed(b_.part(parts::rear_lining(plan_)), "rear lining", front_frame(0, plan_.rear_jaw.front_out.mm()));
    b_.fit(i_.top, i_.rear_jaw, Touching{});
    b_.fit(i_.rear_jaw, i_.rear_lining, Bonded{});
    const Index bush = b_.part(parts::rear_bush(plan_));
    const auto blocks = for_both(b_, hands_differ(), [&](std::size_t side) { return parts::nut_block(plan_, side); });
    for (std::size_t side = 0; side < 2; ++side) {
      i_.rear_bush[side] = b_.fixed(bush, named("rear bush", side), front_frame(axis_x(side), rear));
      b_.fit(i_.rear_jaw, i_.rear_bush[side], Press{});
      i_.nut_block[side] = b_.fixed(blocks[side], named("nut block", side), front_frame(axis_x(side), plan_.rear_nut.rear_out.mm()));
      b_.fit(i_.rear_jaw, i_.nut_block[side], Touching{});
    }
    place_rear_screws();
  }

  void place_rear_screws() {
    const Index mount = b_.part(parts::mounting_screw(plan_));
    const double seat = plan_.rear_jaw.front_out.mm() - plan_.rear_jaw.counterbore_depth.mm();
    for (const auto& hole : plan_.rear_mounting.holes) {
      const Index screw = b_.fixed(mount, "mounting screw, " + hole.name, front_frame(hole.at.x, seat, hole.at.y));
      b_.fit(i_.rear_jaw, screw, Sliding{});
      b_.fit(i_.top, screw, Threaded{});
    }
    const Index small = b_.part(parts::nut_block_screw(plan_));
    for (std::size_t side = 0; side < 2; ++side) {
      for (const double aside : {-1.0, 1.0}) {
        const double x = axis_x(side) + aside * plan_.rear_nut.bolt_offset.mm();
        const Index screw = b_.fixed(small, named(aside < 0 ? "nut block screw 1" : "nut block screw 2", side), from_behind(x, plan_.rear_nut.bar_rear_out.mm(), 0));
        b_.fit(i_.nut_block[side], screw, Touching{});
        b_.fit(i_.rear_jaw, screw, Threaded{});
      }
    }
    place_brackets();
  }

  /// A screw driven towards the person: its head looks into the bench.
  static Placement from_behind(double x, double out, double z) { return {{x, -out, z}, {1, 0, 0}, {0, 1, 0}}; }

  void place_brackets() {
    const Index bracket = b_.part(parts::bracket(plan_)), screw = b_.part(parts::bracket_screw(plan_));
    const double jaw_rear = plan_.rear_jaw.rear_out.mm(), line = parts::bracket_line_mm(plan_), thickness = plan_.bracket.thickness.mm();
    for (std::size_t k = 0; k < plan_.bracket.x.size(); ++k) {
      const double x = plan_.bracket.x[k].mm();
      const Index placed = b_.fixed(bracket, numbered("bracket", k), front_frame(x, jaw_rear, line));
      const Index low = b_.fixed(screw, numbered("bracket screw, jaw", k), from_behind(x, jaw_rear - thickness, line + parts::bracket_hole_y_mm(plan_)));
      const double y = -(jaw_rear + parts::bracket_slot_z_mm(plan_));
      const Index high = b_.fixed(screw, numbered("bracket screw, top", k), {{x, y, line - thickness}, {1, 0, 0}, {0, 0, -1}});
      for (const Index each : {low, high}) b_.fit(placed, each, Touching{});
      b_.fit(i_.rear_jaw, low, Threaded{});
      b_.fit(i_.top, high, Threaded{});
      b_.fit(i_.rear_jaw, placed, Touching{});
      b_.fit(i_.top, placed, Touching{});
    }
  }

  void place_front() {
    const double rear = plan_.front_jaw.backing_rear_out.mm(), joint = plan_.front_jaw.joint_out.mm();
    i_.front_lining = b_.moving(b_.part(parts::front_lining(plan_)), "front lining", front_frame(0, 0));
    i_.front_jaw = b_.moving(b_.part(parts::front_jaw(plan_)), "front jaw", front_frame(0, rear));
    b_.fit(i_.front_jaw, i_.front_lining, Bonded{});
    const Index bush = b_.part(parts::front_bush(plan_)), washer = b_.part(parts::thrust_washer(plan_));
    for (std::size_t side = 0; side < 2; ++side) {
      i_.front_bush[side] = b_.moving(bush, named("front bush", side), front_frame(axis_x(side), rear));
      i_.thrust[side] = b_.moving(washer, named("thrust washer", side), front_frame(axis_x(side), joint - plan_.collar.thrust_thickness.mm()));
      b_.fit(i_.front_jaw, i_.front_bush[side], Press{});
      b_.fit(i_.front_jaw, i_.thrust[side], Touching{});
    }
  }

  /// The part of a gear, one for all equal gears of the same kind.
  Index gear_part(std::size_t k) {
    const auto& gears = plan_.train.gears;
    for (std::size_t before = 0; before < k; ++before)
      if (parts::same_gear(gears[before], gears[k])) return gear_parts_[before];
    return b_.part(parts::gear(plan_, k));
  }

  void place_gears() {
    const auto& gears = plan_.train.gears;
    for (std::size_t k = 0; k < gears.size(); ++k) {
      gear_parts_.push_back(gear_part(k));
      const double x = gears[k].centre_x.mm();
      const Placement where = geometry::turned_about_z(front_frame(x, plan_.train.rear_out.mm()), gears[k].phase.rad());
      i_.gears.push_back(b_.turning(gear_parts_[k], numbered("gear", k), where, x, rate_of_gear(k)));
      if (k > 0) b_.fit(i_.gears[k - 1], i_.gears[k], Meshing{0});
    }
    place_idlers();
  }

  void place_idlers() {
    const auto& axle = plan_.axle;
    const double joint = plan_.front_jaw.joint_out.mm(), seat = joint + axle.spacer_rear.mm();
    std::optional<std::array<Index, 5>> part;  // axle, spacers, rings: only where there are idlers
    for (std::size_t k = 1; k + 1 < i_.gears.size(); ++k) {
      if (plan_.train.gears[k].drive) continue;
      if (!part)
        part = {b_.part(parts::axle(plan_)), b_.part(parts::rear_spacer(plan_)), b_.part(parts::front_spacer(plan_)),
                b_.part(parts::inner_ring(plan_, axle.bearing)), b_.part(parts::outer_ring(plan_, axle.bearing))};
      const double x = plan_.train.gears[k].centre_x.mm();
      const Index pin = b_.moving((*part)[0], numbered("axle", k), front_frame(x, joint - axle.hole_depth.mm()));
      const Index behind = b_.moving((*part)[1], numbered("rear spacer", k), front_frame(x, joint));
      const Index before = b_.moving((*part)[2], numbered("front spacer", k), front_frame(x, seat + axle.bearing.width.mm()));
      const Index inner = b_.moving((*part)[3], numbered("idler bearing, inner ring", k), front_frame(x, seat));
      const Index outer = b_.turning((*part)[4], numbered("idler bearing, outer ring", k), front_frame(x, seat), x, rate_of_gear(k));
      b_.fit(i_.front_jaw, pin, Press{});
      for (const Index ring : {behind, before, inner}) b_.fit(pin, ring, Sliding{});
      b_.fit(i_.gears[k], outer, Press{});
      axles_.push_back(pin);
    }
  }

  /// A frame on the axis of a screw or the shaft, turned as its gear stands.
  Placement on_axis(std::size_t side, double out) const { return geometry::turned_about_z(front_frame(axis_x(side), out), phase(side)); }
  Index turning(std::size_t side, Index part, std::string_view name, const Placement& where) {
    return b_.turning(part, named(name, side), where, axis_x(side), rate(side));
  }

  void place_screw(std::size_t side) {
    if (side == 0) stop_part_ = b_.part(parts::end_stop_pin(plan_));
    if (side == 0 || hands_differ()) screw_part_ = b_.part(parts::lead_screw(plan_, side));
    i_.rod[side] = turning(side, screw_part_, "lead screw", on_axis(side, plan_.screw.tail_out.mm()));
    i_.stop[side] = turning(side, stop_part_, "end-stop pin", across(on_axis(side, plan_.screw.stop_out.mm()), plan_.screw.stop_length.mm()));
    b_.fit(i_.rod[side], i_.stop[side], Press{});
    b_.fit(i_.rod[side], i_.front_bush[side], Sliding{});
    place_wheel_end(side);
    b_.fit(i_.collar[side], i_.thrust[side], Sliding{});
  }

  /// The shaft turns in a bearing in the backing; its front end is like the screws'.
  void place_shaft() {
    const double rear = plan_.shaft.rear_out.mm();
    i_.rod[centre] = b_.turning(b_.part(parts::centre_shaft(plan_)), "centre shaft", on_axis(centre, rear), axis_x(centre), rate(centre));
    const Index inner = turning(centre, inner_part_, "shaft bearing, inner ring", on_axis(centre, rear));
    const Index outer = b_.moving(outer_part_, named("shaft bearing, outer ring", centre), front_frame(axis_x(centre), rear));
    b_.fit(i_.rod[centre], inner, Sliding{});
    b_.fit(i_.front_jaw, outer, Press{});
    collar_part_ = left_collar_part_;
    place_wheel_end(centre);
  }

  /// Collar in the gear, keeper and bearing in the cover: alike on the screws and on the shaft.
  void place_wheel_end(std::size_t side) {
    if (side == 0) {
      left_collar_part_ = collar_part_ = b_.part(parts::thrust_collar(plan_, side));
      pin_part_ = b_.part(parts::collar_pin(plan_));
      keeper_part_ = b_.part(parts::keeper_ring(plan_));
      inner_part_ = b_.part(parts::inner_ring(plan_, plan_.bearing));
      outer_part_ = b_.part(parts::outer_ring(plan_, plan_.bearing));
    } else if (side == 1 && hands_differ()) {
      collar_part_ = b_.part(parts::thrust_collar(plan_, side));
    }
    const Index rod = i_.rod[side];
    i_.collar[side] = turning(side, collar_part_, "thrust collar", on_axis(side, plan_.front_jaw.joint_out.mm()));
    const Index pin = turning(side, pin_part_, "collar pin", across(on_axis(side, plan_.screw.collar_pin_out.mm()), plan_.collar.pin_length.mm()));
    const Index keeper = turning(side, keeper_part_, "keeper ring", on_axis(side, plan_.keeper.rear_out.mm()));
    const double ring = plan_.keeper.rear_out.mm() + plan_.keeper.thickness.mm() + plan_.gaps.end_float.mm();
    const Index inner = turning(side, inner_part_, "wheel bearing, inner ring", on_axis(side, ring));
    i_.outer_rings.push_back(b_.moving(outer_part_, named("wheel bearing, outer ring", side), front_frame(axis_x(side), ring)));
    b_.fit(rod, i_.collar[side], Threaded{});
    for (const Index other : {rod, i_.collar[side]}) b_.fit(other, pin, Press{});
    b_.fit(i_.collar[side], i_.gears[gear_on(side)], Sliding{});
    for (const Index other : {keeper, inner}) b_.fit(rod, other, Sliding{});
  }

  /// A pin of this length across the axis, along the frame's own y, middle on the axis.
  static Placement across(const Placement& on_axis, double length) {
    const auto along = on_axis.y_axis();
    return {geometry::plus(on_axis.origin_mm, geometry::times(-length / 2, along)), on_axis.z_axis, along};
  }

  void place_wheels() {
    wheel_part_ = b_.part(parts::hand_wheel(plan_));
    lock_part_ = b_.part(parts::lock_screw(plan_));
    grip_part_ = b_.part(parts::grip(plan_));
    for (const int side : plan_.wheel.on_screw) place_wheel(static_cast<std::size_t>(side));
    if (plan_.wheel.on_centre) place_wheel(centre);
  }

  void place_wheel(std::size_t side) {
    using geometry::plus, geometry::times;
    const Placement hub = on_axis(side, plan_.wheel.hub_rear_out.mm()), pivot = on_axis(side, plan_.wheel.grip_out.mm());
    const auto outwards = hub.x_axis;
    const Index wheel = turning(side, wheel_part_, "hand wheel", hub);
    const auto lock_at = plus(hub.origin_mm, plus(times(parts::lock_screw_height_mm(plan_), hub.z_axis),
                                                  times(plan_.wheel.hub_diameter.mm() / 2, outwards)));
    const Index lock = turning(side, lock_part_, "lock screw", {lock_at, hub.z_axis, outwards});
    const auto hinge = plus(pivot.origin_mm, times(plan_.wheel.grip_radius.mm(), outwards));
    const Index folding = turning(side, grip_part_, "grip", {hinge, pivot.z_axis, times(-1, outwards)});
    b_.folds_out(folding, {hinge, outwards, pivot.z_axis});
    b_.fit(wheel, i_.rod[side], Sliding{});
    b_.fit(wheel, lock, Threaded{});
    b_.fit(i_.rod[side], lock, Touching{});
    b_.fit(wheel, folding, Sliding{});
  }

  void place_cover() {
    const double rear = plan_.cover.rear_out.mm(), front = rear + plan_.cover.thickness.mm();
    i_.cover = b_.moving(b_.part(parts::cover(plan_)), "cover", front_frame(0, rear));
    b_.fit(i_.front_jaw, i_.cover, Touching{});
    for (const Index ring : i_.outer_rings) b_.fit(i_.cover, ring, Sliding{});
    if (!axles_.empty()) {
      const Index screw = b_.part(parts::axle_screw(plan_));
      for (std::size_t k = 0; k < plan_.axles.holes.size(); ++k) {
        const auto at = plan_.axles.holes[k].at;
        const Index placed = b_.moving(screw, numbered("axle screw", k + 1), front_frame(at.x, front, at.y));
        b_.fit(axles_[k], placed, Threaded{});
        b_.fit(i_.cover, placed, Touching{});
      }
    }
    const Index edge = b_.part(parts::edge_screw(plan_));
    for (const auto& hole : plan_.cover_edge.holes) {
      const Index placed = b_.moving(edge, "cover edge screw, " + hole.name, front_frame(hole.at.x, front, hole.at.y));
      b_.fit(i_.front_jaw, placed, Threaded{});
      b_.fit(i_.cover, placed, Touching{});
    }
  }

  /// Pairs of a moving and a fixed part that come close by intent.
  void declare_travel() {
    for (std::size_t side = 0; side < 2; ++side) {
      b_.fit(i_.rod[side], i_.nut_block[side], Threaded{});
      b_.fit(i_.rod[side], i_.rear_bush[side], Sliding{});
      b_.fit(i_.rod[side], i_.rear_jaw, Clear{0.01});
      b_.fit(i_.stop[side], i_.nut_block[side], Touching{});
      for (const Index lining : {i_.rear_lining, i_.rear_jaw}) b_.fit(i_.front_bush[side], lining, Touching{});
      for (const Index moving : {i_.front_lining, i_.front_jaw}) b_.fit(i_.rear_bush[side], moving, Touching{});
    }
    b_.fit(i_.front_lining, i_.rear_lining, Touching{});
    b_.fit(i_.front_lining, i_.rear_jaw, Touching{});
    b_.fit(i_.front_jaw, i_.rear_lining, Touching{});
  }

  const Plan& plan_;
  Builder b_;
  Indices i_;
  std::vector<Index> gear_parts_, axles_;
  Index screw_part_ = 0, stop_part_ = 0, collar_part_ = 0, left_collar_part_ = 0, pin_part_ = 0, keeper_part_ = 0;
  Index inner_part_ = 0, outer_part_ = 0, wheel_part_ = 0, lock_part_ = 0, grip_part_ = 0;
};

}  // namespace

Assembly assemble(const Plan& plan) { return Assembler(plan).run(); }

}  // namespace visewright::assembly
